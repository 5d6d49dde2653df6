using System.Text;
using System.Text.Json;
using Panside.Guide.Lines;

namespace Panside.Journal;

/// <summary>What a record tells of what its session ran on, part by part: a damaged session line may still tell most of it.</summary>
/// <param name="LineNumber">The number of the session line, from 1; null where there is none to be found.</param>
/// <param name="IsWhole">Whether the line could be read as a whole.</param>
public sealed record HeaderParts(int? LineNumber, bool IsWhole)
{
    /// <summary>A line with so many of the keys was a session line.</summary>
    private const int KeysThatTell = 3;

    private static readonly string[] Keys = ["session", "program", "flow", "flow-hash", "guidance", "practice", "rig", "rig-file"];

    /// <summary>Name and version of the program.</summary>
    public string? Program { get; private init; }

    /// <summary>The flow's name.</summary>
    public string? Flow { get; private init; }

    /// <summary>The hash of the flow's text.</summary>
    public string? FlowHash { get; private init; }

    /// <summary>The flow's version; null where the record is older than that it was told.</summary>
    public int? FlowVersion { get; private init; }

    /// <summary>The rig file's text.</summary>
    public string? RigText { get; private init; }

    /// <summary>beginner or practised.</summary>
    public string? Guidance { get; private init; }

    /// <summary>Whether the rig was simulated.</summary>
    public bool Practice { get; private init; }

    /// <summary>What past boils had taught.</summary>
    public string? LearnedText { get; private init; }

    /// <summary>Whether it was brought in from a table.</summary>
    public bool Imported { get; private init; }

    /// <summary>The parts that the first lines of a record tell; null where nothing shows that it is a record.</summary>
    /// <param name="head">The lines.</param>
    public static HeaderParts? Of(IReadOnlyList<string> head)
    {
        var shapes = head.Select(LineShape.Of).ToList();
        if (shapes.FindIndex(shape => shape.Header is not null) is >= 0 and var whole)
        {
            var header = shapes[whole].Header!;
            return new(whole + 1, IsWhole: true)
            {
                Program = header.Program,
                Flow = header.Flow,
                FlowHash = header.FlowHash,
                FlowVersion = header.FlowVersion,
                RigText = header.RigText,
                Guidance = header.Guidance,
                Practice = header.Practice,
                LearnedText = header.LearnedText,
                Imported = header.Imported,
            };
        }

        var lines = head.ToList();
        if (lines.FindIndex(line => Keys.Count(key => line.Contains($"\"{key}\":", StringComparison.Ordinal)) >= KeysThatTell) is >= 0 and var damaged)
        {
            var line = lines[damaged].Replace("\0", "", StringComparison.Ordinal);
            return new(damaged + 1, IsWhole: false)
            {
                Program = Text(line, "program"),
                Flow = Text(line, "flow"),
                FlowHash = Text(line, "flow-hash"),
                FlowVersion = line.Contains("\"flow-version\":1,", StringComparison.Ordinal) ? 1 : null,
                RigText = Text(line, "rig-file"),
                Guidance = Text(line, "guidance"),
                Practice = line.Contains("\"practice\":true", StringComparison.Ordinal),
                LearnedText = Text(line, "learned-file"),
                Imported = line.Contains("\"imported\":true", StringComparison.Ordinal),
            };
        }

        // Answers with the mark after them are written by nobody else.
        return shapes.Exists(shape => shape is { Kind: LineKind.Out, Sequence: > 0 }) && shapes.Exists(shape => shape.Kind == LineKind.Ready)
            ? new(null, IsWhole: false)
            : null;
    }

    /// <summary>The text that stands behind a key; null where none can be read there.</summary>
    private static string? Text(string line, string key)
    {
        var at = line.IndexOf($"\"{key}\":\"", StringComparison.Ordinal);
        if (at < 0)
        {
            return null;
        }

        try
        {
            var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(line[(at + key.Length + 3)..]), isFinalBlock: false, default);
            return reader.Read() && reader.TokenType == JsonTokenType.String ? reader.GetString() : null;
        }
        catch (Exception fault) when (LineReader.IsNoJson(fault))
        {
            return null;
        }
    }
}
