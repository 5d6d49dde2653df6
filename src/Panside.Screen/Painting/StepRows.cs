using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Screen.Painting;

/// <summary>Where the procedure stands: done, now, next.</summary>
internal static class StepRows
{
    private const int LabelWidth = 6;
    private const string GoesOn = "as it goes on";

    /// <summary>The rows.</summary>
    public static IEnumerable<PanelRow> Of(Situation now)
    {
        var state = now.State;
        if (state.Step.Length == 0)
        {
            yield break;
        }

        yield return Row("Done", state.Done.Count > 0 ? Dues.What(now.Setting, state.Done[^1]) : "nothing yet", PanelRow.Placing);
        yield return Row("Now", state.IsOver ? "over" : Dues.What(now.Setting, state.Open?.Step ?? state.Step), PanelRow.Deciding, Tone.Strong);
        if (Next(now) is { } next)
        {
            // Two looks may ask for one thing: that is no next.
            yield return Row("Next", next == Dues.What(now.Setting, state.Open?.Step ?? state.Step) ? GoesOn : next, PanelRow.Placing);
        }

        if (state.Skipped.Count > 0)
        {
            var steps = state.Skipped.Count == 1 ? "1 step was" : $"{state.Skipped.Count} steps were";
            yield return PanelRow.Of(PanelRow.Useful, $"{steps} skipped; type 'skipped'", $"{state.Skipped.Count} skipped; type 'skipped'");
        }
    }

    private static PanelRow Row(string label, string value, int rank, Tone tone = Tone.Plain) =>
        new(rank, tone, Columns.Pad(label, LabelWidth) + value);

    /// <summary>Where the flow would go when the step is answered, or what time brings; null after the end.</summary>
    private static string? Next(Situation now)
    {
        var (setting, state) = (now.Setting, now.State);
        if (state.IsOver)
        {
            return null;
        }

        if (setting.Flow.Steps[state.Step].Ask is null)
        {
            return Dues.Soonest(now)?.What ?? (now.Unmet.Count == 0 ? "leaving" : "what you see");
        }

        if (state.Open is { } open && open.Step != state.Step)
        {
            // A watch is asked while the step waits for its time.
            return Dues.What(setting, state.Step);
        }

        string? By(string step, string trigger) => setting.Machine.Next(step, trigger, state.ReturnTo, fact => Facts.Holds(now, fact));

        // A critical step is not skipped: there the answer leads on.
        string? From(string step) => By(step, "answer skip") ?? By(step, Prompt.AnsweredBy(setting.Flow.Steps[step].Ask));
        // Steps that are passed by and lead back to each other are not gone round, and none of them is named.
        var (next, passed) = (From(state.Step), new HashSet<string>());
        while (next is not (null or Flow.End or Flow.LeftAlone) && setting.PassesBy(setting.Flow.Steps[next], fact => Facts.Holds(now, fact)))
        {
            next = passed.Add(next) ? From(next) : null;
        }

        return next is null ? GoesOn : Dues.What(setting, next);
    }
}
