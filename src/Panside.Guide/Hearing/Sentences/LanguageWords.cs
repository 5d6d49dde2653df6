namespace Panside.Guide.Hearing.Sentences;

/// <summary>What a language needs before anything is understood in it.</summary>
/// <param name="Code">Its code: <c>en</c>.</param>
/// <param name="Stems">The kind of its endings.</param>
/// <param name="Endings">Endings that are put to known words, so that a slip in an ending is known too.</param>
/// <param name="Written">Short forms and what they stand for: <c>won't</c> is <c>will not</c>.</param>
/// <param name="Light">Words that a phrase may pass over.</param>
/// <param name="Plain">Ordinary words that look like known ones and are no slips.</param>
internal sealed record LanguageWords(
    string Code,
    string Stems,
    IReadOnlyList<string> Endings,
    IReadOnlyDictionary<string, string> Written,
    IReadOnlyList<string> Light,
    IReadOnlySet<string> Plain);
