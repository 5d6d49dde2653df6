using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Batch;

/// <summary>An amount of sap, syrup or anything between: its volume at its temperature, and the sugar in it.</summary>
/// <remarks>
/// Source of all masses here: [S3]. Range: 0 to 85 Brix, 0 to 110 °C, no negative amount. Accuracy: as there, 0.02 % at
/// 20 °C.
/// </remarks>
public readonly record struct Portion
{
    private Portion(Volume volume, SugarContent content, Temperature temperature) =>
        (Volume, SugarContent, Temperature) = (volume, content, temperature);

    /// <summary>The volume at <see cref="Temperature"/>.</summary>
    public Volume Volume { get; }

    /// <summary>The true sugar content.</summary>
    public SugarContent SugarContent { get; }

    /// <summary>The temperature at which the volume was measured.</summary>
    public Temperature Temperature { get; }

    /// <summary>The mass of the whole.</summary>
    public Mass Mass => Mass.FromKilograms(
        Volume.Liters / 1000 * SugarSolution.DensityOf(SugarContent, Temperature).KilogramsPerCubicMeter);

    /// <summary>The mass of the sugar alone.</summary>
    public Mass Sugar => Mass * SugarContent.MassFraction;

    /// <summary>A portion by volume.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A negative volume, or outside 0 to 85 Brix or 0 to 110 °C.
    /// </exception>
    public static Portion OfVolume(Volume volume, SugarContent content, Temperature temperature)
    {
        SolutionLimits.Check(content);
        SolutionLimits.Check(temperature);
        return volume.Liters >= 0
            ? new(volume, content, temperature)
            : throw OutOfRange.For("The volume in L", volume.Liters, "0 or more");
    }

    /// <summary>A portion by mass.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A negative mass, or outside 0 to 85 Brix or 0 to 110 °C.
    /// </exception>
    public static Portion OfMass(Mass mass, SugarContent content, Temperature temperature) => OfVolume(
        Volume.FromLiters(mass.Kilograms * 1000 / SugarSolution.DensityOf(content, temperature).KilogramsPerCubicMeter),
        content,
        temperature);

    /// <summary>The same liquid at another temperature.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 110 °C.</exception>
    public Portion At(Temperature temperature) => OfMass(Mass, SugarContent, temperature);
}
