using System.Text.RegularExpressions;
using Panside.Commands;
using Panside.Guide.Flows;
using Panside.Tests.Records;
using Panside.Tests.Stream;

namespace Panside.Tests.Checks;

public partial class CheckTests
{
    private static readonly byte[] Boil = Recorded.Boil();

    public static IEnumerable<TheoryDataRow<string>> Shipped => new[] { "flows", "flows/rigs", "flows/plans", "demo-sessions" }
        .SelectMany(folder => Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, folder)))
        .Where(file => file.EndsWith(".yaml", StringComparison.Ordinal) || file.EndsWith(".jsonl", StringComparison.Ordinal))
        .Select(file => new TheoryDataRow<string>(Path.GetRelativePath(RepositoryFiles.Root, file)));

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Every_shipped_file_is_right(string file)
    {
        var (exit, faults, words) = Check(false, Path.Combine(RepositoryFiles.Root, file));
        Assert.Equal((0, ""), (exit, faults));
        Assert.EndsWith(", nothing wrong.\n", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("flow: x\nversion: 1\n", "the key 'opening' is missing")]
    [InlineData("# mine\n\"rig\": x\nunits: us\n", "the key 'pan' is missing")]
    [InlineData("{\"at\":\"2031-03-08T17:00:00-05:00\",\"tick\":true}\n", "no session line was found")]
    [InlineData("shopping: milk\n", "this is no file of ours")]
    [InlineData("", "this is no file of ours")]
    [InlineData("rig: caf\u00e9\nunits: [", "While parsing")]
    public void What_a_file_is_is_told_by_what_stands_in_it(string text, string wrong)
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["file.txt"], text);
        var (exit, faults, words) = Check(false, scratch["file.txt"]);
        Assert.Equal(1, exit);
        Assert.Contains(wrong, faults, StringComparison.Ordinal);
        Assert.All(faults.TrimEnd('\n').Split('\n'), line => Assert.Matches(Fault(), line[scratch["file.txt"].Length..]));
        Assert.Matches("(one fault|[0-9]+ faults)[.]\n$", words);
    }

    [Fact]
    public void A_byte_that_is_no_text_is_told_with_its_place()
    {
        using var scratch = new Scratch();
        File.WriteAllBytes(scratch["rig.yaml"], [.. "rig: é\nunits: u"u8, 0xFF, .. "s\n"u8]);
        Assert.Equal($"{scratch["rig.yaml"]}:2:9: a byte that is no UTF-8, expected UTF-8 text\n", Check(false, scratch["rig.yaml"]).Faults);
    }

    /// <summary>What a check refuses guides nobody, in every verb.</summary>
    [Theory]
    [InlineData("rig: a\nunits: u\u00fFs\n", "latin1", ":2:9: a byte that is no UTF-8, expected UTF-8 text")]
    [InlineData("rig: a\nunits: us\n", "utf-16", ":1:1: the file is UTF-16, expected UTF-8 text; save it as UTF-8")]
    [InlineData("rig: a\nunits: us\n", "utf-16BE", ":1:1: the file is UTF-16, expected UTF-8 text; save it as UTF-8")]
    [InlineData("rig: a\nunits: us\n\0\0", "latin1", ":3:1: a NUL stands in the file, expected text alone")]
    public void A_file_that_is_no_text_is_refused_alike_by_every_verb(string text, string encoding, string fault)
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["rig.yaml"], text, System.Text.Encoding.GetEncoding(encoding));
        Assert.Equal($"{scratch["rig.yaml"]}{fault}\n", Check(false, scratch["rig.yaml"]).Faults);
        foreach (var args in new[] { new[] { "boil", "--plain" }, ["boil", "--stream"], ["practice", "--unattended"], ["plan"] })
        {
            foreach (var option in args[0] == "plan" ? new[] { "--rig" } : ["--rig", "--flow"])
            {
                var run = Reckon.Captured.Run([.. args, option, scratch["rig.yaml"], "--home", scratch.Folder]);
                Assert.Equal((ExitStatus.Unusable, ""), (run.Status, run.Out));
                Assert.Contains(fault, run.Errors, StringComparison.Ordinal);
            }
        }
    }

    /// <summary>A flow that speaks of no coals is checked for them with the rig that has some.</summary>
    [Fact]
    public void S6_a_flow_that_would_keep_somebody_at_this_rig_for_ever_guides_nobody_on_it()
    {
        using var scratch = new Scratch();
        var flow = Path.Combine(RepositoryFiles.Root, "tests", "Panside.Guide.Tests", "Flows", "smallest.yaml");
        Assert.Equal((0, ""), (Check(false, flow).Exit, Check(false, flow).Faults));
        var run = Reckon.Captured.Run("boil", "--plain", "--flow", flow, "--home", scratch.Folder);
        Assert.Equal((ExitStatus.Unusable, ""), (run.Status, run.Out));
        Assert.Contains("from 'boil' on nothing asks for the coals any more", run.Errors, StringComparison.Ordinal);
        Assert.Contains("from 'boil' on nothing asks for the draw-off side any more", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_cannot_be_read_is_a_sentence_and_the_others_are_checked_all_the_same()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["bad.yaml"], "rig: x\n");
        var (exit, faults, words) = Check(false, scratch["none.yaml"], scratch.Folder, scratch["bad.yaml"], Path.Combine(scratch.Folder, ".", "bad.yaml"));
        Assert.Equal(2, exit);
        Assert.StartsWith($"{scratch["bad.yaml"]}:1:1: ", faults, StringComparison.Ordinal);
        Assert.Contains("none.yaml: there is no such file. Check the name.\n", words, StringComparison.Ordinal);
        Assert.Contains($"{scratch.Folder}: is a folder. Name the files in it.\n", words, StringComparison.Ordinal);
        Assert.Contains("bad.yaml: is named twice; it is checked once.\n", words, StringComparison.Ordinal);
        Assert.Equal(faults.Split('\n').Distinct(), faults.Split('\n'));
    }

    /// <summary>The fault stands where the marked part of the changed line begins; null is the line's own beginning.</summary>
    [Theory]
    [InlineData(16, "\"seq\":13,", "\"seq\":14,", "\"seq\"", "seq is 14, expected 13, one more than before")]
    [InlineData(16, "\"told\":{", "\"tolled\":{", "\"tolled\"", "unknown key 'tolled', expected one of session, phase, prompt, advice")]
    [InlineData(16, "\"text\":", "\"tint\":\"red\",\"text\":", "\"tint\"", "unknown key 'tint', expected one of text")]
    [InlineData(16, "\"seq\":", "\"shade\":1,\"seq\":", "\"shade\"", "unknown key 'shade', expected one of at, seq, told")]
    [InlineData(16, "{\"text\":", "{{\"text\":", "{\"text\"", "the line is no JSON here")]
    [InlineData(16, "T17:00:00", "T16:59:00", "\"at\"", "the time goes back, from 2031-03-08T17:00:00-05:00 to 2031-03-08T16:59:00-05:00")]
    [InlineData(16, "\"2031-03-08T17:00:00-05:00\"", "null", "\"at\"", "the time is missing or is none")]
    [InlineData(16, "\"2031-03-08T17:00:00-05:00\"", "\"tonight\"", "\"at\"", "the time is missing or is none")]
    [InlineData(16, ",\"seq\"", ";\"seq\"", ";", "the line is no JSON here")]
    [InlineData(16, "\"seq\":", "\"at\":null,\"seq\":", null, "a key stands twice")]
    [InlineData(16, "Noted", "No\0ted", "\0", "the line holds NUL bytes")]
    [InlineData(2, "\"guidance\":", "\"guide\":", "\"session\"", "the session line is not whole")]
    [InlineData(2, "\"guidance\":", "\"mood\":\"good\",\"guidance\":", "\"mood\"", "unknown key 'mood'")]
    [InlineData(2, "units: us", "units: ox", "\"rig-file\"", "the rig in it, line 3, column 8: units is 'ox', expected one of us, metric, imperial")]
    [InlineData(14, "\"text\":", "\"texts\":", "\"texts\"", "Nothing is said, expected a line in, or the refusal of it among its answers")]
    [InlineData(14, "\"text\":\"note", "\"answer\":\"note", "\"answer\"", "'answer' is \"note")]
    public void A_fault_in_a_record_is_told_with_line_and_column(int line, string right, string wrong, string? place, string fault)
    {
        using var scratch = new Scratch();
        var bytes = Boil.WithLine(line, text =>
        {
            Assert.Contains(right, text, StringComparison.Ordinal);
            return text.Replace(right, wrong, StringComparison.Ordinal);
        });
        File.WriteAllBytes(scratch["b.jsonl"], bytes);
        var column = place is null ? 1 : bytes.Lines()[line - 1].IndexOf(place, StringComparison.Ordinal) + 1;
        Assert.True(column > 0);
        var (exit, faults, _) = Check(false, scratch["b.jsonl"]);
        Assert.Equal(1, exit);
        Assert.Contains($"{scratch["b.jsonl"]}:{line}:{column}: {fault}", faults, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_that_is_cut_off_is_told_behind_its_last_letter()
    {
        using var scratch = new Scratch();
        var bytes = Boil.WithLine(15, text => text[..^1]);
        File.WriteAllBytes(scratch["b.jsonl"], bytes);
        Assert.StartsWith(
            $"{scratch["b.jsonl"]}:15:{bytes.Lines()[14].Length + 1}: the line is cut off, expected one whole JSON object a line\n", Check(false, scratch["b.jsonl"]).Faults, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_that_ends_in_the_middle_of_an_answer_is_told()
    {
        using var scratch = new Scratch();
        var lines = Boil.Lines();
        File.WriteAllText(scratch["b.jsonl"], string.Join('\n', lines[..^1]));
        Assert.Equal(
            $"{scratch["b.jsonl"]}:{lines.Length - 1}:1: no ready mark follows these answers, expected {{\"at\":…,\"ready\":true}} after the last answer\n"
            + $"{scratch["b.jsonl"]}:{lines.Length - 1}:{lines[^2].Length + 1}: the last line has no line break, expected one after every line; going on with the record adds it\n",
            Check(false, scratch["b.jsonl"]).Faults);
    }

    [Fact]
    public void A_second_session_in_one_record_is_told()
    {
        using var scratch = new Scratch();
        File.WriteAllBytes(scratch["b.jsonl"], [.. Boil, .. Boil]);
        var faults = Check(false, scratch["b.jsonl"]).Faults;
        Assert.Contains("a second session line", faults, StringComparison.Ordinal);
        Assert.Contains("the time goes back", faults, StringComparison.Ordinal);
    }

    /// <summary>The record keeps what was said, also where it was refused; that is no fault of the record.</summary>
    [Fact]
    public void Lines_that_were_refused_are_no_faults()
    {
        using var scratch = new Scratch();
        StreamRun.Of(
            [StreamRun.Tick(5), "no json", StreamRun.At(4, "\"tick\":true"), StreamRun.At(6, "\"reading\":\"rain\""), StreamRun.At(6, "\"ready\":true"), StreamRun.Tick(7)],
            scratch["b.jsonl"]);
        Assert.Equal((0, ""), (Check(false, scratch["b.jsonl"]).Exit, Check(false, scratch["b.jsonl"]).Faults));
    }

    [Fact]
    public void A_flow_is_drawn_with_every_step_in_the_box_of_its_phase_and_the_end_behind_the_gate()
    {
        var flow = Library.Flow(null);
        var (exit, diagram, _) = Check(true, Path.Combine(RepositoryFiles.Root, "flows", "divided-pan.yaml"));
        Assert.Equal(0, exit);
        Assert.StartsWith("stateDiagram-v2\n  [*] --> season_first\n", diagram, StringComparison.Ordinal);
        foreach (var step in flow.Steps.Values)
        {
            var box = diagram[..diagram.IndexOf($"    {step.Id.Replace('-', '_')} : {step.Id}\n", StringComparison.Ordinal)];
            Assert.StartsWith($"state \"{step.Phase.Code}\" as ", box[box.LastIndexOf("state \"", StringComparison.Ordinal)..], StringComparison.Ordinal);
        }

        var ends = diagram.Split('\n').Where(line => line.Contains("--> [*]", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(ends);

        // The one other end is a place that nobody may go back into: it is no safe one.
        var leftAlone = flow.Steps.Values.Where(step => step.Passages.Any(passage => passage.Go == Flow.LeftAlone)).Select(step => $"  {step.Id.Replace('-', '_')} --> [*] : answer no").ToList();
        Assert.All(ends.Except(leftAlone), line => Assert.Contains("[clear-to-leave", line, StringComparison.Ordinal));
        Assert.Equal(leftAlone.Order(), ends.Intersect(leftAlone).Order());
        Assert.Contains("  anywhere --> emergency_which : word emergency\n", diagram, StringComparison.Ordinal);
        Assert.Contains("  which_other --> return : answer no\n", diagram, StringComparison.Ordinal);
        var arrows = diagram.Split('\n').Where(line => line.Contains("-->", StringComparison.Ordinal)).Select(line => line.Split(" : ")[0]).ToList();
        Assert.Equal(arrows.Distinct(), arrows);
    }

    [Fact]
    public void Only_flows_are_drawn_and_only_whole_ones()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["bad.yaml"], "flow: x\n");
        var (exit, drawn, words) = Check(true, scratch["bad.yaml"]);
        Assert.Equal((1, ""), (exit, drawn));
        Assert.Contains("bad.yaml:1:1: the key 'version' is missing", words, StringComparison.Ordinal);

        var rig = Path.Combine(RepositoryFiles.Root, "flows", "rigs", "two-by-four-forced.yaml");
        Assert.Equal((2, "", $"{rig}: is no flow. --graph draws flows only; leave it out to check other files.\n"), Check(true, rig));
    }

    [Fact]
    public void A_text_that_reads_badly_is_warned_of_with_its_place_and_is_no_fault()
    {
        using var scratch = new Scratch();
        var flow = RepositoryFiles.Read("flows", "divided-pan.yaml");
        const string Good = "text: Light the fire with the draft open.";
        var line = flow[..flow.IndexOf(Good, StringComparison.Ordinal)].Split('\n').Length - 4;
        File.WriteAllText(scratch["mine.yaml"], flow.Replace(Good, "text: Light the fire and open the draft.", StringComparison.Ordinal));
        var (exit, faults, words) = Check(false, scratch["mine.yaml"]);
        Assert.Equal((0, ""), (exit, faults));
        Assert.StartsWith(
            $"{scratch["mine.yaml"]}:{line}:15: warning: 'light-fire' asks for 2 actions: Light the fire and | open the draft., expected one action a step\n", words, StringComparison.Ordinal);
        Assert.EndsWith(", nothing wrong; one warning.\n", words, StringComparison.Ordinal);
    }

    private static (int Exit, string Faults, string Words) Check(bool graph, params string[] files)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        return (new Checking(output, errors).Run(files, graph), output.ToString(), errors.ToString());
    }

    [GeneratedRegex("^:[1-9][0-9]*:[1-9][0-9]*: .+, expected .+$")]
    private static partial Regex Fault();
}
