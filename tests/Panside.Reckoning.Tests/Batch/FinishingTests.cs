using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Batch;

public class FinishingTests
{
    private static readonly Temperature Cold = Temperature.FromCelsius(4);

    [Fact]
    public void Sap_of_2_Brix_loses_all_but_two_sixty_sixths()
    {
        Portion sap = Portion.OfMass(Mass.FromKilograms(66), SugarContent.FromBrix(2), Cold);
        Within.Relative(1e-12).Holds(64, Finishing.WaterToBoilOff(sap, SugarContent.FromBrix(66)).Kilograms);
    }

    [Fact]
    public void Water_and_what_is_left_make_up_the_batch_and_the_sugar_stays() =>
        Gen.Select(Gen.Double[0.1, 1000], Gen.Double[0.5, 65], Gen.Double[65, 85]).Holds((kilograms, from, to) =>
        {
            Portion thin = Portion.OfMass(Mass.FromKilograms(kilograms), SugarContent.FromBrix(from), Cold);
            SugarContent target = SugarContent.FromBrix(to);
            Portion left = Finishing.Left(thin, target, Temperature.FromCelsius(100));
            Mass water = Finishing.WaterToBoilOff(thin, target);
            return Math.Abs((left.Mass + water - thin.Mass).Kilograms) < 1e-9 * kilograms
                && Math.Abs((left.Sugar - thin.Sugar).Kilograms) < 1e-9 * kilograms;
        });

    [Fact]
    public void On_target_nothing_is_left_to_do() => Assert.Equal(
        0,
        Finishing.WaterToBoilOff(Portion.OfMass(Mass.FromKilograms(5), SugarContent.FromBrix(66.9), Cold), SugarContent.FromBrix(66.9)).Kilograms,
        1e-12);

    [Theory]
    [InlineData(66)]
    [InlineData(0)]
    public void A_target_below_the_batch_is_refused(double target)
    {
        Portion heavy = Portion.OfMass(Mass.FromKilograms(5), SugarContent.FromBrix(67), Cold);
        Assert.Throws<ArgumentOutOfRangeException>(() => Finishing.WaterToBoilOff(heavy, SugarContent.FromBrix(target)));
    }

    [Theory]
    [InlineData(66.5, TargetVerdict.Thin, -0.4)]
    [InlineData(66.595, TargetVerdict.Thin, -0.305)]
    [InlineData(66.605, TargetVerdict.OnTarget, -0.295)]
    [InlineData(67.195, TargetVerdict.OnTarget, 0.295)]
    [InlineData(67.205, TargetVerdict.Heavy, 0.305)]
    [InlineData(67.3, TargetVerdict.Heavy, 0.4)]
    public void A_check_says_how_far_off_and_in_a_word(double brix, TargetVerdict verdict, double over)
    {
        TargetCheck check = TargetCheck.Of(SugarContent.FromBrix(brix), SugarContent.FromBrix(66.9));
        Assert.Equal(verdict, check.Verdict);
        Within.Absolute(1e-9).Holds(over, check.BrixOverTarget);
    }

    [Fact]
    public void The_hot_line_of_the_state_chart_is_on_target()
    {
        TargetCheck check = TargetCheck.OfReading(
            SugarContent.FromBrix(59.1), Temperature.FromFahrenheit(211), SugarContent.FromBrix(66.9));
        Assert.Equal(TargetVerdict.OnTarget, check.Verdict);
        Within.Absolute(0.12).Holds(66.9, check.TrueSugarContent.Brix);
    }
}
