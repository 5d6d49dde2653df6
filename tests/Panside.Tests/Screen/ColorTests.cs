using Panside.Screen;
using Panside.Screen.Painting;
using Panside.Tests.Screen.Support;
using Terminal.Gui.Drawing;

namespace Panside.Tests.Screen;

public sealed class ColorTests
{
    private static readonly Palette Colors = new(hasColor: true);

    [Theory]
    [InlineData("start-up")]
    [InlineData("steady-boil")]
    [InlineData("clear")]
    public void A_normal_screen_has_no_color(string scene) => Assert.DoesNotContain(Tones(scene), tone => tone > Tone.Bar);

    [Theory]
    [InlineData("emergency", nameof(Tone.Danger), "!!! DANGER:")]
    [InlineData("draw-off", nameof(Tone.Now), "!! NOW:")]
    [InlineData("question", nameof(Tone.Doubt), "? ")]
    public void What_is_not_normal_has_its_mark_in_words_and_its_color(string scene, string tone, string mark)
    {
        using var stage = Stage.At(scene);
        Assert.Contains("\n" + mark, stage.Text);
        Assert.Contains(Enum.Parse<Tone>(tone), Tones(scene));
    }

    [Fact]
    public void Without_color_every_tone_is_the_terminals_own()
    {
        var palette = new Palette(hasColor: false);
        foreach (var attribute in Enum.GetValues<Tone>().Select(palette.Of))
        {
            Assert.Equal((Color.None, Color.None), (attribute.Foreground, attribute.Background));
            Assert.DoesNotContain(TextStyle.Blink, Enum.GetValues<TextStyle>().Where(style => style != TextStyle.None && attribute.Style.HasFlag(style)));
        }
    }

    [Fact]
    public void Colored_text_has_a_ground_of_its_own_so_that_light_and_dark_terminals_show_it() =>
        Assert.All(
            Enum.GetValues<Tone>().Where(tone => tone > Tone.Bar).Select(Colors.Of),
            attribute => Assert.DoesNotContain(Color.None, new[] { attribute.Foreground, attribute.Background }));

    private static HashSet<Tone> Tones(string scene)
    {
        var frame = Painter.Paint(Played.Scene(scene).Picture, 80, 24);
        return [.. frame.Rows.SelectMany(row => row.Pieces).Where(piece => piece.Text.Trim().Length > 0).Select(piece => piece.Tone)];
    }
}
