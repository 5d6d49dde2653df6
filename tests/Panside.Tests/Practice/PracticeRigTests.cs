using Panside.Guide.Lines;
using Panside.Practice.Chance;
using Panside.Practice.Physics;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;
using Panside.Reckoning.Quantities;

namespace Panside.Tests.Practice;

/// <summary>The nominal rigs against what common practice reports of a pan of 2 ft by 4 ft; drawn rigs lie around them.</summary>
public class PracticeRigTests
{
    private const double LitersAGallon = 3.785;

    [Theory]
    [InlineData("two-by-four-natural.yaml", 7.2, 8.8)]
    [InlineData("two-by-four-forced.yaml", 11, 13)]
    public void Common_practice_rate_of_boiling(string file, double low, double high)
    {
        var rig = Fired(file, hours: 2);
        var before = rig.Truth.Ledger.Steam.Water;
        Fire(rig, hours: 1);
        Assert.InRange((rig.Truth.Ledger.Steam.Water - before) / LitersAGallon, low, high);
    }

    [Theory]
    [InlineData("two-by-four-natural.yaml", 4, 6)]
    [InlineData("two-by-four-forced.yaml", 3, 5)]
    public void Common_practice_water_that_leaves_after_the_last_charge(string file, double low, double high)
    {
        var rig = Fired(file, hours: 2);
        var before = rig.Truth.Ledger.Steam.Water;
        rig.AddWood(rig.Makeup.Rig.Charge);
        rig.Step(4 * 3600);
        Assert.InRange((rig.Truth.Ledger.Steam.Water - before) / LitersAGallon, low, high);
    }

    [Fact]
    public void Common_practice_a_blower_makes_the_shutdown_much_shorter() =>
        Assert.True(MinutesToStill("two-by-four-forced.yaml") < 0.6 * MinutesToStill("two-by-four-natural.yaml"));

    [Fact]
    public void Common_practice_the_channels_mix_without_feed_and_the_gradient_returns_with_it()
    {
        var rig = Fired("two-by-four-natural.yaml", hours: 2);
        var fed = Contrast(rig);
        rig.ShutFeed();
        rig.Step(1800);
        var unfed = Contrast(rig);
        Assert.True(unfed < 0.75 * fed, $"{fed} {unfed}");
        rig.FreeFeed();
        Fire(rig, hours: 0.5);
        Assert.True(Contrast(rig) > unfed);
    }

    [Fact]
    public void A_pan_that_is_fed_under_full_fire_does_not_burn()
    {
        foreach (var file in new[] { "two-by-four-natural.yaml", "two-by-four-forced.yaml" })
        {
            Assert.False(Fired(file, hours: 2).IsScorched);
        }
    }

    [Fact]
    public void A_pan_that_is_not_fed_burns_before_it_is_dry()
    {
        var rig = Fired("two-by-four-forced.yaml", hours: 1);
        rig.ShutFeed();
        for (var charge = 0; charge < 8 && !rig.IsScorched; charge++)
        {
            rig.AddWood(rig.Makeup.Rig.Charge);
            rig.Step(480);
        }

        Assert.True(rig.IsScorched);
        Assert.Equal("scorched", Sights.Of(rig, ObservationName.Smell));
    }

    [Fact]
    public void A_lid_keeps_most_of_the_water()
    {
        double Lost(bool covered)
        {
            var rig = Fired("two-by-four-natural.yaml", hours: 1);
            rig.Step(1800);
            if (covered)
            {
                rig.Cover();
            }

            var before = rig.Truth.Ledger.Steam.Water;
            rig.Step(7200);
            return rig.Truth.Ledger.Steam.Water - before;
        }

        Assert.True(Lost(covered: true) < 0.3 * Lost(covered: false));
    }

    [Fact]
    public void More_wood_never_makes_an_earlier_still_pan()
    {
        var minutes = new[] { 1.0, 1.5, 2, 3 }.Select(charges => MinutesToStill("two-by-four-natural.yaml", charges)).ToList();
        Assert.Equal(minutes.Order(), minutes);
    }

    private static double MinutesToStill(string file, double lastCharges = 1)
    {
        var rig = Fired(file, hours: 2);
        rig.AddWood(rig.Makeup.Rig.Charge * lastCharges);
        var seconds = 0;
        for (; seconds < 8 * 3600 && (seconds < 600 || Sights.Of(rig, ObservationName.Boil) != "still"); seconds += 30)
        {
            rig.Step(30);
        }

        return seconds / 60.0;
    }

    private static double Contrast(PracticeRig rig) =>
        (rig.Truth.Pan[^1].Fraction - rig.Truth.Pan[0].Fraction) / rig.Truth.Pan.Aggregate((a, b) => a + b).Fraction;

    private static PracticeRig Fired(string file, double hours)
    {
        var scenario = Scenario.RawSap with { TankLiters = 400 };
        var rig = new PracticeRig(Makeup.Nominal(PracticeBoil.RigOf(file) with { Tank = Volume.FromLiters(400) }), scenario, RandomStream.For(1, "start"));
        Fire(rig, hours);
        return rig;
    }

    private static void Fire(PracticeRig rig, double hours)
    {
        var interval = (long)rig.Makeup.Rig.Interval.TotalSeconds;
        for (var seconds = 0L; seconds < hours * 3600; seconds += interval)
        {
            rig.AddWood(rig.Makeup.Rig.Charge);
            rig.AddDefoamer();
            rig.Step(interval);
        }
    }
}
