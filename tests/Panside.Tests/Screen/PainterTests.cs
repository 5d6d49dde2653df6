using Panside.Screen.Painting;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Screen;

public sealed class PainterTests
{
    private static readonly string[] Typed = ["", "tank 22 1/2", "note 糖蜜 ½ in, sève troublée", "👩‍🌾 " + new string('x', 300)];

    [Fact]
    public void T4_ten_thousand_sizes_are_painted_without_fault_and_within_their_bounds()
    {
        var random = new Random(20310308);
        var pictures = Evening.Scenes.Keys.Select(scene => Played.Scene(scene).Picture).ToArray();
        for (var round = 0; round < 10_000; round++)
        {
            var typed = Typed[random.Next(Typed.Length)];
            var picture = pictures[random.Next(pictures.Length)] with
            {
                Typed = typed,
                Caret = random.Next(2) * typed.Length,
                Scroll = random.Next(3) * random.Next(200),
                Mode = (ScreenMode)random.Next(4),
            };
            var (width, height) = round < 100 ? (round % 10, round / 10) : (random.Next(1, 200), random.Next(1, 70));
            AssertFits(Painter.Paint(picture, width, height), width, height);
        }
    }

    [Fact]
    public void T4_any_size_of_a_living_screen_is_drawn_and_the_old_one_comes_back()
    {
        var random = new Random(20310309);
        using var stage = Stage.At("steady-boil");
        var before = stage.Text;
        stage.Resize(1, 1);
        for (var round = 0; round < 200; round++)
        {
            stage.Resize(random.Next(1, 160), random.Next(1, 60));
        }

        stage.Resize(80, 24);
        Assert.Equal(before, stage.Text);
    }

    [Fact]
    public void T4_a_screen_of_one_column_and_one_row_is_drawn()
    {
        using var stage = Stage.At("emergency", 1, 1);
        Assert.Equal("!", stage.Text);
    }

    [Fact]
    public void T4_a_small_screen_keeps_what_to_do_and_the_input_line()
    {
        using var stage = Stage.At("emergency", 40, 3);
        stage.Letters("dry");
        Assert.Equal("!!! DANGER: Pan low? Pour sap in now.", stage.Text.Split('\n')[0]);
        Assert.Equal("You: dry", stage.Text.Split('\n')[2]);
    }

    [Theory]
    [InlineData("dry-pan")]
    [InlineData("draw-off")]
    public void T4_the_least_full_screen_shows_action_hint_input_and_the_figures_that_decide(string scene)
    {
        var text = Painter.Paint(Played.Scene(scene).Picture, Painter.LeastWidth, Painter.LeastHeight).ToString();
        Assert.Contains("│ Tank ", text);
        Assert.Contains("│ Now ", text);
        Assert.Contains("\n  [", text);
        Assert.Contains("\nYou:", text);
    }

    private static void AssertFits(Frame frame, int width, int height)
    {
        Assert.Equal(height, frame.Rows.Count);
        Assert.All(frame.Rows, row => Assert.True(row.Width <= width, $"{width}x{height}: {row}"));
        if (frame.Caret is { } caret)
        {
            Assert.InRange(caret.Column, 0, width - 1);
            Assert.InRange(caret.Row, 0, height - 1);
        }
    }
}
