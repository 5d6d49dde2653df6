namespace Panside.Practice.Mishaps;

/// <summary>What a mishap waits for.</summary>
public enum Awaits
{
    /// <summary>The beginning of the practice.</summary>
    Beginning,

    /// <summary>Wood goes in for the first time.</summary>
    FireLit,

    /// <summary>The pan boils well.</summary>
    Boiling,

    /// <summary>The draw-off has been shut for the first time.</summary>
    FirstDraw,

    /// <summary>Half of the sap that was in the tank is used.</summary>
    TankHalf,

    /// <summary>A third of the sap that was in the tank is left.</summary>
    TankLow,

    /// <summary>No charge has gone in for two and a half intervals after the boil: the fire dies down.</summary>
    FireDying,
}

/// <summary>A mishap of a scenario: what, and when.</summary>
/// <param name="Kind">Its name; null for any one, by the seed.</param>
/// <param name="When">What it waits for.</param>
/// <param name="After">Minutes after that, the earliest.</param>
/// <param name="Until">The latest; between both by the seed.</param>
/// <param name="Chance">With what chance it happens at all.</param>
/// <param name="Minutes">How long it lasts; null as its kind has it.</param>
/// <param name="Strength">Beside the usual one.</param>
public sealed record PlannedMishap(
    string? Kind, Awaits When, double After, double Until, double Chance = 1, double? Minutes = null, double Strength = 1);
