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
    private readonly List<Fault> _faults = [];
    private readonly Dictionary<int, string> _texts = [];
    private int _sequence;
    private Moment? _now;

    private RecordCheck(string file) => _file = file;

    /// <summary>Checks a record.</summary>
    /// <param name="file">The name for faults.</param>
    /// <param name="bytes">What stands in it.</param>
    /// <returns>The number of its lines.</returns>
    /// <exception cref="FaultyFileException">With every fault in it, each with its place.</exception>
    public static int Demand(string file, byte[] bytes)
    {
        var check = new RecordCheck(file);
        var lines = RecordBytes.Lines(bytes);
        check.Damage(bytes, lines);
        check.Exchanges(Record.Of(lines));
        return check._faults.Count == 0
            ? lines.Count
            : throw new FaultyFileException([.. check._faults.OrderBy(fault => fault.Line).ThenBy(fault => fault.Column)]);
    }

    private void Damage(ReadOnlySpan<byte> bytes, IReadOnlyList<string> lines)
    {
        var rest = bytes.StartsWith("\uFEFF"u8) ? bytes[3..] : bytes;
        for (var number = 1; number <= lines.Count; number++)
        {
            var end = rest.IndexOf((byte)'\n');
            if (RecordBytes.Damage(end < 0 ? rest : rest[..end]) is var (column, wrong))
            {
                Add(number, column, wrong, "one whole JSON object a line");
            }
            else if (end < 0)
            {
                Add(number, lines[number - 1].Length + 1, "the last line has no line break", "one after every line; going on with the record adds it");
            }

            _texts[number] = lines[number - 1];
            rest = end < 0 ? [] : rest[(end + 1)..];
        }
    }

    private void Exchanges(Record record)
    {
        var sessions = 0;
        foreach (var exchange in record.Exchanges)
        {
            LineIn(exchange);
            foreach (var answer in exchange.Answers)
            {
                var shape = LineShape.Of(answer.Text);
                sessions += shape.Key == "session" ? 1 : 0;
                if (shape.Key == "session" && (shape.Header is null || sessions > 1))
                {
                    AddAt(answer.Number, "session", sessions > 1 ? "a second session line" : "the session line is not whole", "one, with flow, rig and guidance");
                }

                LineOut(answer, shape, exchange.Raw is null);
            }

            if (!exchange.IsComplete)
            {
                Add(exchange.LastNumber, 1, "no ready mark follows these answers", "{\"at\":…,\"ready\":true} after the last answer");
            }
        }

        if (record.Header is { } header)
        {
            Rig(header, record);
        }
        else if (sessions == 0)
        {
            Add(1, 1, "no session line was found", "the record of a boil, whose first answer tells flow and rig");
        }
    }

    private void LineIn(Exchange exchange)
    {
        if (exchange.Line is not { } line)
        {
            return;
        }

        // A line that was refused stands as it was said; the record is right to keep it.
        var isRefused = exchange.Answers.Any(answer => LineShape.Of(answer.Text).Key == "refused");
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

    private void Rig(SessionHeader header, Record record)
    {
        try
        {
            RigFile.Read(_file, header.RigText);
        }
        catch (FaultyFileException fault)
        {
            var number = record.Exchanges.SelectMany(exchange => exchange.Answers).First(answer => LineShape.Of(answer.Text).Header is not null).Number;
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
