using System.Text.Json;
using System.Text.Unicode;

namespace Panside.Journal;

/// <summary>A record as the disk has it: bytes, which a power cut or a bad sector may have changed.</summary>
public static class RecordBytes
{
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    /// <summary>The lines of a record; each ends where it stops being UTF-8, so that half a line never looks whole.</summary>
    public static IReadOnlyList<string> Lines(ReadOnlySpan<byte> bytes)
    {
        var lines = new List<string>();
        var rest = bytes.StartsWith("\uFEFF"u8) ? bytes[3..] : bytes;
        while (!rest.IsEmpty)
        {
            var end = rest.IndexOf((byte)'\n');
            lines.Add(ValidPart(end < 0 ? rest : rest[..end]).TrimEnd('\r', '\0'));
            rest = end < 0 ? [] : rest[(end + 1)..];
        }

        return lines;
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
    }

    /// <summary>The text up to the first byte that is no UTF-8.</summary>
    public static string ValidPart(ReadOnlySpan<byte> bytes)
    {
        var text = new char[bytes.Length];
        Utf8.ToUtf16(bytes, text, out _, out var written, replaceInvalidSequences: false);
        return new(text, 0, written);
    }
}
