using System.Collections.Frozen;

namespace Panside.Guide.Rigs;

/// <summary>
/// What a rig has, as facts that flows name. None of them changes through a boil, so that texts can be chosen and critical steps passed by
/// on them. Each is described in docs/facts.md.
/// </summary>
public static class RigFacts
{
    private const string Not = "not ";

    private static readonly FrozenDictionary<string, Func<Rig, bool>> All = new Dictionary<string, Func<Rig, bool>>
    {
        ["has-float"] = rig => rig.Feed == Feed.ByFloat,
        ["fed-by-hand"] = rig => rig.Feed == Feed.ByHand,
        ["fed-by-valve"] = rig => rig.Feed == Feed.ByValve,
        ["burns-wood"] = rig => rig.Fuel == Fuel.Wood,
        ["burns-gas"] = rig => rig.Fuel == Fuel.Gas,
        ["burns-oil"] = rig => rig.Fuel == Fuel.Oil,
        ["heats-electric"] = rig => rig.Fuel == Fuel.Electric,
        ["has-burner"] = rig => rig.IsBurner,
        ["drawn-by-valve"] = rig => rig.DrawnBy == DrawnBy.Valve,
        ["drawn-by-ladle"] = rig => rig.DrawnBy == DrawnBy.Ladle,
        ["drawn-by-pouring"] = rig => rig.DrawnBy == DrawnBy.Pour,
        ["has-thermometer"] = rig => rig.Has("thermometer"),
        ["has-hydrometer"] = rig => rig.Has("hydrometer"),
        ["has-refractometer"] = rig => rig.Has("refractometer"),
        ["has-tank"] = rig => rig.TankIsStated || rig.Feed != Feed.ByHand,
        ["has-sight-glass"] = rig => rig.Has("sight glass"),
        ["has-lid"] = rig => rig.HasLid,
        ["has-finishing-pot"] = rig => rig.HasFinishingPot,
        ["forced-draft"] = rig => rig.Fuel == Fuel.Wood && rig.Draft == Draft.Forced,
        ["has-channels"] = rig => rig.Channels > 1,
        ["has-back-pan"] = rig => rig.Back is not null,
        ["has-flues"] = rig => rig.Back is { HasFlues: true },
    }.ToFrozenDictionary();

    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. All.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Whether a fact, turned round by <c>not</c> or not, is one of what a rig has.</summary>
    public static bool IsOne(string fact) => All.ContainsKey(Bare(fact));

    /// <summary>Whether a rig is so; a leading <c>not </c> turns it round.</summary>
    /// <exception cref="KeyNotFoundException">It is no such fact.</exception>
    public static bool Holds(Rig rig, string fact) => All[Bare(fact)](rig) != fact.StartsWith(Not, StringComparison.Ordinal);

    private static string Bare(string fact) => fact.StartsWith(Not, StringComparison.Ordinal) ? fact[Not.Length..] : fact;
}
