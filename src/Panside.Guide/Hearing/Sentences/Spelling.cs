using System.Collections.Frozen;
using System.Numerics;
using Quickenshtein;

namespace Panside.Guide.Hearing.Sentences;

/// <summary>Puts slips of the finger right: swapped, dropped, doubled and wrong letters, held keys, words run together.</summary>
internal sealed class Spelling
{
    private const int ShortestSlip = 4;
    private const int ShortestRun = 5;
    private const int MostPieces = 4;
    private const int LongWord = 8;
    private const int TooFar = 4;
    private const int MostOddLetters = 4;
    private const int MostMeant = 4;
    private const string Vowels = "aeiouy";

    private static readonly string[] Keys = ["qwertyuiop", "asdfghjkl", "zxcvbnm"];

    private readonly FrozenSet<string> _known;
    private readonly string[] _beginnings;
    private readonly IReadOnlySet<string> _plain;
    private readonly Dictionary<(char First, int Length), List<(string Word, uint Letters, int Rank)>> _near = [];

    /// <summary>Knows the words of a book.</summary>
    /// <param name="known">The words, with how often the book has each: the commoner one is the likelier.</param>
    /// <param name="beginnings">Beginnings after which anything may follow.</param>
    /// <param name="language">The language.</param>
    public Spelling(IReadOnlyDictionary<string, int> known, string[] beginnings, LanguageWords language)
    {
        (_known, _beginnings) = (known.Keys.ToFrozenSet(StringComparer.Ordinal), beginnings);
        _plain = language.Plain;
        var forms = known.Select(word => (Word: word.Key, Uses: word.Value)).Concat(beginnings.Select(word => (Word: word, Uses: 1)))
            .SelectMany(word => WithEndings(word.Word, language.Endings).Select(form => (Form: form, word.Uses)))
            .Where(form => form.Form.Length >= ShortestSlip - 1)
            .GroupBy(form => form.Form, form => form.Uses);
        foreach (var form in forms.OrderBy(form => form.Key, StringComparer.Ordinal))
        {
            var place = (form.Key[0], form.Key.Length);
            (_near.TryGetValue(place, out var near) ? near : _near[place] = []).Add((form.Key, LettersOf(form.Key), -form.Sum()));
        }
    }

    /// <summary>The word as it was meant; several where some were run together; itself where it is plain or far from all.</summary>
    /// <param name="word">The word in plain letters.</param>
    /// <param name="isForm">Whether a word is one of the book's with another ending.</param>
    public IReadOnlyList<Meant> Right(string word, Func<string, bool> isForm)
    {
        if (char.IsDigit(word[0]) || IsWord(word) || isForm(word))
        {
            return [new(word)];
        }

        foreach (var most in (int[])[2, 1])
        {
            if (Letters.Shorten(word, 3, most) is var shorter && shorter != word && IsWord(shorter))
            {
                return [new(shorter)];
            }
        }

        if (Letters.Shorten(word, 2, 1) is var single && single != word && _known.Contains(single))
        {
            return [new(single)];
        }

        return Nearest(Letters.Shorten(word, 3, 1)) is [var first, .. var others] ? [new(first, others)]
            : Apart(word) is { } pieces ? [.. pieces.Select(piece => new Meant(piece))] : [new(word)];
    }

    private bool IsWord(string word) => _known.Contains(word) || _plain.Contains(word)
        || Array.Exists(_beginnings, beginning => word.StartsWith(beginning, StringComparison.Ordinal));

    /// <summary>The words that a slip lies nearest to, the commonest first; empty where it is plain or far from all.</summary>
    private List<string> Nearest(string word)
    {
        var near = new List<(string Word, int Rank)>();
        var least = TooFar;
        if (word.Length < ShortestSlip - 1)
        {
            return [];
        }

        var letters = LettersOf(word);
        foreach (var first in word[0] == word[1] ? (char[])[word[0]] : [word[0], word[1]])
        {
            for (var length = word.Length - 2; length <= word.Length + 2; length++)
            {
                foreach (var (candidate, its, rank) in _near.GetValueOrDefault((first, length)) ?? [])
                {
                    if (BitOperations.PopCount(letters ^ its) > MostOddLetters || Distance(word, candidate, letters == its) is var far && far > least
                        || far == TooFar)
                    {
                        continue;
                    }

                    if (far < least)
                    {
                        near.Clear();
                    }

                    least = far;
                    near.Add((candidate, rank));
                }
            }
        }

        return [.. near.OrderBy(candidate => candidate.Rank).ThenBy(candidate => candidate.Word, StringComparer.Ordinal).Select(candidate => candidate.Word).Take(MostMeant)];
    }

    /// <summary>How far a slip lies from a word: swapped letters nearest, then a letter too many or too few, then a wrong one, then two.</summary>
    private static int Distance(string word, string candidate, bool hasSameLetters)
    {
        var shorter = int.Min(word.Length, candidate.Length);
        if (word.Length == candidate.Length && IsSwap(word, candidate))
        {
            return 0;
        }

        if (word[0] != candidate[0] || shorter < ShortestSlip)
        {
            return TooFar;
        }

        return Levenshtein.GetDistance(word, candidate) switch
        {
            1 when word.Length != candidate.Length => 1,
            1 when IsNear(word, candidate) => 2,
            2 when shorter >= LongWord || (hasSameLetters && shorter > ShortestSlip) => 3,
            _ => TooFar,
        };
    }

    /// <summary>Whether the one wrong letter lies beside the right one on a keyboard, or is a vowel for a vowel.</summary>
    private static bool IsNear(string word, string candidate)
    {
        var at = 0;
        while (word[at] == candidate[at])
        {
            at++;
        }

        var (hit, meant) = (word[at], candidate[at]);
        var (row, column) = Key(hit);
        var (itsRow, itsColumn) = Key(meant);
        return (Vowels.Contains(hit, StringComparison.Ordinal) && Vowels.Contains(meant, StringComparison.Ordinal))
            || (int.Abs(row - itsRow) <= 1 && int.Abs(column - itsColumn) <= 1);
    }

    private static (int Row, int Column) Key(char letter)
    {
        var row = Array.FindIndex(Keys, keys => keys.Contains(letter, StringComparison.Ordinal));
        return row < 0 ? (9, 99) : (row, Keys[row].IndexOf(letter, StringComparison.Ordinal));
    }

    private static bool IsSwap(string word, string candidate)
    {
        var at = 0;
        while (at < word.Length && word[at] == candidate[at])
        {
            at++;
        }

        return at + 1 < word.Length && word[at] == candidate[at + 1] && word[at + 1] == candidate[at]
            && word.AsSpan(at + 2).SequenceEqual(candidate.AsSpan(at + 2));
    }

    private List<string>? Apart(string word)
    {
        if (word.Length < ShortestRun)
        {
            return null;
        }

        // The fewest pieces for each end of the word, the longest first piece among equals.
        var pieces = new List<string>?[word.Length + 1];
        pieces[0] = [];
        for (var end = 2; end <= word.Length; end++)
        {
            for (var start = 0; start <= end - 2; start++)
            {
                if (pieces[start] is { } before && before.Count < (pieces[end]?.Count - 1 ?? MostPieces) && _known.Contains(word[start..end]))
                {
                    pieces[end] = [.. before, word[start..end]];
                }
            }
        }

        return pieces[^1];
    }

    private static IEnumerable<string> WithEndings(string word, IReadOnlyList<string> endings)
    {
        yield return word;
        if (word.Length < ShortestSlip)
        {
            yield break;
        }

        foreach (var ending in endings)
        {
            yield return (word[^1] == 'e' && "aeiouy".Contains(ending[0], StringComparison.Ordinal) ? word[..^1] : word) + ending;
        }
    }

    private static uint LettersOf(string word)
    {
        var letters = 0u;
        foreach (var letter in word)
        {
            letters |= letter is >= 'a' and <= 'z' ? 1u << (letter - 'a') : 1u << 30;
        }

        return letters;
    }
}

/// <summary>A word as it was meant.</summary>
/// <param name="Text">The likeliest.</param>
/// <param name="Others">Others that it may as well have been.</param>
internal sealed record Meant(string Text, IReadOnlyList<string>? Others = null);
