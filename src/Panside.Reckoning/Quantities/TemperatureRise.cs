namespace Panside.Reckoning.Quantities;

/// <summary>A difference of two temperatures. Held in kelvin.</summary>
public readonly record struct TemperatureRise : IComparable<TemperatureRise>
{
    private readonly double _celsius;

    private TemperatureRise(double value) => _celsius = value;

    /// <summary>From degrees Celsius of difference.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static TemperatureRise FromCelsius(double x) => Checked(x);

    /// <summary>From degrees Fahrenheit of difference.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static TemperatureRise FromFahrenheit(double x) => Checked(x / 1.8);

    /// <summary>In degrees Celsius of difference.</summary>
    public double Celsius => _celsius;

    /// <summary>In degrees Fahrenheit of difference.</summary>
    public double Fahrenheit => _celsius * 1.8;

    /// <inheritdoc/>
    public int CompareTo(TemperatureRise other) => _celsius.CompareTo(other._celsius);

    /// <summary>Less than.</summary>
    public static bool operator <(TemperatureRise left, TemperatureRise right) => left._celsius < right._celsius;

    /// <summary>Greater than.</summary>
    public static bool operator >(TemperatureRise left, TemperatureRise right) => left._celsius > right._celsius;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(TemperatureRise left, TemperatureRise right) => left._celsius <= right._celsius;

    /// <summary>Greater than or equal.</summary>
    public static bool operator >=(TemperatureRise left, TemperatureRise right) => left._celsius >= right._celsius;

    /// <summary>The sum.</summary>
    public static TemperatureRise operator +(TemperatureRise left, TemperatureRise right) => Checked(left._celsius + right._celsius);

    /// <summary>The difference.</summary>
    public static TemperatureRise operator -(TemperatureRise left, TemperatureRise right) => Checked(left._celsius - right._celsius);

    /// <summary>The multiple.</summary>
    public static TemperatureRise operator *(TemperatureRise left, double factor) => Checked(left._celsius * factor);

    /// <summary>How many times the right one.</summary>
    public static double operator /(TemperatureRise left, TemperatureRise right) => left._celsius / right._celsius;

    private static TemperatureRise Checked(double x) =>
        double.IsFinite(x) ? new(x) : throw OutOfRange.For(nameof(TemperatureRise), x, "a finite number");
}
