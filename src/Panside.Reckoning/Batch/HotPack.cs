using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Batch;

/// <summary>Syrup packed hot: how it shrinks on the shelf, and how many containers a batch fills.</summary>
/// <remarks>
/// Source: [S3]. Range: 0 to 85 Brix, 0 to 110 °C, the shelf no hotter than the pack. Agreement: the rounding of the
/// computed table, 2.8 to 3.6 % for 66.9 Brix from 180 to 211 °F. Not covered: the container's own shrinking.
/// </remarks>
public static class HotPack
{
    /// <summary>By what fraction of its hot volume syrup shrinks from packing to shelf.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Outside 0 to 85 Brix or 0 to 110 °C, or the shelf is hotter than the pack.
    /// </exception>
    public static double ContractionFraction(SugarContent content, Temperature packed, Temperature shelf)
    {
        CheckCooling(packed, shelf);
        return 1 - (SugarSolution.DensityOf(content, packed).KilogramsPerCubicMeter
            / SugarSolution.DensityOf(content, shelf).KilogramsPerCubicMeter);
    }

    /// <summary>The containers that a hot batch fills, so that each holds its stated volume on the shelf.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No container, or the shelf is hotter than the pack.</exception>
    public static ContainerFill Fill(Portion hot, Volume container, Temperature shelf)
    {
        CheckCooling(hot.Temperature, shelf);
        double each = container.Liters / (1 - ContractionFraction(hot.SugarContent, hot.Temperature, shelf));
        double count = Math.Floor((hot.Volume.Liters / each) + 1e-9);
        return container.Liters > 0 && count <= int.MaxValue
            ? new((int)count, Volume.FromLiters(each), Volume.FromLiters(Math.Max(0, hot.Volume.Liters - (count * each))))
            : throw OutOfRange.For("The volume of a container in L", container.Liters, "more than 0");
    }

    private static void CheckCooling(Temperature packed, Temperature shelf)
    {
        if (shelf > packed)
        {
            throw OutOfRange.For("The temperature of the shelf in °C", shelf.Celsius, "no more than that at packing");
        }
    }
}
