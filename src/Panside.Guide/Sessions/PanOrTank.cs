using Panside.Guide.Belief;
using Panside.Guide.Flows;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Words;

namespace Panside.Guide.Sessions;

/// <summary>
/// Where liquid went of which only the amount was said. Who was just told to pour into the pan has poured into the pan; else it is
/// asked, and the question says what a bare yes would mean.
/// </summary>
internal static class PanOrTank
{
    /// <summary>What was told so lately is what is being done.</summary>
    private static readonly TimeSpan JustNow = TimeSpan.FromMinutes(5);

    private static readonly string[] PanActions = ["raise-level", "cool-pan", "flood-pan"];

    /// <summary>Whether the pan is meant, by what the operator was told last.</summary>
    public static bool IsPanMeant(Turn turn)
    {
        var step = turn.Now.Setting.Flow.Steps[turn.State.Step];
        return (step.Phase.IsEmergency && step.Urgency == "danger")
            || (turn.State is { ToldToPour: { } told, Now: { } now } && now.Time - told.Time <= JustNow);
    }

    /// <summary>Whether an advice tells the operator to pour into the pan, and not into the tank.</summary>
    public static bool AsksToPour(Lines.Advice advice) => !advice.Prepare && advice.Urgency != "info" && PanActions.Contains(advice.Action)
        && !advice.Text.Contains("tank", StringComparison.OrdinalIgnoreCase);

    /// <summary>The question.</summary>
    /// <param name="added">What was added.</param>
    /// <param name="hasFloat">Whether a float feeds the pan out of the tank.</param>
    public static Doubt Question(Added added, bool hasFloat) =>
        new($"{Amount.Plain(added.Measure)} of {added.Liquid}: into the pan, or into the tank?", $"Not counted until you say. Yes means the {(IsForTank(added, hasFloat) ? "tank" : "pan")}.");

    /// <summary>What a bare yes makes of it: where a float feeds the pan, sap goes into the tank; water, and sap without a float, into the pan.</summary>
    public static Did ByYes(Added added, Moment at, bool hasFloat) => IsForTank(added, hasFloat) ? added.IntoTank(at) : added.IntoPan(at);

    /// <summary>The question told once more.</summary>
    public static string StillOpen(Added added) => $"Still open: {Describe.Line(added)}, into the pan or the tank? 'pan' or 'tank' answers this.";

    private static bool IsForTank(Added added, bool hasFloat) => hasFloat && added.Liquid == Liquids.Sap;

    /// <summary>The deed that a typed answer makes of it; null where the words are no answer.</summary>
    public static Did? Answered(Added added, Moment at, string words)
    {
        var said = words.Trim().TrimEnd('.', '!').ToLowerInvariant();
        foreach (var lead in new[] { "in ", "into ", "to ", "the ", "head " })
        {
            said = said.StartsWith(lead, StringComparison.Ordinal) ? said[lead.Length..] : said;
        }

        return said switch
        {
            "pan" => added.IntoPan(at),
            "tank" => added.IntoTank(at),
            _ => null,
        };
    }
}
