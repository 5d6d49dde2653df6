using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Rig;

/// <summary>Heat, water and sugar of the rig at one whole minute. Immutable; <see cref="RigModel"/> moves it on.</summary>
public sealed record RigState
{
    /// <summary>Heat still in unburned volatiles.</summary>
    public Energy Flame { get; init; }

    /// <summary>Heat still in the coals.</summary>
    public Energy Coals { get; init; }

    /// <summary>Heat in the brick above the pan's boiling point.</summary>
    public Energy Brick { get; init; }

    /// <summary>Liquid in the pan.</summary>
    public Volume Pan { get; init; }

    /// <summary>Temperature of the pan's liquid.</summary>
    public Temperature PanTemperature { get; init; }

    /// <summary>Sugar in the pan.</summary>
    public Mass PanSugar { get; init; }

    /// <summary>Sap in the head tank; null where nobody has read it yet.</summary>
    public Volume? Tank { get; init; }

    /// <summary>Sugar of the sap in the tank.</summary>
    public SugarContent Sap { get; init; }

    /// <summary>Temperature of the sap in the tank.</summary>
    public Temperature SapTemperature { get; init; }

    /// <summary>Boiling point of water today.</summary>
    public Temperature Boiling { get; init; }

    /// <summary>The depth that the feed holds the pan at: run depth, or flood depth once flooded.</summary>
    public Length HeldDepth { get; init; }

    /// <summary>All water that has left the pan so far.</summary>
    public Volume Evaporated { get; init; }

    /// <summary>All sap that has flowed from the tank to the pan so far.</summary>
    public Volume Fed { get; init; }

    /// <summary>Water leaving the pan now.</summary>
    public VolumeRate Rate { get; init; }

    /// <summary>Whether the pan is boiling.</summary>
    public bool IsBoiling { get; init; }

    /// <summary>How far heat to this pan has turned out above what its size suggests, as a factor; 1 before any reading.</summary>
    public double HeatFactor { get; init; } = 1;
}
