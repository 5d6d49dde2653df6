using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Instruments;

/// <summary>
/// A sap hydrometer, whose calibration must be asked for: a 68 °F glass shows 0.4 Brix too much in cold sap.
/// </summary>
/// <remarks>
/// Source: [S3] with the glass's own expansion from memory [S19]; only that a 38 °F glass needs no correction from 32
/// to 46 °F was read, in [S24]. Range: 0 to 20 Brix shown, 0 to 40 °C (32 to 104 °F). Agreement: 0.05 Brix with that
/// statement.
/// </remarks>
public static class SapHydrometer
{
    /// <summary>The true sugar content of sap of which a hydrometer shows this much.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Outside the range of reading or temperature, or less than water would show: then the calibration is another one.
    /// </exception>
    public static SugarContent TrueSugarContent(
        SugarContent shown, Temperature sample, HydrometerCalibration calibration)
    {
        if (shown.Brix > 20)
        {
            throw OutOfRange.For("The reading of the sap hydrometer in Brix", shown.Brix, "0 to 20 Brix");
        }

        if (sample.Celsius is not (>= 0 and <= 40))
        {
            throw OutOfRange.For(
                "The temperature of the sap in °C",
                sample.Celsius,
                "0 to 40 °C (32 to 104 °F); degrees Fahrenheit were perhaps given as Celsius, or the other way round");
        }

        double water = ShownInWater(sample, calibration);
        return shown.Brix >= water
            ? FloatingGlass.True(shown, sample, calibration)
            : throw OutOfRange.For(
                "The reading of the sap hydrometer in Brix",
                shown.Brix,
                FormattableString.Invariant($"{water:F2} or more, as water shows; perhaps calibrated at another temperature"));
    }

    /// <remarks>
    /// Zero where the glass would sink below its scale in water: then any reading from zero up has a true content.
    /// </remarks>
    private static double ShownInWater(Temperature sample, HydrometerCalibration calibration)
    {
        Temperature calibrated = HydrometerCalibrations.TemperatureOf(calibration);
        SugarContent least = default;
        double growth = FloatingGlass.Growth(sample, calibrated);
        double here = SugarSolution.DensityOf(least, sample).KilogramsPerCubicMeter * growth;
        return here <= SugarSolution.DensityOf(least, calibrated).KilogramsPerCubicMeter
            ? 0
            : FloatingGlass.Shown(least, sample, calibration).Brix;
    }
}
