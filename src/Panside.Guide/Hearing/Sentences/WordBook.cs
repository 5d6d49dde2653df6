using System.Collections.Frozen;

namespace Panside.Guide.Hearing.Sentences;

/// <summary>One language's words as the ear uses them: entries that words are compared with, and the concepts they make.</summary>
internal sealed class WordBook
{
    private readonly Dictionary<string, int> _entries = new(StringComparer.Ordinal);
    private readonly List<(string Beginning, int Key)> _beginnings = [];
    private readonly Dictionary<string, int> _known = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);
    private readonly Concept[] _concepts;
    private readonly int[] _things;
    private readonly LanguageWords _language;
    private readonly FrozenSet<string> _light;

    /// <summary>Makes the book of a language.</summary>
    /// <param name="language">The language's own words.</param>
    /// <param name="concepts">The concepts with what is written of them in that language; each after those it refers to.</param>
    public WordBook(LanguageWords language, IReadOnlyList<(string Name, bool IsThing, IReadOnlyList<string> Said)> concepts)
    {
        _language = language;
        _light = language.Light.ToFrozenSet(StringComparer.Ordinal);
        var stems = Stems.Of(language.Stems);
        for (var number = 0; number < concepts.Count; number++)
        {
            _numbers[concepts[number].Name] = number;
        }

        _concepts = new Concept[concepts.Count];
        for (var number = 0; number < concepts.Count; number++)
        {
            var (name, isThing, said) = concepts[number];
            _concepts[number] = new(name, number, isThing, [.. said.Select(phrase => Compile(phrase, stems))]);
        }

        OfThings = [.. _concepts.Where(concept => !Speech.All.Contains(concept.Name)).Select(concept => concept.Number)];
        _things = [.. _concepts.Where(concept => concept.IsThing).Select(concept => concept.Number)];
        foreach (var word in language.Light.Concat(language.Written.Keys.Where(form => form.All(char.IsAsciiLetter)))
            .Concat(language.Written.Values.SelectMany(text => text.Split(' '))))
        {
            Know(word);
        }

        Spelling = new(_known, [.. _beginnings.Select(beginning => beginning.Beginning)], language);
    }

    /// <summary>The concepts by their number, each after those that it refers to.</summary>
    public IReadOnlyList<Concept> Concepts => _concepts;

    /// <summary>How many entries there are.</summary>
    public int Entries => _entries.Count;

    /// <summary>The numbers of those that are things.</summary>
    public IReadOnlyList<int> Things => _things;

    /// <summary>How words are put right.</summary>
    public Spelling Spelling { get; }

    /// <summary>The numbers of those that say what is spoken of, and not how.</summary>
    public IReadOnlyList<int> OfThings { get; }

    /// <summary>A concept's number.</summary>
    public int Number(string concept) => _numbers[concept];

    /// <summary>The words of a text.</summary>
    public Tagged Read(string text)
    {
        var stems = Stems.Of(_language.Stems);
        var words = SentenceReader.Words(text, _language, word => Spelling.Right(word, form => form.Length > 3 && _entries.ContainsKey(stems.Stem(form))));
        return new([.. words.Select(token => Keyed(token, stems))], this);
    }

    /// <summary>The stems of a sentence's words.</summary>
    public IReadOnlyList<string> StemsOf(Tagged sentence)
    {
        var stems = Stems.Of(_language.Stems);
        return [.. sentence.Tokens.Select(token => stems.Stem(token.Text))];
    }

    private Token Keyed(Token token, Stems stems)
    {
        var keys = new List<int>(3);
        foreach (var word in token.Others.Prepend(token.Text))
        {
            if (_entries.TryGetValue("=" + word, out var own))
            {
                keys.Add(own);
            }

            if (_entries.TryGetValue(stems.Stem(word), out var stem) && !keys.Contains(stem))
            {
                keys.Add(stem);
            }

            foreach (var (beginning, key) in _beginnings)
            {
                if (word.StartsWith(beginning, StringComparison.Ordinal) && !keys.Contains(key))
                {
                    keys.Add(key);
                }
            }
        }

        return token with { Keys = [.. keys], IsLight = _light.Contains(token.Text) };
    }

    private Phrase Compile(string written, Stems stems)
    {
        var words = SentenceReader.Expand(Letters.Plain(written), _language).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return new([.. words.Select(word => Part(word, stems))]);
    }

    private void Know(string word) => _known[word] = _known.GetValueOrDefault(word) + 1;

    private PhrasePart Part(string word, Stems stems)
    {
        if (word == PhraseMarks.Gap)
        {
            return new([], []);
        }

        if (PhraseMarks.Concepts(word) is { } concepts)
        {
            return new([], [.. concepts.Select(Number)]);
        }

        return new([.. word.TrimStart('+').Split('/').Select(one => Entry(one, stems))], [], word[0] == '+');
    }

    private int Entry(string word, Stems stems)
    {
        var isBeginning = word.EndsWith('*');
        var isExact = word.StartsWith('=');
        var bare = word.TrimStart('=').TrimEnd('*');
        if (!isBeginning)
        {
            Know(bare);
        }

        var name = isBeginning ? bare + "*" : isExact ? "=" + bare : stems.Stem(bare);
        if (_entries.TryGetValue(name, out var key))
        {
            return key;
        }

        key = _entries.Count;
        _entries[name] = key;
        if (isBeginning)
        {
            _beginnings.Add((bare, key));
        }

        return key;
    }
}
