using Panside.Practice.Physics;
using Panside.Workshop.Worlds.Drafted;
using Panside.Workshop.Worlds.Gusty;
using Panside.Workshop.Worlds.Kinetic;
using Panside.Workshop.Worlds.Unseen;

namespace Panside.Workshop.Worlds;

/// <summary>The worlds that forecasts are judged in: each with physics of its own, none with constants of the ensemble.</summary>
internal static class AllWorlds
{
    /// <summary>All of them, the practised one first.</summary>
    public static IReadOnlyList<World> InOrder { get; } = [World.Practised, new DraftedWorld(), new KineticWorld(), new GustyWorld(), new FlowingWorld(), new MarkedWorld(), new PouredWorld()];

    /// <summary>The one that nothing is fitted on.</summary>
    public static World Unseen { get; } = new UnseenWorld();

    /// <summary>Their names, the unseen one's last.</summary>
    public static IEnumerable<string> Names => Every.Select(world => world.Name);

    private static IEnumerable<World> Every => InOrder.Append(Unseen);

    /// <summary>By its name as it was typed.</summary>
    /// <exception cref="UnusableException">There is none of that name.</exception>
    public static World Wanted(string name) => Every.FirstOrDefault(world => world.Name == name)
        ?? throw new UnusableException($"--world {name}: expected one of {string.Join(", ", Names)}.");
}
