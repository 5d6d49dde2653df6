using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Properties;

/// <summary>Plain fireclay brick as a store of heat.</summary>
public static class Firebrick
{
    /// <summary>The specific heat of fireclay in J/(kg K), straight between the rows of the table.</summary>
    /// <remarks>
    /// Source: [S20], rows from 400 to 1200 °C. Range: 0 to 1200 °C. Accuracy: exact at the rows; below 400 °C the
    /// first row is held, which [S21] bears out at 205 °C to 0.5 %, and below that there is no source: a cold brick
    /// holds perhaps a tenth less a kelvin.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1200 °C.</exception>
    public static double SpecificHeatJoulesPerKilogramKelvin(Temperature brick)
    {
        double t = brick.Celsius;
        return t switch
        {
            >= 0 and <= 400 => 956,
            > 400 and <= 600 => Between(956, 997, t - 400),
            > 600 and <= 800 => Between(997, 1021, t - 600),
            > 800 and <= 1000 => Between(1021, 1037, t - 800),
            > 1000 and <= 1200 => Between(1037, 1054, t - 1000),
            _ => throw OutOfRange.For("The temperature of the brick in °C", t, "0 to 1200 °C (32 to 2192 °F)"),
        };
    }

    /// <summary>The heat that a mass of brick gives up on cooling; negative where it warms.</summary>
    /// <remarks>
    /// Source: [S20], the specific heat above summed over the temperatures. Range: 0 to 1200 °C. Accuracy: that of the specific
    /// heat; only a part of this heat ever reaches a pan.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1200 °C, or a negative mass.</exception>
    public static Energy HeatOnCooling(Mass brick, Temperature from, Temperature to) => brick.Kilograms >= 0
        ? Energy.FromMegajoules(brick.Kilograms * (JoulesPerKilogram(from) - JoulesPerKilogram(to)) / 1e6)
        : throw OutOfRange.For("The mass of the brick in kg", brick.Kilograms, "0 or more");

    /// <remarks>Straight pieces sum exactly by their middle values.</remarks>
    private static double JoulesPerKilogram(Temperature brick)
    {
        double sum = 0;
        for (double start = 0; start < brick.Celsius; start += 200)
        {
            double end = Math.Min(start + 200, brick.Celsius);
            sum += (end - start) * SpecificHeatJoulesPerKilogramKelvin(Temperature.FromCelsius((start + end) / 2));
        }

        return brick.Celsius >= 0 ? sum : SpecificHeatJoulesPerKilogramKelvin(brick);
    }

    private static double Between(double low, double high, double above) => low + ((high - low) * above / 200);
}
