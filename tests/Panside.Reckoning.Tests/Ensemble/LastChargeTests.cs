using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>The last charge is found by the rule that decides it, and a fire is reckoned as it is fed tonight.</summary>
public class LastChargeTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_last_charge_is_the_first_after_which_the_tank_would_come_to_the_stop(bool forced)
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(forced), 120).TankRead(Volume.FromUsGallons(15));
        var interval = rig.Rig.Interval.TotalMinutes;
        var rate = rig.Forecasts.RatesLitersPerHour(firing: true).AsReckoned.At(0.5) / 60;
        var stop = Volume.FromUsGallons(5);
        var at = rig.Forecasts.MinutesToLastCharge(new(stop, interval, interval)).AsReckoned.At(0.5);

        // Charge by charge, by hand, for the middle of the members.
        var (minutes, tank) = (interval, Volume.FromUsGallons(15).Liters - (rate * interval));
        while (tank - (rate * interval) > stop.Liters)
        {
            (minutes, tank) = (minutes + interval, tank - (rate * interval));
        }

        Assert.InRange(at, minutes - interval, minutes + interval);
        Assert.True(rig.Forecasts.MinutesToLastCharge(new(stop, interval, interval)).AsReckoned.At(0.05) <= at);
        Assert.True(rig.Forecasts.MinutesToLastCharge(new(Volume.FromUsGallons(10), interval, interval)).AsReckoned.At(0.5) < at);
    }

    [Fact]
    public void A_stop_that_the_tank_is_under_already_makes_the_next_charge_the_last()
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(forced: true), 120).TankRead(Volume.FromUsGallons(3));
        Assert.InRange(rig.Forecasts.MinutesToLastCharge(new(Volume.FromUsGallons(5), 4, 8)).At(0.5), 0, 8);
    }

    [Fact]
    public void A_fire_that_is_fed_slower_tonight_boils_slower_in_the_forecasts()
    {
        static RigEnsemble Fed(int every)
        {
            var rig = EnsembleRig.Fired(EnsembleRig.Cold(forced: true), 64);
            for (var charge = 0; charge < 6; charge++)
            {
                rig = rig.Charged(rig.Rig.UsualCharge).After(every);
            }

            return rig;
        }

        var (usual, slow) = (Fed(8).Forecasts.RatesLitersPerHour(firing: true).At(0.5), Fed(14).Forecasts.RatesLitersPerHour(firing: true).At(0.5));
        Assert.InRange(slow / usual, 0.55, 0.85);
    }

    [Fact]
    public void What_stands_thickest_is_never_told_thinner_than_the_last_cell()
    {
        var rig = EnsembleRig.AtLastCharge(forced: true);
        Assert.True(rig.Forecasts.WithoutFeed.ThickestBrix(0.5) >= rig.Expected.ChannelBrix[^1].P50);
        Assert.True(rig.Forecasts.WithoutFeed.ThickestBrix(1) >= rig.Forecasts.WithoutFeed.ThickestBrix(0.5));
    }
}
