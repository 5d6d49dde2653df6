using System.Text.RegularExpressions;

namespace Panside.Commands;

/// <summary>What a file can be.</summary>
internal enum FileKind
{
    /// <summary>None of ours.</summary>
    Unknown,

    /// <summary>A procedure.</summary>
    Flow,

    /// <summary>A rig.</summary>
    Rig,

    /// <summary>A session's record.</summary>
    Record,

    /// <summary>A scenario to practise.</summary>
    Scenario,

    /// <summary>A plan to walk a flow through.</summary>
    Plan,

    /// <summary>The words by which dangers are known.</summary>
    Words,
}

/// <summary>Tells what a file is by what stands in it, so that a faulty one is still known.</summary>
internal static partial class FileKinds
{
    /// <summary>The kind of a file.</summary>
    /// <param name="path">Its name; <c>.jsonl</c> is a record whatever stands in it.</param>
    /// <param name="text">Its text.</param>
    public static FileKind Of(string path, string text)
    {
        if (path.EndsWith(".jsonl", StringComparison.OrdinalIgnoreCase) || JsonStart().IsMatch(text))
        {
            return FileKind.Record;
        }

        return TopKey().Match(text).Groups["key"].Value switch
        {
            "flow" => FileKind.Flow,
            "scenario" => FileKind.Scenario,
            "rig" => FileKind.Rig,
            "plan" => FileKind.Plan,
            "words" => FileKind.Words,
            _ => FileKind.Unknown,
        };
    }

    [GeneratedRegex(@"^\uFEFF?\s*\{\s*""", RegexOptions.CultureInvariant)]
    private static partial Regex JsonStart();

    // A flow has words too, as a mapping below; a file of words says there which they are.
    [GeneratedRegex(@"^[""']?(?<key>flow|scenario|rig|plan|words(?=[""']?\s*:[ \t]*\w))[""']?\s*:", RegexOptions.CultureInvariant | RegexOptions.Multiline)]
    private static partial Regex TopKey();
}
