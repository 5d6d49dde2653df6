namespace Panside.Reckoning.Quantities;

/// <summary>Sugar as a mass fraction of the whole, in degrees Brix (percent by mass). Held in Brix, 0 to 100.</summary>
public readonly record struct SugarContent : IComparable<SugarContent>
{
    private readonly double _brix;

    private SugarContent(double value) => _brix = value;

    /// <summary>From degrees Brix.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static SugarContent FromBrix(double x) => Checked(x);

    /// <summary>From mass fraction, 0 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static SugarContent FromMassFraction(double x) => Checked(x * 100);

    /// <summary>In degrees Brix.</summary>
    public double Brix => _brix;

    /// <summary>In mass fraction, 0 to 1.</summary>
    public double MassFraction => _brix / 100;

    /// <inheritdoc/>
    public int CompareTo(SugarContent other) => _brix.CompareTo(other._brix);

    /// <summary>Less than.</summary>
    public static bool operator <(SugarContent left, SugarContent right) => left._brix < right._brix;

    /// <summary>Greater than.</summary>
    public static bool operator >(SugarContent left, SugarContent right) => left._brix > right._brix;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(SugarContent left, SugarContent right) => left._brix <= right._brix;

    /// <summary>Greater than or equal.</summary>
    public static bool operator >=(SugarContent left, SugarContent right) => left._brix >= right._brix;

    private static SugarContent Checked(double x) =>
        double.IsFinite(x) && x >= 0 && x <= 100 ? new(x) : throw OutOfRange.For(nameof(SugarContent), x, "0 to 100 Brix");
}
