using System.Collections.Frozen;
using System.Text;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;

namespace Panside.Guide.Answering;

/// <summary>A term of the trade.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Is">What it is.</param>
/// <param name="Measure">How to measure or check it; null where nothing can be measured.</param>
public sealed record Term(string Name, string Is, string? Measure)
{
    /// <summary>What a rig must have for it to be explained there.</summary>
    public IReadOnlyList<string> Given { get; init; } = [];

    /// <summary>Whether a rig has what it is of.</summary>
    public bool IsOf(Rig rig) => Given.All(fact => RigFacts.Holds(rig, fact));

    /// <summary>What is said instead on some rigs.</summary>
    public IReadOnlyList<(IReadOnlyList<string> Given, string? Is, string? Measure)> Instead { get; init; } = [];

    /// <summary>The term as it is explained on a rig.</summary>
    public Term On(Rig rig)
    {
        foreach (var (given, says, measure) in Instead.Where(one => one.Given.All(fact => RigFacts.Holds(rig, fact))))
        {
            return this with { Is = says ?? Is, Measure = measure ?? Measure };
        }

        return this;
    }
}

/// <summary>The terms of the trade in one language: <c>flows/words/terms.yaml</c>.</summary>
public sealed class Terms
{
    private readonly IReadOnlyList<(string Said, Term Term)> _said;

    private Terms(IReadOnlyList<(string Said, Term Term)> said) => _said = [.. said.OrderByDescending(row => row.Said.Length)];

    /// <summary>All of them, each once.</summary>
    public IEnumerable<Term> All => _said.Select(row => row.Term).Distinct();

    /// <summary>The term that is named in what was said, the longest name first; null where none is.</summary>
    public Term? In(string said)
    {
        var words = $" {Plain(said)} ";
        return _said.FirstOrDefault(row => words.Contains($" {row.Said} ", StringComparison.Ordinal)).Term;
    }

    /// <summary>All terms that a text names, in its order, each once; of two that overlap the longer.</summary>
    public IReadOnlyList<Term> AllIn(string text)
    {
        var words = $" {Plain(text)} ";
        var found = new List<(int Place, Term Term)>();
        foreach (var (said, term) in _said)
        {
            for (var place = words.IndexOf($" {said} ", StringComparison.Ordinal); place >= 0; place = words.IndexOf($" {said} ", StringComparison.Ordinal))
            {
                found.Add((place, term));
                words = $"{words[..(place + 1)]}{new string('.', said.Length)}{words[(place + 1 + said.Length)..]}";
            }
        }

        return [.. found.OrderBy(one => one.Place).Select(one => one.Term).Distinct()];
    }

    /// <summary>Whether what was said is a term and nothing more, but for an article.</summary>
    public bool Is(string said)
    {
        var words = Plain(said);
        foreach (var article in new[] { "a ", "an ", "the " })
        {
            words = words.StartsWith(article, StringComparison.Ordinal) ? words[article.Length..] : words;
        }

        return _said.Any(row => row.Said == words || $"{row.Said} mean" == words);
    }

    /// <summary>Reads a file.</summary>
    /// <param name="file">Its name, for faults.</param>
    /// <param name="text">Its text.</param>
    /// <exception cref="FaultyFileException">Something in it is wrong; the exception tells every fault with its place.</exception>
    public static FrozenDictionary<string, Terms> Read(string file, string text) => WordsByLanguage.Read(file, text, "terms", Language);

    private static Terms Language(YamlMap map)
    {
        var said = new List<(string, Term)>();
        if (map.Map("terms", required: true) is { } terms)
        {
            foreach (var name in terms.Keys.ToList())
            {
                if (terms.Map(name, required: true) is { } one)
                {
                    var term = new Term(name, one.Text("is", required: true) ?? "", one.Text("measure"))
                    { Given = Given(one, required: false), Instead = [.. one.Maps("instead").Select(Instead)] };
                    said.AddRange(one.Texts("said", required: true).Append(name).Select(Plain).Distinct().Select(words => (words, term)));
                    one.Finish();
                }
            }

            terms.Finish();
        }

        map.Finish();
        return new(said);
    }

    private static (IReadOnlyList<string>, string?, string?) Instead(YamlMap map)
    {
        var (given, says, measure) = (Given(map, required: true), map.Text("is"), map.Text("measure"));
        map.Finish();
        return (given, says, measure);
    }

    private static IReadOnlyList<string> Given(YamlMap map, bool required)
    {
        var given = map.Texts("given", required);
        foreach (var fact in given.Where(fact => !RigFacts.IsOne(fact)))
        {
            map.Add("given", $"'{fact}' is nothing that a rig has", "one of " + string.Join(", ", RigFacts.Names), FaultKind.Fact);
        }

        return [.. given.Where(RigFacts.IsOne)];
    }

    /// <summary>Small letters and single spaces, nothing else.</summary>
    private static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var letter in text.ToLowerInvariant())
        {
            _ = char.IsLetterOrDigit(letter) ? plain.Append(letter) : plain.Length > 0 && plain[^1] != ' ' ? plain.Append(' ') : plain;
        }

        return plain.ToString().Trim();
    }
}
