using System.Globalization;
using Panside.Screen.Painting;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Screen;

/// <summary>Screens of a gas burner and of a flat pan that is fed by hand: drawn as they are, and of what they lack no word stands anywhere.</summary>
public sealed class RigPictureTests
{
    private static readonly string[] Sizes = ["80x24", "100x30", "120x40"];

    public static TheoryData<string> Moments => new(Unlike.Moments.Keys);

    [Theory]
    [MemberData(nameof(Moments))]
    public void The_screen_looks_as_its_pictures(string moment)
    {
        var played = Unlike.Moments[moment].Play();
        foreach (var size in Sizes)
        {
            var sides = size.Split('x').Select(side => int.Parse(side, CultureInfo.InvariantCulture)).ToArray();
            using var stage = new Stage(sides[0], sides[1], played);
            Pictures.Same($"{moment}-{size}", stage.Text);
        }
    }

    [Theory]
    [MemberData(nameof(Moments))]
    public void S12_no_screen_speaks_of_what_the_rig_lacks(string moment)
    {
        var unlike = Unlike.Moments[moment];
        var picture = unlike.Play().Picture;
        foreach (var mode in new[] { ScreenMode.Talking, ScreenMode.Far, ScreenMode.Helping })
        {
            foreach (var (width, height) in new[] { (60, 16), (80, 24), (100, 30), (120, 40), (160, 50) })
            {
                Assert.DoesNotMatch(unlike.Absent, Painter.Paint(picture with { Mode = mode }, width, height).ToString());
            }
        }
    }

    [Fact]
    public void A_burner_has_a_row_of_its_own_on_the_axis_of_time_and_a_flat_pan_no_wall_inside()
    {
        var gas = Painter.Paint(Unlike.Moments["gas-boiling"].Play().Picture, 120, 40).ToString();
        Assert.Matches(@"(?m)^Burner +.*│", gas);
        Assert.Contains("The burner is on", gas);
        Assert.Contains("the burner is off; boil rolling", Painter.Paint(Unlike.Moments["gas-off"].Play().Picture, 120, 40).ToString());
        var flat = Painter.Paint(Unlike.Moments["by-hand-boiling"].Play().Picture, 120, 40).ToString();
        Assert.Contains("by hand ►", flat);
        Assert.Contains("► poured off", flat);
        Assert.DoesNotContain('┴', flat.Split('\n').First(row => row.StartsWith('└')));
    }
}
