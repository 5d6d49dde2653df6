using Panside.Guide.Hearing.Sentences;
using Panside.Guide.Yaml;

namespace Panside.Guide.Hearing.Cries;

/// <summary>A concept as a file writes it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="IsThing">Whether a later part of a sentence may still speak of it.</param>
/// <param name="Said">What says it, by language.</param>
internal sealed record WrittenConcept(string Name, bool IsThing, IReadOnlyDictionary<string, IReadOnlyList<string>> Said)
{
    /// <summary>What says it in a language.</summary>
    public IReadOnlyList<string> In(string language) => Said.GetValueOrDefault(language, []);

    /// <summary>The concepts that it is built of.</summary>
    public IEnumerable<string> BuiltOf => Said.Values.SelectMany(phrases => phrases).SelectMany(PhraseMarks.ReferredTo);
}

/// <summary>Reads concepts, finds those that are missing and puts each after those that it is built of.</summary>
/// <param name="languages">The languages that each may be said in.</param>
internal sealed class ConceptReader(IReadOnlyList<string> languages)
{
    private readonly Dictionary<string, WrittenConcept> _concepts = new(StringComparer.Ordinal);
    private readonly List<(YamlMap Map, string Concept)> _read = [];

    /// <summary>Whether there is a concept of a name.</summary>
    public bool Knows(string name) => _concepts.ContainsKey(name);

    /// <summary>Reads the concepts under a key.</summary>
    public void Read(YamlMap file, string key, IReadOnlyList<string> needed)
    {
        if (file.Map(key, required: true) is not { } map)
        {
            return;
        }

        foreach (var missing in needed.Where(name => !map.Has(name)))
        {
            map.AddAt(map.Place(), $"the concept '{missing}' is missing", $"'{missing}: …' here");
        }

        foreach (var name in map.Keys)
        {
            if (_concepts.ContainsKey(name))
            {
                map.Add(name, $"'{name}' is there twice", "a name of its own");
            }

            if (map.Map(name) is { } concept)
            {
                _concepts[name] = One(name, concept);
                _read.Add((concept, name));
            }
        }
    }

    /// <summary>All of them, each after those that it is built of.</summary>
    public IReadOnlyList<WrittenConcept> InOrder()
    {
        var (done, ordered) = (new HashSet<string>(StringComparer.Ordinal), new List<WrittenConcept>());
        foreach (var name in _concepts.Keys)
        {
            Put(name, done, ordered);
        }

        return ordered;
    }

    /// <summary>Tells the concepts that are built of nothing known, or of themselves.</summary>
    public void CheckReferences()
    {
        foreach (var (map, name) in _read)
        {
            if (_concepts[name].BuiltOf.FirstOrDefault(part => !Knows(part)) is { } unknown)
            {
                map.AddAt(map.Place(), $"'{name}' is built of '<{unknown}>', which is no concept", "the name of a concept of this file");
            }
            else if (IsBuiltOf(name, name, []))
            {
                map.AddAt(map.Place(), $"'{name}' is built of itself", "other concepts");
            }
        }
    }

    private bool IsBuiltOf(string name, string sought, HashSet<string> seen) =>
        _concepts.TryGetValue(name, out var concept)
        && concept.BuiltOf.Any(part => part == sought || (seen.Add(part) && IsBuiltOf(part, sought, seen)));

    private void Put(string name, HashSet<string> done, List<WrittenConcept> ordered)
    {
        if (!done.Add(name))
        {
            return;
        }

        foreach (var part in _concepts[name].BuiltOf)
        {
            Put(part, done, ordered);
        }

        ordered.Add(_concepts[name]);
    }

    private WrittenConcept One(string name, YamlMap map)
    {
        var said = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal);
        foreach (var language in languages)
        {
            var phrases = map.PlacedTexts(language);
            foreach (var (text, place) in phrases)
            {
                if (PhraseMarks.Wrong(text) is { } wrong)
                {
                    map.AddAt(place, wrong, "words of letters, 'leak*', '=leak', 'a/b', '<concept>' or '..' between words");
                }
            }

            said[language] = [.. phrases.Select(phrase => phrase.Text)];
        }

        var isThing = map.Flag("thing") ?? false;
        map.Finish();
        return new(name, isThing, said);
    }
}
