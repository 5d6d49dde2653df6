using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Instruments;

/// <summary>The temperatures of <see cref="HydrometerCalibration"/>.</summary>
public static class HydrometerCalibrations
{
    /// <summary>The temperature of a calibration.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No known calibration.</exception>
    public static Temperature TemperatureOf(HydrometerCalibration calibration) => calibration switch
    {
        HydrometerCalibration.At60Fahrenheit => Temperature.FromFahrenheit(60),
        HydrometerCalibration.At68Fahrenheit => Temperature.FromFahrenheit(68),
        HydrometerCalibration.At38Fahrenheit => Temperature.FromFahrenheit(38),
        _ => throw OutOfRange.For("The calibration", (int)calibration, "60 °F, 68 °F or 38 °F"),
    };
}
