using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Instruments;

/// <summary>A thermometer checked against today's boiling water.</summary>
/// <remarks>
/// Source: [S1] for the water. Range: an offset to 5 °C either way, 75 to 108 kPa. Accuracy: that of the reading; that
/// one offset serves the few degrees up to syrup is common practice, no source.
/// </remarks>
public static class Thermometer
{
    private const double MostOffsetCelsius = 5;

    /// <summary>
    /// How much too high the thermometer shows: what it shows in boiling water, less what water boils at today.
    /// </summary>
    /// <remarks>Range: 75 to 108 kPa; an offset of more than 5 °C (9 °F) is not believed.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static TemperatureRise Offset(Temperature shownInBoilingWater, Pressure station)
    {
        TemperatureRise offset = shownInBoilingWater - BoilingWater.TemperatureAt(station);
        return Math.Abs(offset.Celsius) <= MostOffsetCelsius
            ? offset
            : throw OutOfRange.For(
                "The offset of the thermometer in °C",
                offset.Celsius,
                "-5 to 5 °C from boiling water; perhaps in the other unit, or not at a rolling boil");
    }

    /// <summary>The true temperature where a thermometer of known offset shows this.</summary>
    public static Temperature Corrected(Temperature shown, TemperatureRise offset) => shown - offset;

    /// <summary>What a thermometer of known offset shows at a true temperature.</summary>
    public static Temperature ShownAt(Temperature trueTemperature, TemperatureRise offset) => trueTemperature + offset;
}
