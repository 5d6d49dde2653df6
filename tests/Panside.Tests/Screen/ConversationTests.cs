using Panside.Guide.Lines;
using Panside.Tests.Screen.Support;
using Terminal.Gui.Input;

namespace Panside.Tests.Screen;

public sealed class ConversationTests
{
    [Fact]
    public void Typing_a_reading_shows_the_reply_and_the_figure()
    {
        using var stage = Stage.At("steady-boil");
        stage.Type("tank 22 1/2");
        Assert.Contains("You: tank 22 1/2", stage.Text);
        Assert.Contains("Heard: tank 22.5 gal.", stage.Text);
        Assert.Contains("│ Tank 22.5 gal ↓ just now", stage.Text);
    }

    [Fact]
    public void A_figure_is_called_old_after_twice_its_interval()
    {
        using var stage = Stage.At("start-up");
        stage.Wait(29);
        Assert.Contains("│ Tank 30 gal · 29 min ago", stage.Text);
        stage.Wait(2);
        Assert.Contains("│ Tank 30 gal · 31 min old", stage.Text);
    }

    [Fact]
    public void The_open_prompt_stands_above_the_input_line_with_its_range_and_its_last_value()
    {
        using var stage = Stage.At("steady-boil");
        stage.Wait(12);
        stage.Type("wood");
        var rows = stage.Text.Split('\n');
        Assert.StartsWith("> Read the", rows[19]);
        Assert.StartsWith("  [", rows[21]);
        Assert.Contains("last", rows[21]);
        Assert.Equal("You:", rows[22]);
    }

    [Fact]
    public void The_age_of_the_last_value_grows_while_the_prompt_is_open()
    {
        using var stage = Stage.At("steady-boil");
        stage.Type("draw 216");
        stage.Wait(12);
        stage.Type("wood");
        Assert.Contains("12 minutes ago]", stage.Text);
        stage.Wait(3);
        Assert.Contains("15 minutes ago]", stage.Text);
    }

    [Fact]
    public void A_lasting_alarm_stays_above_the_prompt_until_its_reason_is_gone()
    {
        const string Alarm = "\n!! NOW: Put one drop of defoamer where the foam climbs.";
        using var stage = Stage.At("steady-boil");
        stage.Type("foam rising");
        stage.Wait(6);
        stage.Type("wood");
        stage.Type("status");
        stage.Type("skipped");
        Assert.Contains(Alarm, stage.Text);
        stage.Type("defoamer");
        Assert.DoesNotContain(Alarm, stage.Text);
    }

    [Fact]
    public void Advice_that_stands_above_the_input_line_is_not_told_beside_it_too()
    {
        const string Advice = "* Soon: Set pail and hydrometer ready for a draw.";
        using var stage = Stage.At("steady-boil", 120, 70);
        Assert.Equal(2, stage.Text.Split(Advice).Length);
        stage.Type("why");
        Assert.Equal(2, stage.Text.Split(Advice).Length);

        // Once something is asked, it goes back to its place in the conversation.
        stage.Wait(3);
        Assert.Contains("> Read the thermometer at the draw-off.", stage.Text);
        Assert.Equal(2, stage.Text.Split(Advice).Length);
    }

    [Fact]
    public void O16_a_depth_read_before_a_pour_keeps_its_age_and_says_so()
    {
        using var stage = Stage.At("steady-boil");
        stage.Type("depth 1 1/2");
        stage.Wait(2);
        stage.Type("poured 1 gal");
        Assert.Matches(@"│ Depth 1\.5 in · 2 min ago; poured", stage.Text);
    }

    [Fact]
    public void O1_an_alarm_that_asks_for_the_action_of_the_step_stands_in_its_place()
    {
        const string Alarm = "\n!! NOW: Shut the draw-off; then say 'drew' with the volume.\n";
        using var stage = Stage.At("draw-off");
        stage.Type("yes");
        Assert.Contains("\n* Under 21", stage.Text);
        stage.Wait(1);
        stage.Type("draw 213");
        Assert.Contains(Alarm, stage.Text);
        Assert.Equal(2, stage.Text.Split("Shut the draw-off").Length);
        Assert.Contains("\n  [yes, no, skip, later]", stage.Text);
        stage.Type("drew 1 qt");
        Assert.DoesNotContain(Alarm, stage.Text);
    }

    [Fact]
    public void Page_up_shows_what_was_said_and_new_words_lead_back_to_the_end()
    {
        using var stage = Stage.At("steady-boil");
        var end = stage.Text;
        stage.Press(Key.PageUp);
        Assert.Contains("rows below: PageDown", stage.Text);
        stage.Press(Key.PageDown);
        Assert.Equal(end, stage.Text);
        for (var page = 0; page < 40; page++)
        {
            stage.Press(Key.PageUp);
        }

        Assert.Contains("Local fire and food codes", stage.Text);
        stage.Type("status");
        Assert.DoesNotContain("rows below", stage.Text);
    }

    [Fact]
    public void Up_and_down_bring_back_what_was_typed()
    {
        using var stage = Stage.At("start-up");
        stage.Type("status");
        stage.Type("why");
        stage.Letters("ta");
        stage.Press(Key.CursorUp);
        Assert.Contains("\nYou: why\n", stage.Text);
        stage.Press(Key.CursorUp);
        Assert.Contains("\nYou: status\n", stage.Text);
        stage.Press(Key.CursorDown);
        stage.Press(Key.CursorDown);
        Assert.Contains("\nYou: ta\n", stage.Text);
    }

    [Fact]
    public void A_question_mark_on_an_empty_line_opens_help_and_typing_goes_on_behind_it()
    {
        using var stage = Stage.At("start-up");
        stage.Letters("?");
        Assert.StartsWith(" HELP", stage.Text);
        Assert.Contains("Readings: tank 22", stage.Text);
        stage.Letters("no");
        Assert.Contains("\nYou: no\n", stage.Text);
        stage.Letters("?");
        Assert.Contains("\nYou: no?\n", stage.Text);
    }

    [Fact]
    public void Escape_and_control_z_change_nothing()
    {
        using var stage = Stage.At("start-up");
        stage.Letters("tank 2");
        var before = stage.Text;
        stage.Press(Key.Esc);
        stage.Press(Key.Z.WithCtrl);
        stage.Press(Key.Tab);
        Assert.Equal(before, stage.Text);
        Assert.False(stage.IsLeft);
    }

    [Fact]
    public void Practice_stands_on_every_screen()
    {
        using var stage = new Stage(played: new(new SessionDoor(SessionDoor.BuiltIn(practice: true))));
        Assert.StartsWith(" START UP   PRACTICE ", stage.Text);
        stage.Press(Key.F1);
        Assert.StartsWith(" HELP   PRACTICE ", stage.Text);
        stage.Press(Key.Esc);
        stage.Press(Key.C.WithCtrl);
        Assert.Contains("Leave the practice? It cannot be gone on with.", stage.Text);
        stage.Press(Key.Esc);
        foreach (var height in new[] { 8, 3, 2 })
        {
            stage.Resize(40, height);
            Assert.Contains("PRACTICE", stage.Text);
        }
    }

    [Fact]
    public void Trouble_with_the_record_is_told_once()
    {
        var door = new SessionDoor(SessionDoor.BuiltIn());
        using var stage = new Stage(100, 30, new(door));
        door.Trouble = "The record cannot be written.";
        stage.Type("yes");
        stage.Type("yes");
        Assert.Single(stage.Talk.Said, entry => entry.Texts[0] == "!! RECORD: The record cannot be written.");
        Assert.Contains("!! RECORD: The record cannot be written.", stage.Text);
    }

    [Fact]
    public void Time_alone_goes_through_the_door_only_when_it_brings_something()
    {
        var door = new SessionDoor(SessionDoor.BuiltIn());
        using var stage = new Stage(played: new(door));
        stage.Wait(60);
        Assert.Single(door.Heard, line => line is Tick);
    }
}
