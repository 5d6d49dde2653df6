namespace Panside.Reckoning.Quantities;

/// <summary>A volume a time. Held in liters an hour.</summary>
public readonly record struct VolumeRate : IComparable<VolumeRate>
{
    private readonly double _litersPerHour;

    private VolumeRate(double value) => _litersPerHour = value;

    /// <summary>From liters an hour.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static VolumeRate FromLitersPerHour(double x) => Checked(x);

    /// <summary>From US gallons an hour.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static VolumeRate FromUsGallonsPerHour(double x) => Checked(x * 3.785411784);

    /// <summary>From imperial gallons an hour.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static VolumeRate FromImperialGallonsPerHour(double x) => Checked(x * 4.54609);

    /// <summary>In liters an hour.</summary>
    public double LitersPerHour => _litersPerHour;

    /// <summary>In US gallons an hour.</summary>
    public double UsGallonsPerHour => _litersPerHour / 3.785411784;

    /// <summary>In imperial gallons an hour.</summary>
    public double ImperialGallonsPerHour => _litersPerHour / 4.54609;

    /// <inheritdoc/>
    public int CompareTo(VolumeRate other) => _litersPerHour.CompareTo(other._litersPerHour);

    /// <summary>Less than.</summary>
    public static bool operator <(VolumeRate left, VolumeRate right) => left._litersPerHour < right._litersPerHour;

    /// <summary>Greater than.</summary>
    public static bool operator >(VolumeRate left, VolumeRate right) => left._litersPerHour > right._litersPerHour;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(VolumeRate left, VolumeRate right) => left._litersPerHour <= right._litersPerHour;

    /// <summary>Greater than or equal.</summary>
    public static bool operator >=(VolumeRate left, VolumeRate right) => left._litersPerHour >= right._litersPerHour;

    /// <summary>The sum.</summary>
    public static VolumeRate operator +(VolumeRate left, VolumeRate right) => Checked(left._litersPerHour + right._litersPerHour);

    /// <summary>The difference.</summary>
    public static VolumeRate operator -(VolumeRate left, VolumeRate right) => Checked(left._litersPerHour - right._litersPerHour);

    /// <summary>The multiple.</summary>
    public static VolumeRate operator *(VolumeRate left, double factor) => Checked(left._litersPerHour * factor);

    /// <summary>How many times the right one.</summary>
    public static double operator /(VolumeRate left, VolumeRate right) => left._litersPerHour / right._litersPerHour;

    private static VolumeRate Checked(double x) =>
        double.IsFinite(x) ? new(x) : throw OutOfRange.For(nameof(VolumeRate), x, "a finite number");
}
