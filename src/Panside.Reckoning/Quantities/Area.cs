namespace Panside.Reckoning.Quantities;

/// <summary>An area. Held in square meters; never negative.</summary>
public readonly record struct Area : IComparable<Area>
{
    private readonly double _squareMeters;

    private Area(double value) => _squareMeters = value;

    /// <summary>From square meters.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Area FromSquareMeters(double x) => Checked(x);

    /// <summary>From square feet (0.09290304 m² by definition).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Area FromSquareFeet(double x) => Checked(x * 0.09290304);

    /// <summary>In square meters.</summary>
    public double SquareMeters => _squareMeters;

    /// <summary>In square feet (0.09290304 m² by definition).</summary>
    public double SquareFeet => _squareMeters / 0.09290304;

    /// <inheritdoc/>
    public int CompareTo(Area other) => _squareMeters.CompareTo(other._squareMeters);

    /// <summary>Less than.</summary>
    public static bool operator <(Area left, Area right) => left._squareMeters < right._squareMeters;

    /// <summary>Greater than.</summary>
    public static bool operator >(Area left, Area right) => left._squareMeters > right._squareMeters;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Area left, Area right) => left._squareMeters <= right._squareMeters;

    /// <summary>Greater than or equal.</summary>
    public static bool operator >=(Area left, Area right) => left._squareMeters >= right._squareMeters;

    /// <summary>The sum.</summary>
    public static Area operator +(Area left, Area right) => Checked(left._squareMeters + right._squareMeters);

    /// <summary>The difference.</summary>
    public static Area operator -(Area left, Area right) => Checked(left._squareMeters - right._squareMeters);

    /// <summary>The multiple.</summary>
    public static Area operator *(Area left, double factor) => Checked(left._squareMeters * factor);

    /// <summary>How many times the right one.</summary>
    public static double operator /(Area left, Area right) => left._squareMeters / right._squareMeters;

    /// <summary>The volume under this area at a depth.</summary>
    public static Volume operator *(Area left, Length depth) => Volume.FromLiters(left._squareMeters * depth.Meters * 1000);

    private static Area Checked(double x) =>
        double.IsFinite(x) && x >= 0 ? new(x) : throw OutOfRange.For(nameof(Area), x, "a finite number of SquareMeters, 0 or more");
}
