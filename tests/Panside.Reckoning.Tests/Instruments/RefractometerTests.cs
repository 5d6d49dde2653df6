using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Instruments;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Instruments;

public class RefractometerTests
{
    [Theory]
    [InlineData(10)]
    [InlineData(15)]
    [InlineData(20)]
    [InlineData(25)]
    [InlineData(30)]
    [InlineData(35)]
    [InlineData(40)]
    [InlineData(45)]
    [InlineData(50)]
    [InlineData(55)]
    [InlineData(60)]
    [InlineData(65)]
    [InlineData(70)]
    [InlineData(75)]
    public void Every_row_that_was_read_agrees_within_a_hundredth_of_a_Brix(int brix) =>
        Within.Absolute(0.006).HoldsOver(Figures.Compare("refractometer", $"B{brix}", r => Added(brix, r["t_C"])));

    [Fact]
    public void The_warm_rows_from_memory_agree_within_a_fiftieth_of_a_Brix() =>
        Within.Absolute(0.02).HoldsOver(Figures.Compare("refractometer-warm", "B65", r => Added(65, r["t_C"])));

    [Fact]
    public void At_20_degrees_it_is_right() => Gen.Double[0, 75].Holds(brix => Added(brix, 20) == 0);

    [Fact]
    public void A_warmer_sample_holds_more_than_shown_and_more_shown_is_more() =>
        Gen.Select(Gen.Double[1, 74], Gen.Double[10, 29], Gen.Double[0.01, 1]).Holds((brix, t, more) =>
            Added(brix, t + more) > Added(brix, t) && Added(brix + more, t) + more > Added(brix, t));

    [Theory]
    [InlineData(75.1, 20)]
    [InlineData(66, 9.9)]
    [InlineData(66, 30.1)]
    [InlineData(0.2, 10)]
    public void Other_readings_and_samples_are_refused(double shown, double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Added(shown, celsius));

    private static double Added(double shown, double celsius) =>
        Refractometer.Corrected(SugarContent.FromBrix(shown), Temperature.FromCelsius(celsius)).Brix - shown;
}
