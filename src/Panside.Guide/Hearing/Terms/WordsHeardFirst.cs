using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Hearing.Terms;

/// <summary>What is heard before any word of a flow, so that no flow can take it for itself.</summary>
internal static class WordsHeardFirst
{
    /// <summary>What the words are heard as; null where a flow may have them.</summary>
    public static string? Meaning(string said)
    {
        var words = said.Trim();
        if (Vocabulary.Answers.ContainsKey(words))
        {
            return "an answer";
        }

        if (Vocabulary.Own.ContainsKey(words) || words.StartsWith("note ", StringComparison.OrdinalIgnoreCase) || Supposition.Behind(words) is not null)
        {
            return "a word of the program's own";
        }

        if (DeedName.Said.ContainsKey(words))
        {
            return "something done";
        }

        if (ObservationName.Said.ContainsKey(words))
        {
            return "something seen";
        }

        return MeasureText.TryNumber(words, out _, out _) ? "a number" : null;
    }
}
