using Panside.Guide.Yaml;

namespace Panside.Guide.Flows;

/// <summary>
/// What a flow may never advise, whatever else it says: to leave without the gate (S1, S6), wood where none goes in any more, a danger that only makes
/// ready; and steps that pass each other by for ever.
/// </summary>
/// <param name="file">The name for faults.</param>
/// <param name="flow">The flow.</param>
internal sealed class AdviceCheck(string file, Flow flow)
{
    private const string Leave = "clear-to-leave";
    private const string Wood = "add-wood";

    private static readonly string[] People = ["fire", "smoke", "faint", "hurt"];

    private readonly List<Fault> _faults = [];

    /// <summary>All that is wrong, in no order.</summary>
    public IReadOnlyList<Fault> Faults()
    {
        foreach (var rule in flow.Advices.Where(rule => rule.Action == Leave && !rule.When.Contains(Flow.Gate)))
        {
            Add(rule.Place, $"'{rule.Id}' says that it is clear, whether it is or not", $"'{Flow.Gate}' in its 'when' (S1)", FaultKind.Gate);
        }

        foreach (var (id, place) in flow.Steps.Values.Where(step => step.Advise == Leave).Select(step => (step.Id, step.Place))
                     .Concat(flow.Watches.Where(watch => watch.Advise == Leave).Select(watch => (watch.Id, watch.Place))))
        {
            Add(place, $"'{id}' says that it is clear, and hangs on no gate", $"an advice with '{Flow.Gate}' in its 'when' (S1)", FaultKind.Gate);
        }

        var wood = flow.Watches.Where(watch => watch.Advise == Wood).Select(watch => watch.Id).ToList();
        foreach (var asks in flow.Steps.Values.Where(step => (step.Phase.IsEnding || step.Phase.IsEmergency) && (step.Advise == Wood || step.Watches.Any(wood.Contains))))
        {
            Add(asks.Place, $"'{asks.Id}' asks for wood in '{asks.Phase.Code}', where none goes in any more", "wood before the shutdown only", FaultKind.Danger);
        }

        foreach (var rule in flow.Advices.Where(rule => rule.Action == Wood && !rule.When.Contains("not " + FlowCheck.WoodHeld)))
        {
            Add(rule.Place, $"'{rule.Id}' asks for wood after the last charge too", $"'not {FlowCheck.WoodHeld}' in its 'when'", FaultKind.Danger);
        }

        Dangers();
        if (Rounds().FirstOrDefault() is { } step)
        {
            Add(step.Place, $"'{step.Id}' is passed by to steps that lead back to it, and all of them can be passed by", "a step that is always asked, or a way out of the round", FaultKind.Reach);
        }

        return _faults;
    }

    private void Dangers()
    {
        foreach (var danger in flow.Dangers.Where(danger => flow.Steps.ContainsKey(danger.Go)))
        {
            var step = flow.Steps[danger.Go];
            if (step.Prepare)
            {
                Add(step.Place, $"'{step.Id}' only makes ready, in a danger", "no 'prepare' at the first step of a danger (S2)", FaultKind.Danger);
            }

            if (step.Ask is { } ask && flow.Readings.Find(ask) is not null && step.Passages.All(passage => passage.When != "answer no"))
            {
                Add(step.Place, $"'{step.Id}' asks for a reading, and whoever cannot take it gets no further", "'no: …', where that leads (S10)", FaultKind.WayOut);
            }
        }

        // People before the pan: one that is told of by a reading or a look is of the pan.
        var ofThePan = flow.Dangers.FirstOrDefault(danger => !danger.IsList && danger.Ways.Any(way => way.When.StartsWith("reading ", StringComparison.Ordinal) || way.When.StartsWith("observed ", StringComparison.Ordinal)));
        foreach (var danger in flow.Dangers.SkipWhile(danger => danger != ofThePan).Where(danger => People.Contains(danger.Code)))
        {
            Add(danger.Place, $"'{danger.Code}' stands below '{ofThePan!.Code}'", "people before the pan: docs/dangers.md has the order (S11)", FaultKind.Danger);
        }
    }

    /// <summary>Steps on a round of which each can be passed by: where each of them is, nobody ever comes to an end.</summary>
    private IEnumerable<Step> Rounds() => flow.Steps.Values.Where(CanBePassed).OrderBy(step => step.Place).Where(step =>
    {
        var (at, given) = (step, new HashSet<string>(step.Given, StringComparer.Ordinal));
        for (var passed = 0; passed <= flow.Steps.Count; passed++)
        {
            if (Next(at) is not { } next || !CanBePassed(next))
            {
                return false;
            }

            if (next == step)
            {
                // Of two that hang on opposites one is always asked.
                return !given.Any(fact => given.Contains("not " + fact));
            }

            given.UnionWith(next.Given);

            at = next;
        }

        return false;
    });

    private static bool CanBePassed(Step step) => step.BeginnerOnly || step.Given.Count > 0;

    /// <summary>Where a step leads that is passed by; null out of the flow, or where it hangs on facts.</summary>
    private Step? Next(Step step)
    {
        var done = step.IsCritical ? Lines.Prompt.AnsweredBy(step.Ask) : "answer skip";
        return step.Passages.FirstOrDefault(passage => passage.When == done && passage.Given.Count == 0) is { } way ? flow.Steps.GetValueOrDefault(way.Go) : null;
    }

    private void Add((int Line, int Column) place, string wrong, string expected, FaultKind kind) => _faults.Add(new(file, place.Line, place.Column, wrong, expected) { Kind = kind });
}
