using Panside.Practice.Physics;
using Panside.Reckoning.Quantities;

namespace Panside.Practice.Mishaps;

/// <summary>The rig as mishaps come to it: what they wait for, and where they strike.</summary>
internal interface IMishapRig
{
    /// <summary>The rig as it is made now.</summary>
    Makeup Makeup { get; }

    /// <summary>How it truly stands.</summary>
    Truth Truth { get; }

    /// <summary>Sap in the tank.</summary>
    Volume Tank { get; }

    /// <summary>Seconds since wood went in last, or since the start.</summary>
    long SecondsSinceWood { get; }

    /// <summary>Whether the draw-off has been shut after a draw.</summary>
    bool HasDrawn { get; }

    /// <summary>What a mishap does at once.</summary>
    void Strike(MishapKind kind, double strength);
}
