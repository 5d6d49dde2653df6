using Panside.Guide.Lines;
using Panside.Guide.Yaml;

namespace Panside.Guide.Flows;

/// <summary>Ways that whoever wrote a flow cannot have meant: a step that only leads to itself, a way out of an emergency, wood before the fire.</summary>
/// <param name="file">The name for faults.</param>
/// <param name="flow">The flow, whose names all lead somewhere.</param>
internal sealed class TrapCheck(string file, Flow flow)
{
    private const string NoEmergency = "not emergency-on";

    /// <summary>All that is wrong, in no order.</summary>
    public IReadOnlyList<Fault> Faults() =>
    [
        .. flow.Steps.Values.Where(LeadsToItself).Select(step => At(
            step.Place, $"'{step.Id}' leads to itself, and no answer leads on", "'go: …', the step that follows", FaultKind.Reach, "Whoever answers is asked the same again, for ever.")),
        .. flow.Anywhere.Where(LeavesEmergencies).DistinctBy(way => way.Place).Select(way => At(
            way.Place, $"'{way.When}' leads to '{way.Go}' out of an emergency too", $"'{NoEmergency}' in its 'given' (S2)", FaultKind.Danger,
            "A way from anywhere is one from each step of an emergency as well; only the emergency's own ways lead out of it.")),
        .. BeforeTheFire().Where(step => step is { Advise: "add-wood", Prepare: false }).Select(step => At(
            step.Place, $"'{step.Id}' asks for wood before the fire is lit", $"it after the step with 'done-by: did {DeedName.LitFire.Code}', or 'prepare: true'", FaultKind.Danger,
            "Wood on no fire counts as a charge that burns.")),
    ];

    /// <summary>Whether answers only ask the step again. What happens meanwhile may lead on; a word may not be known.</summary>
    private static bool LeadsToItself(Step step)
    {
        var ways = step.Passages.Concat(step.Phase.On).Where(way => !way.When.StartsWith("word ", StringComparison.Ordinal)).ToList();
        return step.Ask is not null && ways.Exists(way => way.Go == step.Id) && ways.TrueForAll(way => way.Go == step.Id);
    }

    private bool LeavesEmergencies(Passage way) =>
        flow.Steps.TryGetValue(way.Go, out var to) && !to.Phase.IsEmergency && !way.Given.Contains(NoEmergency);

    /// <summary>The steps of the start-up that are come to before the one that waits for the lighting; none in a flow that has none.</summary>
    private List<Step> BeforeTheFire()
    {
        if (flow.Steps.Values.All(step => step.Deed != DeedName.LitFire))
        {
            return [];
        }

        var found = new List<Step>();
        for (var open = new Queue<string>([flow.Start]); open.TryDequeue(out var id);)
        {
            if (flow.Steps.TryGetValue(id, out var step) && step.Phase.Kind == "start-up" && step.Deed != DeedName.LitFire && !found.Contains(step))
            {
                found.Add(step);
                foreach (var way in step.Passages.Where(way => (way.When.StartsWith("answer ", StringComparison.Ordinal) || way.When == Prompt.AnsweredBy(step.Ask)) && way.Given.Count == 0))
                {
                    open.Enqueue(way.Go);
                }
            }
        }

        return found;
    }

    private Fault At((int Line, int Column) place, string wrong, string expected, FaultKind kind, string help) =>
        new(file, place.Line, place.Column, wrong, expected) { Kind = kind, Help = help };
}
