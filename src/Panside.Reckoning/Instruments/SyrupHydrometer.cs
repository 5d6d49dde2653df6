using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Instruments;

/// <summary>A syrup hydrometer read at any temperature from cold to the hot test.</summary>
/// <remarks>
/// Source: [S3] with the glass's own expansion from memory [S19]. Range: 45 to 75 Brix, 0 to 105 °C (32 to 221 °F).
/// Agreement: 0.33 Brix with every row of the state chart for 66.9 [S10], 0.21 with [S23] for 66.0; at the hot line,
/// 211 °F, 0.1.
/// </remarks>
public static class SyrupHydrometer
{
    /// <summary>The true sugar content of a sample of which a hydrometer shows this much.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of reading or temperature.</exception>
    public static SugarContent TrueSugarContent(
        SugarContent shown,
        Temperature sample,
        HydrometerCalibration calibration = HydrometerCalibration.At60Fahrenheit)
    {
        CheckSample(sample);
        CheckContent("The reading of the syrup hydrometer in Brix", shown);
        return FloatingGlass.True(shown, sample, calibration);
    }

    /// <summary>What a hydrometer shows now in syrup that is on target.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of target or temperature.</exception>
    public static SugarContent ReadingOnTarget(
        SugarContent target,
        Temperature sample,
        HydrometerCalibration calibration = HydrometerCalibration.At60Fahrenheit)
    {
        CheckSample(sample);
        CheckContent("The target in Brix", target);
        return FloatingGlass.Shown(target, sample, calibration);
    }

    private static void CheckContent(string what, SugarContent content)
    {
        if (content.Brix is not (>= 45 and <= 75))
        {
            throw OutOfRange.For(what, content.Brix, "45 to 75 Brix; a number near 32 to 37 is degrees Baume");
        }
    }

    private static void CheckSample(Temperature sample)
    {
        if (sample.Celsius is not (>= 0 and <= 105))
        {
            throw OutOfRange.For(
                "The temperature of the sample in °C",
                sample.Celsius,
                "0 to 105 °C (32 to 221 °F); degrees Fahrenheit were perhaps given as Celsius, or the other way round");
        }
    }
}
