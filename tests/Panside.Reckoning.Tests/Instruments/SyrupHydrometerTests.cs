using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Instruments;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Instruments;

public class SyrupHydrometerTests
{
    [Fact]
    public void Every_row_of_the_state_chart_for_66_9_agrees_within_a_third_of_a_Brix() =>
        Within.Absolute(0.34).HoldsOver(Figures.Compare("syrup-hydrometer-66.9", "brix_reading", r => Reading(66.9, r["temp_F"])));

    [Fact]
    public void Every_row_of_the_chart_for_66_0_agrees_within_a_quarter_of_a_Brix() =>
        Within.Absolute(0.22).HoldsOver(Figures.Compare("syrup-hydrometer-66.0", "brix_reading", r => Reading(66, r["temp_F"])));

    [Fact]
    public void Every_row_of_the_state_chart_read_backward_is_syrup_on_target_within_a_third() =>
        Assert.All(
            Figures.Of("syrup-hydrometer-66.9"),
            r => Within.Absolute(0.34).Holds(66.9, True(r["brix_reading"], r["temp_F"]), r.Label("true Brix")));

    [Theory]
    [InlineData("B66.0", 66)]
    [InlineData("B66.9", 66.9)]
    public void Every_computed_row_agrees_to_its_last_digit(string column, double target) =>
        Within.Absolute(0.0051).HoldsOver(Figures.Compare("syrup-hydrometer-computed", column, r => Reading(target, r["temp_F"])));

    [Fact]
    public void At_its_calibration_the_glass_tells_the_truth()
    {
        Assert.Equal(66.9, True(66.9, 60), 1e-9);
        Assert.Equal(66.9, True(66.9, 68, HydrometerCalibration.At68Fahrenheit), 1e-9);
    }

    [Fact]
    public void A_68_degree_glass_shows_a_third_of_a_Brix_more_than_a_60_degree_one_in_the_same_syrup() =>
        Within.Absolute(0.05).Holds(0.34, Reading(66.9, 211, HydrometerCalibration.At68Fahrenheit) - Reading(66.9, 211));

    [Fact]
    public void True_to_shown_and_back_returns() =>
        Gen.Select(Gen.Double[50, 75], Gen.Double[32, 221], Gen.Enum<HydrometerCalibration>())
            .Where((brix, t, cal) => Reading(brix, t, cal) is >= 45 and <= 75)
            .Holds((brix, t, cal) => Math.Abs(True(Reading(brix, t, cal), t, cal) - brix) < 1e-7);

    [Fact]
    public void Hotter_syrup_shows_less_and_heavier_syrup_more() =>
        Gen.Select(Gen.Double[50, 74], Gen.Double[33, 219], Gen.Double[0.01, 1]).Holds((brix, t, more) =>
            Reading(brix, t + more) < Reading(brix, t) && Reading(brix + more, t) > Reading(brix, t));

    [Fact]
    public void Freezing_and_just_under_105_degrees_are_inside()
    {
        Assert.True(True(66, 32) < 66);
        Assert.True(True(60, 220.99) > 66);
    }

    [Theory]
    [InlineData(36, 60)]
    [InlineData(75.1, 60)]
    [InlineData(66, 31)]
    [InlineData(66, 222)]
    public void Other_readings_and_samples_are_refused(double shown, double fahrenheit)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => True(shown, fahrenheit));
        Assert.Throws<ArgumentOutOfRangeException>(() => Reading(shown, fahrenheit));
    }

    [Fact]
    public void An_unknown_calibration_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => True(66, 60, (HydrometerCalibration)9));

    private static double True(double shown, double fahrenheit, HydrometerCalibration calibration = default) =>
        SyrupHydrometer.TrueSugarContent(SugarContent.FromBrix(shown), Temperature.FromFahrenheit(fahrenheit), calibration).Brix;

    private static double Reading(double target, double fahrenheit, HydrometerCalibration calibration = default) =>
        SyrupHydrometer.ReadingOnTarget(SugarContent.FromBrix(target), Temperature.FromFahrenheit(fahrenheit), calibration).Brix;
}
