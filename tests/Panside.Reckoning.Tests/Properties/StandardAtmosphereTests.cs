using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Properties;

public class StandardAtmosphereTests
{
    [Fact]
    public void Every_row_of_the_table_agrees_to_its_last_digit()
    {
        Within.Absolute(0.00051).HoldsOver(Figures.Compare("standard-atmosphere", "p_kPa", r => At(r["h_m"]).Kilopascals));
        Within.Absolute(0.0051).HoldsOver(Figures.Compare("standard-atmosphere", "p_inHg", r => At(r["h_m"]).InchesOfMercury));
    }

    [Fact]
    public void Every_row_boils_water_where_the_table_says()
    {
        Within.Absolute(0.0055).HoldsOver(Figures.Compare(
            "standard-atmosphere", "Tb_C", r => BoilingWater.TemperatureAt(At(r["h_m"])).Celsius));
        Within.Absolute(0.0055).HoldsOver(Figures.Compare(
            "standard-atmosphere", "Tb_F", r => BoilingWater.TemperatureAt(At(r["h_m"])).Fahrenheit));
    }

    [Fact]
    public void A_standard_report_gives_the_standard_station() =>
        Gen.Double[-400, 3000].Holds(h => Math.Abs(Station(1013.25, h) - At(h).Hectopascals) < 0.01);

    [Fact]
    public void At_sea_level_the_report_is_the_station() =>
        Gen.Double[940, 1060].Holds(p => Math.Abs(Station(p, 0) - p) < 0.01);

    [Fact]
    public void The_simple_product_differs_by_no_more_than_the_source_says() =>
        Gen.Select(Gen.Double[980, 1040], Gen.Double[0, 1000]).Holds((p, h) =>
            Math.Abs(Station(p, h) - (p * Math.Pow(1 - (2.25577e-5 * h), 5.25588))) <= 0.7);

    [Fact]
    public void Higher_is_less_and_more_reported_is_more() =>
        Gen.Select(Gen.Double[940, 1059], Gen.Double[-400, 2990], Gen.Double[0.01, 1]).Holds((p, h, more) =>
            Station(p, h + more) < Station(p, h) && Station(p + more, h) > Station(p, h) && At(h + more) < At(h));

    [Fact]
    public void A_report_typed_as_station_pressure_is_noticed_at_altitude_only()
    {
        Pressure report = Pressure.FromInchesOfMercury(30.1);
        Assert.True(StandardAtmosphere.LooksReducedToSeaLevel(report, Length.FromFeet(1800)));
        Assert.False(StandardAtmosphere.LooksReducedToSeaLevel(report, Length.FromFeet(300)));
        Assert.False(StandardAtmosphere.LooksReducedToSeaLevel(
            StandardAtmosphere.StationPressure(report, Length.FromFeet(1800)), Length.FromFeet(1800)));
    }

    [Theory]
    [InlineData(1000, 956.5, true)]
    [InlineData(1000, 955.5, false)]
    [InlineData(250, 1013, false)]
    [InlineData(256, 1013, true)]
    public void The_doubt_begins_half_way_and_above_255_meters(double meters, double hectopascals, bool doubted) =>
        Assert.Equal(doubted, StandardAtmosphere.LooksReducedToSeaLevel(
            Pressure.FromHectopascals(hectopascals), Length.FromMeters(meters)));

    [Theory]
    [InlineData(-401)]
    [InlineData(3001)]
    public void Other_altitudes_are_refused(double meters)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => At(meters));
        Assert.Throws<ArgumentOutOfRangeException>(() => Station(1013, meters));
    }

    [Theory]
    [InlineData(939)]
    [InlineData(1061)]
    [InlineData(101.3)]
    public void Other_reports_are_refused(double hectopascals) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Station(hectopascals, 300));

    private static Pressure At(double meters) => StandardAtmosphere.PressureAt(Length.FromMeters(meters));

    private static double Station(double hectopascals, double meters) =>
        StandardAtmosphere.StationPressure(Pressure.FromHectopascals(hectopascals), Length.FromMeters(meters)).Hectopascals;
}
