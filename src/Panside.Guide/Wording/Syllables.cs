using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace Panside.Guide.Wording;

/// <summary>
/// Syllables of an English word: its groups of vowels, less those that are not spoken. What the rules miss of the words that are
/// used here stands in a list; the tests hold both to a pronouncing dictionary.
/// </summary>
public static partial class Syllables
{
    private static readonly FrozenDictionary<string, int> Unruly = new Dictionary<string, int>
    {
        ["being"] = 2,
        ["drier"] = 2,
        ["earlier"] = 3,
        ["evening"] = 2,
        ["fired"] = 2,
        ["forecast"] = 2,
        ["forecasts"] = 2,
        ["going"] = 2,
        ["gradient"] = 3,
        ["hour"] = 2,
        ["hours"] = 2,
        ["likely"] = 2,
        ["people"] = 2,
        ["quiet"] = 2,
        ["safety"] = 2,
        ["somebody"] = 3,
        ["someone"] = 2,
        ["something"] = 2,
        ["tired"] = 2,
        ["whoever"] = 3,
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>How many there are; 1 at the least.</summary>
    public static int In(string word)
    {
        var said = Owner().Replace(word.ToLowerInvariant(), "").Replace("'", "", StringComparison.Ordinal);
        if (Unruly.TryGetValue(said, out var known))
        {
            return known;
        }

        var silent = SilentE().IsMatch(said) || SilentEs().IsMatch(said) || SilentEd().IsMatch(said) ? 1 : 0;
        var apart = SpokenApart().Count(SpokenAsOne().Replace(said, "$1$2"));
        return int.Max(Vowels().Count(said) - silent + apart + (said.EndsWith("sm", StringComparison.Ordinal) ? 1 : 0), 1);
    }

    [GeneratedRegex("'s$")]
    private static partial Regex Owner();

    [GeneratedRegex("[aeiouy]+")]
    private static partial Regex Vowels();

    [GeneratedRegex("(?<=[^aeiouy])(?<![^aeiouy]l)e$")]
    private static partial Regex SilentE();

    [GeneratedRegex("(?<=[^aeiouy])(?<![sxzcg]|ch|sh|[^aeiouy]l)es$")]
    private static partial Regex SilentEs();

    [GeneratedRegex("([^aeiouytdl]|ll|[aeiouy]l)ed$")]
    private static partial Regex SilentEd();

    /// <summary>Two vowels of two syllables: <c>radio</c>, <c>fluid</c>.</summary>
    [GeneratedRegex(@"i[aou](?!us\b)|eo|ua(?!r)|[^q]ui(?=[nt]$)|yi")]
    private static partial Regex SpokenApart();

    /// <summary>Two vowels of one: <c>station</c>, <c>cautious</c>.</summary>
    [GeneratedRegex("([tcsg])i(on|ou|an)")]
    private static partial Regex SpokenAsOne();
}
