using System.Text;
using Panside.Guide.Flows;
using Stateless.Reflection;

namespace Panside.Commands;

/// <summary>
/// A flow as a Mermaid diagram, drawn from the state machine that guides the boil. Each phase is a box; ways between the same
/// two steps are one arrow; a way that a skip shares with a yes is told once.
/// </summary>
internal static class FlowDiagram
{
    /// <summary>The diagram.</summary>
    public static string Of(Flow flow)
    {
        var text = new StringBuilder("stateDiagram-v2\n");
        var states = new FlowMachine(flow).Info.States.ToList();
        var boxes = states.Where(state => state.Superstate is not null && state.Substates.Any()).ToList();
        text.Append("  [*] --> ").Append(Id(flow.Start)).Append('\n');
        foreach (var box in boxes.OrderBy(box => box.Substates.Min(step => flow.Steps[Name(step)].Place)))
        {
            // "phase 2 steady-boil": the number tells two parts of one phase apart, the code is shown.
            text.Append("  state \"").Append(Name(box).Split(' ')[^1]).Append("\" as ").Append(Id(Name(box))).Append(" {\n");
            foreach (var step in box.Substates.OrderBy(state => flow.Steps[Name(state)].Place))
            {
                text.Append("    ").Append(Id(Name(step))).Append(" : ").Append(Name(step)).Append('\n');
            }

            text.Append("  }\n");
        }

        var dangers = flow.DangerWays.Select(way => (way.When, way.Go)).ToHashSet();
        foreach (var state in states.OrderBy(state => flow.Steps.TryGetValue(Name(state), out var step) ? step.Place : (0, 0)))
        {
            // The dangers lead away from anywhere: drawn once, not at each step.
            var isAnywhere = !flow.Steps.ContainsKey(Name(state));
            foreach (var (to, labels) in Ways(state, (when, go) => isAnywhere || !dangers.Contains((when, go))).GroupBy(way => way.To, way => way.Label).Select(group => (group.Key, group.Distinct())))
            {
                text.Append("  ").Append(Id(Name(state))).Append(" --> ").Append(to is Flow.End or Flow.LeftAlone ? "[*]" : Id(to))
                    .Append(" : ").AppendJoin(" / ", labels).Append('\n');
            }
        }

        return text.ToString();
    }

    private static IEnumerable<(string To, string Label)> Ways(StateInfo state, Func<string, string, bool> isDrawn)
    {
        var ways = state.FixedTransitions
            .Select(way => (To: Name(way.DestinationState), way.Trigger, way.GuardConditionsMethodDescriptions))
            .Concat(state.DynamicTransitions.Select(way => (To: Flow.Return, way.Trigger, way.GuardConditionsMethodDescriptions)))
            .Where(way => isDrawn(way.Trigger.ToString()!, way.To))
            .Select(way => (way.To, Trigger: way.Trigger.ToString()!, Given: string.Join(" and ", way.GuardConditionsMethodDescriptions.Select(guard => guard.Description).Where(given => given != FlowMachine.Otherwise))))
            .ToList();
        return ways
            .Where(way => way.Trigger != "answer skip" || !ways.Contains((way.To, "answer yes", way.Given)))
            .Select(way => (way.To, way.Given.Length == 0 ? way.Trigger : $"{way.Trigger} [{way.Given}]"));
    }

    private static string Name(StateInfo state) => state.UnderlyingState.ToString()!;

    private static string Id(string name) => name.Replace(' ', '_').Replace('-', '_');
}
