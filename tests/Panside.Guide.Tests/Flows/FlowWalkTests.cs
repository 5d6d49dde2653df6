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
    public void The_machine_walks_as_the_flow_reads(string file)
    {
        var flow = Read(file);
        var (machine, naive) = (new FlowMachine(flow), new NaiveWalker(flow));
        var triggers = flow.Steps.Keys.SelectMany(step => naive.Ways(step).Select(way => way.When)).Append("word nothing").Distinct().ToList();
        var facts = Vocabularies.Flow.Facts.Append("marked wood-held").ToList();
        Gen.Select(Gen.Int[0, triggers.Count - 1], Gen.Bool.Array[facts.Count]).Array[1, 200].Holds(
            said =>
            {
                var at = new Standing(flow.Start, "");
                foreach (var (trigger, holds) in said)
                {
                    bool Holds(string fact) => facts.IndexOf(fact) is >= 0 and var index && holds[index];
                    var next = naive.Next(at, triggers[trigger], Holds);
                    Assert.Equal(next, machine.Next(at.Step, triggers[trigger], at.ReturnTo, Holds));
                    at = next is null or "over" or "left-alone" ? at : naive.At(at, next);
                    Assert.Equal(ByFact(naive, at, Holds), machine.NextByFact(at.Step, at.ReturnTo, Holds));
                }
            },
            cases: 300);
    }

    /// <summary>The first fact of the file that holds and leads elsewhere.</summary>
    private static string? ByFact(NaiveWalker naive, Standing at, Func<string, bool> holds) => naive.Ways(at.Step)
        .Where(way => way.When.StartsWith("fact ", StringComparison.Ordinal) && holds(way.When["fact ".Length..]))
        .Select(way => naive.Next(at, way.When, holds))
        .FirstOrDefault(next => next is not null && next != at.Step);

    /// <summary>Every state that the machine can come to, with the ways from it and the facts that held.</summary>
    private static Dictionary<Standing, List<(Standing To, IReadOnlySet<string> Facts)>> Walked(Flow flow)
    {
        var (machine, naive) = (new FlowMachine(flow), new NaiveWalker(flow));
        var start = new Standing(flow.Start, "");
        var walked = new Dictionary<Standing, List<(Standing, IReadOnlySet<string>)>> { [start] = [] };
        for (var open = new Queue<Standing>([start]); open.TryDequeue(out var at);)
        {
            foreach (var (trigger, facts) in at.Step is "over" or "left-alone" ? [] : naive.Cases(at.Step))
            {
                if (machine.Next(at.Step, trigger, at.ReturnTo, facts.Contains) is not { } next)
                {
                    continue;
                }

                var to = naive.At(at, next);
                walked[at].Add((to, facts));
                if (walked.TryAdd(to, []))
                {
                    open.Enqueue(to);
                }
            }
        }

        return walked;
    }

    private static Flow Read(string file) => FlowFile.Read(file, RepositoryFiles.Read("flows", file), Vocabularies.Flow);
}
