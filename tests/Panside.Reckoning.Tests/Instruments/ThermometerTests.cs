using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Instruments;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Instruments;

public class ThermometerTests
{
    private static readonly Pressure Today = Pressure.FromKilopascals(97);

    [Fact]
    public void The_offset_is_what_it_shows_too_much()
    {
        Temperature water = BoilingWater.TemperatureAt(Today);
        TemperatureRise offset = Thermometer.Offset(water + TemperatureRise.FromFahrenheit(1.5), Today);
        Within.Absolute(1e-9).Holds(1.5, offset.Fahrenheit);
        Within.Absolute(1e-9).Holds(217.5, Thermometer.Corrected(Temperature.FromFahrenheit(219), offset).Fahrenheit);
    }

    [Fact]
    public void True_to_shown_and_back_returns() =>
        Gen.Select(Gen.Double[0, 120], Gen.Double[-5, 5]).Holds((t, off) =>
        {
            TemperatureRise offset = TemperatureRise.FromCelsius(off);
            Temperature there = Thermometer.ShownAt(Temperature.FromCelsius(t), offset);
            return Math.Abs(Thermometer.Corrected(there, offset).Celsius - t) < 1e-9;
        });

    [Fact]
    public void Five_degrees_either_way_are_still_believed()
    {
        Temperature water = BoilingWater.TemperatureAt(Today);
        Within.Relative(1e-9).Holds(4.99, Thermometer.Offset(Temperature.FromCelsius(water.Celsius + 4.99), Today).Celsius);
        Assert.Throws<ArgumentOutOfRangeException>(() => Thermometer.Offset(Temperature.FromCelsius(water.Celsius + 5.01), Today));
        Assert.Throws<ArgumentOutOfRangeException>(() => Thermometer.Offset(Temperature.FromCelsius(water.Celsius - 5.01), Today));
    }

    [Theory]
    [InlineData(212)]
    [InlineData(37)]
    [InlineData(92)]
    [InlineData(105)]
    public void An_offset_that_no_thermometer_has_is_refused(double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Thermometer.Offset(Temperature.FromCelsius(celsius), Today));
}
