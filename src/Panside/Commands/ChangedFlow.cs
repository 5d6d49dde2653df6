using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Sessions;
using Panside.Guide.Words;
using Panside.Journal;

namespace Panside.Commands;

/// <summary>Where a record says something else than a flow that it was not made with.</summary>
/// <param name="Difference">The line of the record, and both lines.</param>
/// <param name="At">Its time; null before the first line with a good one.</param>
/// <param name="Asked">What the record asked in that exchange; null for nothing.</param>
/// <param name="Asks">What the changed flow asks there; null for nothing.</param>
internal sealed record FlowDifference(Difference Difference, Moment? At, Prompt? Asked, Prompt? Asks);

/// <summary>A record that was made with another flow, run through this one: who changes a flow wants to know what it changes on a real boil.</summary>
internal static class ChangedFlow
{
    /// <summary>The first difference; null where the flow says the same to the end.</summary>
    /// <param name="setting">What the record's session ran on, with the changed flow.</param>
    /// <param name="exchanges">The record.</param>
    public static FlowDifference? FirstDifference(Setting setting, IEnumerable<Exchange> exchanges)
    {
        var session = new Session(setting);
        foreach (var (exchange, answers, difference) in Rehearing.Of(session, exchanges))
        {
            // The power went before the rest of its answers: what is missing says nothing about the flow.
            if (difference is not null && (difference.Stood is not null || exchange.IsComplete))
            {
                return new(difference, session.State.Now, Asked(exchange.Answers.Select(answer => AnswerReader.Read(answer.Text))), Asked(answers));
            }
        }

        return null;
    }

    /// <summary>It in words: where it is, what was said then, what this flow says, and why.</summary>
    /// <param name="path">The record's name.</param>
    /// <param name="flow">The changed flow.</param>
    /// <param name="first">The difference.</param>
    public static IReadOnlyList<string> Told(string path, Flow flow, FlowDifference first)
    {
        var (stood, comes) = (Line(first.Difference.Stood), Line(first.Difference.Comes));
        return
        [
            $"{path}:{first.Difference.LineNumber}: the first difference{(first.At is { } at ? $", at {at.Time:HH:mm}" : "")}",
            $"said then: {(IsAside(stood, comes) ? "nothing" : Said(stood))}",
            $"this flow: {(IsAside(comes, stood) ? "nothing" : Said(comes))}",
            .. Why(flow, first.Asked, first.Asks),
        ];
    }

    private static LineOut? Line(string? text) => text is null ? null : AnswerReader.Read(text);

    /// <summary>Forecasts come last: one that stands where the other says something says that here nothing is.</summary>
    private static bool IsAside(LineOut? line, LineOut? other) => line is ForecastLine && other is not (null or ForecastLine);

    private static string Said(LineOut? line) => line switch
    {
        null => "nothing",
        PromptLine(_, _, var prompt) => $"{prompt.Text} ('{prompt.Step}')",
        PhaseLine(_, _, var phase) => $"the phase '{phase}'",
        ForecastLine(_, _, var forecast) => $"the forecast '{forecast.Name}'",
        SessionLine => "what the session runs on",
        _ => string.Join(' ', LinesOfText.Of([line])),
    };

    private static Prompt? Asked(IEnumerable<LineOut?> answers) => answers.OfType<PromptLine>().LastOrDefault()?.Prompt;

    private static IEnumerable<string> Why(Flow flow, Prompt? asked, Prompt? asks)
    {
        if (asked is not null && asked.Step == asks?.Step)
        {
            yield return asked.Text == asks.Text ? $"'{asks.Step}' is asked by both." : $"'{asks.Step}' is worded otherwise.";
        }
        else if (asked is not null || asks is not null)
        {
            yield return $"The record goes on with {Named(asked)}, this flow with {Named(asks)}.";
        }

        foreach (var step in new[] { asked, asks }.OfType<Prompt>().Select(prompt => prompt.Step).Distinct())
        {
            yield return About(flow, step);
        }
    }

    private static string Named(Prompt? prompt) => prompt is null ? "nothing" : $"'{prompt.Step}'";

    private static string About(Flow flow, string id) =>
        flow.Watches.FirstOrDefault(watch => watch.Id == id) is { } watch
            ? $"'{id}' is a watch; this flow asks it {Often(watch.Every)}{(watch.EveryPractised is { } practised ? $", a practised hand {Often(practised)}" : "")}."
            : flow.Steps.TryGetValue(id, out var step) ? $"'{id}' is a step of the phase '{step.Phase.Code}' in this flow, which stands at line {step.Place.Line}."
            : $"'{id}' does not stand in this flow.";

    private static string Often(TimeSpan? every) => every is { } time ? $"every {Amount.Minutes(time.TotalMinutes)}" : "as often as wood goes in";
}
