using Panside.Guide.Rigs;
using Panside.Guide.Yaml;

namespace Panside.Guide.Flows;

/// <summary>
/// S6: nobody waits for ever before the gate. Leaving can want a look; from every step at which somebody waits to be clear, over a pan that has
/// come to rest, the flow asks for it there or further on, whatever else holds. A person who is asked for nothing more does not know what to say.
/// </summary>
/// <param name="flow">The flow, whose ways all lead somewhere.</param>
/// <param name="rig">The rig; null for every rig that the flow speaks of.</param>
internal sealed class GateCheck(Flow flow, Rig? rig)
{
    /// <summary>What tells that the pan is not at rest.</summary>
    private static readonly string[] Loud = ["rolling", "steady", "simmering", "deep", "rising", "over", "scorched"];

    /// <summary>The faults: what is never asked for again, and where.</summary>
    /// <param name="file">The name for faults.</param>
    /// <param name="flow">The flow.</param>
    /// <param name="rig">The rig that it is to guide on; null for every rig that it speaks of.</param>
    public static IReadOnlyList<Fault> Faults(string file, Flow flow, Rig? rig)
    {
        var check = new GateCheck(flow, rig);
        var faults = new List<Fault>();
        foreach (var look in GateLook.All.Where(check.IsWanted))
        {
            var never = look.Cases.SelectMany(one => check.Never(look, one.Facts).Select(step => (Step: step, one.Seen))).GroupBy(row => row.Step);
            faults.AddRange(never.Select(row => new Fault(
                file, row.Key.Place.Line, row.Key.Place.Column,
                $"from '{row.Key.Id}' on nothing asks for {look.Spoken} any more ({string.Join("; ", row.Select(one => one.Seen).Distinct())}), and leaving wants it",
                $"a watch of '{row.Key.Id}', or a step after it, with 'ask: {look.Asks[0].Ask}' (S6)")
            { Kind = FaultKind.Kept }));
        }

        return faults;
    }

    /// <summary>Whether the gate can want it on this rig, or on one that the flow shows to be for.</summary>
    private bool IsWanted(GateLook look) => look.Needs is not { } needs || (rig is null ? look.Names.Any(IsNamed) : RigFacts.Holds(rig, needs));

    private bool IsNamed(string name) =>
        flow.Watches.Any(watch => watch.Ask.StartsWith(name, StringComparison.Ordinal) || watch.Advise == name || watch.Given.Any(fact => Names(fact, name)))
        || flow.Advices.Any(rule => rule.Action == name || rule.When.Any(fact => Names(fact, name)))
        || flow.Steps.Values.Any(step => step.Ask?.StartsWith(name, StringComparison.Ordinal) == true || step.Advise == name || step.Given.Any(fact => Names(fact, name)))
        || FlowCheck.Edges(flow).Any(edge => edge.Passage.When == "did " + name || edge.Passage.Given.Any(fact => Names(fact, name)));

    private static bool Names(string fact, string name) => fact.StartsWith(name, StringComparison.Ordinal) || fact.StartsWith("not " + name, StringComparison.Ordinal);

    /// <summary>The steps at which somebody waits and from which the look is never asked for; of many in a row, where the waiting ends.</summary>
    private List<Step> Never(GateLook look, string[] seen)
    {
        var facts = new GateFacts(seen, rig, look.Needs);
        if (flow.Dangers.Any(danger => danger.While is { } holds && seen.Contains(holds) && facts.May(danger.Given) && IsAskedInEmergency(danger.Go, look, [])))
        {
            return [];
        }

        var ways = flow.Steps.Values.ToDictionary(step => step.Id, step => Quiet(step, facts).ToList());
        var asked = flow.Steps.Values.Where(step => IsAsked(step, look, facts)).Select(step => step.Id).ToHashSet(StringComparer.Ordinal);
        while (ways.Where(way => !asked.Contains(way.Key) && way.Value.Exists(asked.Contains)).Select(way => way.Key).ToList() is { Count: > 0 } more)
        {
            asked.UnionWith(more);
        }

        var kept = Waits(ways).Where(id => !asked.Contains(id) && !flow.Steps[id].Phase.IsSideTrip).Select(id => flow.Steps[id]).ToList();
        var resting = kept.Where(step => step.Ask is null).ToList();
        return resting.Count > 0 ? resting : [.. kept.Take(1)];
    }

    /// <summary>A danger that comes back for as long as it holds asks for it itself.</summary>
    private bool IsAskedInEmergency(string id, GateLook look, HashSet<string> before) => before.Add(id) && flow.Steps.TryGetValue(id, out var step) && step.Phase.IsEmergency
        && (look.Asks.Any(one => one.Ask == step.Ask) || step.Passages.Any(way => IsAskedInEmergency(way.Go, look, before)));

    /// <summary>Where somebody waits to be clear: from the step on that ends the firing; everywhere in a flow that has none.</summary>
    private HashSet<string> Waits(Dictionary<string, List<string>> ways)
    {
        var ends = flow.Steps.Values.Where(step => step.Marks.Contains(FlowCheck.WoodHeld)).ToList();
        var found = (ends.Count > 0 ? ends.SelectMany(step => ways[step.Id]) : [flow.Start]).ToHashSet(StringComparer.Ordinal);
        for (var open = new Queue<string>(found); open.TryDequeue(out var id);)
        {
            foreach (var next in ways[id].Where(found.Add))
            {
                open.Enqueue(next);
            }
        }

        return found;
    }

    /// <summary>The ways that lead on by themselves over a pan at rest: by an answer, a word, a fact, or what is asked for there.</summary>
    private IEnumerable<string> Quiet(Step step, GateFacts facts) => flow.OrdinaryWays(step)
        .Where(way => flow.Steps.ContainsKey(way.Go) && facts.May(way.Given) && IsQuiet(step, way.When.Split(' ', 2), facts))
        .Select(way => way.Go)
        .Distinct();

    private bool IsQuiet(Step step, string[] trigger, GateFacts facts) => trigger[0] switch
    {
        "answer" => step.Ask is not null,
        // A word is taken as said: who waits can say any that the flow has, and nothing here knows which of them a text tells.
        "word" => true,
        "fact" => facts.May([trigger[1]]),
        "did" => IsDeedAsked(step, trigger[1]),
        _ => IsSeenThere(step, trigger[1].Split(' ')),
    };

    private bool IsDeedAsked(Step step, string deed) => deed is not ("add-wood" or "lit-fire" or "refill-tank")
        && (step.Deed?.Code == deed || Watching(step).Any(watch => watch.Deed?.Code == deed));

    private bool IsSeenThere(Step step, string[] seen) => !(seen.Length > 1 && Loud.Contains(seen[1]))
        && (step.Ask == seen[0] || Watching(step).Any(watch => watch.Ask == seen[0]));

    private bool IsAsked(Step step, GateLook look, GateFacts facts)
    {
        var ofRig = new List<IReadOnlyList<string>>();
        foreach (var (ask, has) in look.Asks)
        {
            string[] more = has is null ? [] : [has];
            ofRig.AddRange(Watching(step).Where(watch => watch.Ask == ask).Select(watch => (IReadOnlyList<string>)[.. watch.Given, .. more]));
            if (step.Ask == ask)
            {
                ofRig.Add([.. step.Given, .. more, .. step.BeginnerOnly ? ["beginner"] : Array.Empty<string>()]);
            }
        }

        return facts.Always(ofRig);
    }

    /// <summary>The watches that come back for as long as the step stands.</summary>
    private IEnumerable<Watch> Watching(Step step) => step.Ask is null ? flow.Watches.Where(watch => step.Watches.Contains(watch.Id)) : [];
}
