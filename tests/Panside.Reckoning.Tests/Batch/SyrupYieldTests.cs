using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Batch;

public class SyrupYieldTests
{
    private static readonly Volume Tank = Volume.FromUsGallons(35);
    private static readonly Temperature SapMeasured = Temperature.FromFahrenheit(38);

    [Theory]
    [InlineData("exact_66_0", 66)]
    [InlineData("exact_66_9", 66.9)]
    public void Every_row_of_the_mass_balance_agrees_to_its_last_digit(string column, double target) =>
        Within.Absolute(0.0055).HoldsOver(Figures.Compare("yield", column, r => Tank / Balance(r["sap_brix"], target)));

    [Fact]
    public void Every_row_of_both_rules_agrees_to_its_last_digit()
    {
        Within.Absolute(0.0051).HoldsOver(Figures.Compare(
            "yield", "rule86", r => Tank / SyrupYield.ByRuleOf86(Tank, Brix(r["sap_brix"]))));
        Within.Absolute(0.0051).HoldsOver(Figures.Compare("yield", "revised_66_0", r => Tank / Revised(r["sap_brix"], 66)));
        Within.Absolute(0.0051).HoldsOver(Figures.Compare("yield", "revised_66_9", r => Tank / Revised(r["sap_brix"], 66.9)));
    }

    [Fact]
    public void The_mass_balance_is_the_revised_rule_for_66_0_within_three_tenths_of_a_percent() =>
        Within.Relative(0.003).HoldsOver(Figures.Compare("yield", "revised_66_0", r => Tank / Balance(r["sap_brix"], 66)));

    [Fact]
    public void The_rules_lie_where_their_documentation_says()
    {
        Assert.All(Figures.Of("yield"), r => Assert.InRange((Balance(r["sap_brix"], 66.9) / Revised(r["sap_brix"], 66.9)) - 1, -0.008, 0));
        Within.Absolute(0.001).Holds(-0.011, (Balance(1, 66) / SyrupYield.ByRuleOf86(Tank, Brix(1))) - 1);
        Assert.InRange((Balance(4, 66) / SyrupYield.ByRuleOf86(Tank, Brix(4))) - 1, -0.001, 0.002);
        Within.Absolute(0.002).Holds(0.07, (Balance(20, 66) / SyrupYield.ByRuleOf86(Tank, Brix(20))) - 1);
    }

    [Fact]
    public void Syrup_weighs_what_the_table_says() =>
        Within.Absolute(0.0051).HoldsOver(Figures.Compare("syrup-weight", "lb_per_gal", r =>
            Portion.OfVolume(Volume.FromUsGallons(1), Brix(r["brix"]), Temperature.FromCelsius(20)).Mass.Pounds));

    [Fact]
    public void Sweeter_sap_makes_more_syrup_and_a_heavier_target_less() =>
        Gen.Select(Gen.Double[1, 19], Gen.Double[60, 69], Gen.Double[0.01, 1]).Holds((sap, target, more) =>
            Balance(sap + more, target) > Balance(sap, target) && Balance(sap, target + more) < Balance(sap, target));

    [Theory]
    [InlineData(0.9, 66)]
    [InlineData(20.1, 66)]
    public void Rules_are_refused_beyond_their_sap(double sap, double target)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SyrupYield.ByRuleOf86(Tank, Brix(sap)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Revised(sap, target));
    }

    [Fact]
    public void The_revised_rule_is_refused_for_a_target_that_it_does_not_state() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Revised(2, 67));

    private static Volume Balance(double sap, double target) =>
        SyrupYield.ByMassBalance(Portion.OfVolume(Tank, Brix(sap), SapMeasured), Brix(target));

    private static Volume Revised(double sap, double target) => SyrupYield.ByRevisedRule(Tank, Brix(sap), Brix(target));

    private static SugarContent Brix(double x) => SugarContent.FromBrix(x);
}
