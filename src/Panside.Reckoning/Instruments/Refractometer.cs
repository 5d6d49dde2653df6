using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Instruments;

/// <summary>A refractometer set for 20 °C that does not compensate for temperature by itself.</summary>
public static class Refractometer
{
    /// <summary>
    /// The sugar content of a sample read away from 20 °C: shown plus d (0.062737 + 5.6490e-4 B - 5.2183e-6 B²) +
    /// d² (9.5652e-4 - 1.1440e-5 B), d the degrees Celsius over 20.
    /// </summary>
    /// <remarks>
    /// Source: fitted to three rows of [S25], 10 to 17 °C and 10 to 75 Brix read. Range: 0 to 75 Brix shown, 10 to 30
    /// °C. Agreement: 0.006 Brix with every row read; above 20 °C 0.02 with [S26] at 65 Brix, from memory; below 10 Brix
    /// no row was read. Not covered: hot, unfiltered syrup from the pan, whose suspended sugar sand and falling
    /// temperature mislead it.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or corrected to less than none.</exception>
    public static SugarContent Corrected(SugarContent shown, Temperature sample)
    {
        double b = shown.Brix;
        if (b > 75)
        {
            throw OutOfRange.For("The reading of the refractometer in Brix", b, "0 to 75 Brix");
        }

        if (sample.Celsius is not (>= 10 and <= 30))
        {
            throw OutOfRange.For(
                "The temperature of the sample in °C",
                sample.Celsius,
                "10 to 30 °C (50 to 86 °F); let a drop take the temperature of the prism first");
        }

        double d = sample.Celsius - 20;
        double straight = 0.062737 + (b * (5.6490e-4 - (5.2183e-6 * b)));
        double bent = 9.5652e-4 - (1.1440e-5 * b);
        double correction = d * (straight + (d * bent));
        return b + correction >= 0
            ? SugarContent.FromBrix(b + correction)
            : throw OutOfRange.For(
                "The reading of the refractometer in Brix",
                b,
                FormattableString.Invariant($"{-correction:F2} or more at this temperature, which plain water shows"));
    }
}
