using Panside.Guide.Hearing.Cries;
using Panside.Guide.Hearing.Talk;
using Panside.Guide.Yaml;

namespace Panside.Guide.Answering;

/// <summary>The files of words in <c>flows/words</c>, each by what stands behind its key <c>words</c>.</summary>
public static class WordFiles
{
    private static readonly IReadOnlyList<string> Kinds = ["dangers", "talk", "answers", "terms"];

    /// <summary>What a file holds, in words, once nothing is wrong with it.</summary>
    /// <param name="file">Its name, for faults.</param>
    /// <param name="text">Its text.</param>
    /// <exception cref="FaultyFileException">Something in it is wrong; the exception tells every fault with its place.</exception>
    public static string Told(string file, string text)
    {
        var map = YamlMap.Read(file, text, "the words");
        switch (map.Word("words", Kinds, required: true))
        {
            case "talk":
                return $"the words of talk in {string.Join(" and ", TalkWords.Read(file, text).Keys.Order(StringComparer.Ordinal))}";
            case "answers":
                var books = AnswerBook.Read(file, text, Vocabularies.Flow);
                return $"the answers to {books.Values.Max(book => book.Asks.Count)} questions in {string.Join(" and ", books.Keys.Order(StringComparer.Ordinal))}";
            case "terms":
                var terms = Terms.Read(file, text);
                return $"{terms.Values.Max(known => known.All.Count())} terms in {string.Join(" and ", terms.Keys.Order(StringComparer.Ordinal))}";
            case "dangers":
                var words = DangerWords.Read(file, text);
                return $"the words of {words.Hazards.Count} dangers, {words.Count} concepts in {string.Join(" and ", words.Languages)}";
            default:
                map.Demand();
                return "";
        }
    }
}
