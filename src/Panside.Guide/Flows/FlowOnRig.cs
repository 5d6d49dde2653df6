using System.Collections.Frozen;
using Panside.Guide.Rigs;

namespace Panside.Guide.Flows;

/// <summary>A flow as it is said on one rig: what a text says instead there takes its place. Steps and ways stay.</summary>
public static class FlowOnRig
{
    /// <summary>The flow in the words for a rig.</summary>
    public static Flow On(this Flow flow, Rig rig) => flow with
    {
        Steps = flow.Steps.Values.Select(step => On(step, rig)).ToFrozenDictionary(step => step.Id),
        Watches = [.. flow.Watches.Select(watch => On(watch, rig))],
        Advices = [.. flow.Advices.Select(rule => On(rule, rig))],
    };

    private static Step On(Step step, Rig rig) => Reworded.For(step.Instead, rig) is { } said
        ? step with { Text = said.Text ?? step.Text, Because = said.Because ?? step.Because, Cautions = said.Cautions ?? step.Cautions, IfNo = said.IfNo ?? step.IfNo }
        : step;

    private static Watch On(Watch watch, Rig rig) => Reworded.For(watch.Instead, rig) is { } said
        ? watch with { Text = said.Text ?? watch.Text, Because = said.Because ?? watch.Because, Cautions = said.Cautions ?? watch.Cautions }
        : watch;

    private static AdviceRule On(AdviceRule rule, Rig rig) => Reworded.For(rule.Instead, rig) is { } said
        ? rule with { Text = said.Text ?? rule.Text, Because = said.Because ?? rule.Because }
        : rule;
}
