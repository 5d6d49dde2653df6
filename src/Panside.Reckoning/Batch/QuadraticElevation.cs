using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Batch;

/// <summary>The other published form of the elevation, which only serves to show how far sources disagree.</summary>
/// <remarks>Source: [S12], 1.78 x + 6.22 x² in K, x the mass fraction of sugar, at sea level.</remarks>
internal static class QuadraticElevation
{
    public static readonly Pressure SeaLevel = Pressure.FromKilopascals(101.325);

    public static double CelsiusAtSeaLevel(SugarContent content) =>
        content.MassFraction * (1.78 + (6.22 * content.MassFraction));
}
