using System.Text;
using System.Text.Json;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

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
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
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
        return OutcomeOf(Encoding.UTF8.GetString(length < 0 ? tail[from..] : tail[from..(at + length)]));
    }

    private static Outcome? OutcomeOf(string line)
    {
        if (LineShape.Of(line) is not { Kind: LineKind.Out, Key: "over" })
        {
            return null;
        }

        using var document = JsonDocument.Parse(line);
        var over = document.RootElement.GetProperty("over");
        if (over.ValueKind != JsonValueKind.Object)
        {
            return null;
        }

        return new(
            Amount(over, "sap-used"), Amount(over, "syrup-made"), Amount(over, "syrup-brix"), Amount(over, "wood"), Amount(over, "minutes"),
            Amount(over, "pan-volume"), Amount(over, "tank-volume"),
            over.TryGetProperty("safe", out var safe) && safe.ValueKind == JsonValueKind.True,
            [],
            over.TryGetProperty("text", out var text) && text.ValueKind == JsonValueKind.String ? text.GetString()! : "")
        {
            SapBrix = Amount(over, "sap-brix"),
            PanBrix = Amount(over, "pan-brix"),
            WaterBoiled = Amount(over, "water-boiled"),
            FiredMinutes = Amount(over, "fired-minutes"),
            Judged = !(over.TryGetProperty("judged", out var judged) && judged.ValueKind == JsonValueKind.False),
        };
    }

    private static Measure? Amount(JsonElement over, string key) =>
        over.TryGetProperty(key, out var amount) && amount.ValueKind == JsonValueKind.Object
        && amount.TryGetProperty("value", out var value) && value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var number)
        && amount.TryGetProperty("unit", out var unit) && unit.ValueKind == JsonValueKind.String && UnitNames.FromCode(unit.GetString()!) is { } known
            ? new(number, known)
            : null;
}
