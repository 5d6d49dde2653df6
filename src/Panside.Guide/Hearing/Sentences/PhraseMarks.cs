namespace Panside.Guide.Hearing.Sentences;

/// <summary>The marks of a phrase in a book of words.</summary>
internal static class PhraseMarks
{
    /// <summary>Up to three words stand here.</summary>
    public const string Gap = "..";

    /// <summary>The concepts of <c>&lt;pan&gt;</c> or <c>&lt;pan/tank&gt;</c>; null for a word.</summary>
    public static string[]? Concepts(string word) =>
        word.Length > 2 && word[0] == '<' && word[^1] == '>' ? word[1..^1].Split('/') : null;

    /// <summary>The concepts that a phrase refers to.</summary>
    public static IEnumerable<string> ReferredTo(string phrase) =>
        phrase.Split(' ').SelectMany(word => Concepts(word) ?? []);

    /// <summary>What is wrong with a phrase; null for nothing.</summary>
    public static string? Wrong(string phrase)
    {
        var words = phrase.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0 || words[0] == Gap || words[^1] == Gap)
        {
            return $"'{phrase}' begins or ends with a gap";
        }

        var odd = words.FirstOrDefault(word => word != Gap && Concepts(word) is null
            && !word.TrimStart('+').Split('/').All(one => one.TrimStart('=').TrimEnd('*') is { Length: > 0 } bare && bare.All(IsOfAWord)));
        return odd is null ? null : $"'{odd}' in '{phrase}' is no word";
    }

    private static bool IsOfAWord(char letter) => char.IsLetterOrDigit(letter) || letter == '\'';
}
