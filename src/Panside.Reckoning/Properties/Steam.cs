using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Properties;

/// <summary>What it takes to turn boiling water into steam.</summary>
public static class Steam
{
    /// <summary>
    /// The latent heat of water in MJ/kg: 2.25638 - 0.0026352 (t - 100 °C), t the temperature of boiling water.
    /// </summary>
    /// <remarks>
    /// Source: a straight line fitted to [S1]. Range: 90 to 108 °C. Agreement: 0.19 kJ/kg (0.01 %) with every row
    /// computed from the source. Boiling syrup takes up to 0.4 % more than water under the same pressure; that is left
    /// out.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside 90 to 108 °C.</exception>
    public static double LatentHeatMegajoulesPerKilogram(Temperature boiling) =>
        boiling.Celsius is >= 90 and <= 108
            ? 2.25638 - (0.0026352 * (boiling.Celsius - 100))
            : throw OutOfRange.For(
                "The temperature of the boiling water in °C",
                boiling.Celsius,
                "90 to 108 °C (194 to 226.4 °F); degrees Fahrenheit were perhaps given as Celsius");
}
