using System.Text.RegularExpressions;

namespace Panside.Guide.Hearing.Sentences;

/// <summary>Cuts a text into words with the pauses between them, short forms written out and slips put right.</summary>
internal static partial class SentenceReader
{
    private const string Long = ".!?;\n";
    private const int MostWords = 120;

    /// <summary>The words of a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="language">Its language.</param>
    /// <param name="right">Puts a word right.</param>
    public static List<Token> Words(string text, LanguageWords language, Func<string, IReadOnlyList<Meant>> right)
    {
        var words = new List<Token>();
        var pause = Pause.None;
        foreach (Match match in Pieces().Matches(Letters.Plain(text)))
        {
            if (match.Groups["pause"].Success)
            {
                var isLong = match.Value.AsSpan().ContainsAny(Long);
                pause = isLong ? Pause.Long : pause == Pause.None ? Pause.Short : pause;
                if (words.Count > 0 && match.Value.Contains('?', StringComparison.Ordinal))
                {
                    words[^1] = words[^1] with { AskedAfter = true };
                }

                continue;
            }

            if (words.Count >= MostWords)
            {
                break;
            }

            foreach (var word in Expanded(match.Value, language, right))
            {
                words.Add(new(word.Text, pause) { Others = word.Others ?? [] });
                pause = Pause.None;
            }
        }

        return words;
    }

    /// <summary>A phrase of a book with its short forms written out.</summary>
    public static string Expand(string phrase, LanguageWords language) => string.Join(
        ' ',
        phrase.Split(' ').SelectMany(word => word.Contains('/', StringComparison.Ordinal) ? [new(word)] : Expanded(word, language, one => [new(one)]))
            .Select(word => word.Text));

    private static IEnumerable<Meant> Expanded(string word, LanguageWords language, Func<string, IReadOnlyList<Meant>> right)
    {
        if (language.Written.TryGetValue(word, out var whole))
        {
            return Apart(whole);
        }

        if (word.IndexOf('\'', StringComparison.Ordinal) is not (> 0 and var at) || at == word.Length - 1)
        {
            var bare = word.Trim('\'');
            return bare.Length == 0 ? [] : right(bare).SelectMany(meant => language.Written.TryGetValue(meant.Text, out var form) ? Apart(form) : [meant]);
        }

        // Elisions begin a word in some languages and end one in others: both halves are words of their own.
        return language.Written.TryGetValue(word[..at] + "'", out var elided)
            ? Apart(elided).Concat(Expanded(word[(at + 1)..], language, right))
            : right(word[..at]).Concat(language.Written.TryGetValue(word[at..], out var ended) ? Apart(ended) : []);
    }

    private static IEnumerable<Meant> Apart(string words) => words.Split(' ').Select(word => new Meant(word));

    [GeneratedRegex(@"(?<word>[a-z']+|[0-9]+)|(?<pause>[.!?;,:()\n\r""–—…]+|\s-+\s|--+)", RegexOptions.CultureInvariant)]
    private static partial Regex Pieces();
}
