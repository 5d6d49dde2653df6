using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice.Operator;

namespace Panside.Workshop.Judging;

/// <summary>A reading as an operator types it: a bare number where it is asked for, else with its name before it.</summary>
/// <param name="Name">What stands before the number; empty where the open prompt says it.</param>
/// <param name="Reading">What was read, and in what unit.</param>
/// <param name="Unit">What stands behind the number; empty where the unit is the one assumed.</param>
internal sealed record TypedReading(string Name, Measure Reading, string Unit)
{
    /// <summary>The number: inches in eighths.</summary>
    public string Number { get; } = Typed.Bare(Reading);

    /// <summary>What is typed.</summary>
    public string Text => With(Number);

    /// <summary>The same with another number.</summary>
    public string With(string number) => With(Name, number, Unit);

    /// <summary>The same with another unit behind it.</summary>
    public string In(Unit unit) => With(Name, Number, unit.Shown());

    /// <summary>The same number under another name.</summary>
    public string As(ReadingName name) => With(WordsOf(name), Number, "");

    /// <summary>As it is typed with a prompt open; in the unit assumed, its unit is not typed.</summary>
    public static TypedReading Of(ReadingName name, Measure measure, Prompt? open, UnitSystem units)
    {
        var isAsked = open?.Ask == name.Code;
        var assumed = isAsked && open!.Unit is { } unit ? unit : name.UnitIn(units);
        return new(isAsked ? "" : WordsOf(name), measure, measure.Unit == assumed ? "" : measure.Unit.Shown());
    }

    /// <summary>As a draw is told.</summary>
    public static TypedReading Drew(Measure drawn) => new("drew", drawn, drawn.Unit.Shown());

    private static string WordsOf(ReadingName name) => name.Code.Replace('-', ' ');

    private static string With(string name, string number, string unit) => $"{name} {number} {unit}".Trim();
}
