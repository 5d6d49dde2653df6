using System.Text.Json;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;
using Panside.Journal;

namespace Panside.Commands;

/// <summary>Finds what is wrong in a session's record: damaged lines, gaps, times that go backward, unknown keys.</summary>
internal sealed class RecordCheck
{
    private readonly string _file;
    /// <summary>More faults are not told: who mends these finds the others next time.</summary>
    private const int MostFaults = 1000;

    private readonly List<Fault> _faults = [];
    private readonly Dictionary<int, string> _texts = [];
    private int _sequence;
    private int _told;
    private Moment? _now;

    private RecordCheck(string file) => _file = file;

    /// <summary>Checks a record, one exchange after the other.</summary>
    /// <param name="file">The name for faults.</param>
    /// <param name="bytes">What stands in it.</param>
    /// <param name="progress">Told the number of each line that was read; null for nobody.</param>
    /// <returns>The number of its lines.</returns>
    /// <exception cref="FaultyFileException">With every fault in it, each with its place; of very many, the first.</exception>
    public static int Demand(string file, Stream bytes, Action<int>? progress = null)
    {
        var (check, exchanges) = (new RecordCheck(file), new Exchanges());
        check.All(exchanges, check.Lines(bytes, progress));
        return check._faults.Count == 0
            ? exchanges.Number
            : throw new FaultyFileException([.. check._faults.OrderBy(fault => fault.Line).ThenBy(fault => fault.Column)]);
    }

    /// <summary>The lines, each with what is damaged in it told.</summary>
    private IEnumerable<string> Lines(Stream bytes, Action<int>? progress)
    {
        var number = 0;
        foreach (var (line, text, hasEnd) in RecordBytes.Lines(bytes))
        {
            number++;
            if (RecordBytes.Damage(line) is var (column, wrong))
            {
                Add(number, column, wrong, "one whole JSON object a line");
            }
            else if (!hasEnd)
            {
                Add(number, text.Length + 1, "the last line has no line break", "one after every line; going on with the record adds it");
            }

            _texts[number] = text;
            progress?.Invoke(number);
            yield return text;
        }
    }

    private void All(Exchanges reader, IEnumerable<string> lines)
    {
        var sessions = 0;
        (SessionHeader Header, int Number)? header = null;
        foreach (var exchange in reader.Of(lines))
        {
            var shapes = exchange.Answers.Select(answer => LineShape.Of(answer.Text)).ToList();
            LineIn(exchange, isRefused: shapes.Any(shape => shape.Key == "refused"));
            foreach (var (answer, shape) in exchange.Answers.Zip(shapes))
            {
                sessions += shape.Key == "session" ? 1 : 0;
                header ??= shape.Header is { } found ? (found, answer.Number) : null;
                if (shape.Key == "session" && (shape.Header is null || sessions > 1))
                {
                    AddAt(answer.Number, "session", sessions > 1 ? "a second session line" : "the session line is not whole", "one, with flow, rig and guidance");
                }

                try
                {
                    LineOut(answer, shape, exchange.Text is null);
                }
                catch (Exception fault) when (LineReader.IsNoJson(fault))
                {
                    // JSON that stands is read text by text, and a text may yet be none.
                    Add(answer.Number, 1, "half a character is escaped in the line", "whole characters");
                }

                if (sessions == 1 && header is { } told && told.Number == answer.Number)
                {
                    Rig(told.Header, told.Number);
                }
            }

            if (!exchange.IsComplete)
            {
                Add(exchange.LastNumber, 1, "no ready mark follows these answers", "{\"at\":…,\"ready\":true} after the last answer");
            }

            // Only what may still be told of is kept.
            for (; _told <= exchange.LastNumber; _told++)
            {
                _texts.Remove(_told);
            }

            if (_faults.Count >= MostFaults)
            {
                Add(exchange.LastNumber, 1, $"{_faults.Count} faults so far; the lines from here on were not looked at", "fewer");
                return;
            }
        }

        if (header is null && sessions == 0)
        {
            Add(1, 1, "no session line was found", "the record of a boil, whose first answer tells flow and rig");
        }
    }

    /// <summary>A line that was refused stands as it was said; the record is right to keep it.</summary>
    private void LineIn(Exchange exchange, bool isRefused)
    {
        if (exchange.Line is not { } line)
        {
            return;
        }

        if (line is Unreadable unreadable && !isRefused)
        {
            AddAt(exchange.LineNumber, unreadable.Field, unreadable.Why.Split(". Expected")[0].TrimEnd('.'), "a line in, or the refusal of it among its answers");
        }

        if (line is not Unreadable { Stated: null } && !(isRefused && line.At.Time < _now?.Time))
        {
            Time(exchange.LineNumber, line.At);
        }
    }

    private void LineOut(RecordedLine answer, LineShape shape, bool isAlone)
    {
        using var document = JsonDocument.Parse(answer.Text);
        var root = document.RootElement;
        if (shape.Sequence != _sequence + 1)
        {
            AddAt(answer.Number, "seq", $"seq is {shape.Sequence}", $"{_sequence + 1}, one more than before");
        }

        if (isAlone && shape.Key != "refused")
        {
            AddAt(answer.Number, shape.Key, $"'{shape.Key}' answers no line in", "the line in before its answers");
        }

        _sequence = shape.Sequence;
        if (!root.TryGetProperty("at", out var at) || (at.ValueKind == JsonValueKind.Null) != _now is null
            || (_now is not null && (at.ValueKind != JsonValueKind.String || Moment.Read(at.GetString()!) is null)))
        {
            AddAt(answer.Number, "at", "the time is missing or is none", "that of the line in, or null before the first");
        }
        else if (_now is not null)
        {
            Time(answer.Number, Moment.Read(at.GetString()!)!.Value);
        }

        if (!LineShape.OutKeys.Contains(shape.Key))
        {
            AddAt(answer.Number, shape.Key, $"unknown key '{shape.Key}'", "one of " + string.Join(", ", LineShape.OutKeys));
        }

        Keys(answer.Number, root, ["at", "seq", shape.Key]);
        Below(answer.Number, shape.Key, root.GetProperty(shape.Key));
    }

    private void Below(int number, string path, JsonElement element)
    {
        if (RecordKeys.Of(path) is not { } known)
        {
            return;
        }

        if (element.ValueKind != JsonValueKind.Object)
        {
            AddAt(number, path.Split(' ')[^1], $"'{path}' holds {element.ValueKind.ToString().ToLowerInvariant()}", "an object with " + string.Join(", ", known));
            return;
        }

        Keys(number, element, known);
        foreach (var property in element.EnumerateObject())
        {
            Below(number, $"{path} {property.Name}", property.Value);
        }
    }

    private void Keys(int number, JsonElement element, IReadOnlyList<string> known)
    {
        foreach (var name in element.EnumerateObject().Select(property => property.Name).Where(name => !known.Contains(name)))
        {
            AddAt(number, name, $"unknown key '{name}'", "one of " + string.Join(", ", known));
        }
    }

    private void Rig(SessionHeader header, int number)
    {
        try
        {
            RigFile.Read(_file, header.RigText);
        }
        catch (FaultyFileException fault)
        {
            foreach (var one in fault.Faults)
            {
                AddAt(number, "rig-file", $"the rig in it, line {one.Line}, column {one.Column}: {one.Wrong}", one.Expected);
            }
        }
    }

    private void Time(int number, Moment at)
    {
        if (at.Time < _now?.Time)
        {
            AddAt(number, "at", $"the time goes back, from {_now.Value.Written} to {at.Written}", "the same or a later one");
        }

        _now = at.Time < _now?.Time ? _now : at;
    }

    private void AddAt(int number, string? key, string wrong, string expected)
    {
        var at = key is null ? -1 : _texts[number].IndexOf($"\"{key}\"", StringComparison.Ordinal);
        Add(number, int.Max(at, 0) + 1, wrong, expected);
    }

    private void Add(int number, int column, string wrong, string expected) => _faults.Add(new(_file, number, column, wrong, expected));
}
