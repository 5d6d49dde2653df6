using Panside.Guide.Flows;

namespace Panside.Guide.Hearing;

/// <summary>The words that can be typed, for a face that completes them.</summary>
public static class KnownWords
{
    private static readonly string[] Others = ["note ", "what if I stop now", "what if I add ", "what if I fire until "];

    /// <summary>Those of every boil and those of its flow: the short ones first, each once.</summary>
    public static IReadOnlyList<string> Of(Flow flow) =>
    [
        .. new[] { Vocabulary.Own, Vocabulary.Answers, Vocabulary.Deeds, Vocabulary.Readings }.SelectMany(table => table.Keys)
            .Concat(Vocabulary.States.Keys)
            .Concat(flow.Words.Keys)
            .Concat(Others)
            .Where(word => word.Length > 1)
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .OrderBy(word => word.Length).ThenBy(word => word, StringComparer.Ordinal),
    ];
}
