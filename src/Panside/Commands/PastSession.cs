using Panside.Guide.Debriefing;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Guide.Words;
using Panside.Journal;

namespace Panside.Commands;

/// <summary>A session whose record is there: to be shown again, or run through the assistant again.</summary>
internal sealed class PastSession(string path, Record record, Setting setting)
{
    /// <summary>The time of its first line; null where no line has a good one.</summary>
    public Moment? Start => record.Exchanges.Select(At).FirstOrDefault(at => at is not null);

    /// <summary>The numbers of the lines that could not be read.</summary>
    public IReadOnlyList<int> Damaged => record.Damaged;

    /// <summary>What a person should know before it is shown; null for nothing.</summary>
    public string? Notice => Damaged.Count > 0 ? $"Damaged lines, left out: {string.Join(", ", Damaged.Take(10))}. 'panside check' tells more." : null;

    /// <summary>Its exchanges as text, each with its time; exchanges that say nothing to a person are left out.</summary>
    public IEnumerable<(Moment At, IReadOnlyList<string> Lines, Difference? Difference)> Told()
    {
        Moment? now = null;
        foreach (var (exchange, answers, difference) in Rehearing.Of(new Session(setting), record))
        {
            now = At(exchange) is { } at && !(at.Time < now?.Time) ? at : now;
            var told = LinesOfText.Of(answers).ToList();
            if (now is { } time && (told.Count > 0 || exchange.Line is not Tick))
            {
                var practice = setting.Header.Practice ? " PRACTICE" : "";
                var head = $"[{time.Time:HH:mm}{practice}] {Said(exchange)}".TrimEnd();
                yield return (time, [head, .. told], difference);
            }
        }
    }

    /// <summary>The whole boil, heard again; it has no exchange where no line has a good time.</summary>
    public PastBoil Boil() => new(setting, Heard());

    /// <summary>Runs the record through the assistant again, to the first difference.</summary>
    /// <returns>The exit status.</returns>
    public int Verify(TextWriter output, TextWriter errors)
    {
        var (lines, last) = (0, 0);
        foreach (var (exchange, _, difference) in Rehearing.Of(new Session(setting), record))
        {
            if (difference is not null)
            {
                // A damaged line between what agrees and what does not is the cause.
                var damaged = record.Damaged.FirstOrDefault(number => number > last && number <= difference.LineNumber);
                output.WriteLine(damaged > 0
                    ? $"{path}:{damaged}: the line is damaged; from here on the answers differ"
                    : $"{path}:{difference.LineNumber}: the first difference");
                output.WriteLine($"stood: {difference.Stood ?? "nothing"}");
                output.WriteLine($"comes: {difference.Comes ?? "nothing"}");
                return ExitStatus.Wrong;
            }

            lines += (exchange.Raw is null ? 0 : 1) + exchange.Answers.Count + 1;
            last = exchange.LastNumber;
        }

        if (record.Damaged.Count > 0)
        {
            errors.WriteLine($"{path}: damaged lines, left out: {string.Join(", ", record.Damaged.Take(10))}. 'panside check' tells more.");
        }

        output.WriteLine($"{lines} lines, no difference");
        return ExitStatus.Done;
    }

    private IEnumerable<(PastExchange, SessionState)> Heard()
    {
        Moment? now = null;
        var session = new Session(setting);
        foreach (var (exchange, answers, difference) in Rehearing.Of(session, record))
        {
            now = At(exchange) is { } at && !(at.Time < now?.Time) ? at : now;
            if (now is { } time)
            {
                var said = Said(exchange);
                yield return (new(exchange.LineNumber, time, exchange.Line, said.Length > 0 ? said : null, answers, difference?.LineNumber), session.State);
            }
        }
    }

    private static string Said(Exchange exchange) => exchange.Line switch
    {
        null => "(a line without a good time)",
        Tick => "",
        Resumed => "(the session goes on)",
        Unreadable => exchange.Raw!,
        var line => Describe.Line(line),
    };

    private static Moment? At(Exchange exchange) => exchange.Line is null or Unreadable { Stated: null } ? null : exchange.Line.At;
}
