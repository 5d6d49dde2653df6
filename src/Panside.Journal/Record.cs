using System.Text.Json;
using Panside.Guide.Lines;

namespace Panside.Journal;

/// <summary>One line in with the answers that the record holds for it.</summary>
/// <param name="LineNumber">The number of its first line in the file, from 1.</param>
/// <param name="Raw">The line in as written; null where only a refusal was kept.</param>
/// <param name="Answers">The lines out as written.</param>
/// <param name="IsComplete">Whether the mark after the last answer is there.</param>
public sealed record Exchange(int LineNumber, string? Raw, IReadOnlyList<string> Answers, bool IsComplete)
{
    /// <summary>The line in; null where only a refusal was kept.</summary>
    public LineIn? Line => Raw is null ? null : LineReader.Read(Raw);
}

/// <summary>A record read into exchanges. Lines that are damaged are told by number; the rest is kept.</summary>
/// <param name="Exchanges">The exchanges in order.</param>
/// <param name="Header">What the session runs on; null where the record has no session line.</param>
/// <param name="Damaged">The numbers of the lines that could not be read.</param>
public sealed record Record(IReadOnlyList<Exchange> Exchanges, SessionHeader? Header, IReadOnlyList<int> Damaged)
{
    /// <summary>Reads lines.</summary>
    public static Record Of(IReadOnlyList<string> lines)
    {
        var exchanges = new List<Exchange>();
        var damaged = new List<int>();
        SessionHeader? header = null;
        (int Number, string? Raw, List<string> Answers)? open = null;
        void Close(bool complete)
        {
            if (open is { } one)
            {
                exchanges.Add(new(one.Number, one.Raw, one.Answers, complete));
                open = null;
            }
        }

        for (var index = 0; index < lines.Count; index++)
        {
            var line = lines[index];
            switch (Kind(line, ref header))
            {
                case LineKind.In:
                    Close(complete: false);
                    open = (index + 1, line, []);
                    break;
                case LineKind.Out:
                    open ??= (index + 1, null, []);
                    open.Value.Answers.Add(line);
                    break;
                case LineKind.Ready:
                    Close(complete: true);
                    break;
                default:
                    damaged.Add(index + 1);
                    break;
            }
        }

        Close(complete: false);
        return new(exchanges, header, damaged);
    }

    private enum LineKind
    {
        In,
        Out,
        Ready,
        Damaged,
    }

    private static LineKind Kind(string line, ref SessionHeader? header)
    {
        try
        {
            using var document = JsonDocument.Parse(line);
            var root = document.RootElement;
            if (root.ValueKind != JsonValueKind.Object)
            {
                return LineKind.Damaged;
            }

            if (root.TryGetProperty("session", out var session) && header is null)
            {
                header = ReadHeader(session);
            }

            return root.TryGetProperty("ready", out _) ? LineKind.Ready
                : root.TryGetProperty("seq", out _) ? LineKind.Out
                : LineKind.In;
        }
        catch (Exception fault) when (fault is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return LineKind.Damaged;
        }
    }

    private static SessionHeader ReadHeader(JsonElement session)
    {
        string Text(string key) => session.GetProperty(key).GetString() ?? "";
        return new(
            Text("program"), Text("flow"), Text("flow-hash"), Text("rig"), Text("rig-file"), Text("guidance"),
            session.GetProperty("practice").GetBoolean());
    }
}
