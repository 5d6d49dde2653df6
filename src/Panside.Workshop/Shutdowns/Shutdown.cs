using Panside.Guide.Measures;
using Panside.Picturing;

namespace Panside.Workshop.Shutdowns;

/// <summary>One practised shutdown, as it was forecast and as it truly came.</summary>
internal sealed record Shutdown
{
    /// <summary>What boiled: rig, scenario, seed, guidance.</summary>
    public required string Boil { get; init; }

    /// <summary>The rig's units.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>The depth that must stay in the pan.</summary>
    public required double LeastDepth { get; init; }

    /// <summary>Looks from before the last charge to the end, in order.</summary>
    public required IReadOnlyList<ShutdownLook> Looks { get; init; }

    /// <summary>What happened, in order, the last charge first.</summary>
    public required IReadOnlyList<Mark> Marks { get; init; }
}
