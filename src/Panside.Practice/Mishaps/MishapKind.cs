using Panside.Practice.Physics;

namespace Panside.Practice.Mishaps;

/// <summary>
/// One thing that can go wrong: at the rig, with an instrument, or with the operator. While it lasts the rig, the instruments
/// and the operator are what they are without it, changed by these functions; so that its end undoes it.
/// </summary>
/// <param name="Name">As it stands in a scenario file.</param>
/// <param name="Summary">What happens at the usual strength of 1, in a sentence without its period.</param>
internal sealed record MishapKind(string Name, string Summary)
{
    /// <summary>What the rig is like, by the strength, the minutes since it began and the truth at its beginning.</summary>
    public Func<Makeup, Onset, Makeup> Rig { get; init; } = (makeup, _) => makeup;

    /// <summary>What happens to the rig at once.</summary>
    public Func<Makeup, Truth, double, Truth> Blow { get; init; } = (_, truth, _) => truth;

    /// <summary>How the instruments are wrong.</summary>
    public Func<Kit, Onset, Kit> Kit { get; init; } = (kit, _) => kit;

    /// <summary>How the operator is.</summary>
    public Func<Temper, Onset, Temper> Operator { get; init; } = (temper, _) => temper;

    /// <summary>Whether whoever frees float and valve ends it.</summary>
    public bool IsFreed { get; init; }

    /// <summary>Whether a drop that is raked, leveled or mended ends it: raking ends heaped coals.</summary>
    public bool IsRaked { get; init; }

    /// <summary>Whether the water that stands ready is lost.</summary>
    public bool TakesTheWater { get; init; }

    /// <summary>How many minutes it lasts unless a file says so; null for good.</summary>
    public double? Minutes { get; init; }

    /// <summary>Whether it changes with time, so that it is looked at again every minute.</summary>
    public bool Grows { get; init; }
}

/// <summary>A mishap that has begun.</summary>
/// <param name="Strength">Beside the usual one.</param>
/// <param name="Minutes">Since it began.</param>
/// <param name="Tank">Liters in the tank when it began.</param>
internal readonly record struct Onset(double Strength, double Minutes, double Tank);
