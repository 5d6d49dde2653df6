using Panside.Guide.Debriefing;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Guide.Words;
using Panside.Journal;

namespace Panside.Commands;

/// <summary>A session whose record is there: to be shown again, or run through the assistant again. It is read as a stream, anew each time.</summary>
/// <param name="path">The record's name.</param>
/// <param name="lines">Its lines.</param>
/// <param name="setting">What it ran on.</param>
internal sealed class PastSession(string path, Func<IEnumerable<string>> lines, Setting setting)
{
    private Exchanges _read = new();

    /// <summary>The time of its first line; null where no line has a good one.</summary>
    public Moment? Start => All().Select(exchange => At(exchange.Line)).FirstOrDefault(at => at is not null);

    /// <summary>The numbers of the lines that could not be read, as far as it was read.</summary>
    public IReadOnlyList<int> Damaged => _read.Damaged;

    /// <summary>What a person should know of it, once it was read; null for nothing.</summary>
    public string? Notice => Damaged.Count > 0 ? $"Damaged lines, left out: {string.Join(", ", Damaged.Take(10))}. 'panside check' tells more." : null;

    /// <summary>
    /// Its exchanges as text, as they were said, each with its time; exchanges that say nothing to a person are left out. Nothing is
    /// reckoned: however long the boil was, its first line is there at once.
    /// </summary>
    public IEnumerable<(Moment At, IReadOnlyList<string> Lines)> Told()
    {
        Moment? now = null;
        foreach (var exchange in All())
        {
            var line = exchange.Line;
            now = At(line) is { } at && !(at.Time < now?.Time) ? at : now;
            var told = LinesOfText.Of([.. exchange.Answers.Select(answer => AnswerReader.Read(answer.Text)).OfType<LineOut>().Select(WithWays)]).ToList();
            if (now is { } time && (told.Count > 0 || line is not Tick))
            {
                var practice = setting.Header.Practice ? " PRACTICE" : "";
                var head = $"[{time.Time:HH:mm}{practice}] {Said(exchange, line)}".TrimEnd();
                yield return (time, [head, .. told]);
            }
        }
    }

    /// <summary>The whole boil, heard again; it has no exchange where no line has a good time.</summary>
    public PastBoil Boil() => new(setting, Heard());

    /// <summary>Runs the record through the assistant again, to the first difference.</summary>
    /// <param name="output">Where it is told.</param>
    /// <param name="errors">Where it is told what is damaged.</param>
    /// <param name="otherFlow">That the flow is another than the record's; null where it is the same. Then the difference is told in words.</param>
    /// <returns>The exit status.</returns>
    public int Verify(TextWriter output, TextWriter errors, string? otherFlow = null)
    {
        if (otherFlow is not null)
        {
            errors.WriteLine(otherFlow);
            var first = ChangedFlow.FirstDifference(setting, All());
            foreach (var line in first is null ? [$"{path}: this flow says the same on this record, to its end"] : ChangedFlow.Told(path, setting.Flow, first))
            {
                output.WriteLine(line);
            }

            if (Notice is { } notice)
            {
                errors.WriteLine(notice);
            }

            return first is null ? ExitStatus.Done : ExitStatus.Wrong;
        }

        var (count, last) = (0, 0);
        foreach (var (exchange, _, difference) in Rehearing.Of(new Session(setting), All()))
        {
            if (difference is not null)
            {
                // A damaged line between what agrees and what does not is the cause.
                var damaged = Damaged.FirstOrDefault(number => number > last && number <= difference.LineNumber);
                output.WriteLine(damaged > 0
                    ? $"{path}:{damaged}: the line is damaged; from here on the answers differ"
                    : $"{path}:{difference.LineNumber}: the first difference");
                output.WriteLine($"stood: {difference.Stood ?? "nothing"}");
                output.WriteLine($"comes: {difference.Comes ?? "nothing"}");
                return ExitStatus.Wrong;
            }

            count += (exchange.Text is null ? 0 : 1) + exchange.Answers.Count + 1;
            last = exchange.LastNumber;
        }

        if (Damaged.Count > 0)
        {
            errors.WriteLine($"{path}: damaged lines, left out: {string.Join(", ", Damaged.Take(10))}. 'panside check' tells more.");
        }

        output.WriteLine($"{count} lines, no difference");
        return ExitStatus.Done;
    }

    /// <summary>A record does not say whether a step may be skipped or put off: the flow does.</summary>
    private LineOut WithWays(LineOut line) =>
        line is PromptLine prompt && setting.Flow.Steps.TryGetValue(prompt.Prompt.Step, out var step)
            ? prompt with { Prompt = prompt.Prompt with { CanSkip = step.CanSkip, CanWait = step.CanWait } }
            : line;

    private IEnumerable<Exchange> All()
    {
        _read = new();
        return _read.Of(lines());
    }

    private IEnumerable<(PastExchange, SessionState)> Heard()
    {
        Moment? now = null;
        var session = new Session(setting);
        foreach (var (exchange, answers, difference) in Rehearing.Of(session, All()))
        {
            var line = exchange.Line;
            now = At(line) is { } at && !(at.Time < now?.Time) ? at : now;
            if (now is { } time)
            {
                var said = Said(exchange, line);
                yield return (new(exchange.LineNumber, time, line, said.Length > 0 ? said : null, answers, difference?.LineNumber), session.State);
            }
        }
    }

    private static string Said(Exchange exchange, LineIn? line) => line switch
    {
        null => "(a line without a good time)",
        Tick => "",
        Resumed => "(the session goes on)",
        Unreadable => exchange.Raw!,
        _ => Describe.Line(line),
    };

    private static Moment? At(LineIn? line) => line is null or Unreadable { Stated: null } ? null : line.At;
}
