namespace Panside.Reckoning.Quantities;

/// <summary>A volume of liquid. Held in liters; may be negative where it is a difference.</summary>
public readonly record struct Volume : IComparable<Volume>
{
    private readonly double _liters;

    private Volume(double value) => _liters = value;

    /// <summary>From liters.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Volume FromLiters(double x) => Checked(x);

    /// <summary>From milliliters.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Volume FromMilliliters(double x) => Checked(x / 1000);

    /// <summary>From US gallons (3.785411784 L by definition).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Volume FromUsGallons(double x) => Checked(x * 3.785411784);

    /// <summary>From US quarts (a quarter of a US gallon).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Volume FromUsQuarts(double x) => Checked(x * 0.946352946);

    /// <summary>From imperial gallons (4.54609 L by definition).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Volume FromImperialGallons(double x) => Checked(x * 4.54609);

    /// <summary>From imperial quarts (a quarter of an imperial gallon).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Volume FromImperialQuarts(double x) => Checked(x * 1.1365225);

    /// <summary>In liters.</summary>
    public double Liters => _liters;

    /// <summary>In milliliters.</summary>
    public double Milliliters => _liters * 1000;

    /// <summary>In US gallons (3.785411784 L by definition).</summary>
    public double UsGallons => _liters / 3.785411784;

    /// <summary>In US quarts (a quarter of a US gallon).</summary>
    public double UsQuarts => _liters / 0.946352946;

    /// <summary>In imperial gallons (4.54609 L by definition).</summary>
    public double ImperialGallons => _liters / 4.54609;

    /// <summary>In imperial quarts (a quarter of an imperial gallon).</summary>
    public double ImperialQuarts => _liters / 1.1365225;

    /// <inheritdoc/>
    public int CompareTo(Volume other) => _liters.CompareTo(other._liters);

    /// <summary>Less than.</summary>
    public static bool operator <(Volume left, Volume right) => left._liters < right._liters;

    /// <summary>Greater than.</summary>
    public static bool operator >(Volume left, Volume right) => left._liters > right._liters;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Volume left, Volume right) => left._liters <= right._liters;

    /// <summary>Greater than or equal.</summary>
    public static bool operator >=(Volume left, Volume right) => left._liters >= right._liters;

    /// <summary>The sum.</summary>
    public static Volume operator +(Volume left, Volume right) => Checked(left._liters + right._liters);

    /// <summary>The difference.</summary>
    public static Volume operator -(Volume left, Volume right) => Checked(left._liters - right._liters);

    /// <summary>The multiple.</summary>
    public static Volume operator *(Volume left, double factor) => Checked(left._liters * factor);

    /// <summary>How many times the right one.</summary>
    public static double operator /(Volume left, Volume right) => left._liters / right._liters;

    /// <summary>The depth of this volume over an area.</summary>
    public static Length operator /(Volume left, Area over) => Length.FromMeters(left._liters / 1000 / over.SquareMeters);

    private static Volume Checked(double x) =>
        double.IsFinite(x) ? new(x) : throw OutOfRange.For(nameof(Volume), x, "a finite number");
}
