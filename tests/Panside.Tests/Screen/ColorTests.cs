using System.Globalization;
using Panside.Screen;
using Panside.Screen.Painting;
using Panside.Tests.Screen.Support;
using Terminal.Gui.Drawing;

namespace Panside.Tests.Screen;

public sealed class ColorTests
{
    /// <summary>The 16 colors as two wide-spread sets give them: of an X terminal, and of a console of the VGA kind.</summary>
    private static readonly Dictionary<string, string[]> Sets = new()
    {
        ["xterm"] =
        [
            "000000", "cd0000", "00cd00", "cdcd00", "0000ee", "cd00cd", "00cdcd", "e5e5e5",
            "7f7f7f", "ff0000", "00ff00", "ffff00", "5c5cff", "ff00ff", "00ffff", "ffffff",
        ],
        ["VGA"] =
        [
            "000000", "aa0000", "00aa00", "aa5500", "0000aa", "aa00aa", "00aaaa", "aaaaaa",
            "555555", "ff5555", "55ff55", "ffff55", "5555ff", "ff55ff", "55ffff", "ffffff",
        ],
    };

    /// <summary>In the order of the sets: those of a terminal's own codes, 30 to 37 and 90 to 97.</summary>
    private static readonly ColorName16[] Names =
    [
        ColorName16.Black, ColorName16.Red, ColorName16.Green, ColorName16.Yellow, ColorName16.Blue, ColorName16.Magenta, ColorName16.Cyan, ColorName16.Gray,
        ColorName16.DarkGray, ColorName16.BrightRed, ColorName16.BrightGreen, ColorName16.BrightYellow, ColorName16.BrightBlue, ColorName16.BrightMagenta,
        ColorName16.BrightCyan, ColorName16.White,
    ];

    public static TheoryData<string> Themes => new(Enum.GetNames<Theme>());

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

    [Theory]
    [MemberData(nameof(Themes))]
    public void Nothing_blinks_and_every_tone_looks_otherwise_than_every_other_that_stands_beside_it(string theme)
    {
        var palette = new Palette(Enum.Parse<Theme>(theme));
        var all = Enum.GetValues<Tone>().Select(palette.Of).ToList();
        Assert.All(all, attribute => Assert.False(attribute.Style.HasFlag(TextStyle.Blink)));

        // Without color danger and what is to be done now look the same: their words tell them apart.
        Assert.InRange(all.Distinct().Count(), Enum.Parse<Theme>(theme) == Theme.Monochrome ? all.Count - 1 : all.Count, all.Count);
    }

    [Fact]
    public void Without_color_every_tone_is_the_terminals_own() => Assert.All(
        Enum.GetValues<Tone>().Select(new Palette(Theme.Monochrome).Of),
        attribute => Assert.Equal((Color.None, Color.None), (attribute.Foreground, attribute.Background)));

    [Theory]
    [MemberData(nameof(Themes))]
    public void O17_each_pair_of_colors_has_a_contrast_of_4_5_and_of_7_in_high_contrast(string theme)
    {
        var least = theme == nameof(Theme.HighContrast) ? Contrast.OfTextInHighContrast : Contrast.OfText;
        foreach (var tone in Enum.GetValues<Tone>())
        {
            var attribute = new Palette(Enum.Parse<Theme>(theme)).Of(tone);

            // Either both are the terminal's own or neither is.
            Assert.Equal(attribute.Foreground == Color.None, attribute.Background == Color.None);
            Assert.All(Contrasts(attribute), contrast => Assert.True(contrast >= least, $"{theme} {tone}: {contrast:0.0}"));
        }
    }

    [Fact]
    public void O17_only_the_terminals_own_colors_go_unmeasured()
    {
        var unmeasured = Enum.GetValues<Theme>().SelectMany(theme => Enum.GetValues<Tone>().Select(tone => (theme, tone)))
            .Where(one => Contrasts(new Palette(one.theme).Of(one.tone)).Count == 0).ToList();
        Assert.All(unmeasured, one => Assert.True(one.theme is Theme.Monochrome || (one.theme is Theme.Terminal && one.tone <= Tone.Bar)));
        Assert.NotEmpty(unmeasured);
    }

    [Theory]
    [InlineData("ffffff", "000000", 21.0)]
    [InlineData("777777", "ffffff", 4.48)]
    [InlineData("0000ff", "ffffff", 8.59)]
    public void The_contrast_is_that_of_published_pairs(string text, string ground, double contrast) =>
        Assert.Equal(contrast, Contrast.Of(text, ground), 0.01);

    [Fact]
    public void The_page_on_the_screen_has_the_table_of_contrasts() =>
        Assert.Contains(string.Join('\n', Table()) + "\n", RepositoryFiles.Read("docs", "screen.md"), StringComparison.Ordinal);

    [Fact]
    public void O17_the_picture_of_a_screen_keeps_the_contrast_of_the_screen() => Assert.All(Enum.GetValues<Tone>(), tone =>
    {
        var attribute = new Palette(Theme.Dark).Of(tone);
        Assert.True(Contrast.Of(ScreenSvg.Hex(attribute.Foreground), ScreenSvg.Hex(attribute.Background)) >= Contrast.OfText, tone.ToString());
    });

    private static IEnumerable<string> Table()
    {
        yield return "| theme | text | strong | bar | danger | now | doubt |";
        yield return "| --- | --- | --- | --- | --- | --- | --- |";
        foreach (var theme in Enum.GetValues<Theme>())
        {
            var cells = Enum.GetValues<Tone>().Select(tone => Contrasts(new Palette(theme).Of(tone)))
                .Select(pair => pair.Count == 0 ? "own" : string.Join(", ", pair.Select(contrast => contrast.ToString("0.0", CultureInfo.InvariantCulture))));
            yield return $"| {(theme == Theme.HighContrast ? "high-contrast" : theme.ToString().ToLowerInvariant())} | {string.Join(" | ", cells)} |";
        }
    }

    private static IReadOnlyList<double> Contrasts(Terminal.Gui.Drawing.Attribute attribute) => attribute.Foreground == Color.None
        ? []
        : [.. Sets.Values.Select(set => Contrast.Of(set[Code(attribute.Foreground)], set[Code(attribute.Background)]))];

    private static int Code(Color color) => Array.IndexOf(Names, color.GetClosestNamedColor16());

    private static HashSet<Tone> Tones(string scene)
    {
        var frame = Painter.Paint(Played.Scene(scene).Picture, 80, 24);
        return [.. frame.Rows.SelectMany(row => row.Pieces).Where(piece => piece.Text.Trim().Length > 0).Select(piece => piece.Tone)];
    }
}
