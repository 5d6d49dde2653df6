using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>How fast a rig's brick gives up its heat.</summary>
internal static class BrickTime
{
    /// <summary>Its time constant in minutes: more brick, slower.</summary>
    public static double MinutesOf(RigDescription rig) =>
        FireConstants.Of(rig).BrickMinutes
        * double.Max(rig.Firebrick.Pounds / (15 * rig.WholeArea.SquareFeet), 0.1);
}
