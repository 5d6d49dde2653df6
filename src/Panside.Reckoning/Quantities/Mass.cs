namespace Panside.Reckoning.Quantities;

/// <summary>A mass. Held in kilograms.</summary>
public readonly record struct Mass : IComparable<Mass>
{
    private readonly double _kilograms;

    private Mass(double value) => _kilograms = value;

    /// <summary>From kilograms.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Mass FromKilograms(double x) => Checked(x);

    /// <summary>From pounds avoirdupois (0.45359237 kg by definition).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Mass FromPounds(double x) => Checked(x * 0.45359237);

    /// <summary>In kilograms.</summary>
    public double Kilograms => _kilograms;

    /// <summary>In pounds avoirdupois (0.45359237 kg by definition).</summary>
    public double Pounds => _kilograms / 0.45359237;

    /// <inheritdoc/>
    public int CompareTo(Mass other) => _kilograms.CompareTo(other._kilograms);

    /// <summary>Less than.</summary>
    public static bool operator <(Mass left, Mass right) => left._kilograms < right._kilograms;

    /// <summary>Greater than.</summary>
    public static bool operator >(Mass left, Mass right) => left._kilograms > right._kilograms;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Mass left, Mass right) => left._kilograms <= right._kilograms;

    /// <summary>Greater than or equal.</summary>
    public static bool operator >=(Mass left, Mass right) => left._kilograms >= right._kilograms;

    /// <summary>The sum.</summary>
    public static Mass operator +(Mass left, Mass right) => Checked(left._kilograms + right._kilograms);

    /// <summary>The difference.</summary>
    public static Mass operator -(Mass left, Mass right) => Checked(left._kilograms - right._kilograms);

    /// <summary>The multiple.</summary>
    public static Mass operator *(Mass left, double factor) => Checked(left._kilograms * factor);

    /// <summary>How many times the right one.</summary>
    public static double operator /(Mass left, Mass right) => left._kilograms / right._kilograms;

    private static Mass Checked(double x) =>
        double.IsFinite(x) ? new(x) : throw OutOfRange.For(nameof(Mass), x, "a finite number");
}
