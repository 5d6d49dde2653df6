using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Rig;

/// <summary>The middle of an ensemble at one whole minute: what <see cref="RigEnsemble.Summary"/> tells of it as of one rig.</summary>
public sealed record RigState
{
    /// <summary>Liquid in the pan; of two, in both.</summary>
    public Volume Pan { get; init; }

    /// <summary>Sugar in the pan; of two, in both.</summary>
    public Mass PanSugar { get; init; }

    /// <summary>Liquid in the pan where the draw-off is.</summary>
    public Volume DrawPan { get; init; }

    /// <summary>Sugar in the pan where the draw-off is.</summary>
    public Mass DrawPanSugar { get; init; }

    /// <summary>Liquid in the pan behind it; null where there is none.</summary>
    public Volume? BackPan { get; init; }

    /// <summary>Sap in the head tank; null where nobody has read it yet.</summary>
    public Volume? Tank { get; init; }

    /// <summary>Sugar of the sap in the tank.</summary>
    public SugarContent Sap { get; init; }

    /// <summary>Boiling point of water today.</summary>
    public Temperature Boiling { get; init; }

    /// <summary>All water that has left the pan so far.</summary>
    public Volume Evaporated { get; init; }

    /// <summary>All sap that has flowed from the tank to the pan so far.</summary>
    public Volume Fed { get; init; }

    /// <summary>Water leaving the pan now.</summary>
    public VolumeRate Rate { get; init; }

    /// <summary>Whether the pan is boiling.</summary>
    public bool IsBoiling { get; init; }
}
