using System.Text.Json;
using Panside.Guide.Lines;

namespace Panside.Journal;

/// <summary>What a line of a record looks like.</summary>
public enum LineKind
{
    /// <summary>A line in.</summary>
    In,

    /// <summary>A line out.</summary>
    Out,

    /// <summary>The mark after the last answer.</summary>
    Ready,

    /// <summary>No JSON object.</summary>
    Damaged,
}

/// <summary>A line of a record by its outer form: who speaks, and of what.</summary>
/// <param name="Kind">Who speaks.</param>
/// <param name="Key">The key of a line out that says what it holds; empty otherwise.</param>
/// <param name="Sequence">The number of a line out; 0 otherwise.</param>
/// <param name="Header">What a session line holds; null otherwise, and where it is not whole.</param>
public sealed record LineShape(LineKind Kind, string Key, int Sequence, SessionHeader? Header)
{
    private static readonly LineShape Damaged = new(LineKind.Damaged, "", 0, null);

    /// <summary>The keys of a line out, of which each has exactly one.</summary>
    public static IReadOnlyList<string> OutKeys { get; } =
        ["session", "phase", "prompt", "advice", "caution", "forecast", "heard", "question", "refused", "told", "over"];

    /// <summary>The form of a line.</summary>
    public static LineShape Of(string line)
    {
        try
        {
            using var document = JsonDocument.Parse(line);
            return document.RootElement.ValueKind == JsonValueKind.Object ? Of(document.RootElement) : Damaged;
        }
        catch (Exception fault) when (LineReader.IsNoJson(fault))
        {
            return Damaged;
        }
    }

    /// <summary>A newer version may have written more keys, or say something for which this one has no word: it is passed over, and kept.</summary>
    internal static LineShape Of(JsonElement root)
    {
        var names = root.EnumerateObject().Select(property => property.Name).ToList();
        if (names.Any(LineReader.Kinds.Contains))
        {
            return new(LineKind.In, "", 0, null);
        }

        if (!root.TryGetProperty("seq", out var number) || number.ValueKind != JsonValueKind.Number || !number.TryGetInt32(out var sequence))
        {
            return new(names.Contains("ready") && names.Contains("at") ? LineKind.Ready : LineKind.In, "", 0, null);
        }

        var key = names.Find(OutKeys.Contains) ?? names.Find(name => name is not ("at" or "seq"));
        return key is null
            ? new(LineKind.In, "", 0, null)
            : new(LineKind.Out, key, sequence, key == "session" ? ReadHeader(root.GetProperty("session")) : null);
    }

    private static SessionHeader? ReadHeader(JsonElement session)
    {
        if (session.ValueKind != JsonValueKind.Object)
        {
            return null;
        }

        string? Text(string key) =>
            session.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
        return Text("program") is { } program && Text("flow") is { } flow && Text("flow-hash") is { } hash
            && Text("rig") is { } rig && Text("rig-file") is { } rigText && Text("guidance") is { } guidance
            && session.TryGetProperty("practice", out var practice) && practice.ValueKind is JsonValueKind.True or JsonValueKind.False
                ? new(program, flow, hash, rig, rigText, guidance, practice.GetBoolean())
                {
                    FlowVersion = session.TryGetProperty("flow-version", out var version) && version.ValueKind == JsonValueKind.Number && version.TryGetInt32(out var told) ? told : null,
                    LearnedText = Text("learned-file"),
                    Imported = session.TryGetProperty("imported", out var imported) && imported.ValueKind == JsonValueKind.True,
                }
                : null;
    }
}
