using Panside.Commands;
using Panside.Tests.Reckon;
using Panside.Tests.Stream;

namespace Panside.Tests.Records;

/// <summary>A record says which flow it was made with; a changed one is told where it first differs, and never goes on with it.</summary>
public sealed class ChangedFlowTests : IDisposable
{
    private static readonly string Shipped = RepositoryFiles.Read("flows", "divided-pan.yaml");

    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void A_record_says_name_version_and_hash_of_its_flow()
    {
        var record = Boiled(3);
        Assert.Contains($"\"flow\":\"divided pan\",\"flow-version\":1,\"flow-hash\":\"{Library.Flow(null).Hash}\"", File.ReadAllText(record), StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Done, Captured.Run("check", record).Status);
    }

    [Fact]
    public void A_record_of_before_the_version_was_told_stays_as_good_as_it_was()
    {
        var record = Boiled(6);
        File.WriteAllText(record, File.ReadAllText(record).Replace("\"flow-version\":1,", "", StringComparison.Ordinal));
        Assert.Equal((ExitStatus.Done, ""), (Captured.Run("replay", record, "--verify").Status, Captured.Run("check", record).Out));
        using var session = Open(record, null);
        Assert.Null(session.Trouble);
    }

    [Theory]
    [InlineData("text: Look the pan over;", "text: See the pan over;", "said then: Look the pan over;", "this flow: See the pan over;", "'pan-sound' is worded otherwise.")]
    [InlineData("pan-sound", "pan-whole", "('pan-sound')", "('pan-whole')", "'pan-sound' does not stand in this flow.")]
    [InlineData("no: pan-sound\n", "no: pan-leftover\n", "said then: ! Caution: Old solder", "('pan-leftover')", "The record goes on with 'pan-sound', this flow with 'pan-leftover'.")]
    public void Verifying_with_a_changed_flow_tells_line_time_and_what_each_says(string right, string wrong, string stood, string comes, string why)
    {
        var record = Boiled(6);
        var run = Captured.Run("replay", "--verify", record, "--flow", Changed(right, wrong));
        Assert.Equal(ExitStatus.Wrong, run.Status);
        Assert.Matches($"^{System.Text.RegularExpressions.Regex.Escape(record)}:[0-9]+: the first difference, at 17:0[01]\n", run.Out);
        var number = int.Parse(run.Out[(record.Length + 1)..].Split(':')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Matches("\"(prompt|caution)\":", File.ReadAllLines(record)[number - 1]);
        Assert.All(new[] { stood, comes, why }, told => Assert.Contains(told, run.Out, StringComparison.Ordinal));
        Assert.Contains("was made with the flow 'divided pan'", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void An_interval_that_was_changed_is_told_with_how_often_it_is_asked_now()
    {
        var record = Path.Combine(RepositoryFiles.Root, "demo-sessions", "first-shutdown.jsonl");
        const string Often = "  - watch: foam-watch\n    ask: foam\n    every: 20 min\n";
        var run = Captured.Run("replay", "--verify", record, "--flow", Changed(Often, Often.Replace("20", "500", StringComparison.Ordinal)));
        Assert.Equal(ExitStatus.Wrong, run.Status);
        Assert.Contains(", at 17:20\nsaid then: Look at the foam. ('foam-watch')\nthis flow: nothing\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("'foam-watch' is a watch; this flow asks it every 8 hours 20 minutes, a practised hand every 1 hour.", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Going_on_with_a_changed_flow_is_refused_and_told_where_it_differs()
    {
        var record = Boiled(6);
        var same = Changed("# The whole boil", "# All of the boil");
        var verified = Captured.Run("replay", "--verify", record, "--flow", same);
        Assert.Equal((ExitStatus.Done, $"{record}: this flow says the same on this record, to its end\n"), (verified.Status, verified.Out));
        var refused = Captured.Run("boil", "--plain", "--journal", record, "--home", _scratch.Folder, "--flow", same);
        Assert.Equal(ExitStatus.Unusable, refused.Status);
        Assert.Contains("It says the same on this record so far, but a record tells of one flow.", refused.Errors, StringComparison.Ordinal);

        var before = File.ReadAllText(record);
        var run = Captured.Run("boil", "--plain", "--journal", record, "--home", _scratch.Folder, "--flow", Changed("text: Look the pan over;", "text: See the pan over;"));
        Assert.Equal((ExitStatus.Unusable, ""), (run.Status, run.Out));
        string[] told = [$"{record}: was made with the flow 'divided pan' (", $"{record}:", "said then: Look the pan over;", "this flow: See the pan over;", "'pan-sound' is worded otherwise.", "'pan-sound' is a step of the phase 'start-up'", "Name the flow that it was made with: --flow FILE. Or begin a new session"];
        var lines = run.Errors.TrimEnd('\n').Split('\n');
        Assert.Equal(told.Length, lines.Length);
        Assert.All(told.Zip(lines), pair => Assert.StartsWith(pair.First, pair.Second, StringComparison.Ordinal));
        Assert.Equal(before, File.ReadAllText(record));
    }

    /// <summary>A flow that guided last year and would keep somebody before the gate guides nobody, and its own record can still be looked at.</summary>
    [Fact]
    public void A_record_is_played_with_the_flow_it_was_made_with_though_that_guides_nobody_any_more()
    {
        var lines = Shipped.Split('\n');
        var place = Array.FindIndex(lines, line => line.Contains("step: leave-check", StringComparison.Ordinal));
        var kept = Array.FindIndex(lines, place, line => line.Contains("watch: [", StringComparison.Ordinal));
        var flow = Changed(lines[kept], lines[kept].Replace(", foam-late]", "]", StringComparison.Ordinal));
        Assert.Equal(ExitStatus.Wrong, Captured.Run("check", flow).Status);
        var record = Boiled(6);
        File.WriteAllText(record, File.ReadAllText(record).Replace(Library.Flow(null).Hash, Panside.Guide.Flows.Flow.HashOf(File.ReadAllText(flow)), StringComparison.Ordinal));
        Assert.Equal(ExitStatus.Done, Captured.Run("replay", "--plain", record, "--flow", flow).Status);
        var unnamed = Captured.Run("replay", "--verify", record);
        Assert.Equal((ExitStatus.Unusable, ""), (unnamed.Status, unnamed.Out));
        Assert.Contains("Name the flow it was made with: --flow FILE.", unnamed.Errors, StringComparison.Ordinal);
    }

    private Panside.Journal.RecordedSession Open(string record, string? flow) => Opening.Open(new(null, flow, "beginner", record, _scratch.Folder));

    private string Boiled(int lines)
    {
        StreamRun.Of(WholeBoil.Lines.Take(lines), _scratch["boil.jsonl"]);
        return _scratch["boil.jsonl"];
    }

    private string Changed(string right, string wrong)
    {
        Assert.Contains(right, Shipped, StringComparison.Ordinal);
        File.WriteAllText(_scratch["changed.yaml"], Shipped.Replace(right, wrong, StringComparison.Ordinal));
        return _scratch["changed.yaml"];
    }
}
