using System.Collections.Frozen;
using System.Text;

namespace Panside.Guide.Yaml;

/// <summary>A built-in file of words, by language.</summary>
internal static class WordsByLanguage
{
    /// <summary>What a file holds for each of its languages.</summary>
    /// <param name="file">Its name, for faults.</param>
    /// <param name="text">Its text.</param>
    /// <param name="kind">What stands behind <c>words:</c>.</param>
    /// <param name="read">Reads one language.</param>
    /// <exception cref="FaultyFileException">Something in it is wrong; the exception tells every fault with its place.</exception>
    public static FrozenDictionary<string, T> Read<T>(string file, string text, string kind, Func<YamlMap, T> read)
    {
        var map = YamlMap.Read(file, text, "the words");
        _ = map.Word("words", [kind], required: true);
        var all = new Dictionary<string, T>(StringComparer.Ordinal);
        if (map.Map("languages", required: true) is { } languages)
        {
            foreach (var code in languages.Keys.ToList())
            {
                if (languages.Map(code, required: true) is { } language)
                {
                    all[code] = read(language);
                }
            }
        }

        map.Finish();
        map.Demand();
        return all.ToFrozenDictionary(StringComparer.Ordinal);
    }

    /// <summary>The text of a file that is built in; null where there is none.</summary>
    public static string? BuiltIn(string file)
    {
        using var stream = typeof(WordsByLanguage).Assembly.GetManifestResourceStream(file);
        if (stream is null)
        {
            return null;
        }

        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return Encoding.UTF8.GetString(bytes);
    }
}
