using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace Panside.Journal;

/// <summary>A record as the disk has it: bytes, which a power cut or a bad sector may have changed.</summary>
public static class RecordBytes
{
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    /// <summary>The lines of a record.</summary>
    public static IReadOnlyList<string> Lines(ReadOnlySpan<byte> bytes)
    {
        var lines = new List<string>();
        var rest = bytes.StartsWith("\uFEFF"u8) ? bytes[3..] : bytes;
        while (!rest.IsEmpty)
        {
            var end = rest.IndexOf((byte)'\n');
            lines.Add(Line(end < 0 ? rest : rest[..end]));
            rest = end < 0 ? [] : rest[(end + 1)..];
        }

        return lines;
    }

    /// <summary>The lines of a stream, one after the other.</summary>
    public static IEnumerable<SplitLine> Lines(Stream stream)
    {
        var (splitter, buffer) = (new LineSplitter(), new byte[64 * 1024]);
        while (stream.Read(buffer) is > 0 and var count)
        {
            foreach (var line in splitter.Take(buffer.AsSpan(0, count)))
            {
                yield return line;
            }
        }

        if (splitter.End() is { } last)
        {
            yield return last;
        }
    }

    /// <summary>
    /// A line's text. Where it stops being UTF-8 a NUL stands, so that it never looks whole, and behind it what can still be read:
    /// a damaged session line may yet tell the rig.
    /// </summary>
    internal static string Line(ReadOnlySpan<byte> bytes)
    {
        if (Utf8.IsValid(bytes))
        {
            return Encoding.UTF8.GetString(bytes).TrimEnd('\r', '\0');
        }

        var good = ValidPart(bytes);
        var rest = Encoding.UTF8.GetString(bytes[Encoding.UTF8.GetByteCount(good)..]).Replace("\uFFFD", "", StringComparison.Ordinal).TrimEnd('\r', '\0');
        return rest.Length == 0 ? good.TrimEnd('\r', '\0') : $"{good}\0{rest}";
    }

    /// <summary>Where a line is no whole JSON object, and why; null where it is one.</summary>
    public static (int Column, string Wrong)? Damage(ReadOnlySpan<byte> line)
    {
        line = line.TrimEnd((byte)'\r');
        if (line.IsEmpty)
        {
            return (1, "the line is empty");
        }

        var good = ValidPart(line);
        if (good.IndexOf('\0') is >= 0 and var hole)
        {
            return (hole + 1, "the line holds NUL bytes, as a power cut leaves them");
        }

        if (!Utf8.IsValid(line))
        {
            return (good.Length + 1, "a byte that is no UTF-8");
        }

        try
        {
            using var document = JsonDocument.Parse(good, Strict);
            return document.RootElement.ValueKind == JsonValueKind.Object ? null : (1, "the line is no JSON object");
        }
        catch (JsonException fault)
        {
            var bytes = int.Min((int)(fault.BytePositionInLine ?? 0), line.Length);
            var twice = fault.Message.Contains("uplicate", StringComparison.Ordinal);
            return (ValidPart(line[..bytes]).Length + 1, twice ? "a key stands twice" : bytes >= line.Length ? "the line is cut off" : "the line is no JSON here");
        }
        catch (Exception fault) when (LineReader.IsNoJson(fault))
        {
            return (1, "half a character is escaped in the line");
        }
    }

    /// <summary>The text up to the first byte that is no UTF-8.</summary>
    public static string ValidPart(ReadOnlySpan<byte> bytes)
    {
        var text = new char[bytes.Length];
        Utf8.ToUtf16(bytes, text, out _, out var written, replaceInvalidSequences: false);
        return new(text, 0, written);
    }
}
