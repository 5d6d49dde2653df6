namespace Panside.Reckoning.Quantities;

/// <summary>A length, depth or altitude. Held in meters.</summary>
public readonly record struct Length : IComparable<Length>
{
    private readonly double _meters;

    private Length(double value) => _meters = value;

    /// <summary>From meters.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Length FromMeters(double x) => Checked(x);

    /// <summary>From centimeters.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Length FromCentimeters(double x) => Checked(x / 100);

    /// <summary>From millimeters.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Length FromMillimeters(double x) => Checked(x / 1000);

    /// <summary>From inches (25.4 mm by definition).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Length FromInches(double x) => Checked(x * 0.0254);

    /// <summary>From feet (0.3048 m by definition).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Length FromFeet(double x) => Checked(x * 0.3048);

    /// <summary>In meters.</summary>
    public double Meters => _meters;

    /// <summary>In centimeters.</summary>
    public double Centimeters => _meters * 100;

    /// <summary>In millimeters.</summary>
    public double Millimeters => _meters * 1000;

    /// <summary>In inches (25.4 mm by definition).</summary>
    public double Inches => _meters / 0.0254;

    /// <summary>In feet (0.3048 m by definition).</summary>
    public double Feet => _meters / 0.3048;

    /// <inheritdoc/>
    public int CompareTo(Length other) => _meters.CompareTo(other._meters);

    /// <summary>Less than.</summary>
    public static bool operator <(Length left, Length right) => left._meters < right._meters;

    /// <summary>Greater than.</summary>
    public static bool operator >(Length left, Length right) => left._meters > right._meters;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Length left, Length right) => left._meters <= right._meters;

    /// <summary>Greater than or equal.</summary>
    public static bool operator >=(Length left, Length right) => left._meters >= right._meters;

    /// <summary>The sum.</summary>
    public static Length operator +(Length left, Length right) => Checked(left._meters + right._meters);

    /// <summary>The difference.</summary>
    public static Length operator -(Length left, Length right) => Checked(left._meters - right._meters);

    /// <summary>The multiple.</summary>
    public static Length operator *(Length left, double factor) => Checked(left._meters * factor);

    /// <summary>How many times the right one.</summary>
    public static double operator /(Length left, Length right) => left._meters / right._meters;

    private static Length Checked(double x) =>
        double.IsFinite(x) ? new(x) : throw OutOfRange.For(nameof(Length), x, "a finite number");
}
