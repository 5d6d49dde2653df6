using System.Text.RegularExpressions;
using Panside.Guide.Hearing.Sentences;

namespace Panside.Guide.Hearing.Cries;

/// <summary>
/// What a sentence has, each as a short text: its words, neighbours and pieces of words, its concepts, how they are said, and what
/// combinations it holds. The fitted weights are of these.
/// </summary>
internal static partial class Traits
{
    private const int ShortestPiece = 3;
    private const int LongestPiece = 4;
    private const string Denied = "-";
    private const string Unreal = "?";

    /// <summary>The traits of a sentence that has words.</summary>
    /// <param name="text">As it was said.</param>
    /// <param name="sentence">Its words and concepts.</param>
    /// <param name="mood">How it is said.</param>
    /// <param name="book">The book of its language.</param>
    /// <param name="weighed">What the combinations weigh, by hazard.</param>
    /// <param name="hazards">The names of the hazards.</param>
    public static HashSet<string> Of(string text, Tagged sentence, Mood mood, WordBook book, IReadOnlyList<int> weighed, IReadOnlyList<string> hazards)
    {
        var traits = new HashSet<string>(StringComparer.Ordinal);
        AddWords(traits, sentence, mood, book.StemsOf(sentence));
        AddConcepts(traits, sentence, mood, book);
        AddCombinations(traits, weighed, hazards);
        AddShape(traits, text, sentence.Tokens.Count);
        return traits;
    }

    private static void AddWords(HashSet<string> traits, Tagged sentence, Mood mood, IReadOnlyList<string> stems)
    {
        for (var at = 0; at < stems.Count; at++)
        {
            traits.Add("word " + stems[at]);
            traits.Add("said " + How(mood, new(at, at)) + stems[at]);
            if (at + 1 < stems.Count)
            {
                traits.Add($"pair {stems[at]} {stems[at + 1]}");
            }

            AddPieces(traits, $"^{sentence.Tokens[at].Text}$");
        }

        traits.Add("first " + stems[0]);
        traits.Add("last " + stems[^1]);
    }

    /// <summary>Pieces of words stand for what is spelt as nobody foresaw.</summary>
    private static void AddPieces(HashSet<string> traits, string word)
    {
        for (var length = ShortestPiece; length <= LongestPiece; length++)
        {
            for (var at = 0; at + length <= word.Length; at++)
            {
                traits.Add($"piece {word.AsSpan(at, length)}");
            }
        }
    }

    private static void AddConcepts(HashSet<string> traits, Tagged sentence, Mood mood, WordBook book)
    {
        foreach (var concept in book.Concepts)
        {
            foreach (var span in sentence.Of(concept.Number))
            {
                traits.Add($"concept {How(mood, span)}{concept.Name}");
            }
        }
    }

    private static void AddCombinations(HashSet<string> traits, IReadOnlyList<int> weighed, IReadOnlyList<string> hazards)
    {
        for (var hazard = 0; hazard < hazards.Count; hazard++)
        {
            for (var weight = 1; weight <= int.Min(weighed[hazard], Combination.Sure); weight++)
            {
                traits.Add($"combined {hazards[hazard]} {weight}");
            }
        }

        if (weighed.All(weight => weight == 0))
        {
            traits.Add("combined none");
        }
    }

    private static void AddShape(HashSet<string> traits, string text, int words)
    {
        if (text.Contains('?', StringComparison.Ordinal))
        {
            traits.Add("shape ?");
        }

        if (text.Contains('!', StringComparison.Ordinal))
        {
            traits.Add("shape !");
        }

        if (text.Any(char.IsAsciiDigit))
        {
            traits.Add("shape digit");
        }

        if (Year().IsMatch(text))
        {
            traits.Add("shape year");
        }

        if (text.Any(char.IsAsciiLetterUpper) && !text.Any(char.IsAsciiLetterLower))
        {
            traits.Add("shape capitals");
        }

        traits.Add(words < 3 ? $"shape {words} words" : words < 6 ? "shape 3 to 5 words" : words < 10 ? "shape 6 to 9 words" : "shape 10 words and more");
    }

    /// <summary>A year that is long over: <c>'04</c>, <c>1998</c>. What was then is no danger now.</summary>
    [GeneratedRegex(@"['’][0-9]{2}\b|\b(?:1[89]|20)[0-9]{2}\b", RegexOptions.CultureInvariant)]
    private static partial Regex Year();

    private static string How(Mood mood, Span span) => !mood.IsReal(span.Start) ? Unreal : mood.IsDenied(span, []) ? Denied : "";
}
