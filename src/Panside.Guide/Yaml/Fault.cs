using System.Globalization;
using Quickenshtein;

namespace Panside.Guide.Yaml;

/// <summary>What is wrong in a file, where, and what was expected.</summary>
/// <param name="File">The file's name as given.</param>
/// <param name="Line">The line, from 1.</param>
/// <param name="Column">The column, from 1.</param>
/// <param name="Wrong">What is wrong with this value.</param>
/// <param name="Expected">What was expected, and so what to do.</param>
public sealed record Fault(string File, int Line, int Column, string Wrong, string Expected)
{
    private const int WidestExcerpt = 76;

    /// <summary>What kind of fault it is.</summary>
    public FaultKind Kind { get; init; } = FaultKind.Impossible;

    /// <summary>What was most likely meant; null where nothing is near.</summary>
    public string? Meant { get; init; }

    /// <summary>What helps with this one; null for what helps with its kind.</summary>
    public string? Help { get; init; }

    /// <summary>What helps: with this one, or what was meant, or else what helps with its kind.</summary>
    public string Hint => Help ?? (Meant is { } meant ? $"Did you mean '{meant}'?" : Kind.Hint);

    /// <summary><c>file:line:column: what is wrong, what was expected</c>.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}: {Wrong}, expected {Expected}";

    /// <summary>More of it below that line: the line before and its own, a mark under the place, the hint and the code.</summary>
    /// <param name="text">The text of the file.</param>
    public IEnumerable<string> More(string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        var wide = Line.ToString(CultureInfo.InvariantCulture).Length;
        var from = int.Max(0, Column - (WidestExcerpt * 3 / 4));
        foreach (var number in new[] { Line - 1, Line }.Where(number => number >= 1 && number <= lines.Length))
        {
            var line = lines[number - 1].Replace('\t', ' ');
            yield return $"  {number.ToString(CultureInfo.InvariantCulture).PadLeft(wide)} | {(from < line.Length ? line[from..int.Min(line.Length, from + WidestExcerpt)] : "")}".TrimEnd();
        }

        yield return $"  {new string(' ', wide)} | {new string(' ', int.Max(0, Column - 1 - from))}^";
        yield return $"  {new string(' ', wide)}   {Hint} [{Kind.Code}]";
    }

    /// <summary>The one of a few words that a slip of the hand or two makes into another; null where none is so near.</summary>
    /// <param name="word">What was written.</param>
    /// <param name="words">What can be written.</param>
    public static string? Nearest(string word, IEnumerable<string> words) => words
        .Select(known => (known, Far: Levenshtein.GetDistance(word, known)))
        .Where(near => near.Far <= int.Max(1, near.known.Length / 3) && near.Far < near.known.Length)
        .OrderBy(near => near.Far).ThenBy(near => near.known, StringComparer.Ordinal)
        .Select(near => near.known)
        .FirstOrDefault();
}

/// <summary>A file that cannot be used; carries every fault that was found.</summary>
public sealed class FaultyFileException(IReadOnlyList<Fault> faults)
    : Exception(string.Join('\n', faults))
{
    /// <summary>The faults in the order of the file.</summary>
    public IReadOnlyList<Fault> Faults { get; } = faults;
}
