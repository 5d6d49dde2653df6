using Panside.Guide.Hearing.Sentences;
using Panside.Guide.Yaml;

namespace Panside.Guide.Hearing.Cries;

/// <summary>The words by which dangers are known, in every language of a file: <c>flows/words/dangers.yaml</c>.</summary>
public sealed class DangerWords
{
    /// <summary>The hazard of a cry that does not tell which danger it means.</summary>
    internal const string Unsure = "unsure";

    private static readonly (string Key, int Weight)[] Weights =
        [("sure", Combination.Sure), ("likely", Combination.Likely), ("hint", Combination.Hint), ("alone", Combination.Sure)];

    private readonly IReadOnlyList<WrittenConcept> _concepts;

    private DangerWords(IReadOnlyList<LanguageWords> languages, IReadOnlyList<WrittenConcept> concepts, IReadOnlyList<string> hazards, IReadOnlyList<WrittenCombination> combinations) =>
        (LanguageBooks, _concepts, Hazards, Combinations) = (languages, concepts, hazards, combinations);

    /// <summary>The hazards, the gravest first.</summary>
    public IReadOnlyList<string> Hazards { get; }

    /// <summary>The codes of the languages.</summary>
    public IReadOnlyList<string> Languages => [.. LanguageBooks.Select(language => language.Code)];

    /// <summary>How many concepts there are.</summary>
    public int Count => _concepts.Count;

    /// <summary>The words that each language needs.</summary>
    internal IReadOnlyList<LanguageWords> LanguageBooks { get; }

    /// <summary>The combinations in the order of the file.</summary>
    internal IReadOnlyList<WrittenCombination> Combinations { get; }

    /// <summary>Reads a file of words.</summary>
    /// <param name="file">Its name, for faults.</param>
    /// <param name="text">Its text.</param>
    /// <exception cref="FaultyFileException">Something in it is wrong; the exception tells every fault with its place.</exception>
    public static DangerWords Read(string file, string text)
    {
        var map = YamlMap.Read(file, text, "the words");
        _ = map.Word("words", ["dangers"], required: true);
        var languages = ReadLanguages(map);
        var codes = languages.Select(language => language.Code).ToList();
        var concepts = new ConceptReader(codes);
        concepts.Read(map, "speech", Speech.All);
        concepts.Read(map, "concepts", []);
        concepts.CheckReferences();
        var (hazards, combinations) = ReadHazards(map, concepts);
        map.Finish();
        map.Demand();
        return new(languages, concepts.InOrder(), hazards, combinations);
    }

    /// <summary>The concepts with what is said of them in a language.</summary>
    internal IEnumerable<(string Name, bool IsThing, IReadOnlyList<string> Said)> ConceptsIn(string language) =>
        _concepts.Select(concept => (concept.Name, concept.IsThing, concept.In(language)));

    private static List<LanguageWords> ReadLanguages(YamlMap map)
    {
        var (languages, plain) = (map.Map("languages", required: true), map.Map("plain"));
        var read = new List<LanguageWords>();
        foreach (var code in languages?.Keys ?? [])
        {
            if (languages!.Map(code) is { } language)
            {
                read.Add(Language(language, code, plain));
            }
        }

        plain?.Finish();
        return read;
    }

    private static LanguageWords Language(YamlMap map, string code, YamlMap? plain)
    {
        var written = new Dictionary<string, string>(StringComparer.Ordinal);
        if (map.Map("written") is { } forms)
        {
            foreach (var form in forms.Keys)
            {
                written[form] = forms.Text(form) ?? form;
            }
        }

        var read = new LanguageWords(
            code,
            map.Word("stems", Stems.Kinds, required: true) ?? Stems.Kinds[0],
            Words(map, "endings"),
            written,
            Words(map, "light"),
            plain is null ? new HashSet<string>() : Words(plain, code).ToHashSet(StringComparer.Ordinal));
        map.Finish();
        return read;
    }

    private static string[] Words(YamlMap map, string key) =>
        Letters.Plain(map.Text(key) ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static (List<string> Names, List<WrittenCombination> Combinations) ReadHazards(YamlMap map, ConceptReader concepts)
    {
        var combinations = new List<WrittenCombination>();
        if (map.Map("hazards", required: true) is not { } hazards)
        {
            return ([], combinations);
        }

        foreach (var name in hazards.Keys)
        {
            if (hazards.Map(name) is not { } hazard)
            {
                continue;
            }

            foreach (var (key, weight) in Weights)
            {
                foreach (var (text, place) in hazard.PlacedTexts(key))
                {
                    if (WrittenCombination.Named(text).FirstOrDefault(named => !concepts.Knows(named)) is { } unknown)
                    {
                        hazard.AddAt(place, $"'{unknown}' in '{text}' is no concept", "the name of a concept of this file");
                    }
                    else if (text.Split(' ').All(word => word.StartsWith('-')))
                    {
                        hazard.AddAt(place, $"'{text}' has only what may not stand there", "a concept that must");
                    }

                    combinations.Add(new(name, weight, text, key == "alone"));
                }
            }

            hazard.Finish();
        }

        return ([.. hazards.Keys], combinations);
    }
}
