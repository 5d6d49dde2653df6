using System.Globalization;
using System.Text;
using Panside.Guide.Hearing.Talk;
using Panside.Guide.Measures;
using Measures = Panside.Guide.Measures.Unit;

namespace Panside.Workshop.Hearing;

/// <summary>A line that somebody types, and what is meant by it.</summary>
/// <param name="Meant">What it means, in the order said.</param>
/// <param name="Habit">How its writer speaks.</param>
/// <param name="Text">The line.</param>
internal sealed record TalkSentence(IReadOnlyList<TalkMeant> Meant, string Habit, string Text)
{
    /// <summary>The lines of files: meanings (a semicolon between), habit and sentence, a tab between. Other lines are passed over.</summary>
    /// <exception cref="UnusableException">A file cannot be read.</exception>
    public static List<TalkSentence> Read(IEnumerable<string> files) =>
    [
        .. files.SelectMany(file => Encoding.UTF8.GetString(GivenFile.Read(file)).Split('\n')).Select(line => line.TrimEnd('\r').Split('\t'))
            .Where(cells => cells.Length == 3 && cells[0] != "meaning")
            .Select(cells => new TalkSentence([.. cells[0].Split(';').Select(TalkMeant.Of)], cells[1], cells[2])),
    ];
}

/// <summary>One meaning: <c>reading:tank-volume 22.5 gal</c>.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Value">Its amount; null where none is said.</param>
/// <param name="Unit">The amount's unit; null where none is said.</param>
internal sealed record TalkMeant(string Kind, double? Value, Unit? Unit)
{
    /// <summary>As it is written.</summary>
    public static TalkMeant Of(string written)
    {
        var cells = written.Trim().Split(' ', 3);
        return new(
            cells[0],
            cells.Length > 1 && double.TryParse(cells[1], NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : null,
            cells.Length > 2 ? UnitNames.FromWord(cells[2]) : null);
    }

    /// <summary>Whether an amount that was heard can be this one's, for fitting.</summary>
    public bool Is(Meaning heard) => Is(new HeardMeaning(heard.Kind, heard.Amount?.Value, heard.Amount?.Unit, IsAsked: false));

    /// <summary>Whether a meaning that was heard is this one: of its kind, with its amount and its unit where one was said.</summary>
    public bool Is(HeardMeaning heard)
    {
        if (heard.Kind == "how-much")
        {
            return Value is null && Kind is "did:refill-tank" or "did:fill-pan:sap" or "did:fill-pan:water" or "added";
        }

        if (heard.Kind != Kind || Value is not { } value)
        {
            return heard.Kind == Kind && (heard.Value is null || Kind.StartsWith("ask", StringComparison.Ordinal) || Kind == "away");
        }

        var ((meant, its), (amount, unit)) = (Plain(value, Unit), Plain(heard.Value, heard.Unit));
        return amount is { } said
            && (double.Abs(said - meant!.Value) < 0.004 + (0.001 * double.Abs(meant.Value)) || (Kind == "gone-by" && (said - meant.Value) % 720 == 0))
            && (its is null || unit is null || unit == its || (unit == Measures.Inch && its == Measures.InchOfMercury) || (unit == Measures.Percent && its == Measures.Brix));
    }

    /// <summary>Half an hour is thirty minutes, two quarts are half a gallon.</summary>
    private static (double? Value, Unit? Unit) Plain(double? value, Unit? unit) => unit switch
    {
        Measures.Hour => (value * 60, Measures.Minute),
        Measures.Quart => (value / 4, Measures.Gallon),
        Measures.Millimeter => (value / 10, Measures.Centimeter),
        _ => (value, unit),
    };
}
