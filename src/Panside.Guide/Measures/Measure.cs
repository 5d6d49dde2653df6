namespace Panside.Guide.Measures;

/// <summary>
/// A number with its unit that the quantity behind it can hold: finite, above absolute zero, not negative where nothing can be
/// less than nothing. It can be made in no other way, so that no reading, however it came in, breaks a formula by being none.
/// The reckoning takes quantities; <see cref="UnitSystem"/> turns one into the other.
/// </summary>
public readonly record struct Measure
{
    /// <summary>A little above absolute zero, so that a change of unit and its rounding stay above it.</summary>
    private const double ColdestCelsius = -273;

    /// <summary>The most that anybody says; a reckoning and a change of unit may give more.</summary>
    private const double MostSaid = 1e9;

    private const double Most = 1e18;

    /// <summary>A measure of a number that is known to be one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The unit's quantity cannot hold it. Where that can come from outside, <see cref="Of"/> is for it.</exception>
    public Measure(double value, Unit unit) =>
        (Value, Unit) = Fault(value, unit, Most) is { } fault ? throw new ArgumentOutOfRangeException(nameof(value), value, fault) : (value, unit);

    /// <summary>A finite number in <see cref="Unit"/>.</summary>
    public double Value { get; }

    /// <summary>The unit.</summary>
    public Unit Unit { get; }

    /// <summary>The measure; null where the unit's quantity cannot hold the number.</summary>
    public static Measure? Of(double value, Unit unit) => Fault(value, unit) is null ? new(value, unit) : null;

    /// <summary>Why the number cannot be, as a sentence without its full stop; null where it can.</summary>
    public static string? Fault(double value, Unit unit) => Fault(value, unit, MostSaid);

    /// <summary>The same unit with another number, as after rounding.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The unit's quantity cannot hold it.</exception>
    public Measure With(double value) => new(value, Unit);

    /// <summary>As a person reads it: <c>12.5 gal</c>, <c>217.4 °F</c>; three decimals at the most.</summary>
    public override string ToString() => new Written(Value, Unit).ToString();

    private static string? Fault(double value, Unit unit, double mostOfAll)
    {
        var (least, most) = Holds(unit, mostOfAll);
        if (value >= least && value <= most)
        {
            return null;
        }

        var range = value < least && most == mostOfAll && least > -mostOfAll ? $"{new Written(least, unit)} or more"
            : $"{new Written(least, unit).Number} to {new Written(most, unit)}";
        return $"{new Written(value, unit)} is not possible: {UnitNames.Spoken(unit.Kind())} is {range}";
    }

    /// <summary>The least and the most; a difference of volumes, lengths or masses may be negative.</summary>
    private static (double Least, double Most) Holds(Unit unit, double most) => unit.Kind() switch
    {
        Dimension.Temperature => (unit == Unit.DegreeFahrenheit ? (ColdestCelsius * 1.8) + 32 : ColdestCelsius, most),
        Dimension.Pressure => (0, most),
        Dimension.Sugar => (0, 100),
        _ => (-most, most),
    };
}
