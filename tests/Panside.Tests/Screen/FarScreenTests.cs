using Panside.Screen.Painting;
using Panside.Tests.Screen.Support;
using Terminal.Gui.Input;

namespace Panside.Tests.Screen;

/// <summary>T15: one key, or a typed word, shows the next action and the countdown in large figures.</summary>
public sealed class FarScreenTests
{
    [Fact]
    public void T15_one_key_shows_the_countdown_in_large_figures_and_again_the_whole_screen()
    {
        using var stage = Stage.At("steady-boil");
        var before = stage.Text;
        stage.Press(Key.F6);
        foreach (var row in LargeLetters.Rows("in 2 min", '█'))
        {
            Assert.Contains(row.TrimEnd(), stage.Text);
        }

        stage.Press(Key.F6);
        Assert.Equal(before, stage.Text);
    }

    [Fact]
    public void T15_a_reading_that_comes_is_never_taken_for_the_draw_that_it_is_about()
    {
        using var stage = Stage.At("steady-boil");
        stage.Press(Key.F6);
        foreach (var row in LargeLetters.Rows("read draw-off", '█'))
        {
            Assert.Contains(row.TrimEnd(), stage.Text);
        }

        stage.Press(Key.F6);
        Assert.Contains("Next: read draw-off in 2 min.", stage.Text);
    }

    [Fact]
    public void T15_T10_the_word_does_the_same_and_goes_through_no_door()
    {
        using var stage = Stage.At("steady-boil");
        var heard = ((SessionDoor)stage.Door).Heard.Count;
        stage.Type("large");
        var typed = stage.Text;
        stage.Press(Key.F6);
        stage.Press(Key.F6);
        Assert.Equal(typed, stage.Text);
        Assert.Equal(heard, ((SessionDoor)stage.Door).Heard.Count);
    }

    [Fact]
    public void O14_the_emergency_list_comes_up_from_the_large_figures_too()
    {
        using var stage = Stage.At("steady-boil");
        stage.Press(Key.F6);
        stage.Press(Key.F9);
        Assert.Contains("!!! DANGER: Pan low? Pour sap in now. Type what is wrong:", stage.Text);
        foreach (var row in LargeLetters.Rows("danger", '█'))
        {
            Assert.Contains(row.TrimEnd(), stage.Text);
        }
    }

    [Fact]
    public void An_answer_is_typed_without_going_back()
    {
        using var stage = Stage.At("draw-off");
        stage.Press(Key.F6);
        stage.Type("yes");
        Assert.EndsWith("F6 Back to the whole screen", stage.Text);
        Assert.Contains("\nYou:", stage.Text);
        Assert.DoesNotContain("Open the draw-off into the warm pail", stage.Text);
    }

    [Fact]
    public void What_is_to_be_done_always_stands_in_words_too()
    {
        foreach (var scene in Evening.Scenes.Keys)
        {
            var picture = Played.Scene(scene).Picture;
            var text = Painter.Paint(picture with { Mode = ScreenMode.Far }, 80, 24).ToString();
            var asked = Asked.Of(new(picture.Setting, picture.State), picture);
            Assert.Contains(Wrapping.Rows(asked.Action, 80)[0], text);
        }
    }
}
