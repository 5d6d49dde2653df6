using System.Collections.Frozen;
using Panside.Guide.Yaml;

namespace Panside.Guide.Answering;

/// <summary>The answers and terms that are built in. They are read when the first question wants them, and once.</summary>
internal static class KnownAnswers
{
    private const string English = "en";
    private const string AnswerFile = "words/answers.yaml";
    private const string TermFile = "words/terms.yaml";

    private static readonly Lazy<FrozenDictionary<string, AnswerBook>> Answers =
        new(() => AnswerBook.Read(AnswerFile, WordsByLanguage.BuiltIn(AnswerFile)!, Vocabularies.Flow));

    private static readonly Lazy<FrozenDictionary<string, Terms>> TermBooks = new(() => Terms.Read(TermFile, WordsByLanguage.BuiltIn(TermFile)!));

    /// <summary>The answers of a language; English where it has none.</summary>
    public static AnswerBook BookOf(string language) => Answers.Value.GetValueOrDefault(language) ?? Answers.Value[English];

    /// <summary>The terms of a language; English where it has none.</summary>
    public static Terms TermsOf(string language) => TermBooks.Value.GetValueOrDefault(language) ?? TermBooks.Value[English];
}
