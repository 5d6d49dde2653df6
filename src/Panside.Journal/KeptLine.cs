using System.Text.Json;
using Panside.Guide.Lines;

namespace Panside.Journal;

/// <summary>
/// A line in as it stands in a record. What is heard is what will be read again: to the last letter, the last part of a second,
/// and the reason for which it was refused.
/// </summary>
internal static class KeptLine
{
    /// <summary>The key of a line that was refused and would be read as something else. From outside it is a key like any unknown one.</summary>
    public const string Unread = "unread";

    /// <summary>What to hear, and what stands in the record for it; null where only its refusal is kept.</summary>
    /// <param name="line">The line.</param>
    /// <param name="raw">Its text as it came; null where it had none.</param>
    public static (LineIn Heard, string? Text) Of(LineIn line, string? raw)
    {
        if (line is Unreadable { Stated: null })
        {
            return (line, null);
        }

        var text = raw ?? LineWriter.Write(line);
        var again = Read(text, wasTaken: () => line is not Unreadable);
        if (LineShape.Of(text).Kind == LineKind.In && (line is not Unreadable || again == line))
        {
            return (again, again is Unreadable { Stated: null } ? null : text);
        }

        return line is Unreadable refused ? (line, LineWriter.Unread(refused, text)) : (line, LineWriter.Write(line));
    }

    /// <summary>Reads a line in of a record.</summary>
    /// <param name="text">How it stands there.</param>
    /// <param name="wasTaken">Whether the record has answers to it, none of them a refusal: then a newer version may have written keys that are passed over.</param>
    public static LineIn Read(string text, Func<bool> wasTaken)
    {
        var strict = LineReader.Read(text);
        return strict is not Unreadable { Stated: { } at } ? strict
            : Refused(text, at) is { } refused ? refused.Line
            : wasTaken() ? LineReader.Read(text, passesOver: true)
            : strict;
    }

    /// <summary>The line as it was said.</summary>
    /// <param name="text">How it stands in the record.</param>
    public static string Said(string text) =>
        text.Contains($"\"{Unread}\"", StringComparison.Ordinal) && Refused(text, default) is { } refused ? refused.Said : text;

    private static (Unreadable Line, string Said)? Refused(string text, Moment at)
    {
        try
        {
            using var document = JsonDocument.Parse(text);
            var root = document.RootElement;
            string? Text(string key) => root.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
            return Text(Unread) is { } said && Text("why") is { } why ? (new(at, why, Text("field")), said) : null;
        }
        catch (Exception fault) when (LineReader.IsNoJson(fault))
        {
            return null;
        }
    }
}
