using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Properties;

public class BoilingWaterTests
{
    private static readonly Gen<double> Kilopascals = Gen.Double[75, 108];

    [Fact]
    public void Every_row_of_the_table_agrees_within_a_thousandth_of_a_degree() =>
        Within.Absolute(0.0011).HoldsOver(Figures.Compare("boiling-water", "T_C", r => Celsius(r["p_kPa"])));

    [Fact]
    public void Every_row_agrees_in_Fahrenheit_and_inches_of_mercury_too()
    {
        Within.Absolute(0.0051).HoldsOver(Figures.Compare("boiling-water", "T_F", r => (Celsius(r["p_kPa"]) * 1.8) + 32));
        Within.Absolute(0.00052).HoldsOver(Figures.Compare("boiling-water", "p_inHg", r => KPa(r["p_kPa"]).InchesOfMercury));
    }

    [Fact]
    public void The_verification_points_of_the_source_are_met() =>
        Within.Absolute(1e-6).HoldsOver(Figures.Compare("if97-verification", "T_K", r => If97Saturation.Kelvin(r["p_MPa"])));

    [Fact]
    public void An_independent_library_agrees_over_the_whole_range()
    {
        Within.Absolute(1e-5).HoldsOver(Figures.Compare("water", "T_C", r => Celsius(r["p_kPa"])));
        Within.Absolute(1e-4).HoldsOver(Figures.Compare(
            "water",
            "p_back_kPa",
            r => BoilingWater.PressureAt(Temperature.FromCelsius(r["T_C"])).Kilopascals));
    }

    [Fact]
    public void Pressure_to_temperature_and_back_returns() =>
        Kilopascals.Holds(p => Math.Abs(BoilingWater.PressureAt(BoilingWater.TemperatureAt(KPa(p))).Kilopascals - p) < 1e-6);

    [Fact]
    public void More_pressure_boils_hotter() =>
        Gen.Select(Gen.Double[75, 107.9], Gen.Double[1e-3, 0.1]).Holds((p, more) => Celsius(p + more) > Celsius(p));

    [Theory]
    [InlineData(74.9)]
    [InlineData(108.1)]
    [InlineData(1013)]
    public void Other_pressures_are_refused_with_the_value_and_the_range(double kilopascals)
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => BoilingWater.TemperatureAt(KPa(kilopascals)));
        Assert.Contains("75 to 108 kPa", refused.Message);
        Assert.Contains(kilopascals.ToString(System.Globalization.CultureInfo.InvariantCulture), refused.Message);
    }

    [Theory]
    [InlineData(91.7)]
    [InlineData(102)]
    [InlineData(212)]
    public void Other_temperatures_are_refused(double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BoilingWater.PressureAt(Temperature.FromCelsius(celsius)));

    private static double Celsius(double kilopascals) => BoilingWater.TemperatureAt(KPa(kilopascals)).Celsius;

    private static Pressure KPa(double x) => Pressure.FromKilopascals(x);
}
