using System.Globalization;
using Panside.Screen.Replaying;
using Panside.Tests.Screen.Support;
using Terminal.Gui.Input;

namespace Panside.Tests.Screen;

[Collection(Demo.LongBoil)]
public class ReplayScreenTests
{
    private static readonly Dictionary<string, string[]> Scenes = new()
    {
        ["replay"] = ["to 17:50"],
        ["replay-draw"] = ["draw"],
        ["replay-end"] = ["end"],
        ["replay-help"] = ["help"],
        ["replay-word"] = ["to 18:41", "yes"],
    };

    public static TheoryData<string> Names => new(Scenes.Keys);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_replay_looks_as_its_pictures(string scene)
    {
        Pictures.Same($"{scene}-80x24", Draw(scene, 80, 24));
        Pictures.Same($"{scene}-120x40", Draw(scene, 120, 40));
    }

    [Fact]
    public void The_page_of_replays_shows_the_programs_own_pictures() => Pictures.SamePage("replay.md", name =>
    {
        var cut = name.LastIndexOf('-');
        var sides = name[(cut + 1)..].Split('x').Select(side => int.Parse(side, CultureInfo.InvariantCulture)).ToArray();
        return Draw(name[..cut], sides[0], sides[1]);
    });

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(60, 16)]
    [InlineData(40, 10)]
    [InlineData(30, 4)]
    public void No_screen_of_a_replay_is_without_the_word(int width, int height)
    {
        var (stage, _) = Open(width, height);
        using (stage)
        {
            foreach (var word in new[] { "start", "to 16:56", "draw", "end", "help", "yes" })
            {
                stage.Type(word);
                Assert.Contains("REPLAY", stage.Text, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Every_function_key_does_what_its_word_does()
    {
        foreach (var key in ReplayKeys.All)
        {
            var (pressed, _) = Open();
            var (typed, _) = Open();
            using (pressed)
            using (typed)
            {
                pressed.Type("to 16:56");
                typed.Type("to 16:56");
                pressed.Press(key.Key);
                typed.Type(key.Word);
                Assert.Equal(typed.Text, pressed.Text);
            }
        }
    }

    [Fact]
    public void It_goes_on_by_itself_and_the_first_ctrl_c_leaves()
    {
        var (stage, _) = Open();
        using (stage)
        {
            var before = stage.Text;
            stage.Wait(1);
            Assert.NotEqual(before, stage.Text);
            Assert.False(stage.IsLeft);
            stage.Press(Key.C.WithCtrl);
            Assert.True(stage.IsLeft);
        }
    }

    [Fact]
    public void The_word_leave_leaves()
    {
        var (stage, _) = Open();
        using (stage)
        {
            stage.Type("leave");
            Assert.True(stage.IsLeft);
        }
    }

    private static string Draw(string scene, int width, int height)
    {
        var (stage, _) = Open(width, height);
        using (stage)
        {
            stage.Type("pause");
            return stage.Play(Scenes[scene]).Text;
        }
    }

    private static (Stage Stage, ReplayTalk Talk) Open(int width = 80, int height = 24)
    {
        var played = new Played();
        var talk = new ReplayTalk(Demo.SharedLongBoil, new(16, null, null, null), played.Clock);
        talk.Start();
        return (new Stage(width, height, played, talk), talk);
    }
}
