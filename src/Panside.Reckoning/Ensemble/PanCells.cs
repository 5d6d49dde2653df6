using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>The well-mixed cells that a divided pan is taken for.</summary>
public static class PanCells
{
    /// <summary>Two for each channel, one for an undivided pan: no source, calibrated.</summary>
    public static int Of(RigDescription rig) => int.Clamp(rig.Channels == 1 ? 1 : 2 * rig.Channels, 1, 24);
}
