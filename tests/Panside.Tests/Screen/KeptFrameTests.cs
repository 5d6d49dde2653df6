using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Screen;
using Panside.Screen.Painting;
using Panside.Screen.Replaying;
using Panside.Tests.Screen.Support;
using Terminal.Gui.Input;

namespace Panside.Tests.Screen;

/// <summary>T2: a key costs one row. What stands above the line that is typed on is painted, and reckoned, when something was said or time came on.</summary>
public sealed class KeptFrameTests
{
    private static readonly (int Width, int Height)[] Sizes = [(1, 1), (59, 5), (40, 12), (80, 24), (100, 30), (160, 50)];

    public static TheoryData<string> Scenes => new(Evening.Scenes.Keys);

    [Theory]
    [MemberData(nameof(Scenes))]
    public void What_is_kept_is_what_would_be_painted(string scene)
    {
        var picture = Played.Scene(scene).Picture;
        foreach (var (width, height) in Sizes)
        {
            var kept = new KeptFrame();
            foreach (var mode in Enum.GetValues<ScreenMode>())
            {
                foreach (var (typed, caret, scroll) in new[] { ("", 0, 0), ("dep", 3, 0), ("dep", 1, 0), (new string('x', 200), 200, 0), ("", 0, 3), ("é漢", 2, 3) })
                {
                    var one = picture with { Typed = typed, Caret = caret, Scroll = scroll, Mode = mode };
                    var (frame, painted) = (kept.Paint(one, width, height), Painter.Paint(one, width, height));
                    Assert.True(painted.LooksLike(frame), $"{mode}, {width} by {height}, '{typed}'\n{painted}\n\n{frame}");
                    Assert.Equal(painted.Scroll, frame.Scroll);
                }
            }
        }
    }

    [Fact]
    public void What_was_said_since_is_painted_though_it_stands_in_the_same_list()
    {
        var said = new List<Entry>();
        var picture = Played.Scene("steady-boil").Picture with { Said = said };
        var kept = new KeptFrame();
        kept.Paint(picture, 80, 24);
        said.Add(new("17:42", ["- A new thing."]));
        Assert.Contains("A new thing.", kept.Paint(picture, 80, 24).ToString());
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(100, 30)]
    [InlineData(120, 40)]
    [InlineData(160, 50)]
    public void T2_a_letter_typed_draws_one_row_and_asks_the_session_nothing(int width, int height)
    {
        var door = new CountingDoor(new SessionDoor(SessionDoor.BuiltIn()));
        using var stage = new Stage(width, height, Played.Scene("steady-boil", door));
        var asked = door.Asked;
        foreach (var letter in "depth 1.5")
        {
            Assert.Equal(1, stage.RowsDrawnFor((Key)letter));
        }

        Assert.Equal(1, stage.RowsDrawnFor(Key.Backspace));
        Assert.Equal(asked, door.Asked);
        Assert.Contains("\nYou: depth 1.\n", stage.Text + "\n");
        Assert.InRange(stage.RowsDrawnFor(Key.Enter), 3, height);
        Assert.True(door.Asked > asked);
    }

    /// <summary>Long stretches are copied, and what joins or is wide is not: whatever stood there before, the row is the same as on a screen that never had it.</summary>
    [Fact]
    public void T2_a_row_drawn_over_another_is_what_it_would_be_on_an_empty_screen()
    {
        string[] typed = ["", "a      b", "漢漢漢漢漢漢漢漢", "      ", "e\u0301e\u0301      \u0301x", "──────x──────", "a\u00adb", "⌚      ⌛", "👩\u200d🚒      y", new('═', 30), "      end", ""];
        using var stage = Stage.At("steady-boil");
        foreach (var words in typed)
        {
            using var fresh = Stage.At("steady-boil");
            stage.Press(Key.U.WithCtrl);
            stage.Letters(words);
            fresh.Letters(words);
            Assert.Equal(fresh.Text, stage.Text);
            Assert.Equal(fresh.Ansi, stage.Ansi);
        }
    }

    [Fact]
    public void T2_a_letter_typed_in_a_replay_draws_one_row()
    {
        var played = new Played();
        var talk = new ReplayTalk(Demo.Boil("first-shutdown", 20), new(16, null, null, null), played.Clock);
        talk.Start();
        using var stage = new Stage(played: played, talk: talk);
        Assert.All("back 10", letter => Assert.Equal(1, stage.RowsDrawnFor((Key)letter)));
    }

    /// <summary>Counts how often the state at a moment is asked for.</summary>
    private sealed class CountingDoor(IConversation door) : IConversation
    {
        public int Asked { get; private set; }

        public SessionState State => door.State;

        public Setting Setting => door.Setting;

        public string? Trouble => door.Trouble;

        public string? RecordPath => door.RecordPath;

        public IReadOnlyList<LineOut> Hear(LineIn line) => door.Hear(line);

        public bool IsDue(Moment at) => door.IsDue(at);

        public SessionState At(Moment moment)
        {
            Asked++;
            return door.At(moment);
        }
    }
}
