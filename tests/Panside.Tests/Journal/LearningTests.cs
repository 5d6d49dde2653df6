using Panside.Commands;
using Panside.Journal;
using Panside.Tests.Checks;
using Panside.Tests.Reporting;
using Panside.Tests.Stream;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Records;

/// <summary>What a boil teaches of its rig is kept beside the rig's file, and the next boil begins with it.</summary>
public class LearningTests
{
    [Fact]
    public void A_boil_is_learned_from_and_the_next_one_begins_with_it_and_replays_to_the_same_lines()
    {
        using var scratch = new Scratch();
        var rig = Rig(scratch);
        var first = Learning.Open(rig, Home.Of(scratch.Folder));
        Assert.Null(first.Rig);
        Assert.Matches("^Learned: This rig boils .* than its size suggests, give or take [0-9]+ %.* Kept in ", Boil(scratch, rig, first, "one.jsonl"));
        Assert.True(File.Exists(scratch["shed.learned.yaml"]));

        var second = Learning.Open(rig, Home.Of(scratch.Folder));
        Assert.NotNull(second.Rig);
        Boil(scratch, rig, second, "two.jsonl");
        Assert.Equal(2, Learning.Open(rig, Home.Of(scratch.Folder)).Rig!.Boils);

        // Of the record alone: what lies beside the rig by now is another thing.
        var bytes = File.ReadAllBytes(scratch["two.jsonl"]);
        Assert.Equal(second.Rig!.Text, Record.Of(RecordBytes.Lines(bytes)).Header!.LearnedText);
        Assert.Equal(0, Recorded.Verify(bytes).Exit);
        Assert.NotEqual(File.ReadAllText(scratch["one.jsonl"]), File.ReadAllText(scratch["two.jsonl"]));
        Assert.Contains("Of the rig two by four, forced draft: This rig boils", Reporting.SeasonTests.Told(scratch.Folder), StringComparison.Ordinal);
        RecordCheck.Demand("two.jsonl", new MemoryStream(bytes));
    }

    [Fact]
    public void A_boil_without_learn_leaves_what_earlier_boils_taught_as_it_was()
    {
        using var scratch = new Scratch();
        var rig = Rig(scratch);
        Boil(scratch, rig, Learning.Open(rig, Home.Of(scratch.Folder)), "one.jsonl");
        Boil(scratch, rig, Learning.Open(rig, Home.Of(scratch.Folder)), "two.jsonl");
        var before = File.ReadAllText(scratch["shed.learned.yaml"]);
        Assert.StartsWith("Kept as it was: what 2 boils before taught", Boil(scratch, rig, Learning.Open(rig, Home.Of(scratch.Folder)), "three.jsonl", learns: false), StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(scratch["shed.learned.yaml"]));
        Assert.StartsWith("Learned: ", Boil(scratch, rig, Learning.Open(rig, Home.Of(scratch.Folder)), "four.jsonl"), StringComparison.Ordinal);
        Assert.Equal(3, Learning.Open(rig, Home.Of(scratch.Folder)).Rig!.Boils);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false, "--learn", "false")]
    [InlineData(true, "--learn")]
    public void A_boil_begins_with_what_was_learned_unless_told_otherwise(bool begins, params string[] said)
    {
        using var scratch = new Scratch();
        var rig = Rig(scratch);
        Boil(scratch, rig, Learning.Open(rig, Home.Of(scratch.Folder)), "one.jsonl");
        var run = Typed.Into([], ["boil", "--plain", "--home", scratch.Folder, "--rig", rig, "--journal", scratch["two.jsonl"], .. said]);
        Assert.Equal(begins, run.Out.Contains("This rig boils", StringComparison.Ordinal));
        Assert.Equal(begins, Record.Of(JournalFile.Read(scratch["two.jsonl"])).Header!.LearnedText is not null);
    }

    [Fact]
    public void A_damaged_file_is_not_written_over()
    {
        using var scratch = new Scratch();
        var rig = Rig(scratch);
        File.WriteAllText(scratch["shed.learned.yaml"], "learned: x\n");
        Assert.Contains("Nothing is learned while it stands there", Boil(scratch, rig, Learning.Open(rig, Home.Of(scratch.Folder)), "one.jsonl"), StringComparison.Ordinal);
        Assert.Equal("learned: x\n", File.ReadAllText(scratch["shed.learned.yaml"]));
    }

    [Fact]
    public void A_boil_that_goes_on_keeps_to_what_it_began_with()
    {
        using var scratch = new Scratch();
        var rig = Rig(scratch);
        Boil(scratch, rig, Learning.Open(rig, Home.Of(scratch.Folder)), "one.jsonl");
        var learned = Learning.Open(rig, Home.Of(scratch.Folder)).Rig;
        var lines = Lines();
        Say(Opening.Open(new(rig, null, "beginner", scratch["two.jsonl"], scratch.Folder) { Learned = learned }), lines[..100]);
        File.Delete(scratch["shed.learned.yaml"]);
        Say(Opening.Open(new(rig, null, "beginner", scratch["two.jsonl"], scratch.Folder)), lines[100..]);
        Assert.Equal(0, Recorded.Verify(File.ReadAllBytes(scratch["two.jsonl"])).Exit);
    }

    [Fact]
    public void A_changed_rig_file_is_noticed_and_nothing_is_taken_from_the_old_one()
    {
        using var scratch = new Scratch();
        var rig = Rig(scratch);
        Boil(scratch, rig, Learning.Open(rig, Home.Of(scratch.Folder)), "one.jsonl");
        File.WriteAllText(rig, File.ReadAllText(rig).Replace("firebrick: 120 lb", "firebrick: 200 lb", StringComparison.Ordinal));
        var learning = Learning.Open(rig, Home.Of(scratch.Folder));
        Assert.Null(learning.Rig);
        Assert.StartsWith("The rig's file has changed since 2031-03-08", learning.Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void Forget_deletes_it()
    {
        using var scratch = new Scratch();
        var rig = Rig(scratch);
        Boil(scratch, rig, Learning.Open(rig, Home.Of(scratch.Folder)), "one.jsonl");
        var forgotten = Learning.Open(rig, Home.Of(scratch.Folder), forget: true);
        Assert.Null(forgotten.Rig);
        Assert.StartsWith("Forgotten", forgotten.Notice, StringComparison.Ordinal);
        Assert.False(File.Exists(scratch["shed.learned.yaml"]));
        Assert.StartsWith("Nothing was learned", Learning.Open(rig, Home.Of(scratch.Folder), forget: true).Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_damaged_file_is_told_and_the_boil_begins_without_it()
    {
        using var scratch = new Scratch();
        var rig = Rig(scratch);
        File.WriteAllText(scratch["shed.learned.yaml"], "learned: x\n");
        var learning = Learning.Open(rig, Home.Of(scratch.Folder));
        Assert.Null(learning.Rig);
        Assert.Contains("shed.learned.yaml:1:1:", learning.Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_boil_with_too_few_readings_teaches_nothing()
    {
        using var scratch = new Scratch();
        var rig = Rig(scratch);
        using var session = Opening.Open(new(rig, null, "beginner", null, scratch.Folder));
        Say(session, [StreamRun.Tick(0), StreamRun.Text(1, "lit"), StreamRun.Text(2, "leave"), StreamRun.Text(2, "yes")]);
        Assert.True(session.State.IsOver);
        Assert.StartsWith("Too little was read", Learning.Open(rig, Home.Of(scratch.Folder)).Keep(session), StringComparison.Ordinal);
        Assert.False(File.Exists(scratch["shed.learned.yaml"]));
    }

    [Fact]
    public void A_boil_of_another_rig_teaches_this_one_nothing()
    {
        using var scratch = new Scratch();
        var rig = Rig(scratch);
        File.WriteAllText(scratch["other.yaml"], File.ReadAllText(rig).Replace("firebrick: 120 lb", "firebrick: 200 lb", StringComparison.Ordinal));
        var other = Learning.Open(scratch["other.yaml"], Home.Of(scratch.Folder));
        Assert.StartsWith("This boil was of another rig", Boil(scratch, rig, other, "one.jsonl"), StringComparison.Ordinal);
        Assert.False(File.Exists(scratch["other.learned.yaml"]));
    }

    [Fact]
    public void Where_it_cannot_be_kept_it_is_said()
    {
        using var scratch = new Scratch();
        var rig = Rig(scratch);
        var learning = Learning.Open(rig, Home.Of(scratch.Folder));
        Directory.CreateDirectory(scratch["shed.learned.yaml.new"]);
        Assert.StartsWith("What was learned cannot be kept", Boil(scratch, rig, learning, "one.jsonl"), StringComparison.Ordinal);
    }

    private static string Rig(Scratch scratch)
    {
        File.WriteAllText(scratch["shed.yaml"], Record.Of(JournalFile.Read(Story.Demo("long-boil"))).Header!.RigText);
        return scratch["shed.yaml"];
    }

    private static string[] Lines() =>
        [.. Record.Of(JournalFile.Read(Story.Demo("long-boil"))).Exchanges.Select(exchange => exchange.Raw!)];

    private static string? Boil(Scratch scratch, string rig, Learning learning, string record, bool learns = true)
    {
        using var session = Opening.Open(new(rig, null, "practised", scratch[record], scratch.Folder) { Learned = learns ? learning.Rig : null });
        Say(session, Lines(), dispose: false);
        return learning.Keep(session);
    }

    private static void Say(RecordedSession session, string[] lines, bool dispose = true)
    {
        foreach (var line in lines)
        {
            session.Hear(LineReader.Read(line), line);
        }

        if (dispose)
        {
            session.Dispose();
        }
    }
}
