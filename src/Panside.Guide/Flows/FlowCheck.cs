using Panside.Guide.Yaml;

namespace Panside.Guide.Flows;

/// <summary>What every flow must hold before it may guide anyone: names that lead somewhere, and the safety rules S2 and S6.</summary>
public static class FlowCheck
{
    /// <summary>A fact that begins so holds where a step has set the mark behind it.</summary>
    public const string MarkedPrefix = "marked ";

    private const string FactPrefix = "fact ";

    /// <summary>Every name leads to a step, a watch or a phase, and stands once.</summary>
    public static void Names(YamlMap root, Flow flow, IReadOnlyList<Step> steps)
    {
        var place = root.Place();
        foreach (var twin in steps.GroupBy(step => step.Id).SelectMany(group => group.Skip(1)))
        {
            root.AddAt(twin.Place, $"the step '{twin.Id}' stands twice", "a name of its own for each step");
        }

        foreach (var watch in flow.Watches.Where(watch => flow.Steps.ContainsKey(watch.Id)))
        {
            root.AddAt(place, $"'{watch.Id}' is both a step and a watch", "a name of its own for each");
        }

        foreach (var twin in Twins(flow.Watches.Select(watch => watch.Id)))
        {
            root.AddAt(place, $"the watch '{twin}' stands twice", "a name of its own for each watch");
        }

        foreach (var twin in Twins(flow.Advices.Select(rule => rule.Id)))
        {
            root.AddAt(place, $"the advice '{twin}' stands twice", "an id of its own for each advice");
        }

        foreach (var rule in flow.Advices)
        {
            foreach (var phase in rule.Phases.Where(code => flow.Phases.All(phase => phase.Code != code)))
            {
                root.AddAt(place, $"the advice '{rule.Id}' belongs to '{phase}', which is no phase", "one that stands under 'phases'");
            }
        }

        if (!flow.Steps.ContainsKey(flow.Start))
        {
            root.Add("start", $"'{flow.Start}' is no step", "the first step's name");
        }

        foreach (var passage in steps.SelectMany(step => step.Passages)
                     .Concat(flow.Phases.SelectMany(phase => phase.On))
                     .Concat(flow.Anywhere)
                     .Where(passage => passage.Go is not (Flow.End or Flow.Return) && !flow.Steps.ContainsKey(passage.Go)))
        {
            root.AddAt(passage.Place, $"'{passage.Go}' is no step", $"a step's name, '{Flow.Return}' or '{Flow.End}'");
        }

        var marks = steps.Select(step => step.Mark).OfType<string>().ToHashSet(StringComparer.Ordinal);
        foreach (var fact in flow.Advices.SelectMany(rule => rule.When)
                     .Concat(flow.Watches.SelectMany(watch => watch.Given))
                     .Concat(Edges(flow).SelectMany(edge => edge.Passage.Given))
                     .Concat(Edges(flow).Where(edge => edge.Passage.When.StartsWith(FactPrefix, StringComparison.Ordinal))
                         .Select(edge => edge.Passage.When[FactPrefix.Length..]))
                     .Select(fact => fact.StartsWith("not ", StringComparison.Ordinal) ? fact[4..] : fact)
                     .Where(fact => fact.StartsWith(MarkedPrefix, StringComparison.Ordinal) && !marks.Contains(fact[MarkedPrefix.Length..]))
                     .Distinct())
        {
            root.AddAt(place, $"no step sets the mark of '{fact}'", "'mark: …' at a step");
        }

        foreach (var step in steps)
        {
            foreach (var watch in step.Watches.Where(id => flow.Watches.All(watch => watch.Id != id)))
            {
                root.AddAt(step.Place, $"'{watch}' is no watch", "one that stands under 'watches'");
            }

            if (step.BeginnerOnly && step.IsCritical)
            {
                root.AddAt(step.Place, $"'{step.Id}' is critical and for beginners only", "one of the two");
            }

            if (step.Passages.Any(passage => passage.Go == Flow.Return) && !step.Phase.IsSideTrip)
            {
                root.AddAt(step.Place, $"'{Flow.Return}' in a phase that is no side trip", "'side-trip: true' at the phase");
            }
        }
    }

    /// <summary>
    /// S2: the emergency is one action away from every step. S6: the end can be reached from every step, and no way leads
    /// to it but through the gate.
    /// </summary>
    /// <exception cref="FaultyFileException">A rule does not hold.</exception>
    public static void Ways(string file, Flow flow)
    {
        var faults = new List<Fault>();
        var emergency = flow.Anywhere.Where(passage => passage.Given.Count == 0 && Leads(flow, passage, "emergency")).ToList();
        if (!emergency.Any(passage => passage.When.StartsWith("word ", StringComparison.Ordinal)))
        {
            faults.Add(new(
                file, 1, 1, "no word leads from anywhere to the emergency phase", "one under 'anywhere', without 'given' (S2)"));
        }

        var words = emergency.Select(passage => passage.When).ToHashSet(StringComparer.Ordinal);
        foreach (var passage in flow.Steps.Values.SelectMany(step => step.Passages).Concat(flow.Phases.SelectMany(phase => phase.On))
                     .Where(passage => words.Contains(passage.When) && !Leads(flow, passage, "emergency")))
        {
            faults.Add(new(
                file, passage.Place.Line, passage.Place.Column, $"'{passage.When}' leads from anywhere to the emergency phase, and here to '{passage.Go}'",
                "that trigger for the emergency alone (S2)"));
        }

        foreach (var (from, passage) in Edges(flow).Where(edge => edge.Passage.Go == Flow.End && !edge.Passage.Given.Contains(Flow.Gate)))
        {
            faults.Add(new(
                file, passage.Place.Line, passage.Place.Column, $"'{from}' leads to the end without the gate",
                $"'given: [{Flow.Gate}]' on every way to '{Flow.End}' (S6)"));
        }

        var ways = new FlowWays(flow);
        faults.AddRange(flow.Steps.Values.Where(step => ways.Stuck.Contains(step.Id)).Select(step => new Fault(
            file, step.Place.Line, step.Place.Column, $"no way leads from '{step.Id}' to the end", "a way to 'over' (S6)")));
        faults.AddRange(flow.Steps.Values.Where(step => !ways.Reached.Contains(step.Id)).Select(step => new Fault(
            file, step.Place.Line, step.Place.Column, $"no way leads to '{step.Id}'", "a way from another step")));
        if (faults.Count > 0)
        {
            throw new FaultyFileException([.. faults.OrderBy(fault => fault.Line).ThenBy(fault => fault.Column)]);
        }
    }

    /// <summary>Every way of the flow, from each step: its own, its phase's and those from anywhere.</summary>
    public static IEnumerable<(string From, Passage Passage)> Edges(Flow flow) =>
        flow.Steps.Values.SelectMany(step =>
            step.Passages.Concat(step.Phase.On).Concat(flow.Anywhere).Select(passage => (step.Id, passage)));

    private static IEnumerable<string> Twins(IEnumerable<string> names) =>
        names.GroupBy(name => name).Where(group => group.Skip(1).Any()).Select(group => group.Key);

    private static bool Leads(Flow flow, Passage passage, string phase) =>
        flow.Steps.TryGetValue(passage.Go, out var step) && step.Phase.Code == phase;
}
