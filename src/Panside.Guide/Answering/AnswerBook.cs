using System.Collections.Frozen;
using Panside.Guide.Flows;
using Panside.Guide.Yaml;

namespace Panside.Guide.Answering;

/// <summary>What is answered to a question, and what takes an instrument's place that nobody has: <c>flows/words/answers.yaml</c>.</summary>
public sealed class AnswerBook
{
    private const string Other = "other";

    private readonly FrozenDictionary<string, string> _lacks;

    private AnswerBook(IReadOnlyList<Ask> asks, FrozenDictionary<string, string> lacks) =>
        (Asks, _lacks) = (asks.ToFrozenDictionary(ask => ask.Code, StringComparer.Ordinal), lacks);

    /// <summary>The questions by their codes.</summary>
    public FrozenDictionary<string, Ask> Asks { get; }

    /// <summary>What takes the place of a thing that nobody has, with figures in braces.</summary>
    public string InsteadOf(string thing) => _lacks.GetValueOrDefault(thing) ?? _lacks[Other];

    /// <summary>Reads a file.</summary>
    /// <param name="file">Its name, for faults.</param>
    /// <param name="text">Its text.</param>
    /// <param name="vocabulary">The facts and figures that there are.</param>
    /// <exception cref="FaultyFileException">Something in it is wrong; the exception tells every fault with its place.</exception>
    public static FrozenDictionary<string, AnswerBook> Read(string file, string text, FlowVocabulary vocabulary) =>
        WordsByLanguage.Read(file, text, "answers", language => Language(language, vocabulary));

    private static AnswerBook Language(YamlMap map, FlowVocabulary vocabulary)
    {
        var asks = new List<Ask>();
        foreach (var one in map.Maps("asks", required: true))
        {
            var answers = one.Maps("answers", required: true).Select(row => Row(row, vocabulary)).ToList();
            asks.Add(new(one.Text("ask", required: true) ?? "", one.Text("said", required: true) ?? "", answers));
            if (answers.Count == 0 || answers[^1].When.Count > 0)
            {
                one.AddAt(one.Place(), "the last answer has a 'when'", "a last one that always holds");
            }

            one.Finish();
        }

        var lacks = new Dictionary<string, string>(StringComparer.Ordinal);
        if (map.Map("lacks", required: true) is { } things)
        {
            foreach (var thing in things.Keys.ToList())
            {
                lacks[thing] = things.Text(thing) ?? "";
                Check(things, thing, lacks[thing], vocabulary);
            }

            if (!lacks.ContainsKey(Other))
            {
                things.AddAt(things.Place(), $"'{Other}' is missing", "what is said of any other thing");
            }

            things.Finish();
        }

        map.Finish();
        return new(asks, lacks.ToFrozenDictionary(StringComparer.Ordinal));
    }

    private static Answered Row(YamlMap row, FlowVocabulary vocabulary)
    {
        var (when, say) = (row.Texts("when"), row.Text("say", required: true) ?? "");
        foreach (var fact in when.Where(fact => !vocabulary.Facts.Contains(fact.StartsWith("not ", StringComparison.Ordinal) ? fact[4..] : fact)))
        {
            row.Add("when", $"'{fact}' is no fact", "a fact of docs/flows.md, with 'not' before it or without", FaultKind.Fact);
        }

        Check(row, "say", say, vocabulary);
        row.Finish();
        return new(when, say);
    }

    private static void Check(YamlMap map, string key, string text, FlowVocabulary vocabulary)
    {
        foreach (var figure in Template.FiguresIn(text).Where(figure => !vocabulary.Figures.Contains(figure)))
        {
            map.Add(key, $"'{{{figure}}}' is no figure", "a figure of docs/flows.md", FaultKind.Figure);
        }
    }
}

/// <summary>A question.</summary>
/// <param name="Code">Its code: <c>leave</c>.</param>
/// <param name="Said">How it is told back: <c>when can I leave</c>.</param>
/// <param name="Answers">The answers; the first whose facts hold is said.</param>
public sealed record Ask(string Code, string Said, IReadOnlyList<Answered> Answers);

/// <summary>An answer.</summary>
/// <param name="When">The facts that must hold.</param>
/// <param name="Say">What is said, with figures in braces.</param>
public sealed record Answered(IReadOnlyList<string> When, string Say);
