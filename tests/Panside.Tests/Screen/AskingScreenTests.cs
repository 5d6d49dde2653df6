using Panside.Guide.Rigs.Making;
using Panside.Screen.Asking;
using Panside.Tests.Screen.Support;
using Terminal.Gui.Input;

namespace Panside.Tests.Screen;

/// <summary>The questions about a rig on the full screen.</summary>
public sealed class AskingScreenTests
{
    private static readonly string[] Whole =
        ["us", "4 ft", "23 1/2", "yes", "yes", "no", "3", "1 1/2", "8", "16 bricks", "35", "7", "8", "dry", "valve", "thermometer, hydrometer, lid", "900", "north shed"];

    private readonly RigMaking _making = new("/home/ada/panside/rig.yaml", null, _ =>
    [
        "7.8 square feet of pan; 7.3 gal in it when it runs.", "Fired so it boils away about 6.1 gal/h; nine rigs in ten 4.3 to 9 gal/h.",
        "A first shutdown wants 4.9 gal in the tank at the last charge.",
    ]);

    public static TheoryData<string> Sizes => ["80x24", "100x30"];

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_questions_look_as_their_pictures(string size)
    {
        var sides = size.Split('x').Select(int.Parse).ToArray();
        using var stage = new Stage(sides[0], sides[1], talk: new AskingTalk(_making));
        stage.Play(Whole[..1]);
        Pictures.Same($"rig-length-{size}", stage.Text);
        stage.Type("4");
        stage.Play(Whole[1..6]);
        Pictures.Same($"rig-channels-{size}", stage.Text);
        stage.Press(Key.F1);
        Pictures.Same($"rig-help-{size}", stage.Text);
        stage.Press(Key.Esc);
        stage.Play(Whole[6..]);
        Pictures.Same($"rig-whole-{size}", stage.Text);
    }

    private static readonly string[] TwoPans =
        ["us", "2 ft", "23 1/2", "yes", "yes", "4 ft by 2 ft", "6 flues 7 in deep", "2 in, least 1 in", "3 and 2", "1 1/2", "8", "16 bricks", "35", "7", "8", "dry", "valve", "all", "900", "two pans"];

    [Fact]
    public void Every_question_about_two_pans_stands_whole_at_80_by_24()
    {
        using var stage = new Stage(talk: new AskingTalk(_making));
        foreach (var answer in TwoPans)
        {
            var page = _making.Page;
            Assert.All(page.Picture, row => Assert.Contains(row.TrimEnd(), stage.Text, StringComparison.Ordinal));
            Assert.Contains(page.Ask, stage.Text, StringComparison.Ordinal);
            Assert.DoesNotContain("...", stage.Text, StringComparison.Ordinal);
            stage.Type(answer);
        }

        Assert.Contains("RIG FILE   all answered", stage.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_question_with_its_picture_and_range_stands_whole_at_80_by_24()
    {
        using var stage = new Stage(talk: new AskingTalk(_making));
        foreach (var answer in Whole)
        {
            var page = _making.Page;
            Assert.All(page.Picture, row => Assert.Contains(row.TrimEnd(), stage.Text, StringComparison.Ordinal));
            Assert.Contains(page.Ask, stage.Text, StringComparison.Ordinal);
            Assert.DoesNotContain("...", stage.Text, StringComparison.Ordinal);
            Assert.Contains("F9 EMERGENCY", stage.Text, StringComparison.Ordinal);
            stage.Type(answer);
        }
    }

    [Fact]
    public void Keys_say_their_words()
    {
        using var stage = new Stage(talk: new AskingTalk(_making));
        stage.Play(Whole[..2]);
        stage.Press(Key.F3);
        Assert.Contains("- The pan's area says how fast it boils", stage.Text, StringComparison.Ordinal);
        stage.Press(Key.F8);
        Assert.Contains("How long is the pan, inside?", stage.Text, StringComparison.Ordinal);
        stage.Press(Key.Enter);
        stage.Play(Whole[2..5]);
        stage.Press(Key.F4);
        Assert.Contains("RIG FILE   all answered", stage.Text, StringComparison.Ordinal);
        stage.Press(Key.F7);
        Assert.Equal(RigMade.Stopped, _making.End);
        Assert.True(stage.IsLeft);
    }

    [Fact]
    public void T14_control_c_asks_and_a_second_one_leaves_with_nothing_made()
    {
        using var stage = new Stage(talk: new AskingTalk(_making));
        stage.Play(Whole[..3]);
        stage.Press(Key.C.WithCtrl);
        Assert.Contains("Leave? Nothing is written then; 'stop' keeps the answers.", stage.Text, StringComparison.Ordinal);
        stage.Letters("n");
        Assert.False(stage.IsLeft);
        Assert.DoesNotContain("Leave?", stage.Text, StringComparison.Ordinal);
        stage.Press(Key.C.WithCtrl);
        stage.Press(Key.C.WithCtrl);
        Assert.True(stage.IsLeft);
        Assert.Null(_making.End);
    }

    [Fact]
    public void T4_no_size_makes_it_fall_and_the_question_is_the_last_to_go()
    {
        using var stage = new Stage(talk: new AskingTalk(_making));
        stage.Play(Whole[..1]);
        for (var size = 1; size <= 60; size += 3)
        {
            stage.Resize(size * 2, size);
            Assert.All(stage.Text.Split('\n'), row => Assert.InRange(row.Length, 0, size * 2));
            if (size >= 10)
            {
                Assert.Contains("How long", stage.Text, StringComparison.Ordinal);
            }
        }
    }
}
