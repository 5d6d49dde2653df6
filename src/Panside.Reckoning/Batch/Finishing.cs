using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Batch;

/// <summary>A thin batch on its way to target.</summary>
/// <remarks>
/// Source: a balance of sugar; densities by [S3]. Range: any target above the batch's own sugar content, to 85 Brix.
/// Accuracy: that of the sugar content given; a tenth of a Brix in syrup is 0.15 % of its mass.
/// </remarks>
public static class Finishing
{
    /// <summary>The water still to boil off.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The batch is already over the target, or the target over 85 Brix.
    /// </exception>
    public static Mass WaterToBoilOff(Portion thin, SugarContent target) => thin.Mass - MassAt(thin, target);

    /// <summary>What is left when it is done, at a temperature of one's choice.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The batch is already over the target, or the target over 85 Brix.
    /// </exception>
    public static Portion Left(Portion thin, SugarContent target, Temperature at) =>
        Portion.OfMass(MassAt(thin, target), target, at);

    private static Mass MassAt(Portion thin, SugarContent target) =>
        target > default(SugarContent) && thin.SugarContent <= target
        ? thin.Sugar * (1 / target.MassFraction)
        : throw OutOfRange.For(
            "The target in Brix",
            target.Brix,
            FormattableString.Invariant($"more than the batch's {thin.SugarContent.Brix:F1} Brix; one over target is thinned"));
}
