using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>What an ensemble makes of what it is told.</summary>
public class TellingTests
{
    private static readonly Gen<(bool Forced, Func<RigEnsemble, RigEnsemble>[] Told)> Told = Gen.Select(Gen.Bool, Tellings.Few);
    private static readonly Gen<(bool Forced, Func<RigEnsemble, RigEnsemble>[] Told)> Likely = Gen.Select(Gen.Bool, Tellings.Likely);

    [Fact]
    public void The_same_telling_gives_the_same_members() => Told.Holds(at =>
    {
        var (one, other) = (Tellings.Tell(at.Forced, at.Told), Tellings.Tell(at.Forced, at.Told));
        for (var field = 0; field < one.Members.Fields; field++)
        {
            Assert.Equal(one.Members[field], other.Members[field]);
        }
    }, cases: 20);

    [Fact]
    public void Minutes_add_up() => Told.Holds(at =>
    {
        var rig = Tellings.Tell(at.Forced, at.Told);
        var (whole, parts) = (rig.After(7), rig.After(3).After(4));
        for (var field = 0; field < whole.Members.Fields; field++)
        {
            Assert.Equal(whole.Members[field], parts.Members[field]);
        }
    }, cases: 20);

    [Fact]
    public void Every_number_stays_one_that_a_rig_can_have() => Told.Holds(at =>
    {
        var rig = Tellings.Tell(at.Forced, at.Told);
        for (var field = 0; field < rig.Members.Fields; field++)
        {
            Assert.All(rig.Members[field], value => Assert.True(double.IsFinite(value), $"field {field}"));
        }

        Assert.All(rig.Members[Field.Flame], value => Assert.True(value >= 0));
        Assert.All(rig.Members[Field.Coals], value => Assert.True(value >= 0));
        Assert.All(rig.Members[Field.Tank], value => Assert.True(value >= 0));
        Assert.All(rig.Members[Field.Pan], value => Assert.True(value > 0));
        Assert.All(rig.Members.LastSugar, value => Assert.True(value >= 0));
    }, cases: 50);

    [Fact]
    public void However_often_something_is_insisted_on_a_rig_stays_a_rig()
    {
        var cold = EnsembleRig.Cold(forced: true);
        var rig = EnsembleRig.Fired(cold, 40);
        Assert.True(Deviation(rig.Insisted().Members[Field.CoalTime]) > Deviation(rig.Members[Field.CoalTime]) * 1.2);
        for (var yes = 0; yes < 100; yes++)
        {
            rig = rig.Insisted();
        }

        // Twice as unlike as rigs of one size are; where a bound holds a trait, less.
        foreach (var field in new[] { Field.Heat, Field.FlameTime, Field.CoalTime, Field.BrickTime, Field.ToBrick, Field.AirLoss })
        {
            Assert.InRange(Deviation(rig.Members[field]) / Deviation(cold.Members[field]), 1.5, 2.0001);
        }
    }

    [Fact]
    public void A_simmer_just_after_a_flood_is_no_boil_of_the_pan()
    {
        var flooded = EnsembleRig.AtLastCharge(forced: true).After(12).Flooded().After(1);
        var seen = flooded.Seen(BoilSeen.Simmering);
        Assert.True(flooded.Members[Field.Temperature].Average() < EnsembleRig.Boiling.Celsius - 5);
        Assert.Equal(flooded.Members[Field.Temperature], seen.Members[Field.Temperature]);
        Assert.Equal(flooded.Members[Field.Coals], seen.Members[Field.Coals]);

        var later = flooded.After(15).Seen(BoilSeen.Simmering);
        Assert.All(later.Members[Field.Temperature], celsius => Assert.Equal(EnsembleRig.Boiling.Celsius, celsius, 9));
        Assert.All(flooded.Seen(BoilSeen.Rolling).Members[Field.Temperature], celsius => Assert.Equal(EnsembleRig.Boiling.Celsius, celsius, 9));
    }

    [Fact]
    public void A_tank_reading_never_widens_the_tank() => Gen.Select(Likely, Gen.Double[-3, 3]).Holds((at, deviate) =>
    {
        var rig = Tellings.Tell(at.Forced, at.Told);
        return Deviation(rig.TankRead(Tellings.NearTank(rig, deviate)).Members[Field.Tank]) <= Deviation(rig.Members[Field.Tank]) * (1 + 1e-9);
    }, cases: 50);

    [Fact]
    public void A_reading_of_the_draw_off_never_widens_it() => Gen.Select(Likely, Gen.Int[0, 103]).Holds((at, member) =>
    {
        var rig = Tellings.Tell(at.Forced, at.Told);
        var (shown, rise) = (Tellings.Shown(rig, member), Tellings.ShownRise(rig, member));
        var (before, after) = (Deviation(Tellings.Fractions(rig)), Deviation(Tellings.Fractions(rig.DrawOffRead(shown))));
        Assert.True(after <= (before * (1 + 1e-9)) + 1e-12, $"{before} became {after} by {shown.Brix} Brix");
        (before, after) = (Deviation(Rises(rig)), Deviation(Rises(rig.DrawOffRead(rise, Tellings.Air))));
        Assert.True(after <= (before * (1 + 1e-9)) + 1e-12, $"{before} K became {after} K by {rise.Celsius} K");
    }, cases: 50);

    [Fact]
    public void The_first_depth_after_a_flood_says_nothing_of_what_boiled_away()
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(true).TankRead(Volume.FromUsGallons(20)), 60).Flooded();
        var read = rig.DepthRead(rig.Rig.FloodDepth + Length.FromInches(0.25), lit: true);
        foreach (var field in new[] { Field.Flame, Field.Coals, Field.Brick, Field.Heat, Field.Tank, Field.Evaporated })
        {
            Assert.Equal(rig.Members[field], read.Members[field]);
        }

        Assert.Equal((rig.Rig.PanArea * Length.FromInches(2.75)).Liters, read.Members[Field.Pan].Average(), 0.5);
        Assert.NotEqual(read.Members[Field.Evaporated], read.After(1).DepthRead(Length.FromInches(2.7), lit: true).Members[Field.Evaporated]);
    }

    [Fact]
    public void A_reading_of_the_draw_off_leaves_fire_and_tank_alone()
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(true).TankRead(Volume.FromUsGallons(35)), 60);
        var read = rig.DrawOffRead(SugarContent.FromBrix(64));
        foreach (var field in new[] { Field.Flame, Field.Coals, Field.Brick, Field.Tank, Field.Pan, Field.Heat, Field.Evaporated })
        {
            Assert.Equal(rig.Members[field], read.Members[field]);
        }

        Assert.InRange(100 * Tellings.Fractions(read).Average(), 30, 65);
    }

    [Fact]
    public void A_draw_off_that_no_member_comes_near_is_taken_as_it_is_and_the_thermometer_is_not_blamed()
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(true), 20);
        var rise = BoilingPointElevation.Of(SugarContent.FromBrix(66), Tellings.Air);
        var read = rig.DrawOffRead(rise, Tellings.Air);
        Assert.InRange(100 * Tellings.Fractions(read).Average(), 64.5, 67.5);
        Assert.Equal(rig.Members[Field.ThermometerOff], read.Members[Field.ThermometerOff]);
        Assert.True(read.Forecasts.MinutesTo(rig.Rig.Target).At(0.5) < 30);
    }

    [Fact]
    public void A_reading_moves_the_tank_toward_it() => Likely.Holds(at =>
    {
        var rig = Tellings.Tell(at.Forced, at.Told);
        var (mean, _) = rig.Expected.Tank!.Value;
        var more = rig.TankRead(Volume.FromLiters(mean + 2)).Expected.Tank!.Value.Mean;
        return more >= mean - 1e-9 && more <= mean + 2 + 1e-9;
    }, cases: 50);

    [Theory]
    [InlineData(0.8)]
    [InlineData(1.25)]
    public void Readings_of_the_tank_draw_the_rate_toward_them_and_narrow_it(double times)
    {
        var before = EnsembleRig.Fired(EnsembleRig.Cold(false).TankRead(Volume.FromUsGallons(40)), 60);
        var usual = before.Forecasts.RatesLitersPerHour(firing: true);
        var (rig, tank) = (before, before.Expected.Tank!.Value.Mean);
        for (var reading = 0; reading < 6; reading++)
        {
            tank -= times * usual.At(0.5) * 0.3;
            rig = EnsembleRig.Fired(rig, 18).TankRead(Volume.FromLiters(tank));
        }

        var read = rig.Forecasts.RatesLitersPerHour(firing: true);
        Assert.Equal(times * usual.At(0.5), read.At(0.5), 0.1 * usual.At(0.5));
        Assert.True(read.At(0.95) - read.At(0.05) < 0.6 * (usual.At(0.95) - usual.At(0.05)));
    }

    [Fact]
    public void A_reading_that_is_insisted_on_is_taken_and_widens_what_rigs_are_like()
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(false).TankRead(Volume.FromUsGallons(40)), 60);
        var insisted = rig.TankRead(Volume.FromUsGallons(20), insisted: true);
        Assert.Equal(Volume.FromUsGallons(20).Liters, insisted.Expected.Tank!.Value.Mean, 0.5);
        Assert.True(Deviation(insisted.Members[Field.Heat]) > 1.2 * Deviation(rig.Members[Field.Heat]));
    }

    [Fact]
    public void Forecasts_are_in_order_from_quantile_to_quantile() => Told.Holds(at =>
    {
        var rig = Tellings.Tell(at.Forced, at.Told);
        var outlook = rig.Forecasts.WithoutWood;
        var (rates, draw) = (rig.Forecasts.RatesLitersPerHour(firing: true), rig.Forecasts.MinutesTo(rig.Rig.Target));
        for (var quantile = 0.0; quantile < 0.99; quantile += 0.01)
        {
            Assert.True(outlook.ResidualLiters(quantile) <= outlook.ResidualLiters(quantile + 0.01));
            Assert.True(outlook.ReserveLiters(quantile) <= outlook.ReserveLiters(quantile + 0.01));
            Assert.True(outlook.StillMinutes(quantile) <= outlook.StillMinutes(quantile + 0.01));
            Assert.True(outlook.ReserveLiters(quantile) <= outlook.ResidualLiters(quantile) + 28);
            Assert.True(rates.At(quantile) <= rates.At(quantile + 0.01));
            Assert.True(draw.At(quantile) <= draw.At(quantile + 0.01));
        }
    }, cases: 20);

    [Fact]
    public void A_forecast_leaves_the_ensemble_as_it_was()
    {
        var rig = EnsembleRig.AtLastCharge(forced: true);
        var before = rig.Members.Copy();
        _ = (rig.Forecasts.WithoutWood, rig.Forecasts.MinutesTo(rig.Rig.Target), rig.Forecasts.RatesLitersPerHour(firing: false), rig.After(5), rig.TankRead(default));
        for (var field = 0; field < before.Fields; field++)
        {
            Assert.Equal(before[field], rig.Members[field]);
        }
    }

    private static double[] Rises(RigEnsemble rig) => [.. Tellings.Fractions(rig).Zip(rig.Members[Field.ThermometerOff], (fraction, off) =>
        off + BoilingPointElevation.Of(SugarContent.FromBrix(double.Clamp(100 * fraction, 0, 84)), Tellings.Air).Celsius)];

    private static double Deviation(double[] values) => double.Sqrt(Assimilation.Moments(values).Variance);

    [Fact]
    public void A_flood_that_the_tank_cannot_feed_is_told_as_less_deep_and_less_known()
    {
        (double Mean, double Deviation) Flooded(double gallons) => EnsembleRig.AtLastCharge(forced: true)
            .TankRead(Volume.FromUsGallons(gallons)).DepthRead(Length.FromInches(1.5), lit: true).Flooded().Expected.Depth;
        var (full, few) = (Flooded(12), Flooded(1));
        var flood = Length.FromInches(2.5).Meters;
        Assert.Equal(flood, full.Mean, 0.002);
        Assert.InRange(few.Mean, Length.FromInches(1.6).Meters, Length.FromInches(2.4).Meters);
        Assert.True(few.Deviation > 2 * full.Deviation);
    }
}
