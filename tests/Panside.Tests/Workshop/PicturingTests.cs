using System.Xml.Linq;
using Panside.Guide.Measures;
using Panside.Picturing;
using Panside.Workshop.Shutdowns;

namespace Panside.Tests.Workshop;

/// <summary>How a picture is drawn.</summary>
public class PicturingTests
{
    [Theory]
    [InlineData(9.3, 8, 10, 2)]
    [InlineData(112, 6, 120, 20)]
    [InlineData(2.84, 4, 3, 1)]
    [InlineData(20, 4, 20, 5)]
    [InlineData(0, 4, 0.1, 0.05)]
    public void An_axis_ends_at_the_next_round_tick(double most, int steps, double to, double step)
    {
        var axis = Axis.FromZero(most, steps);
        Assert.Equal(to, axis.To, 1e-9);
        Assert.Equal(step, axis.Step, 1e-9);
    }

    [Fact]
    public void An_axis_covers_what_is_shown_in_no_more_steps_than_asked()
    {
        for (var most = 0.1; most < 5000; most *= 1.07)
        {
            for (var steps = 2; steps <= 10; steps++)
            {
                var axis = Axis.FromZero(most, steps);
                var ticks = axis.Ticks.ToList();
                Assert.InRange(most, 0, axis.To + 1e-6);
                Assert.InRange(ticks.Count, 2, steps + 1);
                Assert.Equal(axis.To, ticks[^1], 1e-6);
            }
        }
    }

    [Fact]
    public void The_clock_goes_on_past_midnight()
    {
        var clock = Axis.Clock((23 * 60) + 30, 25 * 60);
        Assert.Equal(["23:30", "23:40", "23:50", "00:00", "00:10", "00:20", "00:30", "00:40", "00:50", "01:00"], clock.Ticks.Select(Axis.Time));
    }

    [Fact]
    public void A_name_whose_place_is_taken_goes_a_row_lower()
    {
        Mark[] marks = [new(10, "last charge"), new(100, "coals spread"), new(120, "pan flooded"), new(400, "truly still")];
        Assert.Equal([2, 1, 0, 0], MarkRows.Rows(marks, minute => minute));
    }

    [Fact]
    public void The_rigs_units_stand_at_the_axes()
    {
        var texts = XDocument.Parse(ShutdownPicture.Of(Invented)).Descendants().Where(one => one.Name.LocalName == "text").Select(one => one.Value).ToList();
        Assert.Contains("water still to leave, L", texts);
        Assert.Contains("time to still, min", texts);
        Assert.Contains("depth, cm", texts);
        Assert.Contains("18:10 last charge", texts);
    }

    [Fact]
    public void What_a_rigs_name_holds_stays_text() =>
        Assert.Equal("a <b> & \"c\"", XDocument.Parse(ShutdownPicture.Of(Invented)).Descendants().Last(one => one.Value.Contains('<', StringComparison.Ordinal)).Value);

    [Fact]
    public void The_words_tell_the_forecast_at_the_last_charge_and_how_often_the_truth_was_in_the_band()
    {
        var words = ShutdownWords.Of(Invented);
        Assert.Contains("At the last charge: water still to leave 11.0 to 19.0 L forecast, middle 15.0, truth 20.0", words, StringComparison.Ordinal);
        Assert.Contains("of the water at 2 of 3 looks, of the time to still at 3 of 3.", words, StringComparison.Ordinal);
    }

    private static Shutdown Invented => new()
    {
        Boil = "a <b> & \"c\"",
        Units = UnitSystem.Metric,
        LeastDepth = 2,
        Looks = [Look(1080, 12), Look(1090, 20), Look(1100, 13)],
        Marks = [new(1090, "last charge")],
    };

    private static ShutdownLook Look(double minute, double truth) =>
        new(minute, new(11, 13, 15, 17, 19, truth), new(20, 30, 40, 50, 60, 45), 30, 4);
}
