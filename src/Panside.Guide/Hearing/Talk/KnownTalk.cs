using System.Collections.Concurrent;
using Panside.Guide.Hearing.Cries;
using Panside.Guide.Yaml;

namespace Panside.Guide.Hearing.Talk;

/// <summary>The ears for talk that are built in. Each is made when the first sentence wants it, and once.</summary>
internal static class KnownTalk
{
    private const string File = "words/talk.yaml";

    private static readonly ConcurrentDictionary<string, TalkEar?> Ears = new();

    /// <summary>The ear of a language; null where the file has no words of it.</summary>
    public static TalkEar? Ear(string language) => Ears.GetOrAdd(language, code =>
    {
        var stems = KnownCries.Words.LanguageBooks.FirstOrDefault(book => book.Code == code)?.Stems ?? "english";
        return TalkWords.Read(File, WordsByLanguage.BuiltIn(File)!).TryGetValue(code, out var words)
            ? new(words, WordsByLanguage.BuiltIn($"words/talk.{code}.weights") is { } weights ? new(weights) : null, stems)
            : null;
    });
}
