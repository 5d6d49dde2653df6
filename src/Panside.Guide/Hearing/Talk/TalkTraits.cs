using Panside.Guide.Hearing.Sentences;
using Panside.Guide.Measures;

namespace Panside.Guide.Hearing.Talk;

/// <summary>What a piece of talk has, each as a short text: its words, neighbours, pieces of words, and kinds and sizes of its amounts.</summary>
internal static class TalkTraits
{
    private const int ShortestPiece = 3;
    private const int LongestPiece = 4;

    /// <summary>The traits of pieces.</summary>
    /// <param name="pieces">The words and amounts.</param>
    /// <param name="isAsked">Whether a question mark stands in the line.</param>
    /// <param name="stems">The stemmer of the language.</param>
    public static HashSet<string> Of(IReadOnlyList<Piece> pieces, bool isAsked, Stems stems)
    {
        var traits = new HashSet<string>(StringComparer.Ordinal);
        var words = pieces.Select(piece => piece.Amount is null ? stems.Stem(piece.Text) : piece.Text).ToList();
        for (var at = 0; at < words.Count; at++)
        {
            traits.Add("word " + words[at]);
            if (at + 1 < words.Count)
            {
                traits.Add($"pair {words[at]} {words[at + 1]}");
            }

            if (at + 2 < words.Count)
            {
                traits.Add($"over {words[at]} {words[at + 2]}");
            }

            if (pieces[at].Amount is { } amount)
            {
                traits.Add(Size(amount));
            }
            else
            {
                AddPieces(traits, $"^{pieces[at].Text}$");
            }
        }

        if (words.Count > 0)
        {
            traits.Add("first " + words[0]);
            traits.Add("last " + words[^1]);
        }

        if (isAsked)
        {
            traits.Add("shape ?");
        }

        var amounts = pieces.Count(piece => piece.Amount is not null);
        traits.Add(amounts == 0 ? "shape no amount" : amounts == 1 ? "shape one amount" : "shape amounts");
        traits.Add(words.Count < 2 ? "shape 1 word" : words.Count < 4 ? "shape 2 or 3 words" : words.Count < 8 ? "shape 4 to 7 words" : "shape 8 words and more");
        return traits;
    }

    /// <summary>How large an amount is, by what a boil has of such size.</summary>
    private static string Size(SpokenAmount amount)
    {
        var value = amount.Unit == Unit.DegreeCelsius ? (amount.Value * 1.8) + 32 : amount.Value;
        var isDegrees = amount.Hint == AmountHint.Degrees || amount.Unit is Unit.DegreeCelsius or Unit.DegreeFahrenheit;
        var bound = value < 0 ? "0" : value < 5 ? "5" : value < 20 ? "20" : value < 45 ? "45" : value < 75 ? "75"
            : value < 110 ? "110" : value < 200 ? "200" : value < 225 ? "225" : "more";
        return $"size {(isDegrees ? "degrees" : amount.Unit is { } unit ? unit.Kind().ToString() : amount.Hint.ToString())} {bound}";
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
}
