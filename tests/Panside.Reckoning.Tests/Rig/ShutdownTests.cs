using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Tests.Rig;

/// <summary>The first reckoning against what is reported of a pan of 2 ft by 4 ft: common practice, no source.</summary>
public class ShutdownTests
{
    [Theory]
    [InlineData(false, 8)]
    [InlineData(true, 12)]
    public void Common_practice_a_square_foot_boils_a_gallon_an_hour_and_half_as_much_more_with_a_blower(bool forced, double gallons)
    {
        var rig = Rig(forced);
        var (state, evaporated) = Fired(rig, minutes: 240);
        Assert.InRange(evaporated / 4, gallons * 0.85, gallons * 1.15);
        Assert.InRange(RigModel.SteadyRate(rig, state).UsGallonsPerHour, gallons * 0.85, gallons * 1.15);
    }

    [Fact]
    public void Common_practice_about_five_gallons_leave_after_the_last_charge_and_three_a_quarter_of_an_hour_later()
    {
        var rig = Rig(forced: false);
        var state = RigModel.Charged(rig, Fired(rig, 216).State, rig.UsualCharge);
        Assert.InRange(Gallons(Shutdown.Of(rig, state, Spread.Prior).ResidualLiters.P50), 4, 6);
        var later = RigModel.Step(rig, state, 17);
        Assert.InRange(Gallons(Shutdown.Of(rig, later, Spread.Prior).ResidualLiters.P50), 2.4, 3.6);
    }

    [Fact]
    public void Common_practice_five_gallons_at_the_last_charge_are_within_the_reckoned_reserve()
    {
        var rig = Rig(forced: false);
        var state = RigModel.Charged(rig, Fired(rig, 216).State, rig.UsualCharge);
        var reserve = Shutdown.Of(rig, state, Spread.Prior).ReserveLiters(rig, state);
        Assert.True(Gallons(reserve.P50) < 5);
        Assert.InRange(Gallons(reserve.P95), 4, 8);
    }

    [Fact]
    public void Common_practice_three_gallons_suffice_when_a_quarter_of_an_hour_has_gone()
    {
        var rig = Rig(forced: false);
        var state = RigModel.Step(rig, RigModel.Charged(rig, Fired(rig, 216).State, rig.UsualCharge), 17);
        Assert.True(Gallons(Shutdown.Of(rig, state, Spread.Prior).ReserveLiters(rig, state).P95) <= 3);
    }

    [Fact]
    public void Common_practice_a_blower_brings_the_shutdown_to_about_a_third()
    {
        double Still(bool forced)
        {
            var rig = Rig(forced);
            var state = RigModel.Charged(rig, Fired(rig, 216).State, rig.UsualCharge);
            return Shutdown.Of(rig, state, Spread.Prior).StillMinutes.P50;
        }

        Assert.InRange(Still(true) / Still(false), 0.25, 0.5);
    }

    [Fact]
    public void Common_practice_hot_brick_boils_on_after_the_coals_have_burned_away()
    {
        var rig = Rig(forced: true);
        var state = RigModel.Charged(rig, Fired(rig, 216).State, rig.UsualCharge);
        while (state.Coals.Megajoules + state.Flame.Megajoules > 0.05 * RigModel.UsualCoals(rig).Megajoules)
        {
            state = RigModel.Step(rig, state);
        }

        Assert.True(state.IsBoiling || state.PanTemperature > Temperature.FromCelsius(90));
        var withoutCoals = state with { Coals = default, Flame = default };
        Assert.True(RigModel.HeatToPan(rig, withoutCoals).Kilowatts > 0.5 * RigModel.HeatToPan(rig, state).Kilowatts);
    }

    [Fact]
    public void Water_is_neither_made_nor_lost()
    {
        var rig = Rig(forced: true);
        var start = RigModel.Cold(rig, Temperature.FromCelsius(99.5)) with { Tank = Volume.FromUsGallons(30) };
        var state = RigModel.Charged(rig, start, rig.UsualCharge * 3);
        state = RigModel.Step(rig, state, 120);
        var before = start.Pan.Liters + start.Tank!.Value.Liters;
        var after = state.Pan.Liters + state.Tank!.Value.Liters + state.Evaporated.Liters;
        Assert.True(state.Evaporated.Liters > 5);
        Assert.Equal(0, (after - before) / before, 9);
    }

    [Fact]
    public void More_coals_never_leave_less_to_boil_away()
    {
        var rig = Rig(forced: false);
        var state = Fired(rig, 60).State;
        var last = 0.0;
        for (var more = 0; more < 10; more++)
        {
            var residual = Shutdown.Of(rig, state with { Coals = state.Coals * (0.5 + (more * 0.2)) }, Spread.Prior).ResidualLiters;
            Assert.True(residual.P5 < residual.P50 && residual.P50 < residual.P95);
            Assert.True(residual.P50 > last);
            last = residual.P50;
        }
    }

    [Fact]
    public void Steps_of_a_minute_add_up()
    {
        var rig = Rig(forced: true);
        var state = Fired(rig, 30).State;
        Assert.Equal(RigModel.Step(rig, state, 7), RigModel.Step(rig, RigModel.Step(rig, state, 3), 4));
    }

    [Fact]
    public void An_interval_of_tank_readings_draws_the_rate_toward_it_and_narrows_it()
    {
        var after = RateEstimate.Prior.After(expectedLiters: 20, measuredLiters: 28);
        Assert.InRange(after.Factor, 1.2, 1.4);
        Assert.True(after.Deviation < RateEstimate.Prior.Deviation);
        Assert.Equal(RateEstimate.Prior, RateEstimate.Prior.After(expectedLiters: 2, measuredLiters: 9));
    }

    private static double Gallons(double liters) => liters / 3.785411784;

    private static (RigState State, double Gallons) Fired(RigDescription rig, int minutes)
    {
        var state = RigModel.Cold(rig, Temperature.FromCelsius(99.5)) with { Tank = Volume.FromUsGallons(200) };
        var warm = 0.0;
        for (var minute = 0; minute < minutes + 60; minute++)
        {
            warm = minute == 60 ? state.Evaporated.UsGallons : warm;
            state = minute % (int)rig.Interval.TotalMinutes == 0 ? RigModel.Charged(rig, state, rig.UsualCharge) : state;
            state = RigModel.Step(rig, state);
        }

        return (state, state.Evaporated.UsGallons - warm);
    }

    private static RigDescription Rig(bool forced)
    {
        var charge = Mass.FromPounds(forced ? 7 : 5);
        return new(
            Area.FromSquareFeet(8), Length.FromInches(1.5), Length.FromInches(0.75), Length.FromInches(2.5), 3, forced,
            Mass.FromPounds(120), true, Firewood.HeatAsFired(FirewoodNames.FromName("sugar maple"), charge, 0.2), charge,
            TimeSpan.FromMinutes(forced ? 8 : 9), SugarContent.FromBrix(66.9));
    }
}
