using System.Runtime.CompilerServices;
using System.Text;
using System.Text.RegularExpressions;

namespace Panside.Tests.Reckon;

/// <summary>The examples of docs/reckon.md and of the pages that it names: a command, and what it prints.</summary>
internal static partial class Examples
{
    /// <summary>All these pages, one after the other.</summary>
    public static string Page { get; } = string.Concat(
        Directory.EnumerateFiles(Path.Combine(Root(), "docs"), "reckon*.md").Order(StringComparer.Ordinal).Select(File.ReadAllText));

    public static IReadOnlyList<(string Command, string Prints)> All { get; } =
        [.. Block().Matches(Page).Select(match => (match.Groups["command"].Value, match.Groups["prints"].Value))];

    public static string Root([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));

    /// <summary>The words of a command line, with single quotes.</summary>
    public static string[] Words(string command)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        var (quoted, any) = (false, false);
        foreach (var letter in command + " ")
        {
            if (letter == '\'')
            {
                (quoted, any) = (!quoted, true);
            }
            else if (letter != ' ' || quoted)
            {
                word.Append(letter);
                any = true;
            }
            else if (any)
            {
                words.Add(word.ToString());
                word.Clear();
                any = false;
            }
        }

        return [.. words];
    }

    [GeneratedRegex(@"^```console\n\$ (?<command>panside .*)\n(?<prints>(?:(?!```).*\n)*)```$", RegexOptions.Multiline)]
    private static partial Regex Block();
}
