namespace Panside.Reckoning.Quantities;

/// <summary>An absolute pressure. Held in kilopascals; never negative.</summary>
public readonly record struct Pressure : IComparable<Pressure>
{
    private readonly double _kilopascals;

    private Pressure(double value) => _kilopascals = value;

    /// <summary>From kilopascals.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Pressure FromKilopascals(double x) => Checked(x);

    /// <summary>From hectopascals (millibars).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Pressure FromHectopascals(double x) => Checked(x / 10);

    /// <summary>From inches of mercury at 0 °C (3.386389 kPa).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Pressure FromInchesOfMercury(double x) => Checked(x * 3.386389);

    /// <summary>In kilopascals.</summary>
    public double Kilopascals => _kilopascals;

    /// <summary>In hectopascals (millibars).</summary>
    public double Hectopascals => _kilopascals * 10;

    /// <summary>In inches of mercury at 0 °C (3.386389 kPa).</summary>
    public double InchesOfMercury => _kilopascals / 3.386389;

    /// <inheritdoc/>
    public int CompareTo(Pressure other) => _kilopascals.CompareTo(other._kilopascals);

    /// <summary>Less than.</summary>
    public static bool operator <(Pressure left, Pressure right) => left._kilopascals < right._kilopascals;

    /// <summary>Greater than.</summary>
    public static bool operator >(Pressure left, Pressure right) => left._kilopascals > right._kilopascals;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Pressure left, Pressure right) => left._kilopascals <= right._kilopascals;

    /// <summary>Greater than or equal.</summary>
    public static bool operator >=(Pressure left, Pressure right) => left._kilopascals >= right._kilopascals;

    private static Pressure Checked(double x) =>
        double.IsFinite(x) && x >= 0 ? new(x) : throw OutOfRange.For(nameof(Pressure), x, "a finite number of Kilopascals, 0 or more");
}
