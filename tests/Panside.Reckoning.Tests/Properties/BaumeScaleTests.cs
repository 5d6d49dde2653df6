using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Properties;

public class BaumeScaleTests
{
    private static readonly Temperature SixtyFahrenheit = Temperature.FromFahrenheit(60);

    [Fact]
    public void The_two_pairs_of_the_law_agree_at_20_degrees() =>
        Within.Absolute(0.05).HoldsOver([new("66.9 Brix", 36, Degrees(66.9)), new("68.9 Brix", 37, Degrees(68.9))]);

    [Fact]
    public void The_two_pairs_of_the_law_lie_an_eighth_lower_than_the_definition_at_60_Fahrenheit()
    {
        Assert.InRange(BaumeScale.DegreesBaumeOf(SugarContent.FromBrix(66.9), SixtyFahrenheit) - 36, 0.11, 0.14);
        Assert.InRange(BaumeScale.DegreesBaumeOf(SugarContent.FromBrix(68.9), SixtyFahrenheit) - 37, 0.11, 0.14);
    }

    [Fact]
    public void Every_row_of_the_table_agrees_at_both_temperatures()
    {
        Within.Absolute(0.0051).HoldsOver(Figures.Compare("baume", "be_20_20", r => Degrees(r["brix"])));
        Within.Absolute(0.0051).HoldsOver(Figures.Compare(
            "baume", "be_60_60F", r => BaumeScale.DegreesBaumeOf(SugarContent.FromBrix(r["brix"]), SixtyFahrenheit)));
        Within.Absolute(6e-6).HoldsOver(Figures.Compare("baume", "d20_20", r => 145 / (145 - Degrees(r["brix"]))));
    }

    [Fact]
    public void The_table_of_1918_agrees_within_a_sixth_of_a_degree() =>
        Within.Absolute(0.165).HoldsOver(Figures.Compare("baume-1918", "baume", r => Degrees(r["brix"])));

    [Fact]
    public void Water_is_zero_to_the_last_bit_at_any_temperature() =>
        Gen.Double[0, 110].Holds(t => BaumeScale.DegreesBaumeOf(default, Temperature.FromCelsius(t)) == 0);

    [Fact]
    public void Brix_to_Baume_and_back_returns() =>
        Gen.Select(Gen.Double[0, 85], Gen.Double[0, 100]).Holds((brix, t) =>
        {
            Temperature reference = Temperature.FromCelsius(t);
            double there = BaumeScale.DegreesBaumeOf(SugarContent.FromBrix(brix), reference);
            return Math.Abs(BaumeScale.SugarContentAt(there, reference).Brix - brix) < 1e-7;
        });

    [Fact]
    public void More_Brix_is_more_Baume() =>
        Gen.Select(Gen.Double[0, 84.9], Gen.Double[1e-3, 0.1]).Holds((brix, more) => Degrees(brix + more) > Degrees(brix));

    [Theory]
    [InlineData(-0.1)]
    [InlineData(66)]
    [InlineData(double.NaN)]
    public void Other_readings_are_refused(double degrees) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BaumeScale.SugarContentAt(degrees));

    private static double Degrees(double brix) => BaumeScale.DegreesBaumeOf(SugarContent.FromBrix(brix));
}
