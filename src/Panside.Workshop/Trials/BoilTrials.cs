using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Practice;
using Panside.Practice.Assurance;
using Panside.Practice.Operator;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;

namespace Panside.Workshop.Trials;

/// <summary>Boils in which nothing is made to go wrong, on both built-in rigs and with both guidances.</summary>
internal static class BoilTrials
{
    /// <summary>Where they begin, and with which seed.</summary>
    public static IReadOnlyList<(string Scenario, long Seed)> Beginnings { get; } = [("cold-start", 1), ("cold-start", 30), ("raw-sap", 3), ("last-hour", 4)];

    /// <summary>All of them, over so many seeds.</summary>
    public static IEnumerable<Trial> All(int seeds) =>
        from more in Enumerable.Range(0, seeds)
        from rig in new[] { Evening.Forced, Evening.Natural }
        from guidance in new[] { Guidance.Beginner, Guidance.Practised }
        from begins in Beginnings
        select Followed(rig, guidance, begins.Scenario, begins.Seed + more);

    /// <summary>Who follows the advice ends safe with an unharmed pan and adds no wood after it is held.</summary>
    public static Trial Followed(string rigFile, Guidance guidance, string scenario, long seed) => new($"boil {scenario} on {rigFile}, {guidance}, seed {seed}", () =>
    {
        var setting = Evening.On(rigFile, guidance);
        var rig = new PracticeRig(setting.Rig, Scenario.Named(scenario)!, seed);
        var door = new SessionDoor(setting);
        var (lines, held, chargesAfter) = (0, (int?)null, 0);
        var outcome = new Unattended(door, rig, new PracticeOperator(rig, setting.Units, seed), Evening.Start)
        {
            Overheard = (line, answers) =>
            {
                // The line after may tell of what was in the hand already.
                chargesAfter += held < lines - 1 && IsCharge(line, answers) ? 1 : 0;
                held ??= answers.Any(IsHold) ? lines : null;
                lines++;
            },
        }.Run();
        return Trial.FirstBroken(
            (outcome.IsGood, $"it did not end well: {outcome} at step {door.State.Step}"),
            (door.State.IsOver, "it did not come to its end"),
            (outcome.Lines is >= 30 and <= 600, $"it took {outcome.Lines} lines, expected 30 to 600"),
            (outcome.LeastDepth >= setting.Rig.LeastDepth, "the pan was under its least depth"),
            (held is not null, "wood was never held"),
            (chargesAfter == 0 && outcome.WoodAfterHold == 0, "wood went in after it was held"));
    });

    private static bool IsHold(LineOut answer) => answer is AdviceLine { Advice: { Action: "hold-wood", Urgency: "now" or "danger" } };

    private static bool IsCharge(LineIn line, IReadOnlyList<LineOut> answers) =>
        (answers.OfType<HeardLine>().FirstOrDefault()?.As ?? line) is Did { Name.Code: "add-wood" };
}
