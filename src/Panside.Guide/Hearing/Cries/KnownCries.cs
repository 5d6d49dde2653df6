using System.Collections.Concurrent;
using Panside.Guide.Yaml;

namespace Panside.Guide.Hearing.Cries;

/// <summary>The words of dangers that are built in. They are read when the first sentence wants them, and once.</summary>
public static class KnownCries
{
    /// <summary>The name of the file that they are written in.</summary>
    public const string File = "words/dangers.yaml";

    private static readonly Lazy<DangerWords> Built = new(() => DangerWords.Read(File, WordsByLanguage.BuiltIn(File)!));
    private static readonly ConcurrentDictionary<string, FittedWeights?> Weights = new();

    /// <summary>The words, in every language of the file.</summary>
    public static DangerWords Words => Built.Value;

    /// <summary>The weights that were fitted for a language; null where none are built in.</summary>
    public static FittedWeights? Fitted(string language) => Weights.GetOrAdd(language, code =>
    {
        return WordsByLanguage.BuiltIn($"words/dangers.{code}.weights") is { } text ? new(text) : null;
    });
}
