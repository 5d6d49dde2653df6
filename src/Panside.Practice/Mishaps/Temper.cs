using Panside.Practice.Physics;

namespace Panside.Practice.Mishaps;

/// <summary>How the simulated operator is just now. A person at the simulated rig has a temper of their own.</summary>
internal sealed record Temper
{
    /// <summary>As the operators of a world are.</summary>
    public static Temper In(World world) => new() { Slowness = world.Slowness, Skips = world.Skips, Charges = world.Charges };

    /// <summary>Delays beside the usual ones.</summary>
    public double Slowness { get; init; } = 1;

    /// <summary>The chance that a reading or a look that is asked for is skipped.</summary>
    public double Skips { get; init; }

    /// <summary>The chance that a number is mistyped.</summary>
    public double Mistypes { get; init; }

    /// <summary>Charges beside the usual ones.</summary>
    public double Charges { get; init; } = 1;

    /// <summary>Whether the operator is away, and neither hears nor does anything.</summary>
    public bool IsAway { get; init; }

    /// <summary>Whether the operator stands at the rig but the laptop is off: wood goes in by habit, nothing is heard or said.</summary>
    public bool IsUnheard { get; init; }

    /// <summary>Whether the operator smells nothing.</summary>
    public bool HasACold { get; init; }

    /// <summary>Whether the operator wants to go home.</summary>
    public bool WantsToLeave { get; init; }

    /// <summary>Whether some charges are put in and not told.</summary>
    public bool ForgetsToTell { get; init; }
}
