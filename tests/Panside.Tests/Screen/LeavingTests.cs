using Panside.Tests.Screen.Support;
using Terminal.Gui.Input;

namespace Panside.Tests.Screen;

public sealed class LeavingTests
{
    [Fact]
    public void Control_c_asks_and_any_key_stays()
    {
        using var stage = Stage.At("start-up");
        var before = stage.Text;
        stage.Press(Key.C.WithCtrl);
        Assert.Contains("Leave the session? It can be gone on with.", stage.Text);
        stage.Letters("n");
        Assert.Equal(before, stage.Text);
        stage.Press(Key.C.WithCtrl);
        Assert.False(stage.IsLeft);
    }

    [Fact]
    public void A_second_control_c_leaves_and_sends_nothing_through_the_door()
    {
        var door = new SessionDoor(SessionDoor.BuiltIn());
        using var stage = new Stage(played: new(door));
        var heard = door.Heard.Count;
        stage.Press(Key.C.WithCtrl);
        stage.Press(Key.C.WithCtrl);
        Assert.True(stage.IsLeft);
        Assert.Null(stage.Talk.Outcome);
        Assert.Equal(heard, door.Heard.Count);
    }

    [Fact]
    public void When_the_boil_is_over_the_outcome_is_shown_until_enter()
    {
        using var stage = Stage.At("over");
        Assert.Contains("- Done in ", stage.Text);
        Assert.Contains("This boil is over. Press Enter to leave.", stage.Text);
        Assert.False(stage.IsLeft);
        stage.Press(Key.PageUp);
        stage.Letters("typed ahead");
        Assert.False(stage.IsLeft);
        stage.Press(Key.Enter);
        Assert.True(stage.IsLeft);
        Assert.True(stage.Talk.Outcome!.Outcome.Safe);
    }
}
