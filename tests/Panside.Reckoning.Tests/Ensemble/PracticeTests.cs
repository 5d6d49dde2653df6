using Panside.Reckoning.Ensemble;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>The ensemble before any reading against what is reported of a pan of 2 ft by 4 ft: common practice, no source.</summary>
public class PracticeTests
{
    private static readonly RigEnsemble Natural = EnsembleRig.AtLastCharge(forced: false);
    private static readonly RigEnsemble Forced = EnsembleRig.AtLastCharge(forced: true);

    [Theory]
    [InlineData(false, 8)]
    [InlineData(true, 12)]
    public void Common_practice_a_square_foot_boils_a_gallon_an_hour_and_half_as_much_more_with_a_blower(bool forced, double gallons)
    {
        // A charge goes in a minute after its interval: nobody fires to the minute.
        var interval = (int)EnsembleRig.Of(forced).Interval.TotalMinutes + 1;
        var warm = Fired(EnsembleRig.Cold(forced), 72);
        var hot = Fired(warm, 240);
        RigEnsemble Fired(RigEnsemble rig, int minutes)
        {
            for (var minute = 0; minute < minutes; minute++)
            {
                rig = (minute % interval == 0 ? rig.Charged(rig.Rig.UsualCharge) : rig).After(1);
            }

            return rig;
        }

        double[] liters = [.. hot.Members[Field.Evaporated].Zip(warm.Members[Field.Evaporated], (after, before) => after - before)];
        Assert.InRange(EnsembleRig.Gallons(EnsembleRig.Median(liters)) / 4, gallons * 0.85, gallons * 1.15);
        Assert.InRange(
            EnsembleRig.Gallons(hot.Forecasts.RatesLitersPerHour(firing: true).At(0.5)), gallons * 0.85, gallons * 1.15);
    }

    [Fact]
    public void Common_practice_about_five_gallons_leave_after_the_last_charge_and_three_a_quarter_of_an_hour_later()
    {
        Assert.InRange(EnsembleRig.Gallons(Natural.Forecasts.WithoutWood.ResidualLiters(0.5)), 4, 6);
        Assert.InRange(EnsembleRig.Gallons(Natural.After(17).Forecasts.WithoutWood.ResidualLiters(0.5)), 2.4, 3.6);
    }

    [Fact]
    public void Common_practice_five_gallons_at_the_last_charge_are_within_the_reckoned_reserve()
    {
        Assert.True(EnsembleRig.Gallons(Natural.Forecasts.WithoutWood.ReserveLiters(0.5)) < 5);
        Assert.InRange(EnsembleRig.Gallons(Natural.Forecasts.WithoutWood.ReserveLiters(0.95)), 4, 8);
    }

    [Fact]
    public void Common_practice_three_gallons_suffice_when_a_quarter_of_an_hour_has_gone() =>
        Assert.True(EnsembleRig.Gallons(Natural.After(17).Forecasts.WithoutWood.ReserveLiters(0.95)) <= 3);

    [Fact]
    public void Common_practice_a_blower_brings_the_shutdown_to_about_a_third() =>
        Assert.InRange(Forced.Forecasts.WithoutWood.StillMinutes(0.5) / Natural.Forecasts.WithoutWood.StillMinutes(0.5), 0.25, 0.5);

    [Fact]
    public void Common_practice_hot_brick_boils_on_after_the_coals_have_burned_away()
    {
        var rig = Forced;
        var few = 0.05 * UsualCoals.Of(rig.Rig).Megajoules;
        while (EnsembleRig.Median(rig.Members[Field.Flame].Zip(rig.Members[Field.Coals], (flame, coals) => flame + coals)) > few)
        {
            rig = rig.After(1);
        }

        Assert.True(rig.Summary.IsBoiling);
        var members = rig.Members.Copy();
        Array.Clear(members[Field.Flame]);
        Array.Clear(members[Field.Coals]);
        var minute = new Run { Steps = 1, StepMinutes = 1, HeldLiters = 28, Accounts = true };
        var (ofBrick, ofAll) = (Stepping.Go(members.Copy(), rig.Constants, minute), Stepping.Go(rig.Members.Copy(), rig.Constants, minute));
        Assert.True(EnsembleRig.Median(ofBrick.TakenLiters) > 0.5 * EnsembleRig.Median(ofAll.TakenLiters));
        var still = Stepping.Go(members, rig.Constants, new() { Steps = 60, StepMinutes = 0.5, HeldLiters = 28 }).StillMinutes;
        Assert.True(EnsembleRig.Median(still) >= 1, $"{EnsembleRig.Median(still)} min");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Common_practice_without_feed_the_channels_mix_within_half_an_hour_and_with_feed_they_part_again(bool forced)
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(forced), 240);
        var firing = rig.Rig.HeatOfCharge.Megajoules / rig.Rig.Interval.TotalMinutes;
        var held = (rig.Rig.PanArea * rig.Rig.RunDepth).Liters;
        var run = new Run { Steps = 180, StepMinutes = 1.0 / 6, WoodMegajoules = firing };
        var members = rig.Members.Copy();
        var before = Contrast(members);

        Stepping.Go(members, rig.Constants, run with { WoodMegajoules = 0 });
        var mixed = Contrast(members);
        Assert.True(before > 1, $"{before} with feed");
        Assert.True(mixed < 0.5 * before, $"{before} with feed, {mixed} without");

        Stepping.Go(members, rig.Constants, run with { HeldLiters = held });
        var back = Contrast(members);
        Assert.True(back > 1.2 * mixed, $"{mixed} without feed, {back} half an hour with it");
    }

    [Fact]
    public void Common_practice_a_draw_comes_about_as_often_as_the_sap_s_sugar_says()
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(forced: true), 300);
        Assert.InRange(rig.Forecasts.MinutesTo(rig.Rig.Target).At(0.5), 0, 240);
    }

    /// <summary>Last cell less first over the mean, in the middle member.</summary>
    private static double Contrast(Members members) => EnsembleRig.Median(Enumerable.Range(0, members.Count).Select(member =>
        (members.LastSugar[member] - members[Field.Sugar][member]) / (members.SugarOf(member) / members.Cells)));
}
