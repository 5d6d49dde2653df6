using System.Text.RegularExpressions;
using Panside.Guide.Plans;
using Panside.Guide.Yaml;
using Panside.Tests.Reckon;

namespace Panside.Tests.Checks;

/// <summary>Flows played through plan files: <c>panside check --walk</c>.</summary>
public class WalkTests
{
    private static readonly string Flow = Path.Combine(RepositoryFiles.Root, "flows", "divided-pan.yaml");

    public static IEnumerable<TheoryDataRow<string>> Rigs => Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "flows", "rigs"), "*.yaml")
        .Select(file => new TheoryDataRow<string>(Path.GetFileName(file)));

    /// <summary>The plan says what is asked at each line; a flow or a rig that asks otherwise shows here with line and column.</summary>
    [Theory]
    [MemberData(nameof(Rigs))]
    public void Each_shipped_rig_has_a_plan_and_the_shipped_flow_goes_by_it(string rig)
    {
        var run = Captured.Run("check", "--walk", Flow, "--rig", Rig(rig));
        Assert.Equal(("", ExitStatus.Done), (run.Out, run.Status));
        Assert.EndsWith(", no difference.\n", run.Errors, StringComparison.Ordinal);
        var plan = PlanFile.Read(rig, RepositoryFiles.Read("flows", "plans", rig));
        Assert.Equal("safe", plan.Ends);
        Assert.All(plan.Lines, line => Assert.NotNull(line.Asks));
        Assert.NotEmpty(plan.NotTold);
        Assert.Contains(plan.Lines, line => line.Told.Count > 0);
    }

    [Theory]
    [InlineData("asks: pan-sound", "asks: tank-read", "tank-read", "at 17:00 'pan-sound' is asked (Look the pan over; say yes when it is clean, level and sound.), expected 'tank-read' to be")]
    [InlineData("asks: pan-sound", "asks: nothing", "nothing", "at 17:00 'pan-sound' is asked (Look the pan over; say yes when it is clean, level and sound.), expected nothing to be")]
    [InlineData("asks: pan-sound", "asks: pan-sund", "pan-sund", "'pan-sund' is nothing of this flow, expected a name that stands in it")]
    [InlineData("phase: start-up", "phase: shutdown", "shutdown", "at 17:00 the phase is 'start-up', expected 'shutdown'")]
    [InlineData("say: no", "say: tank 999", "tank 999", "at 17:00 'tank 999' is refused: 999 gal is not possible")]
    [InlineData("say: no", "say: \"no\", taken: refused", "\"no\"", "at 17:00 'no' is taken, expected it to be refused")]
    [InlineData("told: Look the pan over", "told: Light the fire", "Light the fire", "up to 17:00 nothing says 'Light the fire', expected it to be said")]
    [InlineData("not-told: gas", "not-told: the PAN", "the PAN", "up to 17:00 it is said: > Look the pan over; say yes when it is clean, level and sound., expected nothing with 'the PAN'")]
    [InlineData("ends: open", "ends: safe", "safe", "the boil is not over, expected it to end safe")]
    [InlineData("at: 17:00", "at: noonish", "noonish", "at is 'noonish', expected a time of day, like 17:05")]
    [InlineData("say: no", "sai: no", "sai", "unknown key 'sai', expected one of asks, at, not-told, phase, say, taken, told")]
    public void The_first_difference_is_told_with_line_and_column(string right, string wrong, string place, string told)
    {
        const string Plan = """
            plan: a beginning
            ends: open
            lines:
              - { at: 17:00, phase: start-up, asks: season-first, say: no, told: Look the pan over, not-told: gas }
              - { asks: pan-sound, say: "yes" }

            """;
        using var scratch = new Scratch();
        Assert.Contains(right, Plan, StringComparison.Ordinal);
        var text = Plan.Replace(right, wrong, StringComparison.Ordinal);
        File.WriteAllText(scratch["plan.yaml"], text);
        var run = Captured.Run("check", "--walk", Flow, "--rig", Rig("two-by-four-natural.yaml"), scratch["plan.yaml"]);
        Assert.Equal(ExitStatus.Wrong, run.Status);
        var at = text.IndexOf(place, StringComparison.Ordinal);
        var line = text[..at].Split('\n').Length;
        Assert.StartsWith($"{scratch["plan.yaml"]}:{line}:{at - text.LastIndexOf('\n', at)}: {told}", run.Out, StringComparison.Ordinal);
        Assert.Single(run.Out.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void A_difference_says_what_leads_on_from_where_it_stands_and_what_the_other_ways_want()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["plan.yaml"], "plan: short\nlines:\n  - { at: 17:00, asks: tank-read }\n");
        var run = Captured.Run("check", "--walk", Flow, "--rig", Rig("two-by-four-natural.yaml"), scratch["plan.yaml"]);
        Assert.Contains("It stands at 'season-first'. From there leads on: answer no, answer yes, answer skip", run.Errors, StringComparison.Ordinal);
        Assert.Contains("'did leave' wants clear-to-leave", run.Errors, StringComparison.Ordinal);
        Assert.Contains("[walk]", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_is_written_as_it_was_walked_and_reads_as_the_same()
    {
        var path = Path.Combine(RepositoryFiles.Root, "flows", "plans", "two-by-four-natural.yaml");
        var run = Captured.Run("check", "--walk", Flow, "--rig", Rig("two-by-four-natural.yaml"), path, "--as-walked");
        Assert.Equal(ExitStatus.Done, run.Status);
        Assert.Equal(Said(File.ReadAllText(path)), Said(run.Out));
    }

    [Theory]
    [InlineData("check", "--walk", "flow.yaml")]
    [InlineData("check", "--rig", "rig.yaml")]
    [InlineData("check", "--as-walked")]
    [InlineData("check", "--graph", "--schema", "rig")]
    [InlineData("check", "--schema", "boil")]
    [InlineData("check", "--schema", "rig", "rig.yaml")]
    [InlineData("check")]
    public void What_does_not_go_together_is_a_sentence(params string[] typed)
    {
        var run = Captured.Run(typed);
        Assert.Equal((ExitStatus.Unusable, ""), (run.Status, run.Out));
        Assert.NotEmpty(run.Errors);
    }

    [Fact]
    public void A_fault_shows_two_lines_of_its_file_what_was_meant_and_its_code()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["slip.yaml"], "rig: hill shed\nunits: us\npan: { lenght: 4 ft, width: 2 ft, length: 4 ft }\nfire: { draft: natual }\n");
        var run = Captured.Run("check", scratch["slip.yaml"]);
        Assert.Equal(
            $"{scratch["slip.yaml"]}:3:8: unknown key 'lenght', expected one of channels, depth, length, width\n"
            + $"{scratch["slip.yaml"]}:4:16: draft is 'natual', expected one of forced, natural\n",
            run.Out);
        Assert.Equal(
            "  2 | units: us\n  3 | pan: { lenght: 4 ft, width: 2 ft, length: 4 ft }\n    |        ^\n      Look at its spelling, and whether it stands a step too far in or out. [unknown-key]\n"
            + "  3 | pan: { lenght: 4 ft, width: 2 ft, length: 4 ft }\n  4 | fire: { draft: natual }\n    |                ^\n      Did you mean 'natural'? [word]\n"
            + $"{scratch["slip.yaml"]}: 2 faults.\n",
            run.Errors);
    }

    [Fact]
    public void The_page_on_faults_lists_every_code_with_its_hint()
    {
        var page = RepositoryFiles.Read("docs", "faults.md");
        Assert.Equal(FaultKind.All.Select(kind => kind.Code), Regex.Matches(page, @"^\| `(?<code>[a-z-]+)` \|", RegexOptions.Multiline).Select(row => row.Groups["code"].Value));
        Assert.All(FaultKind.All, kind => Assert.Contains(kind.Hint, page, StringComparison.Ordinal));
        Assert.Equal(FaultKind.All.Count, FaultKind.All.Select(kind => kind.Code).Distinct().Count());
    }

    private static string Rig(string name) => Path.Combine(RepositoryFiles.Root, "flows", "rigs", name);

    private static IEnumerable<string> Said(string plan) => PlanFile.Read("p", plan).Lines
        .Select(line => $"{line.At} {line.Phase} {line.Asks} {line.Say} {line.Taken} {string.Join('|', line.Told.Select(told => told.Text))} {string.Join('|', line.NotTold.Select(told => told.Text))}");
}
