using Lucene.Net.Tartarus.Snowball;
using Lucene.Net.Tartarus.Snowball.Ext;

namespace Panside.Guide.Hearing.Sentences;

/// <summary>What is left of a word without its endings: <c>leaks</c>, <c>leaking</c> and <c>leaked</c> are one word.</summary>
/// <remarks>The library's stemmer keeps the word that it works on, so each reader of a sentence has one of its own.</remarks>
internal sealed class Stems
{
    private readonly SnowballProgram _stemmer;

    private Stems(SnowballProgram stemmer) => _stemmer = stemmer;

    /// <summary>The kinds of endings that are known.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["english", "french"];

    /// <summary>A stemmer of one of the kinds.</summary>
    public static Stems Of(string kind) => new(kind == "french" ? new FrenchStemmer() : new EnglishStemmer());

    /// <summary>The stem of a word in small letters.</summary>
    public string Stem(string word)
    {
        if (word.Length < 3)
        {
            return word;
        }

        _stemmer.SetCurrent(word);
        _stemmer.Stem();
        return _stemmer.Current;
    }
}
