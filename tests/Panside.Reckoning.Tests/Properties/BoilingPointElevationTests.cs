using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Properties;

public class BoilingPointElevationTests
{
    private static readonly Gen<double> Kilopascals = Gen.Double[75, 108];

    [Fact]
    public void Every_row_of_the_model_at_sea_level_agrees_to_its_last_digit()
    {
        Within.Absolute(0.00051).HoldsOver(Figures.Compare("elevation", "model_C", r => Celsius(r["brix"], 101.325)));
        Within.Absolute(0.0051).HoldsOver(Figures.Compare("elevation", "model_F", r => Celsius(r["brix"], 101.325) * 1.8));
    }

    [Theory]
    [InlineData("B2", 2)]
    [InlineData("B20", 20)]
    [InlineData("B40", 40)]
    [InlineData("B60", 60)]
    [InlineData("B66", 66)]
    [InlineData("B66.9", 66.9)]
    [InlineData("B68.9", 68.9)]
    public void Every_row_over_pressure_agrees_to_its_last_digit(string column, double brix)
    {
        foreach (Within.Row row in Figures.Compare("elevation-by-pressure", column, r => Celsius(brix, r["p_kPa"]) * 1.8))
        {
            Within.Absolute(0.0051).Holds(row.Expected, row.Actual, row.What);
        }
    }

    [Fact]
    public void The_model_stands_where_its_documentation_says_among_the_other_sources()
    {
        (double least, double most) = Spread("handbook_C", 5, 65);
        Assert.InRange(least, -0.101, 0);
        Assert.InRange(most, 0, 0.105);
        (least, most) = Spread("handbook_C", 70, 75);
        Assert.InRange(least, -0.27, -0.1);
        Assert.InRange(most, -0.27, -0.1);
        (least, most) = Spread("quadratic_C", 2, 64);
        Assert.InRange(least, -0.63, -0.55);
        Assert.True(most < 0, "below 65 Brix the quadratic lies above the model in every row");
        (least, most) = Spread("quadratic_C", 65, 70);
        Assert.InRange(least, 0, 0.01);
        Assert.InRange(most, 0.6, 0.7);
        (least, _) = Spread("page_C", 20, 68);
        Assert.InRange(least, -1.2, -0.8);
    }

    [Fact]
    public void Sugar_to_elevation_and_back_returns() =>
        Gen.Select(Gen.Double[0, 85], Kilopascals).Holds((brix, p) =>
            Math.Abs(BoilingPointElevation.SugarContentAt(Elevation(brix, p), KPa(p)).Brix - brix) < 1e-6);

    [Fact]
    public void More_sugar_boils_hotter_over_the_whole_grid() =>
        Gen.Select(Gen.Double[0, 84.9], Gen.Double[1e-3, 0.1], Kilopascals).Holds((brix, more, p) =>
            Celsius(brix + more, p) > Celsius(brix, p));

    [Fact]
    public void More_pressure_lifts_the_elevation_too() =>
        Gen.Select(Gen.Double[1, 85], Gen.Double[75, 107], Gen.Double[0.1, 1]).Holds((brix, p, more) =>
            Celsius(brix, p + more) > Celsius(brix, p));

    [Fact]
    public void The_solved_temperature_satisfies_the_equation_that_it_solves() =>
        Gen.Select(Gen.Double[0, 85], Kilopascals).Holds((brix, p) =>
        {
            double kelvin = BoilingWater.TemperatureAt(KPa(p)).Kelvin + Celsius(brix, p);
            double x = brix / 342.296 / ((brix / 342.296) + ((100 - brix) / 18.01528));
            double logActivity = Math.Log(1 - x) + (-17638 / 8.314462618 / kelvin * x * x * (1 - (1.0038 * x) - (0.24653 * x * x)));
            return Math.Abs((Math.Exp(logActivity) * If97Saturation.Megapascals(kelvin) * 1000) - p) < 1e-6;
        });

    [Fact]
    public void Water_has_none() => Assert.Equal(0, Celsius(0, 101.325), 1e-12);

    [Fact]
    public void Limits_are_inside_and_beyond_them_is_refused()
    {
        Pressure p = KPa(101.325);
        Assert.Equal(85, BoilingPointElevation.SugarContentAt(Elevation(85, 101.325), p).Brix, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => Elevation(85.1, 101.325));
        Assert.Throws<ArgumentOutOfRangeException>(() => Elevation(66, 74));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoilingPointElevation.SugarContentAt(TemperatureRise.FromCelsius(-0.1), p));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoilingPointElevation.SugarContentAt(TemperatureRise.FromCelsius(20), p));
    }

    private static (double Least, double Most) Spread(string other, double from, double to)
    {
        double[] over = [.. Figures.Of("elevation").Where(r => r.Has(other) && r["brix"] >= from && r["brix"] <= to)
            .Select(r => Celsius(r["brix"], 101.325) - r[other])];
        return (over.Min(), over.Max());
    }

    private static double Celsius(double brix, double kilopascals) => Elevation(brix, kilopascals).Celsius;

    private static TemperatureRise Elevation(double brix, double kilopascals) =>
        BoilingPointElevation.Of(SugarContent.FromBrix(brix), KPa(kilopascals));

    private static Pressure KPa(double x) => Pressure.FromKilopascals(x);
}
