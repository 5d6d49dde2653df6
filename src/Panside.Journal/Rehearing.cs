using System.Text.Json;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;

namespace Panside.Journal;

/// <summary>Where a record says something else than the assistant says now.</summary>
/// <param name="LineNumber">The number of the line in the record, from 1.</param>
/// <param name="Stood">What stands there; null where the record has nothing.</param>
/// <param name="Comes">What comes now; null where nothing does.</param>
public sealed record Difference(int LineNumber, string? Stood, string? Comes);

/// <summary>One exchange of a record, heard again.</summary>
/// <param name="Exchange">As the record has it.</param>
/// <param name="Answers">What the assistant says now.</param>
/// <param name="Difference">The first difference between the two; null where there is none.</param>
public sealed record Reheard(Exchange Exchange, IReadOnlyList<LineOut> Answers, Difference? Difference);

/// <summary>Hears a record's lines in again: to go on from it, to show it, to compare its answers.</summary>
public static class Rehearing
{
    /// <summary>The exchanges, one after the other, as the session is brought through them.</summary>
    public static IEnumerable<Reheard> Of(Session session, Record record) => Of(session, record.Exchanges);

    /// <summary>The exchanges, one after the other, as the session is brought through them.</summary>
    public static IEnumerable<Reheard> Of(Session session, IEnumerable<Exchange> exchanges)
    {
        foreach (var exchange in exchanges)
        {
            var answers = exchange.Line is { } line ? session.Hear(line) : Recall(session, exchange);
            yield return new(exchange, answers, Compare(exchange, answers, LineWriter.Ready(session.State.Now)));
        }
    }

    /// <summary>A line in that had no good time was not kept, only its refusals.</summary>
    private static List<LineOut> Recall(Session session, Exchange exchange)
    {
        var answers = new List<LineOut>();
        foreach (var kept in exchange.Answers)
        {
            var (why, field) = Refusal(kept.Text);
            var line = new RefusedLine(session.State.Now, session.State.Sequence + 1, why, field);
            session.Recall(line);
            answers.Add(line);
        }

        return answers;
    }

    private static Difference? Compare(Exchange exchange, IReadOnlyList<LineOut> answers, string ready)
    {
        var stood = exchange.Ready is { } mark ? [.. exchange.Answers, mark] : exchange.Answers;
        string[] comes = [.. answers.Select(LineWriter.Write), ready];
        for (var index = 0; index < int.Max(stood.Count, comes.Length); index++)
        {
            var there = index < stood.Count ? stood[index] : new RecordedLine(exchange.LastNumber + 1, null!);
            var now = index < comes.Length ? comes[index] : null;
            if (there.Text != now)
            {
                return new(there.Number, there.Text, now);
            }
        }

        return null;
    }

    private static (string Why, string? Field) Refusal(string text)
    {
        try
        {
            using var document = JsonDocument.Parse(text);
            string? Text(string key) =>
                document.RootElement.TryGetProperty("refused", out var refused) && refused.ValueKind == JsonValueKind.Object
                && refused.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.String
                    ? value.GetString()
                    : null;
            return (Text("why") ?? "", Text("field"));
        }
        catch (Exception fault) when (LineReader.IsNoJson(fault))
        {
            return ("", null);
        }
    }
}
