using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Sessions;

namespace Panside.Screen.Painting;

/// <summary>Where the procedure stands: done, now, next.</summary>
internal static class StepRows
{
    private const int LabelWidth = 10;

    /// <summary>The rows.</summary>
    public static IEnumerable<PanelRow> Of(Situation now)
    {
        var state = now.State;
        if (state.Step.Length == 0)
        {
            yield break;
        }

        if (state.Done.Count > 0)
        {
            yield return Row("Done", Dues.Name(state.Done[^1]), PanelRow.Extra);
        }

        yield return Row("Now", state.IsOver ? "over" : Dues.Name(state.Open?.Step ?? state.Step), PanelRow.Deciding, Tone.Strong);
        if (Next(now) is { } next)
        {
            yield return Row("Next", Dues.Name(next), PanelRow.Useful);
        }

        if (state.Skipped.Count > 0)
        {
            yield return Row("Skipped", $"{state.Skipped.Count}; type 'skipped'", PanelRow.Useful);
        }
    }

    private static PanelRow Row(string label, string value, int rank, Tone tone = Tone.Plain) =>
        PanelRow.Of(label, LabelWidth, value, rank, tone);

    /// <summary>Where the flow would go when the step is answered; null where time decides.</summary>
    private static string? Next(Situation now)
    {
        var (setting, state) = (now.Setting, now.State);
        if (state.IsOver || setting.Flow.Steps[state.Step].Ask is null)
        {
            return null;
        }

        string? From(string step) => setting.Machine.Next(step, "answer skip", state.ReturnTo, fact => Facts.Holds(now, fact));
        var next = From(state.Step);
        while (next is not null && next != Flow.End && setting.Guidance == Guidance.Practised && setting.Flow.Steps[next].BeginnerOnly)
        {
            next = From(next);
        }

        return next;
    }
}
