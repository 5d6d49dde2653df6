using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Lines;
using Panside.Guide.Words;

namespace Panside.Screen.Painting;

/// <summary>Advice of danger, or to be followed now, that was given and whose reason still holds.</summary>
internal static class Alarm
{
    /// <summary>The gravest in one line; null where there is none.</summary>
    public static StyledLine? Of(Situation now)
    {
        if (now.State.Step.Length == 0 || now.State.IsOver)
        {
            return null;
        }

        var phase = now.Setting.Flow.PhaseOf(now.State.Step).Code;
        var open = now.Setting.Flow.Advices
            .Where(rule => Entry.ToneOf(rule.Urgency) != Tone.Plain && now.State.Advised.ContainsKey(rule.Id)
                && (rule.Phases.Count == 0 || rule.Phases.Contains(phase)) && rule.When.All(fact => Facts.Holds(now, fact)))
            .OrderByDescending(rule => rule.Urgency == "danger")
            .ToList();
        if (open.Count == 0)
        {
            return null;
        }

        var gravest = open[0];
        var text = Template.Fill(gravest.Text, figure => Figures.Of(now, figure));
        var more = open.Count > 1 ? $" (and {open.Count - 1} more)" : "";
        return StyledLine.Of(Words(gravest.Action, gravest.Urgency, text).First() + more, Entry.ToneOf(gravest.Urgency));
    }

    /// <summary>An advice in the words of every face.</summary>
    public static IEnumerable<string> Words(string action, string urgency, string text, string because = "") =>
        LinesOfText.Of([new AdviceLine(null, 0, new(action, urgency, text, because, null))]);
}
