using System.Text;
using System.Text.Json;
using Panside.Guide.Lines;

namespace Panside.Journal;

/// <summary>
/// The two ends of a record: what the session ran on, and how it came out. A season of a thousand records is looked through by
/// them, without hearing a single boil again.
/// </summary>
/// <param name="Begin">The time of the first line that has one.</param>
/// <param name="Header">What it ran on.</param>
/// <param name="Outcome">How it ended; null where it has no end.</param>
public sealed record RecordEnds(Moment Begin, SessionHeader Header, Outcome? Outcome)
{
    /// <summary>So much is read at either end: the session line with its rig, and the last answers.</summary>
    private const int Most = 64 * 1024;

    /// <summary>Reads a record's ends; null where its beginning holds no session line.</summary>
    /// <exception cref="IOException">It is not there, or a session is writing it.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static RecordEnds? Read(string path)
    {
        PipeException.Demand(path);
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
        return Read(file);
    }

    /// <summary>Reads the ends of a record that is open; null where its beginning holds no session line.</summary>
    public static RecordEnds? Read(Stream file)
    {
        var buffer = new byte[int.Min(Most, (int)long.Min(file.Length, Most))];
        var head = RecordBytes.Lines(buffer.AsSpan(0, file.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false)));
        if (head.Select(line => LineShape.Of(line).Header).FirstOrDefault(header => header is not null) is not { } found
            || head.Select(line => LineReader.Read(line)).FirstOrDefault(line => line is not Unreadable) is not { } first)
        {
            return null;
        }

        file.Position = long.Max(file.Length - Most, 0);
        var tail = buffer.AsSpan(0, file.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false));
        return new(first.At, found, LastOutcome(tail));
    }

    private static Outcome? LastOutcome(ReadOnlySpan<byte> tail)
    {
        var at = tail.LastIndexOf("\"over\":{"u8);
        if (at < 0)
        {
            return null;
        }

        var from = tail[..at].LastIndexOf((byte)'\n') + 1;
        var length = tail[at..].IndexOf((byte)'\n');
        try
        {
            return OutcomeOf(Encoding.UTF8.GetString(length < 0 ? tail[from..] : tail[from..(at + length)]));
        }
        catch (Exception fault) when (LineReader.IsNoJson(fault))
        {
            return null;
        }
    }

    private static Outcome? OutcomeOf(string line)
    {
        if (LineShape.Of(line) is not { Kind: LineKind.Out, Key: "over" })
        {
            return null;
        }

        using var document = JsonDocument.Parse(line);
        var over = document.RootElement.GetProperty("over");
        return over.ValueKind == JsonValueKind.Object ? AnswerReader.Outcome(over) : null;
    }
}
