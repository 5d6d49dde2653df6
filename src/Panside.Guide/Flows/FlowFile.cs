using System.Collections.Frozen;
using Panside.Guide.Hearing.Terms;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;

namespace Panside.Guide.Flows;

/// <summary>The names that a flow may use for what the program knows.</summary>
/// <param name="Facts">What can hold or not: <c>draw-due</c>.</param>
/// <param name="Figures">What can stand in braces in a text: <c>{tank}</c>.</param>
/// <param name="Forecasts">The forecasts that advice can stand on.</param>
public sealed record FlowVocabulary(
    IReadOnlyCollection<string> Facts, IReadOnlyCollection<string> Figures, IReadOnlyCollection<string> Forecasts)
{
    /// <summary>What can be the one large figure of a screen.</summary>
    public IReadOnlyCollection<string> Counts { get; init; } = [];

    /// <summary>What can be asked for and read off an instrument.</summary>
    public KnownReadings Readings { get; init; } = KnownReadings.BuiltIn;
}

/// <summary>Reads a flow file; its form is described in docs/flows.md. A flow that is read is also checked.</summary>
public sealed partial class FlowFile
{
    private static readonly string[] Levels = ["beginner", "all"];
    private static readonly TimeSpan Shortest = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Longest = TimeSpan.FromHours(24);

    private readonly string _file;
    private readonly FlowVocabulary _vocabulary;
    private readonly List<Step> _steps = [];
    private readonly List<string> _words = [];

    private FlowFile(string file, FlowVocabulary vocabulary) => (_file, _vocabulary) = (file, vocabulary);

    /// <summary>Reads the text of a flow file.</summary>
    /// <param name="file">The name for faults.</param>
    /// <param name="text">The text.</param>
    /// <param name="vocabulary">The names it may use.</param>
    /// <param name="shape">Takes down the form of the file; null where nobody wants to know it.</param>
    /// <exception cref="FaultyFileException">With every fault in it, each with its place.</exception>
    public static Flow Read(string file, string text, FlowVocabulary vocabulary, Shape? shape = null)
    {
        var reader = new FlowFile(file, vocabulary);
        var flow = reader.ReadAll(text, shape);
        FlowCheck.Ways(file, flow, reader._traps);
        return flow;
    }

    /// <summary>
    /// Reads a flow without walking its ways, which takes as long as a third of the time until the first screen: one that is built in, whose ways
    /// the tests walk for every danger at every step, or one that a record was made with, which stays good for that record.
    /// </summary>
    /// <param name="file">The name for faults.</param>
    /// <param name="text">The text.</param>
    /// <param name="vocabulary">The names it may use.</param>
    /// <exception cref="FaultyFileException">With every fault in it but for where its ways lead, each with its place.</exception>
    public static Flow ReadUnwalked(string file, string text, FlowVocabulary vocabulary) => new FlowFile(file, vocabulary).ReadAll(text, null);

    /// <summary>The deed among triggers; null where there is none.</summary>
    internal static DeedName? DeedOf(IReadOnlyList<string> triggers) => triggers
        .Where(when => when.StartsWith("did ", StringComparison.Ordinal))
        .Select(when => DeedName.FromCode(when[4..]))
        .FirstOrDefault();

    private Flow ReadAll(string text, Shape? shape)
    {
        // Beside the reading: the first hash loads a library.
        var hash = Task.Run(() => Flow.HashOf(text));
        var root = YamlMap.Read(_file, text, "the flow", shape);
        var name = root.Text("flow", required: true) ?? "";
        var version = root.Whole("version", 1, 1, required: true) ?? 1;
        var language = Language(root);
        var opening = root.Text("opening", required: true) ?? "";
        var words = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        var dangers = Dangers(root, words);
        Words(root, words);
        Cries(words);
        var start = root.Text("start", required: true) ?? "";
        var anywhere = root.Maps("anywhere").Select(Passage).ToList();
        var watches = root.Maps("watches").Select(Watch).ToList();
        var phases = root.Maps("phases", required: true).Select(Phase).ToList();
        var advices = root.Maps("advices").Select(AdviceRule).ToList();
        var counts = root.Maps("counts").Select(CountRule).ToList();
        var clearing = root.Maps("clearing").Select(ClearingRule).ToList();
        var values = Values(root);
        root.Finish();

        var flow = new Flow
        {
            Name = name,
            Version = version,
            Hash = hash.GetAwaiter().GetResult(),
            Phases = phases,
            Start = start,
            Dangers = dangers,
            Language = language,
            Ear = Ear(language, dangers),
            Anywhere = anywhere,
            Watches = watches,
            Advices = advices,
            Counts = counts,
            Clearing = clearing,
            Values = values,
            OwnWords = [.. _words.OrderByDescending(word => dangers.Any(danger => danger.IsList && danger.Code == word))],
            Words = words.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase),
            Readings = _vocabulary.Readings,
            Opening = opening,
            Steps = _steps.DistinctBy(step => step.Id).ToFrozenDictionary(step => step.Id),
        };
        FlowCheck.Names(root, flow, _steps);
        root.Demand();
        return flow;
    }

    private void Words(YamlMap root, Dictionary<string, string> words)
    {
        if (root.Map("words") is { } map)
        {
            foreach (var word in map.Keys)
            {
                Word(map, word, word, map.Texts(word), words);
            }
        }
    }

    /// <summary>One word and the other ways to say it, each of which means one thing.</summary>
    private void Word(YamlMap map, string key, string word, IReadOnlyList<string> aliases, Dictionary<string, string> words)
    {
        _words.Add(word);
        foreach (var said in aliases.Prepend(word))
        {
            if (WordsHeardFirst.Meaning(said) is { } meaning)
            {
                map.Add(key, $"'{said}' is heard as {meaning}, never as a word of the flow", "another wording", FaultKind.Wording);
            }
            else if (!words.TryAdd(said, word))
            {
                map.Add(key, $"'{said}' already means '{words[said]}'", "each wording once", FaultKind.Wording);
            }
        }
    }

    private Phase Phase(YamlMap map)
    {
        var code = map.Text("phase", required: true) ?? "";
        var phase = new Phase(
            code,
            Kind(map, code),
            map.Flag("side-trip") ?? false,
            [.. map.Maps("on").Select(Passage)]);
        var steps = map.Maps("steps", required: true);
        for (var i = 0; i < steps.Count; i++)
        {
            var following = i + 1 < steps.Count ? steps[i + 1].Text("step") : null;
            _steps.Add(Step(steps[i], phase, following));
        }

        map.Finish();
        return phase;
    }

    /// <summary>What a phase is: what its code says where that is a kind, else what the file says.</summary>
    private static string? Kind(YamlMap map, string code)
    {
        var said = map.Word("kind", [.. Flows.Phase.Kinds.Where(kind => kind != Flows.Phase.EmergencyCode)]);
        if (Flows.Phase.Kinds.Contains(code) && said is not null && said != code)
        {
            map.Add("kind", $"'{code}' is {code} itself, and no {said}", "a phase with another code, or no 'kind'", FaultKind.Together);
        }

        return Flows.Phase.Kinds.Contains(code) ? code : said;
    }

    private AdviceRule AdviceRule(YamlMap map)
    {
        var rule = new AdviceRule(
            map.Text("id", required: true) ?? "",
            map.Word("advice", Actions.All, required: true) ?? "",
            map.Word("urgency", Urgencies.All, required: true) ?? "",
            Facts(map, "when", required: true),
            map.Texts("phases"),
            Worded(map, "text", required: true) ?? "",
            Worded(map, "because", required: true) ?? "",
            map.Word("forecast", [.. _vocabulary.Forecasts]),
            Time(map, "again"))
        { Place = map.Place("id"), Prepare = map.Flag("prepare") ?? false, Instead = Instead(map) };
        map.Finish();
        return rule;
    }

    /// <summary>What is said instead on rigs that have or lack something.</summary>
    private List<Reworded> Instead(YamlMap map)
    {
        var all = new List<Reworded>();
        foreach (var one in map.Maps("instead"))
        {
            var said = new Reworded(OfARig(one, "given", required: true), Worded(one, "text"), Worded(one, "because"), one.Has("caution") ? one.Texts("caution") : null, Worded(one, "if-no"));
            if (said is { Text: null, Because: null, Cautions: null, IfNo: null })
            {
                one.AddAt(one.Place(), "nothing is said instead", "'text', 'because', 'caution' or 'if-no' beside 'given'", FaultKind.Together);
            }

            one.Finish();
            all.Add(said);
        }

        return all;
    }

    /// <summary>Facts of what a rig has, and no others.</summary>
    private static IReadOnlyList<string> OfARig(YamlMap map, string key, bool required = false)
    {
        var given = map.Texts(key, required);
        map.Only(key, () => new("rig-fact", Turned(RigFacts.Names)));
        foreach (var fact in given.Where(fact => !RigFacts.IsOne(fact)))
        {
            map.Add(key, $"'{fact}' is nothing that a rig has", "one of " + string.Join(", ", RigFacts.Names), FaultKind.Fact, Fault.Nearest(Bare(fact), RigFacts.Names));
        }

        return [.. given.Where(RigFacts.IsOne)];
    }

    private CountRule CountRule(YamlMap map)
    {
        var rule = new CountRule(
            map.Word("count", [.. _vocabulary.Counts], required: true) ?? "",
            Facts(map, "when"),
            map.Texts("phases"),
            map.Text("text", required: true) ?? "")
        { Place = map.Place("count") };
        map.Finish();
        return rule;
    }

    /// <summary>What brings leaving nearer: nothing that feeds a fire, opens a draw or lets somebody go.</summary>
    private static readonly string[] ClearingActions = [.. Actions.All.Except(["light-fire", "add-wood", "open-draw", "clear-to-leave"])];

    private ClearingRule ClearingRule(YamlMap map)
    {
        var rule = new ClearingRule(Facts(map, "when"), Worded(map, "text", required: true) ?? "")
        {
            Action = map.Word("advice", ClearingActions, required: false),
            Place = map.Place("text"),
        };
        if (Template.FiguresIn(rule.Text).Contains("clearing-deed"))
        {
            map.Add("text", "'{clearing-deed}' would stand in itself", "the deed in words", FaultKind.Figure);
        }

        map.Finish();
        return rule;
    }

    private Passage Passage(YamlMap map)
    {
        var passage = new Passage(
            Trigger(map, "when", map.Text("when", required: true) ?? ""),
            Facts(map, "given"),
            map.Text("go", required: true) ?? "",
            map.Place("go"));
        map.Finish();
        return passage;
    }

    private string? Ask(YamlMap map) => map.Word(
        "ask",
        [Prompt.Confirm, .. _vocabulary.Readings.All.Select(name => name.Code), .. ObservationName.All.Select(name => name.Code)],
        required: true);

    private string Trigger(YamlMap map, string key, string when)
    {
        map.Only(key, () => new("trigger", Triggers(), "^(fact|word) ."));
        var parts = when.Split(' ');
        var known = parts switch
        {
            ["answer", var word] => AnswerWords.All.Contains(word),
            ["did", var deed] => DeedName.FromCode(deed) is not null,
            ["reading", var reading] => _vocabulary.Readings.Find(reading) is not null,
            ["observed", var what, var state] => ObservationName.FromCode(what)?.States.Contains(state) ?? false,
            ["observed", var what] => ObservationName.FromCode(what) is not null,
            ["fact", "not", .. var fact] => IsFact(string.Join(' ', fact)),
            ["fact", .. var fact] => IsFact(string.Join(' ', fact)),
            ["word", var word] => _words.Contains(word),
            _ => false,
        };
        if (!known && when.Length > 0)
        {
            map.Add(
                key,
                $"'{when}' never happens",
                "answer, did, reading, observed, fact or word, with a name that exists (docs/flows.md lists them)",
                FaultKind.Trigger, Fault.Nearest(when, Triggers()));
        }

        return when;
    }

    private IReadOnlyList<string> Facts(YamlMap map, string key, bool required = false)
    {
        var facts = map.Texts(key, required);
        map.Only(key, FactWords);
        foreach (var fact in facts.Where(fact => !IsFact(Bare(fact))))
        {
            map.Add(key, $"'{fact}' is no fact", "one that docs/facts.md lists", FaultKind.Fact, Fault.Nearest(Bare(fact), _vocabulary.Facts));
        }

        return facts;
    }

    /// <summary>A name of the vocabulary, or a mark that a step of this flow sets; <see cref="FlowCheck"/> sees to the marks.</summary>
    private bool IsFact(string fact) =>
        _vocabulary.Facts.Contains(fact) || fact.StartsWith(FlowCheck.MarkedPrefix, StringComparison.Ordinal);

    private string? Worded(YamlMap map, string key, bool required = false)
    {
        var text = map.Text(key, required);
        foreach (var figure in Template.FiguresIn(text ?? "").Where(figure => !_vocabulary.Figures.Contains(figure)))
        {
            map.Add(key, $"'{{{figure}}}' is no figure", "one that docs/figures.md lists", FaultKind.Figure, Fault.Nearest(figure, _vocabulary.Figures));
        }

        return text;
    }

    /// <summary>A time within a day. What comes back, or runs down, takes some time; only what is asked after a while may be asked at once.</summary>
    private static TimeSpan? Time(YamlMap map, string key, bool required = false, TimeSpan? least = null)
    {
        if (map.Measure(key, Dimension.Time, "10 min", required) is not { } time)
        {
            return null;
        }

        var minutes = time.Value * (time.Unit == Unit.Hour ? 60 : 1);
        if (minutes >= (least ?? Shortest).TotalMinutes && minutes <= Longest.TotalMinutes)
        {
            return TimeSpan.FromMinutes(minutes);
        }

        map.Add(
            key, $"{key} is {time}", least == TimeSpan.Zero ? "0 min, which is at once, to 24 h" : "1 s to 24 h", FaultKind.Range,
            help: least == TimeSpan.Zero ? "It counts from when the step is reached; nothing is asked before that." : "It counts from one time to the next, so it is never nothing and never back in time.");
        return null;
    }
}
