using System.Globalization;
using Panside.Practice.Physics;
using Panside.Workshop.Judging;

namespace Panside.Tests.Workshop;

public class JudgingTests
{
    /// <summary>Quantiles of the standard normal at the levels kept, from a table of it (Abramowitz and Stegun, 1964, table 26.5).</summary>
    private static readonly double[] Normal =
    [
        -1.95996, -1.43953, -1.15035, -0.93459, -0.75542, -0.59776, -0.45376, -0.31864, -0.18912, -0.06271,
        0.06271, 0.18912, 0.31864, 0.45376, 0.59776, 0.75542, 0.93459, 1.15035, 1.43953, 1.95996,
        -1.64485, -0.67449, 0.67449, 1.64485,
    ];

    /// <summary>The score of a normal forecast in closed form (Gneiting and others, Monthly Weather Review 133 (2005) 1098–1118, from memory).</summary>
    [Theory]
    [InlineData(0, 0.23370)]
    [InlineData(1, 0.60244)]
    [InlineData(-2, 1.45279)]
    public void The_score_of_a_normal_forecast_is_the_known_one(double truth, double score) =>
        Assert.Equal(score, Of(truth).Score, 0.02);

    [Theory]
    [InlineData(0, 1, 1)]
    [InlineData(0.7, 0, 1)]
    [InlineData(-1.6, 0, 1)]
    [InlineData(1.7, 0, 0)]
    public void A_truth_is_in_a_band_or_not(double truth, double half, double band)
    {
        Assert.Equal(half, Of(truth).InHalf);
        Assert.Equal(band, Of(truth).InBand);
    }

    /// <summary>A forecast of one value alone covers by the width of its bands, and one of a likely value by what it holds inside.</summary>
    [Fact]
    public void A_truth_that_many_quantiles_are_counts_by_their_part_in_the_band()
    {
        var still = Of(0) with { Quantile = [.. Normal.Select(_ => 0.0)] };
        Assert.Equal(0.5, still.InHalf, 1e-12);
        Assert.Equal(0.9, still.InBand, 1e-12);
        var likely = Of(0) with { Quantile = [.. Normal.Select(value => double.Max(value, 0))] };
        Assert.Equal(0.5, likely.InHalf, 1e-12);
        Assert.Equal(0.9, likely.InBand, 1e-12);
        Assert.Equal(1, (likely with { Truth = 0.5 }).InHalf);
    }

    [Fact]
    public void One_value_scores_by_its_distance() => Assert.Equal(3, (Of(1) with { LastRate = 4 }).ScoreOfLastRate);

    [Fact]
    public void A_judged_boil_tells_each_forecast_and_how_it_ended()
    {
        var rows = JudgedTable.Of(_ => new ManySettings("panside test").Of(0), World.Practised, 1, seed: 1).ToList();
        Assert.Equal("1 boils: 1 ended, 0 scorched, 0 left too early, 0 not good", rows[^2].Split(';')[0]);
        foreach (var forecast in new[] { "evaporation-rate", "minutes-to-draw", "minutes-to-still", "residual-evaporation" })
        {
            var cells = Assert.Single(rows, row => row.StartsWith($"| all | {forecast} |", StringComparison.Ordinal)).Split('|');
            Assert.InRange(int.Parse(cells[3], CultureInfo.InvariantCulture), 5, 40);
        }
    }

    /// <summary>Worked by hand: four looks of four boils are worth twice those of two boils whose looks say the same.</summary>
    [Theory]
    [InlineData(new[] { 0, 1, 2, 3 }, "50.0 ± 25.0 %")] // the root of 4 times a quarter, by 4
    [InlineData(new[] { 0, 0, 1, 1 }, "50.0 ± 35.4 %")] // the root of 2 times 1, by 4
    public void Looks_of_one_boil_go_together(int[] boils, string share) =>
        Assert.Equal(share, JudgedTable.Share([.. boils.Select((boil, look) => (boil, Of(look < 2 ? 0 : 3)))], one => one.InBand));

    private static Judgement Of(double truth) => new("steady-boil", "evaporation-rate", truth, Normal, null);
}
