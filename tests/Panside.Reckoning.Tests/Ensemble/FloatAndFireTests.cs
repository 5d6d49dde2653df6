using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>Where the float holds the pan, how coals lie, and when in a charge one asks.</summary>
public class FloatAndFireTests
{
    [Fact]
    public void A_pan_filled_higher_than_its_float_boils_down_before_the_tank_feeds_it()
    {
        var filled = EnsembleRig.Cold(forced: true).DepthRead(Length.FromInches(2.1), lit: false).TankRead(Volume.FromUsGallons(30));
        Assert.Equal(filled.Rig.RunDepth, filled.HeldDepth);

        // 0.6 in of a pan of 8 sq ft are 11 L: half of them gone, few members are down at their floats; all gone, most are fed.
        double Fed(int minutes) => EnsembleRig.Fired(filled, minutes).Summary is var at ? at.Fed.Liters / at.Evaporated.Liters : 0;
        var minutes = 1;
        while (EnsembleRig.Fired(filled, minutes).Summary.Evaporated.Liters < 5.5)
        {
            minutes++;
        }

        Assert.True(Fed(minutes) < 0.1, $"{Fed(minutes)} of it fed after {minutes} min");
        Assert.True(Fed(minutes + 90) > 0.6);
    }

    [Fact]
    public void A_pan_that_stands_lower_before_the_fire_is_held_there()
    {
        var read = EnsembleRig.Cold(forced: true).DepthRead(Length.FromInches(1.2), lit: false);
        Assert.Equal(Length.FromInches(1.2), read.HeldDepth);
    }

    [Theory]
    [InlineData(1.55)]
    [InlineData(1.45)]
    public void A_depth_about_what_is_reckoned_moves_pan_and_float_toward_it_and_narrows_them(double inches)
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(forced: false), 90);
        var before = Assimilation.Moments(Depths(rig));
        var read = rig.DepthRead(Length.FromInches(inches), lit: true);
        var after = Assimilation.Moments(Depths(read));
        var to = Length.FromInches(inches).Meters;
        Assert.Equal(rig.HeldDepth, read.HeldDepth);
        Assert.True(double.Abs(after.Mean - to) < 0.6 * double.Abs(before.Mean - to), $"{before.Mean} m to {after.Mean} m by {to} m");
        Assert.True(after.Variance < 0.6 * before.Variance);
        Assert.Equal(read.Members[Field.FloatOff].Average() > rig.Members[Field.FloatOff].Average(), to > before.Mean);
    }

    /// <summary>S1: a pan is never believed deeper than a ruler says by more than the ruler's own error.</summary>
    [Theory]
    [InlineData(30)]
    [InlineData(200)]
    public void A_depth_well_below_what_is_reckoned_is_taken_as_it_is(int minutes)
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(forced: false), minutes);
        for (var inches = 1.4; inches > 0.7; inches -= 0.05)
        {
            var read = rig.DepthRead(Length.FromInches(inches), lit: true);
            var over = Depths(read).Average() - Length.FromInches(inches).Meters;
            Assert.True(over < 0.003, $"{inches} in was believed {over * 1000} mm deeper");
        }
    }

    [Fact]
    public void Coals_raked_level_burn_faster_until_the_next_charge_and_no_faster_for_raking_twice()
    {
        var rig = EnsembleRig.AtLastCharge(forced: false);
        var level = rig.CoalsSpread();
        Assert.Equal(rig.Members[Field.CoalTime].Average() - 0.15, level.Members[Field.CoalTime].Average(), 0.01);
        Assert.Same(level, level.CoalsSpread());

        // Still is told to two minutes, so that one quantile alone may not move.
        double Still(RigEnsemble of) => new[] { 0.1, 0.25, 0.5, 0.75, 0.9 }.Sum(of.Forecasts.WithoutWood.StillMinutes);
        Assert.True(Still(level) < Still(rig));

        var heaped = level.Charged(rig.Rig.UsualCharge);
        Assert.Equal(rig.Members[Field.CoalTime].Average(), heaped.Members[Field.CoalTime].Average(), 0.01);
        Assert.NotSame(heaped, heaped.CoalsSpread());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_rate_of_the_usual_firing_hardly_hangs_on_when_in_a_charge_one_asks(bool forced)
    {
        var rig = EnsembleRig.AtLastCharge(forced);
        var early = rig.Forecasts.RatesLitersPerHour(firing: true).At(0.5);
        var late = rig.After((int)rig.Rig.Interval.TotalMinutes - 1).Forecasts.RatesLitersPerHour(firing: true).At(0.5);
        Assert.InRange(late / early, 0.95, 1.05);
    }

    [Fact]
    public void A_dying_fire_leaves_more_open_than_what_the_members_differ_by()
    {
        var fired = EnsembleRig.AtLastCharge(forced: false);
        var dying = fired.After(69);
        Assert.Equal(0, fired.Fire.Dying);
        Assert.Equal(1, dying.Fire.Dying);
        Assert.True(LeftOut.OfResidual(dying.Fire.Dying, forcedDraft: false) > 4 * LeftOut.OfResidual(0, forcedDraft: false));
        double Width(RigEnsemble rig) => (rig.Forecasts.WithoutWood.ResidualLiters(0.95) - rig.Forecasts.WithoutWood.ResidualLiters(0.05)) / rig.Forecasts.WithoutWood.ResidualLiters(0.5);
        Assert.True(Width(dying) > Width(fired));
    }

    /// <summary>Cold brick takes from the pan's share, hot brick gives: with the same fire the pan gets more the hotter the brick is.</summary>
    [Fact]
    public void Brick_that_is_cold_takes_from_the_pan_s_share()
    {
        var rig = EnsembleRig.AtLastCharge(forced: true);
        double Taken(double brick)
        {
            var members = rig.Members.Copy();
            Array.Fill(members[Field.Brick], brick);
            return EnsembleRig.Median(Stepping.Go(members, rig.Constants, new() { Steps = 1, StepMinutes = 1, HeldLiters = 28, Accounts = true }).TakenLiters);
        }

        var even = EnsembleRig.Median(rig.Members[Field.Brick]);
        var given = even * (1 - double.Exp(-1 / BrickTime.MinutesOf(rig.Rig))) * rig.Constants.BrickToPan / rig.Constants.Latent;
        Assert.True(Taken(even) - Taken(0) > 1.5 * given, "no more is missing than what the brick itself would have given");
    }

    private static double[] Depths(RigEnsemble rig) => [.. rig.Members[Field.Pan].Select(liters => liters / 1000 / rig.Constants.Area)];
}
