using System.Collections.Concurrent;
using System.Text;

namespace Panside.Guide.Hearing.Cries;

/// <summary>The words of dangers that are built in. They are read when the first sentence wants them, and once.</summary>
public static class KnownCries
{
    /// <summary>The name of the file that they are written in.</summary>
    public const string File = "words/dangers.yaml";

    private static readonly Lazy<DangerWords> Built = new(() => DangerWords.Read(File, Text(File)));
    private static readonly ConcurrentDictionary<string, FittedWeights?> Weights = new();

    /// <summary>The words, in every language of the file.</summary>
    public static DangerWords Words => Built.Value;

    /// <summary>The weights that were fitted for a language; null where none are built in.</summary>
    public static FittedWeights? Fitted(string language) => Weights.GetOrAdd(language, code =>
    {
        var file = $"words/dangers.{code}.weights";
        return typeof(KnownCries).Assembly.GetManifestResourceInfo(file) is null ? null : new(Text(file));
    });

    private static string Text(string file)
    {
        using var stream = typeof(KnownCries).Assembly.GetManifestResourceStream(file)
            ?? throw new InvalidOperationException($"{file} is not built in.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return Encoding.UTF8.GetString(bytes);
    }
}
