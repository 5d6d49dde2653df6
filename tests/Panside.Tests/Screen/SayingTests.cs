using Panside.Guide.Measures;
using Panside.Screen.Painting;

namespace Panside.Tests.Screen;

/// <summary>What is told of what comes reads as one says it, and never the worst case alone: O15.</summary>
public sealed class SayingTests
{
    [Theory]
    [InlineData(15, 5, "Draw in about 15 min, not before 5 min")]
    [InlineData(15, 15, "Draw in about 15 min")]
    [InlineData(15, 0, "Draw in about 15 min, or any moment now")]
    [InlineData(0, 0, "Draw about now")]
    [InlineData(235, 130, "Draw in about 3.9 h, not before 2.2 h")]
    public void What_comes_is_told_with_the_soonest_that_it_may(double likely, double soonest, string said) =>
        Assert.Equal(said, Saying.NotBefore("Draw", likely, soonest)[0]);

    [Theory]
    [InlineData(15, 20, "Boil stops in about 15 min, 20 at most")]
    [InlineData(15, 15, "Boil stops in about 15 min")]
    [InlineData(0, 25, "Boil stops about now, in 25 min at most")]
    [InlineData(0, 0, "Boil stops about now")]
    [InlineData(120, 150, "Boil stops in about 2 h, 2.5 at most")]
    public void What_ends_is_told_with_the_latest_that_it_may(double likely, double latest, string said) =>
        Assert.Equal(said, Saying.AtMost("Boil stops", likely, latest)[0]);

    [Theory]
    [InlineData(2, 2.5, false, "2 gal will still boil away, 2.5 at most")]
    [InlineData(1, 1, false, "1 gal will still boil away, hardly more")]
    [InlineData(0, 0.5, false, "Hardly any more will boil away, 0.5 gal at most")]
    [InlineData(3, 3.5, true, "With no more wood 3 gal will still boil away, 3.5 at most")]
    public void What_boils_away_is_told_with_the_most_that_it_may(double likely, double most, bool isFiring, string said) =>
        Assert.Equal(said, Saying.BoilsAway(likely, most, Unit.Gallon, isFiring)[0]);

    [Fact]
    public void Every_shorter_way_is_shorter_and_tells_the_bound_too()
    {
        IReadOnlyList<IReadOnlyList<string>> all =
        [
            Saying.NotBefore("Last charge", 75, 70), Saying.NotBefore("Draw", 15, 0), Saying.AtMost("Boil stops", 15, 20), Saying.AtMost("Boil stops", 0, 25),
            Saying.BoilsAway(2, 2.5, Unit.Gallon, isFiring: false), Saying.BoilsAway(2, 2.5, Unit.Gallon, isFiring: true), Saying.BoilsAway(2.5, 4.5, Unit.Gallon, isFiring: true), Saying.BoilsAway(2.5, 2.5, Unit.Gallon, isFiring: true), Saying.BoilsAway(0, 0.5, Unit.Gallon, isFiring: false),
        ];
        Assert.All(all, ways =>
        {
            Assert.Equal(ways.OrderByDescending(way => way.Length), ways);
            Assert.All(ways, way => Assert.Contains(',', way));
            Assert.InRange(ways[^1].Length, 1, 34);
        });
    }

    [Fact]
    public void A_row_is_said_the_longest_way_that_has_room()
    {
        var row = PanelRow.Of(PanelRow.Useful, "Draw in about 15 min, not before 5", "Draw in 15 min, not before 5");
        Assert.Equal("Draw in about 15 min, not before 5", row.In(34));
        Assert.Equal("Draw in 15 min, not before 5", row.In(33));
        Assert.Equal("Draw in 15", row.In(10));
    }
}
