namespace Panside.Reckoning.Quantities;

/// <summary>An amount of heat. Held in megajoules.</summary>
public readonly record struct Energy : IComparable<Energy>
{
    private readonly double _megajoules;

    private Energy(double value) => _megajoules = value;

    /// <summary>From megajoules.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Energy FromMegajoules(double x) => Checked(x);

    /// <summary>From British thermal units (International Table, 1055.05585262 J).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Energy FromBtu(double x) => Checked(x * 1055.05585262e-6);

    /// <summary>In megajoules.</summary>
    public double Megajoules => _megajoules;

    /// <summary>In British thermal units (International Table, 1055.05585262 J).</summary>
    public double Btu => _megajoules / 1055.05585262e-6;

    /// <inheritdoc/>
    public int CompareTo(Energy other) => _megajoules.CompareTo(other._megajoules);

    /// <summary>Less than.</summary>
    public static bool operator <(Energy left, Energy right) => left._megajoules < right._megajoules;

    /// <summary>Greater than.</summary>
    public static bool operator >(Energy left, Energy right) => left._megajoules > right._megajoules;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Energy left, Energy right) => left._megajoules <= right._megajoules;

    /// <summary>Greater than or equal.</summary>
    public static bool operator >=(Energy left, Energy right) => left._megajoules >= right._megajoules;

    /// <summary>The sum.</summary>
    public static Energy operator +(Energy left, Energy right) => Checked(left._megajoules + right._megajoules);

    /// <summary>The difference.</summary>
    public static Energy operator -(Energy left, Energy right) => Checked(left._megajoules - right._megajoules);

    /// <summary>The multiple.</summary>
    public static Energy operator *(Energy left, double factor) => Checked(left._megajoules * factor);

    /// <summary>How many times the right one.</summary>
    public static double operator /(Energy left, Energy right) => left._megajoules / right._megajoules;

    private static Energy Checked(double x) =>
        double.IsFinite(x) ? new(x) : throw OutOfRange.For(nameof(Energy), x, "a finite number");
}
