using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Lines;

/// <summary>What can be read off an instrument.</summary>
public sealed partial class ReadingName(string code, Dimension kind, string spoken, TimeSpan interval) : Thing(code)
{
    /// <summary>What it measures.</summary>
    public Dimension Kind { get; } = kind;

    /// <summary>As said to a person: <c>tank</c>.</summary>
    public string Spoken { get; } = spoken;

    /// <summary>How long a value counts as fresh; after twice that it is old.</summary>
    public TimeSpan Interval { get; } = interval;

    /// <summary>Whether it is told in the smaller unit of its kind, a quart and not a gallon.</summary>
    public bool IsSmall { get; init; }

    /// <summary>Its name in the screen's rows, as short as they are: <c>draw-off</c>; null where it has no row there.</summary>
    public string? Row { get; init; }

    /// <summary>What it is read with: who has none of one of them is not asked. Empty where a stick or the eye will do.</summary>
    public IReadOnlyList<string> Instruments { get; init; } = [];

    /// <summary>Whether a rig has what it is read of: who has not is not asked, and a value is refused.</summary>
    public Func<Rig, bool> IsThere { get; init; } = _ => true;

    /// <summary>What a doubt says behind the amount: <c>for tank</c>.</summary>
    public string Where { get; init; } = $"for {spoken}";

    /// <summary>Where it usually lies on this rig, now: what a prompt shows. Outside it a value may still be right.</summary>
    public required Func<IBoil, (Measure Low, Measure High)> Usual { get; init; }

    /// <summary>Where no rig like this one could have less or more.</summary>
    public required Func<Rig, (Measure Low, Measure High)> Possible { get; init; }

    /// <summary>What a person has likely mixed it up with who told what is not possible; null where nothing is known.</summary>
    public Func<Rig, Measure, string?> MixedUp { get; init; } = (_, _) => null;

    /// <summary>What is expected of it now, in liters, meters, °C, Brix or kPa; null where nothing is.</summary>
    public Func<IBoil, Expectation?> Expected { get; init; } = _ => null;

    /// <summary>What it would take for a value far from what is expected; the last is whether it is higher than that.</summary>
    public Func<IBoil, Measure, bool, string> WouldTake { get; init; } = (_, _, _) => "It would take another instrument, or a reading in another unit.";

    /// <summary>Whether a value far from what is expected warns of danger over a fire: then it is never doubted, S4.</summary>
    public Func<IBoil, Measure, bool, bool> WarnsOfDanger { get; init; } = (_, _, _) => false;

    /// <summary>The doubt that is told with what is known of this rig; null where it could have the value.</summary>
    public Func<IBoil, Reading, Doubt?> Doubted { get; init; } = (_, _) => null;

    /// <summary>The unit that it is shown in, and assumed to be in where none is typed.</summary>
    public Unit UnitIn(UnitSystem units) => IsSmall ? units.SmallVolume : units.Preferred(Kind);

    private static (Measure Low, Measure High) Between(double low, double high, Unit unit) => (new(low, unit), new(high, unit));

    private static (Measure Low, Measure High) ToVolume(UnitSystem units, Volume most, Unit? unit = null) =>
        (units.From(default(Volume), unit), units.From(most, unit));

    private static bool IsLit(IBoil boil) => boil.Last(DeedName.LitFire) is not null;

    private static double With(double deviation, double own) => double.Sqrt((deviation * deviation) + (own * own));
}
