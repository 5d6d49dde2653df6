using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Properties;

/// <summary>Pure sucrose in water: sap, syrup and all between, as far as their density and heat go.</summary>
/// <remarks>
/// Real syrup holds a little invert sugar and minerals; no source that was read says how far they move these values.
/// </remarks>
public static class SugarSolution
{
    // A round trip may end a rounding error outside; this much is a millionth of a Brix.
    private const double SlackKilogramsPerCubicMeter = 1e-6;

    /// <summary>The density of a solution.</summary>
    /// <remarks>
    /// Source: [S3], coefficients read in two copies of [S4]; water by [S5]. Range: 0 to 85 Brix, 0 to 110 °C; the fit
    /// reaches 80 °C (from memory), above it is an extrapolation that the chart [S10] bears out to 1.5 kg/m³ at 99 °C.
    /// Agreement at 20 °C with the handbook table [S6]: 0.31 kg/m³ up to 75 Brix, 0.82 at 84, the polynomial being the
    /// higher one; 0.3 kg/m³ is 0.05 Brix.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 85 Brix or 0 to 110 °C.</exception>
    public static Density DensityOf(SugarContent content, Temperature temperature)
    {
        SolutionLimits.Check(content);
        SolutionLimits.Check(temperature);
        return Density.FromKilogramsPerCubicMeter(
            SucroseDensity.At(temperature.Celsius).KilogramsPerCubicMeter(content.MassFraction));
    }

    /// <summary>The sugar content of a solution of known density: the inverse of <see cref="DensityOf"/>.</summary>
    /// <remarks>Source and range: as there. The round trip returns to 1e-9 Brix.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">No sugar content from 0 to 85 Brix has this density.</exception>
    public static SugarContent SugarContentOf(Density density, Temperature temperature)
    {
        SolutionLimits.Check(temperature);
        SucroseDensity isotherm = SucroseDensity.At(temperature.Celsius);
        double least = isotherm.KilogramsPerCubicMeter(0);
        double most = isotherm.KilogramsPerCubicMeter(SolutionLimits.MostBrix / 100);
        double sought = density.KilogramsPerCubicMeter;
        return sought >= least - SlackKilogramsPerCubicMeter && sought <= most + SlackKilogramsPerCubicMeter
            ? SugarContent.FromMassFraction(isotherm.MassFraction(sought))
            : throw OutOfRange.For(
                "The density in kg/m³",
                sought,
                FormattableString.Invariant($"{least:F1} (water) to {most:F1} kg/m³ (85 Brix) at this temperature"));
    }

    /// <summary>
    /// The specific heat of a solution in kJ/(kg K): 4.1868 - 0.0251 B + 7.5e-5 B t, B in Brix, t in °C.
    /// </summary>
    /// <remarks>
    /// Source: [S7] from memory, the same as [S4] read to 0.1 %. Range: 0 to 85 Brix, 0 to 110 °C. Agreement: 0.2 %
    /// with [S8]; the form for impure factory juice [S9] is 1 to 9 % lower. Plain water at 100 °C comes out 0.7 % below
    /// [S1].
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 85 Brix or 0 to 110 °C.</exception>
    public static double SpecificHeatKilojoulesPerKilogramKelvin(SugarContent content, Temperature temperature)
    {
        SolutionLimits.Check(content);
        SolutionLimits.Check(temperature);
        return 4.1868 - (0.0251 * content.Brix) + (7.5e-5 * content.Brix * temperature.Celsius);
    }
}
