using System.Diagnostics;
using Panside.Faces;
using Panside.Guide.Lines;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Screen;

/// <summary>The texts of advice are handed to a command: whole, in order, through no shell, and nobody waits.</summary>
public sealed class SpeakerTests
{
    [Fact]
    public void A_text_reaches_the_command_as_it_is_whatever_stands_in_it()
    {
        using var scratch = new Scratch();
        var spoken = scratch["spoken"];
        const string Text = "wood; $(touch evil) `id` \" ' | & > /dev/null %s \\";
        using (var speaker = new Speaker($"tee -a \"{spoken}\""))
        {
            speaker.Say(Text);
            speaker.Say("second");
            WaitFor(() => File.Exists(spoken) && File.ReadAllLines(spoken).Length == 2);
        }

        Assert.Equal([Text, "second"], File.ReadAllLines(spoken));
    }

    [Fact]
    public void A_command_that_hangs_holds_nobody_up_and_is_broken_off()
    {
        using var speaker = new Speaker("sleep 60", TimeSpan.FromSeconds(0.3));
        var watch = Stopwatch.StartNew();
        for (var time = 0; time < 100; time++)
        {
            speaker.Say("wood");
        }

        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(0.2));
        WaitFor(() => speaker.Fault is not null);
        Assert.StartsWith("--say sleep: took more than", speaker.Fault);
    }

    [Fact]
    public void Danger_waits_only_for_what_is_being_spoken()
    {
        using var scratch = new Scratch();
        var spoken = scratch["spoken"];
        using var speaker = new Speaker($"sh -c \"sleep 1; cat >> '{spoken}'\"");
        speaker.Say("being spoken");
        Thread.Sleep(500);
        speaker.Say("waits");
        speaker.Say("waits too");
        speaker.Say("danger", isDanger: true);
        WaitFor(() => File.Exists(spoken) && File.ReadAllLines(spoken).Length == 2);
        Assert.Equal(["being spoken", "danger"], File.ReadAllLines(spoken));
    }

    [Theory]
    [InlineData("")]
    [InlineData("no-such-program-here")]
    public void A_command_that_cannot_be_started_is_told_of_and_nothing_else_happens(string command)
    {
        using var speaker = new Speaker(command);
        speaker.Say("wood");
        WaitFor(() => speaker.Fault is not null);
        Assert.StartsWith("--say ", speaker.Fault);
    }

    [Fact]
    public void A_command_is_parted_at_blanks_and_nothing_in_it_is_expanded() =>
        Assert.Equal(["talk", "-v", "two words", "$HOME", ";", "", "x"], Speaker.Parts("talk  -v \"two words\" $HOME ; \"\" x"));

    [Fact]
    public void Each_new_advice_is_handed_on_once_and_the_answer_stays_as_it_is()
    {
        var said = new List<string>();
        var door = new SessionDoor(SessionDoor.BuiltIn());
        var spoken = new SpokenConversation(door, (text, _) => said.Add(text));
        var played = new Played(spoken);
        var answer = spoken.Hear(new Text(played.Talk.State.Now!.Value, "emergency"));
        var advised = answer.OfType<AdviceLine>().Select(line => line.Advice.Text).ToList();
        Assert.NotEmpty(advised);
        Assert.Equal(advised, said.TakeLast(advised.Count));
    }

    [Fact]
    public void What_is_spoken_of_a_simulated_rig_says_so_first()
    {
        var said = new List<string>();
        var spoken = new SpokenConversation(new SessionDoor(SessionDoor.BuiltIn(practice: true)), (text, _) => said.Add(text));
        spoken.Hear(new Text(new Played(spoken).Talk.State.Now!.Value, "emergency"));
        Assert.NotEmpty(said);
        Assert.All(said, text => Assert.StartsWith("Practice. ", text));
    }

    private static void WaitFor(Func<bool> so)
    {
        for (var tries = 0; tries < 200 && !so(); tries++)
        {
            Thread.Sleep(50);
        }

        Assert.True(so());
    }
}
