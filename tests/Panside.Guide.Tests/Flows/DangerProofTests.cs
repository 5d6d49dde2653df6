using System.Text.RegularExpressions;
using Panside.Guide.Flows;
using Panside.Guide.Yaml;

namespace Panside.Guide.Tests.Flows;

/// <summary>
/// S2, S10, S11: a shipped flow in which one way is moved, a danger shadowed or a mark forgotten guides nobody. The mutants are made from
/// the file's text, so that a flow that grows makes more of them.
/// </summary>
public class DangerProofTests
{
    private static readonly string Text = RepositoryFiles.Read("flows", "divided-pan.yaml");

    private static readonly Flow Shipped = FlowFile.Read("f", Text, Vocabularies.Flow);

    private static readonly Lazy<Dictionary<string, string>> All = new(Made);

    public static IEnumerable<TheoryDataRow<string>> Mutants => All.Value.Keys.Select(name => new TheoryDataRow<string>(name));

    [Fact]
    public void There_are_more_than_a_hundred_mutants() => Assert.InRange(All.Value.Count, 100, 1000);

    [Theory]
    [MemberData(nameof(Mutants))]
    public void S2_a_mutated_flow_is_refused(string name)
    {
        var mutant = All.Value[name];
        Assert.NotEqual(Text, mutant);
        var faults = Assert.Throws<FaultyFileException>(() => FlowFile.Read("f", mutant, Vocabularies.Flow)).Faults;
        Assert.All(faults, fault => Assert.InRange(fault.Line, 1, mutant.Count(letter => letter == '\n')));
    }

    private static Dictionary<string, string> Made()
    {
        var mutants = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var step in Shipped.Steps.Values.Where(step => !step.Phase.IsEmergency))
        {
            // A danger shadowed: the step takes what tells of it for its own.
            mutants[$"{step.Id} takes foam over"] = WithOwnWay(step, "observed foam over");
            mutants[$"{step.Id} takes the word dry"] = WithOwnWay(step, "word dry");
            mutants[$"{step.Id} takes a low pan"] = WithOwnWay(step, "reading pan-depth, given: [pan-below-least]");
        }

        foreach (var danger in Shipped.Dangers)
        {
            var first = Shipped.Steps[danger.Go];

            // One way moved: the danger leads to where no emergency is.
            mutants[$"{danger.Code} leads to boiling"] = Text.Replace($"- danger: {danger.Code}\n    go: {danger.Go}\n", $"- danger: {danger.Code}\n    go: boiling\n", StringComparison.Ordinal)
                .Replace($"list: true\n    go: {danger.Go}\n", "list: true\n    go: boiling\n", StringComparison.Ordinal);
            mutants[$"{danger.Code} is not told as a danger"] = InStep(first, "        urgency: danger\n", "");
            mutants[$"{danger.Code} advises nothing"] = InStep(first, $"        advise: {first.Advise}\n", "");
            mutants[$"{danger.Code} waits"] = InStep(first, $"        ask: {first.Ask}\n", $"        ask: {first.Ask}\n        after: 1 min\n");
            mutants[$"{danger.Code} is left by a fact"] = Owned(first, "fact fire-lit", "boiling");
            mutants[$"{danger.Code} has no way out"] = Regex.Replace(Block(first).Whole, "        no: .*\n", "") is var cut && first.Ask == "confirm"
                ? Block(first).Before + cut + Block(first).After
                : Owned(first, $"observed {first.Ask}, given: [fire-lit]", first.Id) is { } round && first.Ask == "foam" ? round : Owned(first, $"reading {first.Ask}, given: [fire-lit]", first.Id);
        }

        foreach (var way in new[] { "      - { when: reading pan-depth, given: [pan-below-least] }\n", "      - { when: observed smell scorched }\n", "      - { when: observed foam over }\n" })
        {
            mutants[$"without {way.Trim()}"] = Text.Replace("    when:\n" + way, "", StringComparison.Ordinal);
        }

        mutants["no mark ends the wood"] = Text.Replace("        mark: wood-held\n", "", StringComparison.Ordinal).Replace("mark: [wood-held, fire-over]", "mark: fire-over", StringComparison.Ordinal)
            .Replace("mark: [wood-held, stop-after-draw]", "mark: stop-after-draw", StringComparison.Ordinal);
        mutants["no mark ends the fire"] = Text.Replace("mark: [wood-held, fire-over]", "mark: wood-held", StringComparison.Ordinal);
        mutants["the end is not gated"] = Text.Replace("{ when: did leave, given: [clear-to-leave], go: over }", "{ when: did leave, go: over }", StringComparison.Ordinal);
        mutants["the gate is turned round"] = Text.Replace("given: [clear-to-leave], go: over", "given: [not clear-to-leave], go: over", StringComparison.Ordinal);
        mutants["the list is no list"] = Text.Replace("    list: true\n", "", StringComparison.Ordinal);
        mutants["the sign opens nothing"] = Text.Replace("[\"!\", f9,", "[f9,", StringComparison.Ordinal);
        return mutants;
    }

    private static string WithOwnWay(Step step, string when) => Owned(step, when, step.Id == "boiling" ? "tank-read" : "boiling");

    private static string Owned(Step step, string when, string go)
    {
        var (before, whole, after) = Block(step);
        var way = $"          - {{ when: {when}, go: {go} }}\n";
        return before + (whole.Contains("        if:\n", StringComparison.Ordinal)
            ? whole.Replace("        if:\n", "        if:\n" + way, StringComparison.Ordinal)
            : whole + "        if:\n" + way) + after;
    }

    private static string InStep(Step step, string old, string put)
    {
        var (before, whole, after) = Block(step);
        return before + whole.Replace(old, put, StringComparison.Ordinal) + after;
    }

    /// <summary>The file before a step, the step's own lines, and what follows.</summary>
    private static (string Before, string Whole, string After) Block(Step step)
    {
        var begin = Text.IndexOf($"      - step: {step.Id}\n", StringComparison.Ordinal);
        var behind = begin + $"      - step: {step.Id}\n".Length;
        var end = Regex.Match(Text[behind..], "^(      - step|  - phase|[a-z]|      #|  #|\n)", RegexOptions.Multiline);
        var stop = end.Success ? behind + end.Index : Text.Length;
        return (Text[..begin], Text[begin..stop], Text[stop..]);
    }
}
