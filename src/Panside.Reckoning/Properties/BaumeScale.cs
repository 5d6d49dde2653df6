using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Properties;

/// <summary>
/// Degrees Baume of modulus 145: Be = 145 - 145 / d, d the specific gravity against water at the same temperature.
/// </summary>
/// <remarks>
/// Source: [S16], the definition from memory; densities by [S3]. Range: 0 to 85 Brix. Agreement at 20 °C: 0.03 with the
/// two pairs of [S10], 66.9 Brix = 36 and 68.9 = 37; 0.16 with [S22]. Those pairs are stated at 60 °F, where the
/// definition gives 36.12 and 37.13: the law's pairs fit a 20 °C scale.
/// </remarks>
public static class BaumeScale
{
    private const double Modulus = 145;
    private const double UsualReferenceCelsius = 20;

    /// <summary>The degrees Baume of a solution at 20 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Over 85 Brix.</exception>
    public static double DegreesBaumeOf(SugarContent content) =>
        DegreesBaumeOf(content, Temperature.FromCelsius(UsualReferenceCelsius));

    /// <summary>The degrees Baume of a solution at a reference temperature.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Over 85 Brix, or a reference outside 0 to 110 °C.</exception>
    public static double DegreesBaumeOf(SugarContent content, Temperature reference)
    {
        double water = SugarSolution.DensityOf(default, reference).KilogramsPerCubicMeter;
        double solution = SugarSolution.DensityOf(content, reference).KilogramsPerCubicMeter;
        return Modulus * (solution - water) / solution;
    }

    /// <summary>The sugar content of a solution of known degrees Baume at 20 °C: the inverse.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 44.9 degrees, which is 0 to 85 Brix.</exception>
    public static SugarContent SugarContentAt(double degreesBaume) =>
        SugarContentAt(degreesBaume, Temperature.FromCelsius(UsualReferenceCelsius));

    /// <summary>
    /// The sugar content of a solution of known degrees Baume at a reference temperature: the inverse.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Outside 0 to 85 Brix, or a reference outside 0 to 110 °C.
    /// </exception>
    public static SugarContent SugarContentAt(double degreesBaume, Temperature reference)
    {
        double most = DegreesBaumeOf(SugarContent.FromBrix(SolutionLimits.MostBrix), reference);
        if (!(degreesBaume >= 0 && degreesBaume <= most))
        {
            throw OutOfRange.For(
                "The reading in degrees Baume",
                degreesBaume,
                FormattableString.Invariant($"0 to {most:F1}; syrup shows about 36, and a number near 66 is Brix"));
        }

        double water = SugarSolution.DensityOf(default, reference).KilogramsPerCubicMeter;
        return SugarSolution.SugarContentOf(
            Density.FromKilogramsPerCubicMeter(water * Modulus / (Modulus - degreesBaume)), reference);
    }
}
