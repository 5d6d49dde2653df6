using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>The well-mixed cells that a divided pan is taken for.</summary>
public static class PanCells
{
    /// <summary>Two for each channel, one for an undivided pan: no source, calibrated. Of two pans, those of both.</summary>
    public static int Of(RigDescription rig) => OfBack(rig) + OfDrawPan(rig);

    /// <summary>Those of the pan where the draw-off is.</summary>
    public static int OfDrawPan(RigDescription rig) => Of(rig.Channels);

    /// <summary>Those of the pan behind it; 0 where there is none.</summary>
    public static int OfBack(RigDescription rig) => rig.Back is { } back ? Of(back.Channels) : 0;

    private static int Of(int channels) => int.Clamp(channels == 1 ? 1 : 2 * channels, 1, 24);
}
