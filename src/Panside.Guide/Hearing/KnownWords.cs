using Panside.Guide.Flows;
using Panside.Guide.Hearing.Terms;
using Panside.Guide.Lines;

namespace Panside.Guide.Hearing;

/// <summary>The words that can be typed, for a face that completes them.</summary>
public static class KnownWords
{
    private static readonly string[] Others = ["added ", "water in ", "note ", "what if I stop now", "what if I add ", "what if I fire until "];

    /// <summary>Those of every boil and those of its flow: the short ones first, each once.</summary>
    public static IReadOnlyList<string> Of(Flow flow) =>
    [
        .. Vocabulary.Own.Keys.Concat(Vocabulary.Answers.Keys)
            .Concat(DeedName.Said.Keys).Concat(flow.Readings.Words.Keys).Concat(ObservationName.Said.Keys)
            .Concat(flow.Words.Keys)
            .Concat(Others)
            .Where(word => word.Length > 1)
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .OrderBy(word => word.Length).ThenBy(word => word, StringComparer.Ordinal),
    ];
}
