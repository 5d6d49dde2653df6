using Panside.Guide.Lines;
using Panside.Screen.Painting;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Screen;

/// <summary>A larger screen shows more: the pan as it lies there, and two hours to either side of now on an axis of time.</summary>
public sealed class LargeLayoutTests
{
    private static readonly (int Width, int Height)[] Sizes = [(80, 24), (100, 30), (160, 50)];

    [Fact]
    public void The_pan_and_what_is_ahead_come_where_there_is_room()
    {
        var picture = Played.Scene("steady-boil").Picture;
        var small = Painter.Paint(picture, 80, 24).ToString();
        var large = Painter.Paint(picture, 160, 50).ToString();
        Assert.DoesNotContain("► draw-off", small);
        Assert.Contains("Pan, 1.5 in deep; Brix as reckoned", large);
        Assert.Contains("► draw-off", large);
        Assert.Contains("├ least 0.75 in", large);
        Assert.Matches("Wood +.*╵.*│.*●.* last", large);
        Assert.Matches("15:41 .* 16:41 .* now .* 18:41 .* 19:41", large);
    }

    [Fact]
    public void The_pan_grows_sweeter_from_the_float_to_the_draw_off()
    {
        var channels = Played.Scene("draw-off").Picture.State.Rigs.Expected.ChannelBrix;
        Assert.Equal(channels.OrderBy(band => band.P50), channels);
        Assert.All(channels, band => Assert.True(band.P5 <= band.P50 && band.P50 <= band.P95));
        Assert.True(channels[^1].P50 > 2 * channels[0].P50);
    }

    [Fact]
    public void O16_a_reading_shows_its_unit_its_age_and_which_way_it_goes()
    {
        var played = Played.Scene("steady-boil");
        var text = Painter.Paint(played.Picture, 80, 24).ToString();
        Assert.Contains("│ Tank 24 gal ↓ 5 min ago; now 23", text);
        Assert.Contains("│ Depth 1.5 in · just now", text);
        Assert.Contains("│ Draw-off 216 °F ↑ 2 min ago", text);
        Assert.Equal(("", ""), Trend.Of(new Played().Picture.State, ReadingName.TankVolume));
    }

    [Fact]
    public void O12_done_now_and_next_are_always_visible_and_every_size_keeps_what_to_do()
    {
        foreach (var scene in Evening.Scenes.Keys)
        {
            var picture = Played.Scene(scene).Picture;
            foreach (var (width, height) in Sizes)
            {
                var text = Painter.Paint(picture, width, height).ToString();
                Assert.Contains("│ Done ", text);
                Assert.Contains("│ Now ", text);
                Assert.Equal(scene != "over", text.Contains("│ Next ", StringComparison.Ordinal));
                Assert.Contains(Wrapping.Rows(Asked.Of(new(picture.Setting, picture.State), picture).Action, width)[0], text);
            }
        }
    }

    [Fact]
    public void T9_with_ascii_nothing_else_reaches_the_terminal_and_nothing_moves()
    {
        var played = Played.Scene("steady-boil");
        using var usual = new Stage(played: played);
        using var ascii = new Stage(played: played, ascii: true);
        Assert.Contains("216 °F", usual.Text);
        Assert.Equal(string.Join('\n', usual.Text.Split('\n').Select(row => Ascii.Of(row).TrimEnd())), ascii.Text);
        ascii.Letters("note sève 糖");
        Assert.True(System.Text.Ascii.IsValid(ascii.Text));
        Assert.Contains("You: note s?ve ??", ascii.Text);
    }

    [Fact]
    public void T9_every_sign_of_every_screen_is_one_column_wide_and_has_its_ascii()
    {
        foreach (var scene in Evening.Scenes.Keys)
        {
            foreach (var mode in new[] { ScreenMode.Talking, ScreenMode.Far, ScreenMode.Helping })
            {
                var text = Painter.Paint(Played.Scene(scene).Picture with { Mode = mode }, 160, 50).ToString();
                Assert.All(text.Where(letter => letter > 0x7e).Distinct(), letter =>
                {
                    Assert.Equal(1, Columns.Of(letter.ToString()));
                    Assert.NotEqual("?", Ascii.Of(letter.ToString()));
                });
            }
        }
    }
}
