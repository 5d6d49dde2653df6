using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Words;

/// <summary>Lines out as lines of text, for every face that shows a conversation. Forecasts are told with advice and by <c>status</c>.</summary>
public static class LinesOfText
{
    /// <summary>The text of an answer; an advice and the prompt that repeats it are told once.</summary>
    public static IEnumerable<string> Of(IReadOnlyList<LineOut> lines)
    {
        var advised = "";
        foreach (var line in lines)
        {
            var shorter = line is PromptLine(_, _, var prompt) && prompt.Text == advised;
            foreach (var text in shorter ? [Hint(((PromptLine)line).Prompt)] : Of(line))
            {
                yield return text;
            }

            advised = line is AdviceLine(_, _, var advice) ? advice.Text : advised;
        }
    }

    /// <summary>What may be answered to a prompt, in brackets: unit, range, last value with its age.</summary>
    public static string Hint(Prompt prompt)
    {
        if (prompt.Choices is { } choices)
        {
            return $"  [{string.Join(", ", choices)}]";
        }

        if (prompt.Unit is not { } unit || prompt.Low is not { } low || prompt.High is not { } high)
        {
            return $"  [yes, no{(prompt.CanSkip ? ", skip" : "")}{(prompt.CanWait ? ", later" : "")}]";
        }

        var last = prompt is { Last: { } value, LastMinutes: { } minutes }
            ? $"; last {Amount.Plain(new Measure(value, unit))}, {Amount.Minutes(minutes)} ago"
            : "";
        return $"  [usually {Amount.Range(low, high, unit)}{last}]";
    }

    private static IEnumerable<string> Of(LineOut line) => line switch
    {
        PhaseLine phase => [$"=== {phase.Phase} ==="],
        PromptLine(_, _, var prompt) => prompt.Because is { } because
            ? [$"> {prompt.Text}", $"  Why: {because}", Hint(prompt)]
            : [$"> {prompt.Text}", Hint(prompt)],
        AdviceLine(_, _, var advice) => advice.Because.Length > 0
            ? [$"{Mark(advice.Urgency)} {advice.Text}", $"  Why: {advice.Because}"]
            : [$"{Mark(advice.Urgency)} {advice.Text}"],
        CautionLine caution => [$"! Caution: {caution.Text}"],
        HeardLine heard => [$"  Heard: {Describe.Line(heard.As)}."],
        QuestionLine { Choices: { } choices } question => [$"? {question.Text}", $"  {question.WouldTake} [{string.Join(", ", choices)}, no]"],
        QuestionLine question => [$"? {question.Text}", $"  {question.WouldTake} [yes, no, or say it anew]"],
        RefusedLine refused => [$"x {refused.Why}"],
        ToldLine told => [$"- {told.Text}"],
        OverLine over => [$"- {over.Outcome.Text}", .. Totals(over.Outcome)],
        _ => [],
    };

    private static IEnumerable<string> Totals(Outcome outcome)
    {
        var parts = new (string Name, Measure? Measure)[]
        {
            ("sap used", outcome.SapUsed), ("syrup made", outcome.SyrupMade), ("density", outcome.SyrupBrix), ("wood", outcome.Wood),
            ("left in the tank", outcome.TankVolume),
        };
        var isDrawn = outcome.SyrupMade is not { Value: 0 };
        yield return "- " + string.Join("; ", parts
            .Where(part => (isDrawn || part.Name != "density") && (part.Measure is not null || part.Name != "wood"))
            .Select(part => !isDrawn && part.Name == "syrup made" ? "no syrup drawn"
                : $"{part.Name} {(part.Measure is { } m ? Amount.Shown(m) : "not known")}")) + ".";
        if (outcome.Skipped.Count > 0)
        {
            yield return "- Skipped: " + string.Join(", ", outcome.Skipped.Select(step => step.Replace('-', ' '))) + ".";
        }
    }

    /// <summary>The mark that an advice of an urgency begins with.</summary>
    public static string Mark(string urgency) => urgency switch
    {
        "danger" => "!!! DANGER:",
        "now" => "!! NOW:",
        "soon" => "* Soon:",
        _ => "*",
    };
}
