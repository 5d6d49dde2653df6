using Panside.Commands;
using Panside.Faces;
using Panside.Guide.Lines;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;

namespace Panside.Tests.Practice;

public class PracticeConversationTests
{
    private static readonly DateTimeOffset Evening = new(2031, 3, 8, 16, 0, 0, TimeSpan.FromHours(-5));

    [Fact]
    public void Looking_is_answered_beside_the_record_and_every_own_line_bears_the_mark()
    {
        using var scratch = new Scratch();
        using (var session = Open(scratch))
        {
            var conversation = Of(session);
            conversation.Hear(new Tick(At(0)));
            var seen = conversation.Hear(new Text(At(1), "look"));
            Assert.All(seen, line => Assert.StartsWith("PRACTICE ", Assert.IsType<ToldLine>(line).Text, StringComparison.Ordinal));
            Assert.Contains(seen, line => ((ToldLine)line).Text.Contains("boil still", StringComparison.Ordinal));
            conversation.Hear(new Text(At(2), "tank 22"));
        }

        var record = Assert.Single(Directory.GetFiles(Path.Combine(scratch.Folder, "practice")));
        var lines = File.ReadAllText(record);
        Assert.DoesNotContain("look", lines, StringComparison.Ordinal);
        Assert.Contains("scenario cold-start, seed 1", lines, StringComparison.Ordinal);
        Assert.Contains("\"practice\":true", lines, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(scratch.Folder, "sessions")));
    }

    /// <summary>Of two pans, what tells a depth is heard as the back pan's; a bare number stays the word for time unless just that depth is asked.</summary>
    [Theory]
    [InlineData("back pan 2 in", true)]
    [InlineData("back 2 1/4", true)]
    [InlineData("back 2¼", true)]
    [InlineData("back 2 in", true)]
    [InlineData("back 10", false)]
    [InlineData("back", false)]
    [InlineData("back 10 min", false)]
    public void Words_that_tell_the_back_pans_depth_are_no_words_for_time(string said, bool isDepth)
    {
        using var scratch = new Scratch();
        using var session = Commands.Opening.Open(
            new(Path.Combine(RepositoryFiles.Root, "flows", "rigs", "flue-and-syrup-pan.yaml"), null, "beginner", null, scratch.Folder), practice: true);
        var conversation = Of(session);
        conversation.Hear(new Tick(At(0)));
        conversation.Hear(new Text(At(1), "yes"));
        var answers = conversation.Hear(new Text(At(2), said));
        Assert.Equal(isDepth, answers.Any(line => line is HeardLine { As: Reading { Name.Code: "back-pan-depth" } }));
        Assert.Equal(!isDepth, answers.OfType<ToldLine>().Any(line => line.Text.Contains("stepping back", StringComparison.Ordinal) || line.Text.Contains("Back is 1 to 60", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_bare_number_is_the_back_pans_depth_where_just_that_is_asked_and_it_can_be()
    {
        using var scratch = new Scratch();
        using var session = Commands.Opening.Open(
            new(Path.Combine(RepositoryFiles.Root, "flows", "rigs", "flue-and-syrup-pan.yaml"), null, "beginner", null, scratch.Folder), practice: true);
        var conversation = Of(session);
        conversation.Hear(new Tick(At(0)));
        for (var minute = 1; conversation.State.Open?.Ask != "back-pan-depth"; minute++)
        {
            Assert.True(minute < 60, "The back pan was never asked for.");
            conversation.Hear(new Text(At(minute), conversation.State.Open?.Ask switch { null or "confirm" => "yes", "pan-depth" => "1 1/2", "tank-volume" => "20", _ => "skip" }));
        }

        Assert.Contains(conversation.Hear(new Text(At(61), "back 55")), line => line is ToldLine { Text: var told } && told.Contains("stepping back", StringComparison.Ordinal));
        Assert.Contains(conversation.Hear(new Text(At(62), "back 3")), line => line is HeardLine { As: Reading { Name.Code: "back-pan-depth" } });
    }

    [Theory]
    [InlineData(0, "no sap to read")]
    [InlineData(40, "sap 2")]
    public void An_empty_tank_has_no_sugar_to_be_read(double liters, string shown)
    {
        using var scratch = new Scratch();
        using var session = Open(scratch);
        var rig = new PracticeRig(session.Setting.Rig, Scenario.ColdStart with { TankLiters = liters }, 1);
        var seen = string.Join('\n', Look.At(rig, new Instruments(rig, session.Setting.Units, 1)));
        Assert.Contains(shown, seen, StringComparison.Ordinal);
        Assert.Equal(liters > 0, seen.Contains("; sap ", StringComparison.Ordinal));
    }

    [Fact]
    public void What_a_person_says_was_done_is_done_at_the_rig()
    {
        using var scratch = new Scratch();
        using var session = Open(scratch);
        var conversation = Of(session);
        conversation.Hear(new Tick(At(0)));
        conversation.Hear(new Text(At(1), "lit"));
        for (var minute = 9; minute < 60; minute += 8)
        {
            conversation.Hear(new Text(At(minute), "wood"));
        }

        Assert.Contains(conversation.Hear(new Text(At(60), "look")), line => ((ToldLine)line).Text.Contains("boil rolling", StringComparison.Ordinal));
    }

    [Fact]
    public void The_plain_face_ends_as_interrupted_where_the_input_ends()
    {
        using var scratch = new Scratch();
        using var session = Open(scratch);
        using var input = new StringReader("look\n");
        using var output = new StringWriter();
        var conversation = Of(session);
        new PlainFace(conversation, input, output, TextWriter.Null, TimeProvider.System).Run(CancellationToken.None);
        Assert.Equal(ExitStatus.Interrupted, PracticeEnd.Tell(conversation, output));
        Assert.Contains("PRACTICE - tank", output.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("practice", "--stream")]
    [InlineData("practice", "--speed", "100")]
    [InlineData("practice", "--speed", "0")]
    [InlineData("practice", "--scenario", "nowhere")]
    public void What_cannot_be_practised_is_refused(params string[] arguments) => Assert.Equal(ExitStatus.Unusable, CommandLine.Run(arguments));

    [Fact]
    public void A_record_is_not_gone_on_with()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["old.jsonl"], "{}\n");
        Assert.Equal(ExitStatus.Unusable, CommandLine.Run(["practice", "--unattended", "--journal", scratch["old.jsonl"]]));
    }

    [Fact]
    public void The_clock_runs_as_often_as_it_is_told_to()
    {
        var real = new Microsoft.Extensions.Time.Testing.FakeTimeProvider(Evening);
        var clock = new PracticeClock(real, 20);
        real.Advance(TimeSpan.FromMinutes(3));
        Assert.Equal(Evening.AddHours(1), clock.GetUtcNow());
    }

    private static Journal.RecordedSession Open(Scratch scratch) =>
        Opening.Open(new(null, null, "beginner", null, scratch.Folder), practice: true);

    private static PracticeConversation Of(Journal.RecordedSession session) =>
        new(session, new PracticeRig(session.Setting.Rig, Scenario.ColdStart, 1), Evening);

    private static Moment At(int minute) => Moment.Of(Evening.AddMinutes(minute));
}
