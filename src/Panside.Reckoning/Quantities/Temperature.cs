namespace Panside.Reckoning.Quantities;

/// <summary>A temperature on ITS-90. Held in degrees Celsius; any finite value from absolute zero up.</summary>
public readonly record struct Temperature : IComparable<Temperature>
{
    private readonly double _celsius;

    private Temperature(double value) => _celsius = value;

    /// <summary>From degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Temperature FromCelsius(double x) => Checked(x);

    /// <summary>From degrees Fahrenheit.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Temperature FromFahrenheit(double x) => Checked((x - 32) / 1.8);

    /// <summary>From kelvin.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number in the type's range.</exception>
    public static Temperature FromKelvin(double x) => Checked(x - 273.15);

    /// <summary>In degrees Celsius.</summary>
    public double Celsius => _celsius;

    /// <summary>In degrees Fahrenheit.</summary>
    public double Fahrenheit => (_celsius * 1.8) + 32;

    /// <summary>In kelvin.</summary>
    public double Kelvin => _celsius + 273.15;

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => _celsius.CompareTo(other._celsius);

    /// <summary>Less than.</summary>
    public static bool operator <(Temperature left, Temperature right) => left._celsius < right._celsius;

    /// <summary>Greater than.</summary>
    public static bool operator >(Temperature left, Temperature right) => left._celsius > right._celsius;

    /// <summary>Less than or equal.</summary>
    public static bool operator <=(Temperature left, Temperature right) => left._celsius <= right._celsius;

    /// <summary>Greater than or equal.</summary>
    public static bool operator >=(Temperature left, Temperature right) => left._celsius >= right._celsius;

    /// <summary>This temperature raised.</summary>
    public static Temperature operator +(Temperature left, TemperatureRise right) => Checked(left._celsius + right.Celsius);

    /// <summary>This temperature lowered.</summary>
    public static Temperature operator -(Temperature left, TemperatureRise right) => Checked(left._celsius - right.Celsius);

    /// <summary>How much higher the left one is.</summary>
    public static TemperatureRise operator -(Temperature left, Temperature right) =>
        TemperatureRise.FromCelsius(left._celsius - right._celsius);

    private static Temperature Checked(double x) =>
        double.IsFinite(x) && x >= -273.15 ? new(x) : throw OutOfRange.For(nameof(Temperature), x, "a finite number of Celsius, -273.15 or more");
}
