using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Instruments;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Instruments;

public class SapHydrometerTests
{
    private const HydrometerCalibration Cold = HydrometerCalibration.At38Fahrenheit;
    private const HydrometerCalibration Warm = HydrometerCalibration.At68Fahrenheit;

    [Theory]
    [InlineData("B1", 1)]
    [InlineData("B2", 2)]
    [InlineData("B3", 3)]
    [InlineData("B4", 4)]
    public void Every_row_for_a_38_degree_glass_leads_back_to_the_true_content(string column, double brix) =>
        Assert.All(Figures.Of("sap-hydrometer-38F"), r => LeadsBack(brix, r, column, Cold));

    [Fact]
    public void Every_row_for_a_68_degree_glass_leads_back_to_the_true_content() =>
        Assert.All(Figures.Of("sap-hydrometer-68F"), r => LeadsBack(2, r, "add", Warm));

    [Fact]
    public void From_32_to_46_Fahrenheit_a_38_degree_glass_needs_no_correction_worth_reading() =>
        Gen.Select(Gen.Double[1, 5], Gen.Double[32, 46]).Holds((shown, t) => Math.Abs(Added(shown, t, Cold)) < 0.055);

    [Fact]
    public void The_wrong_calibration_is_a_fifth_of_the_sugar_in_cold_sap() =>
        Within.Absolute(0.012).Holds(-0.39, Added(2, 38, Warm));

    [Fact]
    public void A_higher_reading_is_sweeter_sap() =>
        Gen.Select(Gen.Double[1, 19.9], Gen.Double[1e-3, 0.1], Gen.Double[32, 104], Gen.Enum<HydrometerCalibration>())
            .Holds((shown, more, t, cal) => True(shown + more, t, cal) > True(shown, t, cal));

    [Fact]
    public void Less_than_water_shows_is_refused_and_names_the_calibration()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => True(0.2, 38, Warm));
        Assert.Contains("calibrated", refused.Message);
        Assert.InRange(True(0.36, 38, Warm), 0, 0.02);
        Assert.True(True(0, 33, Cold) >= 0);
    }

    [Theory]
    [InlineData(20.1, 38)]
    [InlineData(2, 31)]
    [InlineData(2, 105)]
    public void Other_readings_and_samples_are_refused(double shown, double fahrenheit) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => True(shown, fahrenheit, Cold));

    private static void LeadsBack(double brix, FigureRow row, string column, HydrometerCalibration calibration) =>
        Within.Absolute(0.0065).Holds(brix, True(brix - row[column], row["temp_F"], calibration), row.Label(column));

    private static double Added(double shown, double fahrenheit, HydrometerCalibration calibration) =>
        True(shown, fahrenheit, calibration) - shown;

    private static double True(double shown, double fahrenheit, HydrometerCalibration calibration) =>
        SapHydrometer.TrueSugarContent(SugarContent.FromBrix(shown), Temperature.FromFahrenheit(fahrenheit), calibration).Brix;
}
