using Panside.Commands;
using Panside.Screen.Asking;
using Panside.Tests.Screen.Support;
using Terminal.Gui.Input;

namespace Panside.Tests.Screen;

/// <summary>The home screen: what to do now, each by a key and by a word.</summary>
public sealed class HomeTests
{
    private static readonly (string Path, string Told)[] Past =
        [("/s/b.jsonl", "2031-03-08 16:30  north shed, 3.2 qt of syrup"), ("/s/a.jsonl", "2031-03-07 15:00  north shed, no end")];

    public static TheoryData<string> Sizes => ["80x24", "100x30"];

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_first_screen_looks_as_its_pictures(string size)
    {
        Pictures.Same($"home-{size}", Home(size));
        Pictures.Same($"home-new-{size}", Drawn(Asking(null, null), size));
    }

    [Fact]
    public void An_unfinished_boil_comes_first_and_enter_goes_on_with_it()
    {
        var asking = Asking(LeftAgo(0.7), "north shed");
        Assert.Equal("  1  go on        with the boil that was left 42 minutes ago", asking.Page.Picture[1]);
        asking.Hear("");
        Assert.Equal((HomeChoice.GoOn, "/s/open.jsonl"), (asking.Chosen, asking.With));
    }

    [Fact]
    public void A_cold_one_is_told_last_with_its_age_and_enter_starts_a_boil()
    {
        var asking = Asking(LeftAgo(72), "north shed");
        Assert.Equal("  6  go on        with the boil that was left 3 days ago", asking.Page.Picture[^1]);
        asking.Hear("");
        Assert.Equal(HomeChoice.Start, asking.Chosen);
        var other = Asking(LeftAgo(72), "north shed");
        other.Hear("go on");
        Assert.Equal(HomeChoice.GoOn, other.Chosen);
    }

    [Fact]
    public void Who_has_no_rig_file_is_asked_for_the_rig_first()
    {
        var asking = Asking(null, null);
        asking.Hear("");
        Assert.Equal(HomeChoice.Rig, asking.Chosen);
        Assert.Contains("as on a rig of 2 ft by 4 ft", Asking(null, null).Page.Picture[2], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("go on", 1, HomeChoice.GoOn)]
    [InlineData("start", 2, HomeChoice.Start)]
    [InlineData("season", 5, HomeChoice.Season)]
    [InlineData("rig", 6, HomeChoice.Rig)]
    public void Each_choice_is_a_key_and_a_word(string word, int key, object choice)
    {
        foreach (var said in new[] { word, word.ToUpperInvariant(), $"{key}" })
        {
            var asking = Asking(LeftAgo(1), "north shed");
            asking.Hear(said);
            Assert.Equal(choice, asking.Chosen);
        }

        var pressed = Asking(LeftAgo(1), "north shed");
        using var stage = new Stage(talk: new AskingTalk(pressed));
        stage.Press((Key)('0' + key));
        Assert.Equal(choice, pressed.Chosen);
        Assert.True(stage.IsLeft);
    }

    [Fact]
    public void An_enter_after_a_digit_chooses_nothing_more_and_a_digit_in_a_word_is_a_letter()
    {
        var asking = Asking(null, "north shed");
        using var stage = new Stage(talk: new AskingTalk(asking));
        stage.Press((Key)'2');
        Assert.Contains("PRACTISE", stage.Text, StringComparison.Ordinal);
        stage.Press(Key.Enter);
        Assert.Null(asking.With);
        stage.Press(Key.X);
        stage.Press((Key)'2');
        Assert.Null(asking.With);
        Assert.Contains("You: x2", stage.Text, StringComparison.Ordinal);
        stage.Press(Key.Backspace);
        stage.Press(Key.Backspace);
        stage.Press(Key.Enter);
        Assert.Equal("refresher", asking.With);
    }

    [Fact]
    public void What_each_practice_is_stands_whole_at_80_columns()
    {
        using var stage = new Stage(80, 24, talk: new AskingTalk(Asking(null, "north shed")));
        stage.Press((Key)'2');
        Assert.Contains("1  refresher", stage.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("...", stage.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void S2_the_emergency_is_one_key_away_from_every_page()
    {
        foreach (var before in new string?[] { null, "practise", "replay" })
        {
            var asking = Asking(null, "north shed");
            using var stage = new Stage(talk: new AskingTalk(asking));
            if (before is not null)
            {
                stage.Type(before);
            }

            stage.Press(Key.F9);
            Assert.Equal(HomeChoice.Emergency, asking.Chosen);
        }
    }

    [Theory]
    [InlineData("3", "1", "refresher")]
    [InlineData("practise", "", "refresher")]
    [InlineData("practice", "last-charge", "last-charge")]
    [InlineData("3", "float-stuck", "float-stuck")]
    public void A_practice_is_chosen_on_a_page_of_its_own(string first, string then, string scenario)
    {
        var asking = Asking(LeftAgo(1), "north shed");
        asking.Hear(first);
        Assert.Null(asking.Chosen);
        Assert.Equal("PRACTISE", asking.Page.Title);
        asking.Hear(then);
        Assert.Equal((HomeChoice.Practise, scenario), (asking.Chosen, asking.With));
    }

    [Fact]
    public void A_past_boil_is_chosen_by_its_number_and_back_goes_back()
    {
        var asking = Asking(null, "north shed");
        asking.Hear("replay");
        Assert.Contains("  2  boil 2       2031-03-07 15:00  north shed, no end", asking.Page.Picture);
        asking.Hear("back");
        Assert.Equal("What now?", asking.Page.Ask);
        asking.Hear("replay");
        asking.Hear("2");
        Assert.Equal((HomeChoice.Replay, "/s/a.jsonl"), (asking.Chosen, asking.With));
    }

    [Theory]
    [InlineData("replay")]
    [InlineData("season")]
    public void Without_a_past_boil_it_is_said_what_to_do_instead(string word)
    {
        var asking = new HomeAsking(new(null, "north shed", HasPast: false, () => []), []);
        Assert.Equal(["- There is no past boil yet. 'practise' makes one that costs nothing."], asking.Hear(word));
        Assert.Null(asking.Chosen);
    }

    [Fact]
    public void What_is_no_choice_is_told_with_the_choices()
    {
        var asking = Asking(null, "north shed");
        Assert.Equal(["x '9' is none of these. Expected: start, practise, replay, season, rig, or a number."], asking.Hear("9"));
        asking.Hear("leave");
        Assert.Equal(HomeChoice.Leave, asking.Chosen);
    }

    /// <summary>The screen after a power cut.</summary>
    internal static string Home(string size) => Drawn(Asking(LeftAgo(0.7), "north shed"), size);

    private static UnfinishedBoil LeftAgo(double hours) => new("/s/open.jsonl", TimeSpan.FromHours(hours), IsLast: true);

    private static HomeAsking Asking(UnfinishedBoil? unfinished, string? rig) => new(new(unfinished, rig, HasPast: true, () => Past), []);

    private static string Drawn(HomeAsking asking, string size)
    {
        var sides = size.Split('x').Select(int.Parse).ToArray();
        using var stage = new Stage(sides[0], sides[1], talk: new AskingTalk(asking));
        return stage.Text;
    }
}
