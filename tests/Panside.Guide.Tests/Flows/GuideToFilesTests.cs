using System.Text.RegularExpressions;
using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Tests.Flows;

/// <summary>docs/flows.md, docs/facts.md, docs/counts.md, docs/figures.md, docs/adding-a-step.md and docs/rigs.md name everything that a file may hold, and state what the program does.</summary>
public partial class GuideToFilesTests
{
    private static readonly string Flows = RepositoryFiles.Read("docs", "flows.md");
    private static readonly string WhatHolds = RepositoryFiles.Read("docs", "facts.md");
    private static readonly string OnCounts = RepositoryFiles.Read("docs", "counts.md");
    private static readonly string InBraces = RepositoryFiles.Read("docs", "figures.md");
    private static readonly string Adding = RepositoryFiles.Read("docs", "adding-a-step.md");
    private static readonly string Rigs = RepositoryFiles.Read("docs", "rigs.md");

    /// <summary>A flow with a key too many in every mapping; the faults list the keys that there are.</summary>
    private const string StrangeFlow = """
        x: 1
        flow: f
        words: { stop: [halt] }
        dangers: [{ danger: dry, go: a, x: 1, when: [{ when: observed foam over, x: 1 }] }]
        anywhere: [{ when: word stop, go: a, x: 1 }]
        watches: [{ watch: w, x: 1 }]
        phases: [{ phase: p, x: 1, steps: [{ step: a, x: 1, clock: { x: 1 } }] }]
        advices: [{ id: i, x: 1 }]
        counts: [{ count: c, x: 1 }]
        clearing: [{ x: 1 }]
        """;

    private const string StrangeRig =
        "x: 1\npan: { x: 1, depth: { x: 1 } }\nfire: { x: 1, wood: { x: 1 } }\nfeed: { x: 1 }\nsyrup: { x: 1 }\ndraw: { by: valve, x: 1 }\n";

    [Fact]
    public void Every_fact_has_a_line_of_its_own() => Assert.All(Facts.Names, fact => Assert.Single(Rows(WhatHolds), row => row.StartsWith($"| `{fact}` | ", StringComparison.Ordinal)));

    [Fact]
    public void Every_figure_has_a_line_of_its_own() => Assert.All(Figures.Names, figure => Assert.Single(Rows(InBraces), row => row.StartsWith($"| `{{{figure}}}` | ", StringComparison.Ordinal)));

    [Fact]
    public void Every_count_has_a_line_of_its_own_and_no_other_is_described() =>
        Assert.Equal(Counts.Names, Rows(OnCounts).SkipWhile(row => row != "| count | counts | its bar is full").Skip(2).TakeWhile(row => row.StartsWith("| `", StringComparison.Ordinal))
            .Take(Counts.Names.Count).Select(row => row.Split('`')[1]).Order(StringComparer.Ordinal));

    [Fact]
    public void No_fact_and_no_figure_is_described_that_there_is_not()
    {
        var (facts, figures) = (Section(WhatHolds, "## Facts"), Section(InBraces, "## Figures"));
        Assert.Equal(Facts.Names, First().Matches(facts).Select(match => match.Groups["name"].Value).Order(StringComparer.Ordinal));
        Assert.Equal(Figures.Names, First().Matches(figures).Select(match => match.Groups["name"].Value.Trim('{', '}')).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_name_that_a_trigger_an_advice_or_a_question_may_use_is_listed()
    {
        var names = KnownReadings.BuiltIn.All.Select(name => name.Code)
            .Concat(ObservationName.All.SelectMany(name => name.States.Append(name.Code)))
            .Concat(DeedName.All.Select(name => name.Code))
            .Concat(AnswerWords.All)
            .Concat(Actions.All).Concat(Urgencies.All).Concat(Forecasts.Names);
        Assert.All(names, name => Assert.Matches($"`(answer )?{name}`", Flows));
    }

    [Fact]
    public void Every_key_of_a_flow_is_described()
    {
        var known = Known(() => FlowFile.Read("f", StrangeFlow, Vocabularies.Flow));
        Assert.Equal(11, known.Count);
        Assert.All(known.SelectMany(keys => keys), key => Assert.Contains($"`{key}`", Flows + OnCounts, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_key_of_a_rig_is_described()
    {
        var known = Known(() => RigFile.Read("r", StrangeRig));
        Assert.Equal(8, known.Count);
        var above = new Dictionary<string, string>
        {
            ["length"] = "pan.",
            ["width"] = "pan.",
            ["channels"] = "pan.",
            ["run"] = "pan.depth.",
            ["least"] = "pan.depth.",
            ["flood"] = "pan.depth.",
            ["wall"] = "pan.depth.",
            ["draft"] = "fire.",
            ["firebrick"] = "fire.",
            ["charge"] = "fire.",
            ["interval"] = "fire.",
            ["species"] = "fire.wood.",
            ["moisture"] = "fire.wood.",
            ["tank"] = "feed.",
            ["kind"] = "fire.",
            ["boils"] = "fire.",
            ["pail"] = "feed.",
            ["float"] = "feed.",
            ["target"] = "syrup.",
        };
        var leaves = known.SelectMany(keys => keys).Where(key => key is not ("pan" or "pans" or "depth" or "fire" or "wood" or "feed" or "syrup" or "draw")).ToList();
        Assert.Equal(26, leaves.Count);
        Assert.All(leaves.Where(key => key == "by"), _ => Assert.Single(Rows(Rigs), row => row.StartsWith("| `feed.by` | ", StringComparison.Ordinal)));
        Assert.Single(Rows(Rigs), row => row.StartsWith("| `draw.by` | ", StringComparison.Ordinal));
        Assert.All(leaves.Where(key => key != "by"), key => Assert.Single(Rows(Rigs), row => row.Split(" | ").Length == 4 && row.StartsWith($"| `{above.GetValueOrDefault(key)}{key}` | ", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_defaults_of_a_rig_are_stated_as_they_are()
    {
        string Row(string key) => Rows(Rigs).Single(row => row.StartsWith($"| `{key}` | ", StringComparison.Ordinal)).Split(" | ")[^1];
        var foot = Area.FromSquareFeet(1);
        Assert.StartsWith($"{RigDefaults.Altitude.Feet:0} ft", Row("altitude"), StringComparison.Ordinal);
        Assert.StartsWith($"{RigDefaults.RunDepth.Inches:0.##} in", Row("pan.depth.run"), StringComparison.Ordinal);
        Assert.StartsWith($"{RigDefaults.LeastDepth.Inches:0.##} in", Row("pan.depth.least"), StringComparison.Ordinal);
        Assert.StartsWith($"{RigDefaults.FloodDepth.Inches:0.##} in", Row("pan.depth.flood"), StringComparison.Ordinal);
        Assert.StartsWith($"{RigDefaults.WallDepth.Inches:0.##} in", Row("pan.depth.wall"), StringComparison.Ordinal);
        Assert.StartsWith($"{RigDefaults.Channels(Length.FromFeet(4))}; {RigDefaults.Channels(Length.FromInches(23))} in a pan shorter than 24 in", Row("pan.channels"), StringComparison.Ordinal);
        Assert.StartsWith($"{RigDefaults.Firebrick(foot).Pounds:0.##} lb a square foot", Row("fire.firebrick"), StringComparison.Ordinal);
        Assert.StartsWith(RigDefaults.WoodSpecies, Row("fire.wood.species"), StringComparison.Ordinal);
        Assert.StartsWith($"{RigDefaults.WoodMoisturePercent:0} %", Row("fire.wood.moisture"), StringComparison.Ordinal);
        Assert.StartsWith(
            $"{RigDefaults.Charge(foot, Draft.Forced).Pounds * 8:0.##}/8 lb a square foot of pan with a blower, {RigDefaults.Charge(foot, Draft.Natural).Pounds * 8:0.##}/8 lb without",
            Row("fire.charge"), StringComparison.Ordinal);
        Assert.StartsWith(
            $"{RigDefaults.Interval(Draft.Forced).TotalMinutes} min with a blower, {RigDefaults.Interval(Draft.Natural).TotalMinutes} min without", Row("fire.interval"), StringComparison.Ordinal);
        Assert.StartsWith($"{RigDefaults.Tank(foot).UsGallons:0.##} gal (US) a square foot", Row("feed.tank"), StringComparison.Ordinal);
        Assert.StartsWith($"{RigDefaults.TargetBrix} Brix", Row("syrup.target"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_rig_that_the_guide_shows_is_read() => Assert.Equal("north shed, two by four", RigFile.Read("r", Code(Rigs)[0]).Name);

    [Fact]
    public void The_step_that_the_guide_adds_makes_a_right_flow_and_its_fault_is_told_as_shown()
    {
        var step = Code(Adding).Single(code => code.Contains("step: sap-filter", StringComparison.Ordinal));
        Assert.EndsWith("      - step: tank-read                # there\n", step, StringComparison.Ordinal);
        var flow = RepositoryFiles.Read("flows", "divided-pan.yaml").Replace("      - step: tank-read\n", step, StringComparison.Ordinal);
        var read = FlowFile.Read("my-flow.yaml", flow, Vocabularies.Flow);
        Assert.Contains($"my-flow.yaml: the flow '{read.Name}', {read.Steps.Count} steps, nothing wrong.", Adding, StringComparison.Ordinal);

        var wrong = flow.Replace("step: sap-filter\n        ask: confirm", "step: sap-filter\n        ask: conform", StringComparison.Ordinal);
        var fault = Assert.Single(Assert.Throws<FaultyFileException>(() => FlowFile.Read("my-flow.yaml", wrong, Vocabularies.Flow)).Faults);

        // The line moves with every change of the flow above it, and the page with it.
        var (told, more) = (fault.ToString(), fault.More(wrong));
        Assert.Contains($"\n{told[..told.IndexOf("pan-depth", StringComparison.Ordinal)]}…\n{string.Join('\n', more)}\n", Adding, StringComparison.Ordinal);
    }

    private static List<string[]> Known(Action read) =>
    [
        .. Assert.Throws<FaultyFileException>(read).Faults
            .Where(fault => fault.Wrong == "unknown key 'x'")
            .Select(fault => fault.Expected["one of ".Length..].Split(", ")),
    ];

    private static IEnumerable<string> Rows(string text) => text.Split('\n').Where(line => line.StartsWith("| ", StringComparison.Ordinal)).Select(row => row.TrimEnd(' ', '|'));

    private static string Section(string text, string title) =>
        text[text.IndexOf(title + "\n", StringComparison.Ordinal)..] is var rest && rest.IndexOf("\n## ", StringComparison.Ordinal) is > 0 and var end ? rest[..end] : rest;

    private static List<string> Code(string text) => [.. Fenced().Matches(text).Select(match => match.Groups["code"].Value)];

    [GeneratedRegex("^\\| `(?<name>[^`]+)` \\| ", RegexOptions.Multiline)]
    private static partial Regex First();

    [GeneratedRegex("^```yaml\n(?<code>.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fenced();
}
