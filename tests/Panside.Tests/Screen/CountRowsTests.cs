using Panside.Guide.Advice;
using Panside.Guide.Measures;
using Panside.Screen.Painting;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Screen;

/// <summary>One figure stands large in every screen from 100x30 on; which, the flow says.</summary>
public sealed class CountRowsTests
{
    public static TheoryData<string, string?> Scenes => new()
    {
        { "start-up", "depth" },
        { "steady-boil", "minutes-to-wood" },
        { "last-charge", "minutes-to-still" },
        { "shutdown", "minutes-to-still" },
        { "clear", "depth" },
        { "emergency", null },
        { "over", null },
    };

    [Theory]
    [MemberData(nameof(Scenes))]
    public void The_flow_says_what_counts_most(string scene, string? count)
    {
        var state = Played.Scene(scene).Picture;
        Assert.Equal(count, Counts.Most(new(state.Setting, state.State))?.Rule.Count);
    }

    [Theory]
    [InlineData(100, 30)]
    [InlineData(120, 40)]
    [InlineData(160, 50)]
    public void T15_it_stands_whole_in_large_figures_with_what_it_is(int width, int height)
    {
        var picture = Played.Scene("steady-boil").Picture;
        var text = Painter.Paint(picture, width, height).ToString();
        Assert.All(LargeLetters.Rows("6 min", '█'), row => Assert.Contains("│ " + row.TrimEnd(), text));
        Assert.Contains("│ until wood", text);
        Assert.DoesNotContain("until wood", Painter.Paint(picture, 80, 24).ToString());
    }

    [Fact]
    public void Another_flow_counts_something_else()
    {
        var picture = Played.Scene("steady-boil").Picture;
        var flow = picture.Setting.Flow with { Counts = [new("volume-to-stop", [], [], "of sap until the last wood")] };
        var text = Painter.Paint(picture with { Setting = new(flow, picture.Setting.Rig, picture.Setting.Guidance, "panside test") }, 100, 30).ToString();
        Assert.Contains("│ of sap until the last wood", text);
        Assert.All(LargeLetters.Rows("18 gal", '█'), row => Assert.Contains("│ " + row.TrimEnd(), text));
    }

    [Theory]
    [InlineData(1, "━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━")]
    [InlineData(0.5, "━━━━━━━━━━━━━━━━━─────────────────")]
    [InlineData(0, "──────────────────────────────────")]
    public void Its_bar_is_what_is_left_of_the_way(double share, string bar) =>
        Assert.Equal(bar, CountRows.Of(new(6, Unit.Minute), share, "until wood", 34)[^2].ToString());

    [Fact]
    public void Where_the_unit_has_no_room_it_is_told_with_the_words_and_nothing_is_wider_than_its_place()
    {
        var rows = CountRows.Of(new(22.9, Unit.Gallon), 0.5, "of sap until the last wood", 20);
        Assert.Equal(LargeLetters.Rows("23", '█'), rows.Skip(1).Take(LargeLetters.Height).Select(row => row.ToString()));
        Assert.Equal("23 gal of sap until ", rows[0].ToString());
        Assert.All(Enumerable.Range(0, 60), width => Assert.All(CountRows.Of(new(75, Unit.Minute), 0.3, "until the boil stops", width), row => Assert.InRange(row.Width, 0, width)));
    }

    [Theory]
    [InlineData("minutes-to-wood", 6, "min")]
    [InlineData("minutes-to-draw", 15, "min")]
    [InlineData("degrees-to-draw", 3, "°F")]
    [InlineData("volume-to-stop", 17.9, "gal")]
    [InlineData("minutes-to-last-charge", 55, "min")]
    [InlineData("minutes-to-still", 15, "min")]
    [InlineData("depth", 1.5, "in")]
    public void Each_count_of_a_steady_boil_is_what_the_guide_has_reckoned(string name, double value, string unit)
    {
        var picture = Played.Scene("steady-boil").Picture;
        var count = Counts.Of(new(picture.Setting, picture.State), name)!.Value;
        Assert.Equal(unit, count.Value.Unit.Shown());
        Assert.InRange(count.Value.Value, value * 0.9, value * 1.1);
        Assert.InRange(count.Share, 0.05, 1);
    }

    [Fact]
    public void A_forecast_of_which_nothing_is_left_is_soon_and_not_over_and_a_clock_says_its_nought()
    {
        Assert.Equal(LargeLetters.Rows("soon", '█'), Large(isForecast: true));
        Assert.Equal(LargeLetters.Rows("0 min", '█'), Large(isForecast: false));
        static IEnumerable<string> Large(bool isForecast) =>
            CountRows.Of(new(0, Unit.Minute), 0, "until the boil stops", 40, isForecast).Skip(1).Take(LargeLetters.Height).Select(row => row.ToString());
    }

    [Fact]
    public void A_count_that_nobody_knows_is_none()
    {
        var picture = new Played().Picture;
        Assert.All(Counts.Names, name => Assert.Null(Counts.Of(new(picture.Setting, picture.State), name)));
    }
}
