namespace Panside.Reckoning.Quantities;

/// <summary>A density. Held in kilograms a cubic meter; never negative.</summary>
public readonly record struct Density : IComparable<Density>
{
    private readonly double _kilogramsPerCubicMeter;

    private Density(double value) => _kilogramsPerCubicMeter = value;

    /// <summary>From kilograms a cubic meter.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Density FromKilogramsPerCubicMeter(double x) => Checked(x);

    /// <summary>In kilograms a cubic meter.</summary>
    public double KilogramsPerCubicMeter => _kilogramsPerCubicMeter;

    /// <inheritdoc/>
    public int CompareTo(Density other) => _kilogramsPerCubicMeter.CompareTo(other._kilogramsPerCubicMeter);

    /// <summary>Less than.</summary>
    public static bool operator <(Density left, Density right) => left._kilogramsPerCubicMeter < right._kilogramsPerCubicMeter;

    /// <summary>Greater than.</summary>
    public static bool operator >(Density left, Density right) => left._kilogramsPerCubicMeter > right._kilogramsPerCubicMeter;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Density left, Density right) => left._kilogramsPerCubicMeter <= right._kilogramsPerCubicMeter;

    /// <summary>Greater than or equal.</summary>
    public static bool operator >=(Density left, Density right) => left._kilogramsPerCubicMeter >= right._kilogramsPerCubicMeter;

    private static Density Checked(double x) =>
        double.IsFinite(x) && x >= 0 ? new(x) : throw OutOfRange.For(nameof(Density), x, "a finite number of KilogramsPerCubicMeter, 0 or more");
}
