using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Batch;

public class DrawPointTests
{
    private static readonly Pressure SeaLevel = Pressure.FromKilopascals(101.325);

    [Theory]
    [InlineData(66.0, 7.20)]
    [InlineData(66.5, 7.39)]
    [InlineData(66.9, 7.56)]
    [InlineData(67.0, 7.60)]
    [InlineData(68.9, 8.44)]
    public void The_point_lies_above_water_by_what_the_model_says(double brix, double fahrenheit)
    {
        DrawPoint draw = At(brix, SeaLevel);
        Within.Absolute(0.0051).Holds(fahrenheit, draw.Elevation.Fahrenheit);
        Within.Absolute(0.006).Holds(211.953 + fahrenheit, draw.Temperature.Fahrenheit);
    }

    [Theory]
    [InlineData(66.0, 6.89, 7.50)]
    [InlineData(66.9, 7.055, 7.856)]
    [InlineData(60.0, 4.99, 6.053)]
    public void The_band_is_where_its_documentation_says(double brix, double lowest, double highest)
    {
        DrawPoint draw = At(brix, SeaLevel);
        Temperature water = draw.Temperature - draw.Elevation;
        Within.Absolute(0.003).Holds(lowest, (draw.Lowest - water).Fahrenheit);
        Within.Absolute(0.003).Holds(highest, (draw.Highest - water).Fahrenheit);
    }

    [Fact]
    public void Every_row_of_the_quadratic_agrees_to_its_last_digit()
    {
        Within.Absolute(0.0051).HoldsOver(Figures.Compare(
            "elevation", "quadratic_C", r => QuadraticElevation.CelsiusAtSeaLevel(SugarContent.FromBrix(r["brix"]))));
        Assert.Equal(SeaLevel, QuadraticElevation.SeaLevel);
    }

    [Fact]
    public void Every_statement_of_the_trade_lies_in_the_band() =>
        Assert.All(Figures.Of("trade-elevation"), r => AssertInBand(At(r["target_brix"], SeaLevel), r["elevation_F"]));

    [Fact]
    public void The_handbook_and_the_quadratic_lie_in_the_band_and_the_weak_page_does_not()
    {
        FigureRow[] rows = [.. Figures.Of("elevation").Where(r => r["brix"] is >= 60 and <= 70)];
        Assert.All(rows.Where(r => r.Has("handbook_C")), r => AssertInBand(At(r["brix"], SeaLevel), r["handbook_C"] * 1.8));
        Assert.All(rows, r => AssertInBand(At(r["brix"], SeaLevel), r["quadratic_C"] * 1.8));
        double page = rows.Single(r => r["brix"] == 66)["page_C"] * 1.8;
        Within.Absolute(0.05).Holds(1.44, page - At(66, SeaLevel).Elevation.Fahrenheit);
    }

    [Fact]
    public void The_band_holds_the_point_and_is_six_tenths_of_a_degree_wide_or_more() =>
        Gen.Select(Gen.Double[60, 70], Gen.Double[75, 108]).Holds((brix, p) =>
        {
            DrawPoint draw = At(brix, Pressure.FromKilopascals(p));
            return draw.Lowest < draw.Temperature && draw.Temperature < draw.Highest
                && (draw.Highest - draw.Lowest).Fahrenheit >= 0.599;
        });

    [Fact]
    public void A_heavier_target_or_a_heavier_air_draws_hotter() =>
        Gen.Select(Gen.Double[60, 69], Gen.Double[75, 107], Gen.Double[0.01, 1]).Holds((brix, p, more) =>
            At(brix + more, Pressure.FromKilopascals(p)).Temperature > At(brix, Pressure.FromKilopascals(p)).Temperature
            && At(brix, Pressure.FromKilopascals(p + more)).Temperature > At(brix, Pressure.FromKilopascals(p)).Temperature);

    [Fact]
    public void Measured_boiling_water_gives_the_point_of_its_pressure() =>
        Gen.Select(Gen.Double[60, 70], Gen.Double[75, 108]).Holds((brix, p) =>
        {
            Pressure station = Pressure.FromKilopascals(p);
            DrawPoint measured = DrawPoint.ForBoilingWater(SugarContent.FromBrix(brix), BoilingWater.TemperatureAt(station));
            return Math.Abs((measured.Temperature - At(brix, station).Temperature).Celsius) < 1e-6;
        });

    [Fact]
    public void An_offset_moves_the_whole_band_and_not_the_elevation()
    {
        DrawPoint draw = At(66.9, SeaLevel);
        DrawPoint shown = draw.ShownWith(TemperatureRise.FromFahrenheit(2));
        Within.Absolute(1e-9).Holds(2, (shown.Temperature - draw.Temperature).Fahrenheit);
        Within.Absolute(1e-9).Holds(2, (shown.Lowest - draw.Lowest).Fahrenheit);
        Within.Absolute(1e-9).Holds(2, (shown.Highest - draw.Highest).Fahrenheit);
        Assert.Equal(draw.Elevation, shown.Elevation);
    }

    [Theory]
    [InlineData(36)]
    [InlineData(59.9)]
    [InlineData(70.1)]
    public void Other_targets_are_refused(double brix) => Assert.Throws<ArgumentOutOfRangeException>(() => At(brix, SeaLevel));

    private static void AssertInBand(DrawPoint draw, double elevationFahrenheit)
    {
        Temperature water = draw.Temperature - draw.Elevation;
        Assert.InRange(elevationFahrenheit, (draw.Lowest - water).Fahrenheit, (draw.Highest - water).Fahrenheit);
    }

    private static DrawPoint At(double brix, Pressure station) => DrawPoint.For(SugarContent.FromBrix(brix), station);
}
