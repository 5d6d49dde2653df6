using Panside.Commands;
using Panside.Faces;
using Panside.Guide.Lines;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Practice;

/// <summary>The words for time in a practice, and the word that stands on all of it.</summary>
public class PracticeTimeTests
{
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    [Fact]
    public void Pause_lets_time_stand_and_go_lets_it_run_as_fast_as_before()
    {
        using var practice = new AtTheRig("last-charge", speed: 20);
        practice.Come();
        Assert.Contains("stands still", practice.Told("pause"), StringComparison.Ordinal);
        var (stood, second) = (practice.Time, practice.Rig.Second);
        practice.Wait(10 * Minute);
        Assert.Equal((stood, second), (practice.Time, practice.Rig.Second));

        Assert.Contains("On at 20 times", practice.Told("go"), StringComparison.Ordinal);
        var gone = practice.Time;
        practice.Wait(Minute);
        Assert.Equal(gone + (20 * Minute), practice.Time);
    }

    [Fact]
    public void No_two_sayings_are_of_one_time_where_it_stands_still()
    {
        using var practice = new AtTheRig("last-charge");
        practice.Come();
        practice.Type("pause");
        Assert.DoesNotContain(practice.Type("depth 1 1/2"), line => line is RefusedLine);
        Assert.DoesNotContain(practice.Type("depth 1 1/2"), line => line is RefusedLine);
    }

    [Fact]
    public void Speed_runs_so_many_times_as_fast_and_no_other_number_is_taken()
    {
        using var practice = new AtTheRig("last-charge");
        practice.Come();
        practice.Type("speed 30");
        var before = practice.Time;
        practice.Wait(Minute);
        Assert.Equal(before + (30 * Minute), practice.Time);
        foreach (var words in new[] { "speed 0", "speed 61", "speed", "speed fast" })
        {
            Assert.Equal("- PRACTICE Speed is 1 to 60 times real time, like 'speed 20'.", practice.Told(words));
        }

        Assert.Equal(30, practice.Clock.Speed);
    }

    [Fact]
    public void Ahead_comes_to_the_first_that_is_asked_and_no_further()
    {
        using var practice = new AtTheRig("last-charge");
        practice.Come();
        practice.Type("yes");
        practice.Type("yes");
        practice.Type("yes");
        Assert.Null(practice.Conversation.State.Open);
        var before = practice.Time;
        var answers = practice.Type("ahead 60");
        Assert.Contains(answers, line => line is PromptLine);
        Assert.InRange((practice.Time - before).TotalMinutes, 1, 15);
        Assert.Equal(practice.Conversation.State.Now!.Value.Time, practice.Time);
        Assert.Equal((long)(practice.Time - practice.Conversation.State.Started!.Value.Time).TotalSeconds, practice.Rig.Second);
        Assert.Contains("1 to 60 minutes", practice.Told("ahead 100"), StringComparison.Ordinal);
    }

    [Fact]
    public void Back_hears_the_same_again_up_to_there_in_a_record_of_its_own()
    {
        using var practice = new AtTheRig("last-charge");
        var came = practice.Time;
        practice.Come();
        practice.Type("yes");
        practice.Wait(4 * Minute);
        practice.Type("yes");
        var (step, time) = (practice.Conversation.State.Step, practice.Time);
        practice.Wait(6 * Minute);
        practice.Type("note of a minute that will not have been");
        Assert.Single(Directory.GetFiles(practice.Records));

        Assert.Contains("A new record begins.", practice.Told("back 6"), StringComparison.Ordinal);
        Assert.Equal(step, practice.Conversation.State.Step);
        Assert.InRange(practice.Time, came, time);
        Assert.Equal(2, Directory.GetFiles(practice.Records).Length);
        Assert.Contains("Back is 1 to 60 minutes", practice.Told("back 0"), StringComparison.Ordinal);

        practice.Type("yes");
        Assert.NotEqual(step, practice.Conversation.State.Step);

        // While it is written nobody else may read it.
        practice.Conversation.Dispose();
        Assert.Equal([false, true], Directory.GetFiles(practice.Records)
            .OrderBy(path => path != practice.Conversation.RecordPath).Select(path => File.ReadAllText(path).Contains("will not have been", StringComparison.Ordinal)));
    }

    [Fact]
    public void There_is_no_stepping_back_in_a_record_with_a_name_of_its_own()
    {
        using var practice = new AtTheRig("last-charge", canStepBack: false);
        practice.Come();
        Assert.Contains("no stepping back", practice.Told("back 5"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("emergency")]
    [InlineData("smell scorched")]
    public void P_an_alarm_brings_real_time_back_until_go(string words)
    {
        using var practice = new AtTheRig("last-charge", speed: 20);
        practice.Come();
        practice.Type("speed 40");
        Assert.Contains("Real time now", practice.Told(words), StringComparison.Ordinal);
        Assert.Equal(1, practice.Clock.Speed);
        practice.Type("go");
        Assert.Equal(40, practice.Clock.Speed);
    }

    [Fact]
    public void P_an_alarm_that_time_brings_brings_real_time_back_too()
    {
        using var practice = new AtTheRig("refresher", speed: 60);
        practice.Come();
        for (var second = 0; second < 600; second++)
        {
            var answers = practice.Wait(TimeSpan.FromSeconds(1));
            var isAlarm = answers.Any(answer => answer is AdviceLine { Advice.Urgency: "danger" or "now" });
            Assert.Equal(isAlarm ? 1 : 60, practice.Clock.Speed);
            if (isAlarm)
            {
                return;
            }
        }

        Assert.Fail("No alarm came in ten hours of a boil that nobody tends.");
    }

    [Fact]
    public void An_alarm_does_not_let_time_run_that_stands_still()
    {
        using var practice = new AtTheRig("last-charge", speed: 20);
        practice.Come();
        practice.Type("pause");
        practice.Type("emergency");
        Assert.Equal(0, practice.Clock.Speed);
    }

    [Fact]
    public void P_no_line_of_the_plain_face_is_without_the_word()
    {
        using var practice = new AtTheRig("last-charge", speed: 20);
        using var input = new StringReader("look\nyes\nwhy\nstatus\nnonsense\ntank 30\nno\npause\ngo\nspeed 30\nahead 5\nback 1\npour\nemergency\nhelp\n");
        using var output = new StringWriter();
        new PlainFace(practice.Conversation, input, output, TextWriter.Null, practice.Clock).Run(CancellationToken.None);
        PracticeEnd.Tell(practice.Conversation, output);

        var lines = output.ToString().TrimEnd().Split('\n');
        Assert.All(lines, line => Assert.StartsWith("PRACTICE ", line, StringComparison.Ordinal));
        Assert.All(lines, line => Assert.Equal(line.IndexOf("PRACTICE", StringComparison.Ordinal), line.LastIndexOf("PRACTICE", StringComparison.Ordinal)));
        foreach (var told in new[] { "Put in no more wood", "stands still", "On at 30 times", "later.", "A new record begins", "Poured", "DANGER", "Real time now" })
        {
            Assert.Contains(lines, line => line.Contains(told, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void P_no_full_screen_is_without_the_word_and_time_obeys_there_too()
    {
        using var practice = new AtTheRig("last-charge", speed: 20);
        using var stage = new Stage(played: new Played(practice.Conversation, shown: practice.Clock));
        foreach (var (words, told) in new[]
        {
            ("look", "boil "), ("pause", "Time stands still"), ("go", "On at 20 times"), ("speed 40", "On at 40 times"), ("yes", "Keep an empty pail"),
            ("back 1", "A new record"), ("emergency", "Real time now"),
        })
        {
            stage.Type(words);
            Assert.True(stage.Text.Contains(told, StringComparison.Ordinal), $"{told}:\n{stage.Text}");
            Assert.Contains("PRACTICE", stage.Text.Split('\n')[0], StringComparison.Ordinal);
        }

        Assert.Equal(1, practice.Clock.Speed);
        stage.Type("help");
        Assert.Contains("PRACTICE", stage.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void P_help_tells_how_the_simulated_rig_is_looked_at()
    {
        using var practice = new AtTheRig("last-charge", speed: 20);
        using var stage = new Stage(played: new Played(practice.Conversation, shown: practice.Clock));
        stage.Type("help");
        Assert.Contains("PRACTICE 'look' shows rig and instruments", stage.Text, StringComparison.Ordinal);

        // The page of help stands whole, with the practice's words too.
        Assert.StartsWith(" HELP   PRACTICE", stage.Text);
        Assert.Contains("'pause'", stage.Text, StringComparison.Ordinal);
        Assert.Contains("'back 10'", stage.Text, StringComparison.Ordinal);
        Assert.Contains(Library.Flow(null).OwnWords[^1] + ".", stage.Text, StringComparison.Ordinal);
    }
}
