using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Lines;
using Panside.Guide.Words;

namespace Panside.Screen.Painting;

/// <summary>Advice that was given and whose reason still holds.</summary>
internal static class Standing
{
    /// <summary>The gravest advice of danger, or to be followed now; null where there is none.</summary>
    /// <param name="now">The situation.</param>
    /// <param name="told">The action that stands in the step's place already; null for none.</param>
    public static StyledLine? Alarm(Situation now, string? told = null)
    {
        var open = Alarms(now).Where(rule => rule.Action != told).ToList();
        return open.Count == 0
            ? null
            : StyledLine.Of(
                Words(now, open[0])[0] + (open.Count > 1 ? $" (and {open.Count - 1} more)" : ""), Entry.ToneOf(open[0].Urgency));
    }

    /// <summary>The gravest alarm that asks for an action, in words; null where there is none.</summary>
    public static (IReadOnlyList<string> Words, Tone Tone)? AlarmOf(Situation now, string? action) =>
        Alarms(now).FirstOrDefault(rule => rule.Action == action) is { } rule ? (Words(now, rule), Entry.ToneOf(rule.Urgency)) : null;

    /// <summary>Advice that can be followed in peace, with its reason; empty where there is none.</summary>
    public static IReadOnlyList<string> Quiet(Situation now) =>
        Of(now).Where(rule => !IsAlarm(rule)).Select(rule => Words(now, rule)).LastOrDefault() ?? [];

    /// <summary>An advice in the words of every face.</summary>
    public static IEnumerable<string> Words(string action, string urgency, string text, string because) =>
        LinesOfText.Of([new AdviceLine(null, 0, new(action, urgency, text, because, null))]);

    private static IEnumerable<AdviceRule> Of(Situation now)
    {
        if (now.State.Step.Length == 0 || now.State.IsOver)
        {
            return [];
        }

        var phase = now.Setting.Flow.PhaseOf(now.State.Step).Code;
        return now.Setting.Flow.Advices.Where(rule =>
            now.State.Advised.ContainsKey(rule.Id)
            && (rule.Phases.Count == 0 || rule.Phases.Contains(phase))
            && rule.When.All(fact => Facts.Holds(now, fact)));
    }

    private static IEnumerable<AdviceRule> Alarms(Situation now) =>
        Of(now).Where(IsAlarm).OrderByDescending(rule => rule.Urgency == "danger");

    private static bool IsAlarm(AdviceRule rule) => Entry.ToneOf(rule.Urgency) != Tone.Plain;

    private static IReadOnlyList<string> Words(Situation now, AdviceRule rule)
    {
        string Filled(string text) => Template.Fill(text, figure => Figures.Of(now, figure));
        return [.. Words(rule.Action, rule.Urgency, Filled(rule.Text), Filled(rule.Because))];
    }
}
