using Panside.Guide.Flows;

namespace Panside.Guide.Tests.Flows;

/// <summary>Where a flow stands: a step, and where a side trip from it leads back to.</summary>
internal sealed record Standing(string Step, string ReturnTo);

/// <summary>
/// Walks a flow as its file reads, without the state machine: outside of an emergency the dangers first, then the step's own ways, its
/// phase's, the dangers' inside of an emergency, and those from anywhere; of several the first whose facts hold.
/// </summary>
internal sealed class NaiveWalker(Flow flow)
{
    public IEnumerable<Passage> Ways(string step)
    {
        var own = flow.Steps[step].Passages.Concat(flow.Steps[step].Phase.On);
        return (flow.Steps[step].Phase.IsEmergency ? own.Concat(flow.DangerWays) : flow.DangerWays.Concat(own)).Concat(flow.Anywhere);
    }

    public string? Next(Standing at, string trigger, Func<string, bool> holds)
    {
        var way = Ways(at.Step).FirstOrDefault(way => way.When == trigger && way.Given.All(fact =>
            fact.StartsWith("not ", StringComparison.Ordinal) ? !holds(fact["not ".Length..]) : holds(fact)));
        return way?.Go == "return" ? at.ReturnTo : way?.Go;
    }

    /// <summary>The standing after a step: a side trip leads back to the step that it began at.</summary>
    public Standing At(Standing from, string step) =>
        step is not ("over" or "left-alone") && flow.Steps[step].Phase.IsSideTrip && !flow.Steps[from.Step].Phase.IsSideTrip
            ? new(step, from.Step)
            : new(step, from.ReturnTo);

    /// <summary>Every trigger from a step, each with every way that the facts which matter for it can stand.</summary>
    public IEnumerable<(string Trigger, IReadOnlySet<string> Facts)> Cases(string step)
    {
        foreach (var same in Ways(step).GroupBy(way => way.When))
        {
            var facts = same.SelectMany(way => way.Given).Select(fact => fact.StartsWith("not ", StringComparison.Ordinal) ? fact[4..] : fact)
                .Distinct().ToList();
            for (var bits = 0; bits < 1 << facts.Count; bits++)
            {
                yield return (same.Key, facts.Where((_, index) => (bits >> index & 1) == 1).ToHashSet());
            }
        }
    }
}
