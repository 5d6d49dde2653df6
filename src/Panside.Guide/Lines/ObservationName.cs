using System.Collections.Frozen;
using Panside.Guide.Rigs;

namespace Panside.Guide.Lines;

/// <summary>What is seen or smelled, and the states it can have.</summary>
public sealed class ObservationName(string code, IReadOnlyList<string> states) : Thing(code)
{
    /// <summary>How the pan boils.</summary>
    public static readonly ObservationName Boil = new("boil", ["rolling", "steady", "simmering", "still"])
    {
        Sayings = [("no boil", "still"), ("stopped boiling", "still"), ("simmer", "simmering"), ("first boil", "simmering"), ("almost still", "simmering"), ("nearly still", "simmering"), ("not quite still", "simmering"), .. Nearly("boil", "still", "simmering")],
    };

    /// <summary>The bed of coals.</summary>
    public static readonly ObservationName Coals = new("coals", ["deep", "thin", "spent"]) { Sayings = [("no coals", "spent"), ("almost spent", "thin"), ("nearly spent", "thin"), ("not quite spent", "thin"), .. Nearly("coals", "spent", "thin"), .. Nearly("coals", "out", "thin"), .. Nearly("coals", "gone", "thin"), .. Nearly("coals", "dead", "thin")], IsThere = rig => !rig.IsBurner };

    /// <summary>How clearly the channels differ.</summary>
    public static readonly ObservationName Gradient = new("gradient", ["clear", "fading", "gone"])
    {
        Sayings = [("mixed", "gone"), ("channels gone", "gone")],
        IsThere = rig => rig.Channels > 1,
    };

    /// <summary>Foam on the pan.</summary>
    public static readonly ObservationName Foam = new("foam", ["low", "rising", "over"]) { Sayings = [("foaming over", "over"), ("foam up", "rising")] };

    /// <summary>The smell of the steam.</summary>
    public static readonly ObservationName Smell = new("smell", ["sweet", "scorched"]) { Sayings = [("scorching", "scorched"), ("burning smell", "scorched")] };

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<ObservationName> All = [Boil, Coals, Gradient, Foam, Smell];

    /// <summary>What is typed for each of their states: its own word, also with the thing before or behind it, and other sayings.</summary>
    public static readonly FrozenDictionary<string, (ObservationName Name, string State)> Said = All
        .SelectMany(name => name.States
            .SelectMany(state => new[] { state, $"{name.Code} {state}", $"{state} {name.Code}", $"{name.Code} is {state}" }.Select(said => (Said: said, State: state)))
            .Concat(name.Sayings)
            .Select(row => (row.Said, name, row.State)))
        .ToFrozenDictionary(row => row.Said, row => (row.name, row.State), StringComparer.OrdinalIgnoreCase);

    /// <summary>Its states, the liveliest first.</summary>
    public IReadOnlyList<string> States { get; } = states;

    /// <summary>Whether a rig has what is looked at.</summary>
    public Func<Rig, bool> IsThere { get; private init; } = _ => true;

    /// <summary>Other things that are typed, and the state that each means.</summary>
    private IReadOnlyList<(string Said, string State)> Sayings { get; init; } = [];

    /// <summary>By its code; null where there is none.</summary>
    public static ObservationName? FromCode(string code) => All.FirstOrDefault(name => name.Code == code);

    /// <summary>What is nearly so is not so yet: it is what comes before it.</summary>
    private static IEnumerable<(string Said, string State)> Nearly(string name, string end, string before) =>
        from almost in new[] { "almost", "nearly", "not quite" }
        from saying in new[] { $"{name} {almost} {end}", $"{name} are {almost} {end}", $"{name} is {almost} {end}", $"the {name} are {almost} {end}", $"the {name} is {almost} {end}" }
        select (saying, before);
}
