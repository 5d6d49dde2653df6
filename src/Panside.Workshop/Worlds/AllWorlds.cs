using Panside.Practice.Physics;
using Panside.Workshop.Worlds.Drafted;
using Panside.Workshop.Worlds.Gusty;
using Panside.Workshop.Worlds.Kinetic;

namespace Panside.Workshop.Worlds;

/// <summary>The worlds that forecasts are judged in: each with physics of its own, none with constants of the ensemble.</summary>
internal static class AllWorlds
{
    /// <summary>All of them, the practised one first.</summary>
    public static IReadOnlyList<World> InOrder { get; } = [World.Practised, new DraftedWorld(), new KineticWorld(), new GustyWorld()];

    /// <summary>Their names.</summary>
    public static IEnumerable<string> Names => InOrder.Select(world => world.Name);

    /// <summary>By its name; null where there is none.</summary>
    public static World? Named(string name) => InOrder.FirstOrDefault(world => world.Name == name);
}
