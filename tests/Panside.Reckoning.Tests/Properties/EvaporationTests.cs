using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Properties;

public class EvaporationTests
{
    [Fact]
    public void A_kilogram_from_40_Fahrenheit_at_sea_level_takes_what_the_steam_tables_say() =>
        Within.Relative(0.002).Holds(2.657, Heat(1, Temperature.FromFahrenheit(40).Celsius, 99.974));

    [Fact]
    public void A_gallon_from_40_Fahrenheit_takes_9532_Btu() =>
        Within.Relative(0.002).Holds(9532, Evaporation.HeatToBoilAway(
            Mass.FromKilograms(3.785), Temperature.FromFahrenheit(40), Temperature.FromCelsius(99.974)).Btu);

    [Fact]
    public void Colder_feed_takes_more_and_twice_the_water_twice_the_heat() =>
        Gen.Select(Gen.Double[1, 90], Gen.Double[0.01, 1], Gen.Double[0.1, 100]).Holds((feed, less, kilograms) =>
            Heat(kilograms, feed - less, 99) > Heat(kilograms, feed, 99)
            && Math.Abs(Heat(2 * kilograms, feed, 99) - (2 * Heat(kilograms, feed, 99))) < 1e-9);

    [Fact]
    public void No_water_takes_no_heat() => Assert.Equal(0, Heat(0, 4, 99));

    [Theory]
    [InlineData(-1, 4, 99)]
    [InlineData(1, 100, 99)]
    [InlineData(1, 4, 89)]
    public void Impossible_heat_is_refused(double kilograms, double feed, double boiling) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Heat(kilograms, feed, boiling));

    private static double Heat(double kilograms, double feed, double boiling) => Evaporation.HeatToBoilAway(
        Mass.FromKilograms(kilograms), Temperature.FromCelsius(feed), Temperature.FromCelsius(boiling)).Megajoules;
}
