using System.Text.RegularExpressions;
using YamlDotNet.Core;

namespace Panside.Guide.Yaml;

/// <summary>
/// What a person most likely slipped in where the library's parser gives up. It tells the place at which it could go no further, which may stand
/// lines below the slip, or at the beginning of the file; whoever mends it wants the slip's own.
/// </summary>
/// <param name="file">The name for faults.</param>
/// <param name="text">The text.</param>
internal sealed partial class YamlSlip(string file, string text)
{
    private const int FarthestAbove = 10;

    /// <summary>A key without a colon is taken for the beginning of a text, and what comes after it is what looks wrong then.</summary>
    private static readonly string[] OfColon = ["did not find expected key", "multiline plain scalar, found invalid mapping", "could not find expected ':'"];

    private string[] Lines => field ??= text.ReplaceLineEndings("\n").Split('\n');

    /// <summary>What text never holds: it would end the file for the parser, and hide what stands behind it.</summary>
    public Fault? Unreadable() => text.IndexOf('\0', StringComparison.Ordinal) is >= 0 and var at
        ? At(text[..at].Count(letter => letter == '\n') + 1, at - text.LastIndexOf('\n', at), "a NUL stands in the file", "text alone", "Something but an editor wrote it; take the part behind the last good line out, and save it as UTF-8.")
        : null;

    /// <summary>The fault at the place of the slip.</summary>
    /// <param name="noticed">What the parser could not read.</param>
    public Fault Of(YamlException noticed)
    {
        var (line, column) = ((int)noticed.Start.Line, (int)noticed.Start.Column);
        var message = (noticed.InnerException?.Message ?? noticed.Message).Split('\n')[0].TrimEnd('.');
        const string Twice = "Duplicate key ";
        return message.StartsWith(Twice, StringComparison.Ordinal) ? At(line, column, $"the key '{message[Twice.Length..]}' stands twice", "each key once in its part", "Leave one of the two out, or move it to the part that it belongs to.")
            : Tab(line, message) ?? Colon(line, message) ?? At(line, column, message, "well-formed YAML", null);
    }

    private Fault? Tab(int noticed, string message)
    {
        var tab = Lines.Index().FirstOrDefault(row => TabIndent().IsMatch(row.Item));
        return tab.Item is not null && (tab.Index < noticed || message.Contains(" tab ", StringComparison.Ordinal))
            ? At(tab.Index + 1, tab.Item.IndexOf('\t', StringComparison.Ordinal) + 1, "a tab stands in the indent", "spaces", "Indent with spaces; most editors put them in for a tab once they are told to.")
            : null;
    }

    private Fault? Colon(int noticed, string message)
    {
        if (!OfColon.Any(known => message.Contains(known, StringComparison.Ordinal)))
        {
            return null;
        }

        // A key that was taken for a text is noticed on its own line, or where the next colon is.
        foreach (var number in Enumerable.Range(0, FarthestAbove).Select(above => noticed - above).Where(number => number >= 1 && number <= Lines.Length))
        {
            if (Bare().Match(Lines[number - 1]) is { Success: true } bare)
            {
                var key = bare.Groups["words"];
                var isTight = key.Value.Contains(':', StringComparison.Ordinal);
                return At(
                    number, key.Index + 1, $"'{key.Value.TrimEnd()}' has no {(isTight ? "space behind its colon" : "colon")}", "a key, a colon, a space and its value",
                    "A colon and a space stand between a key and its value; a long text goes on further in than its key.");
            }

            if (message.Contains("expected key", StringComparison.Ordinal))
            {
                break;
            }
        }

        return null;
    }

    private Fault At(int line, int column, string wrong, string expected, string? help) => new(file, line, column, wrong, expected) { Kind = FaultKind.Yaml, Help = help };

    [GeneratedRegex("^ *\\t[ \\t]*[^ \\t#]", RegexOptions.CultureInvariant)]
    private static partial Regex TabIndent();

    /// <summary>Words with neither a colon and a space, nor a bracket or a quote that would make something else of them.</summary>
    [GeneratedRegex("""^ *(?:- +)?(?<words>[^\s#:'"{}\[\]&*>|-](?:(?!: |:$| #)[^'"{}\[\]])*)(?: #.*)?$""", RegexOptions.CultureInvariant)]
    private static partial Regex Bare();
}
