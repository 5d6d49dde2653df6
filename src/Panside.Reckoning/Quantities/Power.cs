namespace Panside.Reckoning.Quantities;

/// <summary>A flow of heat. Held in kilowatts.</summary>
public readonly record struct Power : IComparable<Power>
{
    private readonly double _kilowatts;

    private Power(double value) => _kilowatts = value;

    /// <summary>From kilowatts.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Power FromKilowatts(double x) => Checked(x);

    /// <summary>In kilowatts.</summary>
    public double Kilowatts => _kilowatts;

    /// <inheritdoc/>
    public int CompareTo(Power other) => _kilowatts.CompareTo(other._kilowatts);

    /// <summary>Less than.</summary>
    public static bool operator <(Power left, Power right) => left._kilowatts < right._kilowatts;

    /// <summary>Greater than.</summary>
    public static bool operator >(Power left, Power right) => left._kilowatts > right._kilowatts;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Power left, Power right) => left._kilowatts <= right._kilowatts;

    /// <summary>Greater than or equal.</summary>
    public static bool operator >=(Power left, Power right) => left._kilowatts >= right._kilowatts;

    /// <summary>The sum.</summary>
    public static Power operator +(Power left, Power right) => Checked(left._kilowatts + right._kilowatts);

    /// <summary>The difference.</summary>
    public static Power operator -(Power left, Power right) => Checked(left._kilowatts - right._kilowatts);

    /// <summary>The multiple.</summary>
    public static Power operator *(Power left, double factor) => Checked(left._kilowatts * factor);

    /// <summary>How many times the right one.</summary>
    public static double operator /(Power left, Power right) => left._kilowatts / right._kilowatts;

    private static Power Checked(double x) =>
        double.IsFinite(x) ? new(x) : throw OutOfRange.For(nameof(Power), x, "a finite number");
}
