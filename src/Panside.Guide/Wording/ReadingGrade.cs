using System.Text.RegularExpressions;

namespace Panside.Guide.Wording;

/// <summary>
/// How many years of school a text asks for, by the formula of Flesch and Kincaid [S38]: an average, so it tells little of one
/// sentence. A sentence ends with a period, a question or an exclamation mark; a number counts as a word of one syllable.
/// </summary>
/// <param name="Words">Words.</param>
/// <param name="Sentences">Sentences.</param>
/// <param name="Syllables">Syllables.</param>
public readonly partial record struct ReadingGrade(int Words, int Sentences, int Syllables)
{
    /// <summary>The grade; 0 where there are no words.</summary>
    public double Value => Words == 0 ? 0 : (0.39 * Words / Sentences) + (11.8 * Syllables / Words) - 15.59;

    /// <summary>The grade of texts taken together; the end of a text ends its last sentence.</summary>
    public static ReadingGrade Of(params IEnumerable<string> texts)
    {
        var (words, sentences, syllables) = (0, 0, 0);
        foreach (var text in texts)
        {
            var isOpen = false;
            foreach (var part in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                if (part.Any(char.IsLetterOrDigit))
                {
                    words++;
                    syllables += part.Any(char.IsDigit) ? 1 : int.Max(Parts().Matches(part).Sum(one => Wording.Syllables.In(one.Value)), 1);
                    isOpen = true;
                }

                if (isOpen && End().IsMatch(part))
                {
                    sentences++;
                    isOpen = false;
                }
            }

            sentences += isOpen ? 1 : 0;
        }

        return new(words, sentences, syllables);
    }

    /// <summary>Words of a text: what stands between blanks and has a letter or a figure in it.</summary>
    public static int WordsIn(string text) => Of(text).Words;

    [GeneratedRegex("[A-Za-z']*[A-Za-z][A-Za-z']*")]
    private static partial Regex Parts();

    [GeneratedRegex(@"[.?!]['"")\]]*$")]
    private static partial Regex End();
}
