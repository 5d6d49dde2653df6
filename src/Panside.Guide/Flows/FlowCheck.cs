using Panside.Guide.Rigs;
using Panside.Guide.Yaml;

namespace Panside.Guide.Flows;

/// <summary>What every flow must hold before it may guide anyone: names that lead somewhere, and the safety rules S2 and S6.</summary>
public static class FlowCheck
{
    /// <summary>A fact that begins so holds where a step has set the mark behind it.</summary>
    public const string MarkedPrefix = "marked ";

    private const string FactPrefix = "fact ";

    /// <summary>The mark by which the program knows that no more wood goes in.</summary>
    internal const string WoodHeld = "wood-held";

    /// <summary>Every name leads to a step, a watch or a phase, and stands once.</summary>
    public static void Names(YamlMap root, Flow flow, IReadOnlyList<Step> steps)
    {
        foreach (var twin in steps.GroupBy(step => step.Id).SelectMany(group => group.Skip(1)))
        {
            root.AddAt(twin.Place, $"the step '{twin.Id}' stands twice", "a name of its own for each step", FaultKind.Twice);
        }

        foreach (var watch in flow.Watches.Where(watch => flow.Steps.ContainsKey(watch.Id)))
        {
            root.AddAt(watch.Place, $"'{watch.Id}' is both a step and a watch", "a name of its own for each", FaultKind.Twice);
        }

        foreach (var twin in flow.Watches.GroupBy(watch => watch.Id).SelectMany(group => group.Skip(1)))
        {
            root.AddAt(twin.Place, $"the watch '{twin.Id}' stands twice", "a name of its own for each watch", FaultKind.Twice);
        }

        foreach (var twin in flow.Advices.GroupBy(rule => rule.Id).SelectMany(group => group.Skip(1)))
        {
            root.AddAt(twin.Place, $"the advice '{twin.Id}' stands twice", "an id of its own for each advice", FaultKind.Twice);
        }

        foreach (var rule in flow.Advices)
        {
            foreach (var phase in rule.Phases.Where(code => flow.Phases.All(phase => phase.Code != code)))
            {
                root.AddAt(rule.Place, $"the advice '{rule.Id}' belongs to '{phase}', which is no phase", "one that stands under 'phases'", FaultKind.Name);
            }
        }

        foreach (var rule in flow.Counts)
        {
            foreach (var phase in rule.Phases.Where(code => flow.Phases.All(phase => phase.Code != code)))
            {
                root.AddAt(rule.Place, $"the count '{rule.Count}' belongs to '{phase}', which is no phase", "one that stands under 'phases'", FaultKind.Name);
            }
        }

        if (flow.Clearing.FirstOrDefault(rule => rule.When.Count == 0 && rule != flow.Clearing[^1]) is { } early)
        {
            root.AddAt(early.Place, "what follows this deed is never said: it has no 'when'", "it as the last of 'clearing'", FaultKind.Reach);
        }
        else if (flow.Clearing is [.., { When.Count: > 0 } last])
        {
            root.AddAt(last.Place, "nothing is said where none of 'clearing' holds", "a last deed without 'when', such as 'look once more at all that is asked'", FaultKind.Reach);
        }

        if (!flow.Steps.ContainsKey(flow.Start))
        {
            root.Add("start", $"'{flow.Start}' is no step", "the first step's name", FaultKind.Name);
        }

        // Each way once, and not once for each step that it leads away from: that would take a thirtieth of the time until the first screen.
        List<Passage> passages = [.. steps.SelectMany(step => step.Passages), .. flow.Phases.SelectMany(phase => phase.On), .. flow.DangerWays, .. flow.Anywhere];
        foreach (var passage in passages
                     .Where(passage => passage.Go is not (Flow.End or Flow.Return or Flow.LeftAlone) && !flow.Steps.ContainsKey(passage.Go))
                     .DistinctBy(passage => passage.Place))
        {
            root.AddAt(passage.Place, $"'{passage.Go}' is no step", $"a step's name, '{Flow.Return}' or '{Flow.End}'", FaultKind.Name);
        }

        var marks = steps.SelectMany(step => step.Marks).ToHashSet(StringComparer.Ordinal);
        foreach (var (fact, place) in flow.Advices.SelectMany(rule => rule.When.Select(fact => (fact, rule.Place)))
                     .Concat(flow.Watches.SelectMany(watch => watch.Given.Select(fact => (fact, watch.Place))))
                     .Concat(flow.Counts.SelectMany(rule => rule.When.Select(fact => (fact, rule.Place))))
                     .Concat(flow.Clearing.SelectMany(rule => rule.When.Select(fact => (fact, rule.Place))))
                     .Concat(steps.SelectMany(step => step.Given.Select(fact => (fact, step.Place))))
                     .Concat(passages.SelectMany(passage => passage.Given.Select(fact => (fact, passage.Place))))
                     .Concat(passages.Where(passage => passage.When.StartsWith(FactPrefix, StringComparison.Ordinal))
                         .Select(passage => (passage.When[FactPrefix.Length..], passage.Place)))
                     .Select(named => (Fact: named.Item1.StartsWith("not ", StringComparison.Ordinal) ? named.Item1[4..] : named.Item1, named.Place))
                     .Where(named => named.Fact.StartsWith(MarkedPrefix, StringComparison.Ordinal) && !marks.Contains(named.Fact[MarkedPrefix.Length..]))
                     .DistinctBy(named => named.Fact))
        {
            root.AddAt(place, $"no step sets the mark of '{fact}'", "'mark: …' at a step", FaultKind.Fact);
        }

        foreach (var step in steps)
        {
            foreach (var watch in step.Watches.Where(id => flow.Watches.All(watch => watch.Id != id)))
            {
                root.AddAt(step.Place, $"'{watch}' is no watch", "one that stands under 'watches'", FaultKind.Name);
            }

            if (step.BeginnerOnly && step.IsCritical)
            {
                root.AddAt(step.Place, $"'{step.Id}' is critical and for beginners only", "one of the two", FaultKind.Together);
            }

            if (step.IsCritical && step.Given.FirstOrDefault(fact => !RigFacts.IsOne(fact)) is { } changing)
            {
                root.AddAt(step.Place, $"'{step.Id}' is critical and hangs on '{changing}', which can change", "only what a rig has, in 'given' of a critical step", FaultKind.Fact);
            }

            if (step.Passages.Any(passage => passage.Go == Flow.Return) && !step.Phase.IsSideTrip)
            {
                root.AddAt(step.Place, $"'{Flow.Return}' in a phase that is no side trip", "'side-trip: true' at the phase", FaultKind.Together);
            }
        }
    }

    /// <summary>
    /// S2: each danger comes first at every step. S6: the end can be reached from every step, and no way leads to it but through the
    /// gate.
    /// </summary>
    /// <param name="file">The name for faults.</param>
    /// <param name="flow">The flow.</param>
    /// <param name="traps">What was found while it was read, and refuses a flow only where its ways are walked.</param>
    /// <exception cref="FaultyFileException">A rule does not hold.</exception>
    public static void Ways(string file, Flow flow, IReadOnlyList<Fault> traps)
    {
        var faults = new List<Fault>(traps);
        foreach (var passage in Edges(flow).Select(edge => edge.Passage).Distinct()
                     .Where(passage => passage.Given.Any(fact => passage.Given.Contains("not " + fact))))
        {
            faults.Add(new(
                file, passage.Place.Line, passage.Place.Column, $"a way to '{passage.Go}' is given a fact and its opposite, and never taken", "one of the two")
            { Kind = FaultKind.Fact });
        }

        foreach (var (from, passage) in Edges(flow).Where(edge => edge.Passage.Go == Flow.LeftAlone && !flow.Steps[edge.From].Phase.IsEmergency))
        {
            faults.Add(new(
                file, passage.Place.Line, passage.Place.Column, $"'{from}' leaves the pan alone, and is in no emergency", $"'{Flow.LeftAlone}' out of an emergency only (S6)")
            { Kind = FaultKind.Gate });
        }

        foreach (var (from, passage) in Edges(flow).Where(edge => edge.Passage.Go == Flow.End && !edge.Passage.Given.Contains(Flow.Gate)))
        {
            faults.Add(new(
                file, passage.Place.Line, passage.Place.Column, $"'{from}' leads to the end without the gate",
                $"'given: [{Flow.Gate}]' on every way to '{Flow.End}' (S6)")
            { Kind = FaultKind.Gate });
        }

        if (flow.Watches.FirstOrDefault(watch => watch.Advise == "add-wood") is { } wood && flow.Steps.Values.All(step => !step.Marks.Contains(WoodHeld)))
        {
            faults.Add(new(
                file, wood.Place.Line, wood.Place.Column, $"'{wood.Id}' asks for wood, and no step sets the mark '{WoodHeld}' that ends it",
                $"'mark: {WoodHeld}' at the step that stops the firing")
            { Kind = FaultKind.Reach });
        }

        faults.AddRange(new AdviceCheck(file, flow).Faults());
        faults.AddRange(PromiseCheck.Faults(file, flow));
        faults.AddRange(new TrapCheck(file, flow).Faults());
        faults.AddRange(DangerCheck.Faults(file, flow));
        if (faults.Count > 0)
        {
            // What can be reached is worth a word only where the dangers lead.
            throw InOrder(faults);
        }

        var ways = new FlowWays(flow);
        faults.AddRange(flow.Steps.Values.Where(step => ways.Stuck.Contains(step.Id)).Select(step => new Fault(
            file, step.Place.Line, step.Place.Column, $"no way leads from '{step.Id}' to the end", "a way to 'over' (S6)")
        { Kind = FaultKind.Reach }));
        faults.AddRange(flow.Steps.Values.Where(step => !ways.Reached.Contains(step.Id)).Select(step => new Fault(
            file, step.Place.Line, step.Place.Column, $"no way leads to '{step.Id}'", "a way from another step")
        { Kind = FaultKind.Reach }));
        if (faults.Count > 0)
        {
            throw InOrder(faults);
        }

        Clears(file, flow, null);
    }

    /// <summary>S6: whatever leaving can want is asked for until it is seen.</summary>
    /// <param name="file">The name for faults.</param>
    /// <param name="flow">The flow.</param>
    /// <param name="rig">The rig that it is to guide on; null for every rig that it speaks of.</param>
    /// <exception cref="FaultyFileException">Somebody could wait for ever.</exception>
    public static void Clears(string file, Flow flow, Rig? rig)
    {
        if (GateCheck.Faults(file, flow, rig) is { Count: > 0 } kept)
        {
            throw InOrder(kept);
        }
    }

    /// <summary>Each once: one line of the file can be several ways, for a yes and for a skip.</summary>
    private static FaultyFileException InOrder(IReadOnlyList<Fault> faults) =>
        new([.. faults.Distinct().OrderBy(fault => fault.Line).ThenBy(fault => fault.Column)]);

    /// <summary>Every way of the flow, from each step: its own, its phase's and those from anywhere.</summary>
    public static IEnumerable<(string From, Passage Passage)> Edges(Flow flow) =>
        flow.Steps.Values.SelectMany(step => WaysFrom(flow, step).Select(passage => (step.Id, passage)));

    /// <summary>Every way from a step: its own, its phase's, the dangers' and those from anywhere.</summary>
    public static IEnumerable<Passage> WaysFrom(Flow flow, Step step) =>
        step.Passages.Concat(step.Phase.On).Concat(flow.DangerWays).Concat(flow.Anywhere);
}
