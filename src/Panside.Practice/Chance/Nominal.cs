namespace Panside.Practice.Chance;

/// <summary>Figures of a rig drawn around their nominal ones.</summary>
internal static class Nominal
{
    /// <summary>A figure drawn around its nominal one; the nominal one itself where there is no chance.</summary>
    /// <param name="random">The rig's own chance; null for the nominal rig.</param>
    /// <param name="nominal">The nominal figure, over 0, in any unit.</param>
    /// <param name="deviation">Deviation of its logarithm.</param>
    /// <returns>In the unit of the nominal figure, over 0.</returns>
    internal static double About(this RandomStream? random, double nominal, double deviation) => nominal * (random?.Factor(deviation) ?? 1);
}
