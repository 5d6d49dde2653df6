using CsCheck;
using Panside.Guide.Flows;
using Panside.Laws;

namespace Panside.Guide.Tests.Flows;

/// <summary>What must hold from every state that a shipped flow's machine can come to, found by walking there.</summary>
public class FlowWalkTests
{
    public static IEnumerable<TheoryDataRow<string>> Shipped => Directory
        .EnumerateFiles(Path.Combine(RepositoryFiles.Root, "flows"), "*.yaml")
        .Select(file => new TheoryDataRow<string>(Path.GetFileName(file)));

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Every_step_of_the_flow_can_be_reached(string file)
    {
        var flow = Read(file);
        Assert.Equal(flow.Steps.Keys.Append("over").Append("left-alone").Order(), Walked(flow).Keys.Select(at => at.Step).Distinct().Order());
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void S2_the_emergency_is_one_action_away_from_every_state(string file)
    {
        var flow = Read(file);
        var machine = new FlowMachine(flow);
        var facts = flow.DangerWays.SelectMany(way => way.Given).Distinct().ToList();
        foreach (var at in Walked(flow).Keys.Where(at => at.Step is not ("over" or "left-alone")))
        {
            // Whatever holds: all facts, none, and each alone.
            foreach (var holding in facts.Select(fact => new[] { fact }).Append([.. facts]).Append([]))
            {
                Assert.All(flow.Dangers, danger => Assert.Equal(danger.Go, machine.Next(at.Step, "word " + danger.Code, at.ReturnTo, holding.Contains)));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void S6_the_end_can_be_reached_from_every_state(string file)
    {
        var walked = Walked(Read(file));
        var leading = walked.Keys.Where(at => at.Step == "over").ToHashSet();
        Assert.NotEmpty(leading);
        while (walked.Where(pair => !leading.Contains(pair.Key) && pair.Value.Any(way => leading.Contains(way.To))).ToList() is { Count: > 0 } more)
        {
            leading.UnionWith(more.Select(pair => pair.Key));
        }

        Assert.Empty(walked.Keys.Where(at => at.Step != "left-alone").Except(leading));
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void S6_no_state_leads_to_the_end_unless_it_is_clear_to_leave(string file)
    {
        var ends = Walked(Read(file)).SelectMany(pair => pair.Value).Where(way => way.To.Step == "over").ToList();
        Assert.NotEmpty(ends);
        Assert.All(ends, way => Assert.Contains("clear-to-leave", way.Facts));
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void A_trigger_leads_where_the_first_open_way_of_the_file_leads_and_nowhere_else(string file)
    {
        var flow = Read(file);
        var machine = new FlowMachine(flow);
        var triggers = flow.Steps.Values.SelectMany(step => FlowCheck.WaysFrom(flow, step)).Select(way => way.When).Append("word nothing").Distinct().ToList();
        var (steps, facts) = (flow.Steps.Values.ToList(), Vocabularies.Flow.Facts.Append("marked wood-held").ToList());
        Gen.Select(Gen.Int[0, steps.Count - 1], Gen.Int[0, triggers.Count - 1], Gen.Bool.Array[facts.Count]).Array[1, 100].Holds(
            said =>
            {
                foreach (var (at, trigger, holds) in said)
                {
                    var (step, when) = (steps[at], triggers[trigger]);
                    bool Holds(string fact) => facts.IndexOf(fact) is >= 0 and var index && holds[index];
                    var ways = step.Phase.IsEmergency
                        ? step.Passages.Concat(step.Phase.On).Concat(flow.DangerWays).Concat(flow.Anywhere)
                        : flow.DangerWays.Concat(step.Passages).Concat(step.Phase.On).Concat(flow.Anywhere);
                    var first = ways.FirstOrDefault(way => way.When == when && way.Given.All(Given(Holds)));
                    var to = first?.Go == Flow.Return ? flow.Start : first?.Go;
                    var next = machine.Next(step.Id, when, flow.Start, Holds);
                    if (FlowMachine.IsFact(when) && to == step.Id)
                    {
                        Assert.Null(next); // a fact never leads to where one stands
                        continue;
                    }

                    Assert.Equal(to, next);
                    Assert.Equal(next is not null && (!FlowMachine.IsFact(when) || Holds(when[5..])), machine.Permitted(step.Id, Holds).Contains(when));
                }
            },
            cases: 300);
    }

    /// <summary>Every state that the machine can come to, with the ways from it and the facts that held.</summary>
    private static Dictionary<Standing, List<(Standing To, IReadOnlySet<string> Facts)>> Walked(Flow flow)
    {
        var machine = new FlowMachine(flow);
        var start = new Standing(flow.Start, "");
        var walked = new Dictionary<Standing, List<(Standing, IReadOnlySet<string>)>> { [start] = [] };
        for (var open = new Queue<Standing>([start]); open.TryDequeue(out var at);)
        {
            foreach (var (trigger, facts) in at.Step is "over" or "left-alone" ? [] : Cases(flow, at.Step))
            {
                if (machine.Next(at.Step, trigger, at.ReturnTo, facts.Contains) is not { } next)
                {
                    continue;
                }

                var to = At(flow, at, next);
                walked[at].Add((to, facts));
                if (walked.TryAdd(to, []))
                {
                    open.Enqueue(to);
                }
            }
        }

        return walked;
    }

    /// <summary>The standing after a step: a side trip leads back to the step that it began at.</summary>
    private static Standing At(Flow flow, Standing from, string step) =>
        step is not ("over" or "left-alone") && flow.Steps[step].Phase.IsSideTrip && !flow.Steps[from.Step].Phase.IsSideTrip
            ? new(step, from.Step)
            : new(step, from.ReturnTo);

    /// <summary>Every trigger from a step, each with every way that the facts which matter for it can stand.</summary>
    private static IEnumerable<(string Trigger, IReadOnlySet<string> Facts)> Cases(Flow flow, string step)
    {
        foreach (var same in FlowCheck.WaysFrom(flow, flow.Steps[step]).GroupBy(way => way.When))
        {
            var facts = same.SelectMany(way => way.Given).Select(fact => fact.StartsWith("not ", StringComparison.Ordinal) ? fact[4..] : fact)
                .Distinct().ToList();
            for (var bits = 0; bits < 1 << facts.Count; bits++)
            {
                yield return (same.Key, facts.Where((_, index) => (bits >> index & 1) == 1).ToHashSet());
            }
        }
    }

    private static Func<string, bool> Given(Func<string, bool> holds) => fact =>
        fact.StartsWith("not ", StringComparison.Ordinal) ? !holds(fact["not ".Length..]) : holds(fact);

    private static Flow Read(string file) => FlowFile.Read(file, RepositoryFiles.Read("flows", file), Vocabularies.Flow);

    /// <summary>Where a flow stands: a step, and where a side trip from it leads back to.</summary>
    private sealed record Standing(string Step, string ReturnTo);
}
