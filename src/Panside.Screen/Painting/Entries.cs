using System.Globalization;
using Panside.Guide.Lines;
using Panside.Guide.Words;

namespace Panside.Screen.Painting;

/// <summary>Lines out as things said in the conversation.</summary>
internal static class Entries
{
    /// <summary>What the operator typed.</summary>
    public static Entry Typed(Moment at, string words) =>
        new("", [$"{Clock(at)} You: {Columns.Clean(words)}"], Tone.Strong, EntryKind.Typed);

    /// <summary>The answer to a line.</summary>
    /// <param name="lines">The lines out.</param>
    /// <param name="at">When.</param>
    /// <param name="typed">What was typed; null where time alone brought the answer.</param>
    public static IReadOnlyList<Entry> Of(IReadOnlyList<LineOut> lines, Moment at, string? typed)
    {
        var entries = new List<Entry>();
        var time = typed is null ? Clock(at) : "";
        for (var index = 0; index < lines.Count; index++)
        {
            var advice = lines[index] as AdviceLine;
            var isTwin = advice is not null && index + 1 < lines.Count
                && lines[index + 1] is PromptLine next && next.Prompt.Text == advice.Advice.Text;
            if (One(lines[index], isTwin, typed) is { } entry)
            {
                entries.Add(entry with { Time = time, Texts = [.. entry.Texts.Select(Columns.Clean)] });
                time = "";
            }

            // An advice and the prompt that repeats it are told once.
            index += isTwin ? 1 : 0;
        }

        return entries;
    }

    /// <summary>Hour and minute.</summary>
    public static string Clock(Moment at) => at.Time.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static Entry? One(LineOut line, bool isTwin, string? typed) => line switch
    {
        HeardLine heard when string.Equals(Describe.Line(heard.As), typed?.Trim(), StringComparison.OrdinalIgnoreCase) => null,
        AdviceLine advice => new(
            "", isTwin ? [LinesOfText.Of([line]).First()] : [.. LinesOfText.Of([line])],
            Entry.ToneOf(advice.Advice.Urgency), isTwin ? EntryKind.Prompt : EntryKind.Said),
        PromptLine => new("", [LinesOfText.Of([line]).First()], Tone.Plain, EntryKind.Prompt),
        QuestionLine => new("", [.. LinesOfText.Of([line])], Tone.Doubt, EntryKind.Question),
        RefusedLine => new("", [.. LinesOfText.Of([line])], Tone.Doubt),
        PhaseLine => new("", [.. LinesOfText.Of([line])], Tone.Strong),
        _ => LinesOfText.Of([line]).ToList() is { Count: > 0 } texts ? new("", texts) : null,
    };
}
