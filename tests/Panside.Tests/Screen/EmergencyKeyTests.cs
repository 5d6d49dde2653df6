using Panside.Screen.Painting;
using Panside.Tests.Screen.Support;
using Terminal.Gui.Input;

namespace Panside.Tests.Screen;

public sealed class EmergencyKeyTests
{
    public static TheoryData<string> Moments => new(Evening.Scenes.Keys.Where(scene => scene is not "over"));

    [Theory]
    [MemberData(nameof(Moments))]
    public void One_key_leads_to_the_emergency_from_every_phase(string scene)
    {
        using var stage = Stage.At(scene);
        stage.Press(Key.F9);
        AssertEmergency(stage);
    }

    [Fact]
    public void One_key_leads_to_the_emergency_while_it_asks_whether_to_leave()
    {
        using var stage = Stage.At("steady-boil");
        stage.Press(Key.C.WithCtrl);
        stage.Press(Key.F9);
        AssertEmergency(stage);
    }

    [Fact]
    public void What_is_half_typed_does_not_hold_the_emergency_back()
    {
        using var stage = Stage.At("steady-boil");
        stage.Letters("tank 2");
        stage.Press(Key.F9);
        AssertEmergency(stage);
        Assert.Contains("You: tank 2", stage.Text);
    }

    [Fact]
    public void An_older_question_is_dropped_in_the_emergency()
    {
        using var stage = Stage.At("question");
        stage.Press(Key.F9);
        Assert.Contains("\n!!! DANGER: Pan low? Pour sap in now", stage.Text);
        Assert.Null(stage.Door.State.Doubted);
    }

    [Fact]
    public void An_open_question_does_not_hide_what_to_do_in_the_emergency()
    {
        using var stage = Stage.At("steady-boil");
        stage.Type("must leave");
        stage.Type("leave");
        Assert.Contains("\n!!! DANGER: Add no wood. Flood the pan to 2.5 in.", stage.Text);
        Assert.Contains("Leave now? It is not clear to leave", stage.Text);
        Assert.Contains("[yes or no answers this first]", stage.Text);
    }

    [Theory]
    [InlineData("")]
    [InlineData("dry")]
    [InlineData("scorch")]
    [InlineData("foam")]
    [InlineData("float")]
    [InlineData("chimney")]
    [InlineData("stack")]
    [InlineData("hurt")]
    [InlineData("away")]
    public void O14_each_emergency_says_what_to_do_in_27_words_at_the_most(string which)
    {
        using var stage = Stage.At("steady-boil");
        stage.Press(Key.F9);
        if (which.Length > 0)
        {
            stage.Type(which);
        }

        var picture = stage.Played.Picture;
        var action = Asked.Of(new(picture.Setting, picture.State), picture).Action;
        var words = action[(action.IndexOf(':', StringComparison.Ordinal) + 1)..].Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.InRange(words.Length, 1, 27);
    }

    private static void AssertEmergency(Stage stage)
    {
        Assert.Equal("emergency", TopRow.Phase(stage.Door.State, stage.Door.Setting));
        Assert.StartsWith(" EMERGENCY", stage.Text);
        Assert.Contains("\n!!! DANGER: ", stage.Text);
    }
}
