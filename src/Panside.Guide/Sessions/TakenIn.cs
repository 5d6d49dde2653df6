using System.Collections.Immutable;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Sessions;

/// <summary>What readings, observations and deeds change in what is known and in the rig as reckoned.</summary>
internal sealed class TakenIn(Setting setting)
{
    /// <summary>A deeper reading by less than this is the ruler's doing, and no sap poured in.</summary>
    private const double PouredLiters = 4;

    /// <summary>The state with the line taken as true.</summary>
    public SessionState Take(SessionState state, LineIn line) => line switch
    {
        Reading reading => Read(Noted(state, reading), reading),
        Observed observed => See(
            state with { Observations = state.Observations.SetItem(observed.Name, new(observed.At, observed.Is)) }, observed),
        Did did => Do(state with { Deeds = state.Deeds.SetItem(did.Name, new(did.At, did.Measure)) }, did),
        _ => state,
    };

    private static SessionState Noted(SessionState state, Reading reading)
    {
        var all = state.Readings.GetValueOrDefault(reading.Name, []);
        return state with { Readings = state.Readings.SetItem(reading.Name, all.Add(new(reading.At, reading.Measure))) };
    }

    private SessionState Read(SessionState state, Reading reading)
    {
        if (reading.Name == ReadingName.TankVolume)
        {
            return Tank(state, reading.At, setting.Units.Volume(reading.Measure));
        }

        if (reading.Name == ReadingName.PanDepth)
        {
            var depth = UnitSystem.Length(reading.Measure);
            var pan = setting.Rig.PanVolume(depth);
            var lit = state.Deeds.ContainsKey(DeedName.LitFire);
            var poured = lit && (pan - state.Rig.Pan).Liters > PouredLiters ? pan - state.Rig.Pan : default;
            return state with
            {
                Rig = Cooled(state.Rig, poured) with
                {
                    Pan = pan,
                    HeldDepth = setting.Rig.HasFloat && depth > setting.Rig.LeastDepth ? depth : state.Rig.HeldDepth,
                    PanSugar = lit ? state.Rig.PanSugar : state.Rig.PanSugar * (pan / NotZero(state.Rig.Pan)),
                },
            };
        }

        if (reading.Name == ReadingName.DrawTemperature
            && DrawPoint.SugarAt(state, UnitSystem.Temperature(reading.Measure)) is { } atDraw)
        {
            return state with { DrawOff = new(atDraw, state.Rig.Evaporated.Liters) };
        }

        if (reading.Name == ReadingName.DrawBrix)
        {
            return state with { DrawOff = new(UnitSystem.Sugar(reading.Measure), state.Rig.Evaporated.Liters) };
        }

        if (reading.Name == ReadingName.SapBrix)
        {
            var sap = UnitSystem.Sugar(reading.Measure);
            var raw = !state.Deeds.ContainsKey(DeedName.LitFire) && !state.Readings.ContainsKey(ReadingName.PanBrix);
            return state with
            {
                Rig = state.Rig with { Sap = sap, PanSugar = raw ? SugarOf(state.Rig.Pan, sap) : state.Rig.PanSugar },
            };
        }

        if (reading.Name == ReadingName.PanBrix)
        {
            return state with { Rig = state.Rig with { PanSugar = SugarOf(state.Rig.Pan, UnitSystem.Sugar(reading.Measure)) } };
        }

        if (reading.Name == ReadingName.DrawnVolume)
        {
            return Draw(state, setting.Units.Volume(reading.Measure));
        }

        if (reading.Name == ReadingName.BoilingWaterTemperature || reading.Name == ReadingName.Barometer
            || reading.Name == ReadingName.StationPressure)
        {
            return state with { Rig = state.Rig with { Boiling = DrawPoint.BoilingToday(setting, state) } };
        }

        return reading.Name == ReadingName.HydrometerBrix ? Hydrometer(state) : state;
    }

    private SessionState Tank(SessionState state, Moment at, Volume tank)
    {
        var (rate, rig, totals) = (state.Rate, state.Rig, state.Totals);
        if (state.Anchor is { } anchor)
        {
            var expected = (rig.Evaporated.Liters - anchor.EvaporatedLiters) / rate.Factor;
            var measured = anchor.Liters + (totals.RefilledLiters - anchor.RefilledLiters) - tank.Liters
                - (rig.Pan.Liters - anchor.PanLiters) - (totals.DrawnLiters - anchor.DrawnLiters);
            rate = rate.After(expected, measured);
        }

        return state with
        {
            Rate = rate,
            Rig = rig with { Tank = tank, HeatFactor = rate.Factor },
            Totals = totals with { TankAtFirst = totals.TankAtFirst ?? (tank.Liters - totals.RefilledLiters + rig.Fed.Liters) },
            Anchor = new(
                tank.Liters, rig.Evaporated.Liters, totals.RefilledLiters, rig.Pan.Liters, totals.DrawnLiters, at),
        };
    }

    private SessionState See(SessionState state, Observed observed)
    {
        var rig = state.Rig;
        var usual = RigModel.UsualCoals(setting.Description);
        return (observed.Name.Code, observed.Is) switch
        {
            ("boil", "still") => state with { Rig = Weakened(rig) },
            ("boil", "rolling") => state with { Rig = Strengthened(rig, 2) },
            ("boil", "steady") => state with { Rig = Strengthened(rig, 1.4) },
            ("boil", "simmering") => state with { Rig = Strengthened(rig, 1.05) },
            ("coals", "deep") => state with { Rig = rig with { Coals = More(rig.Coals, usual * 0.6) } },
            ("coals", "thin") => state with { Rig = rig with { Coals = Less(rig.Coals, usual * 0.25) } },
            ("coals", "spent") => state with { Rig = rig with { Coals = Less(rig.Coals, usual * 0.03), Flame = default } },
            _ => state,
        };
    }

    /// <summary>A boil that is seen still cannot hold more heat than the surface gives off: the stores are cut to that.</summary>
    private RigState Weakened(RigState rig)
    {
        if (rig.PanTemperature < rig.Boiling - TemperatureRise.FromCelsius(3))
        {
            // Still because cold sap was poured in: that tells nothing of the fire.
            return rig;
        }

        var heat = RigModel.HeatToPan(setting.Description, rig);
        var limit = RigModel.StillBelow(setting.Description, rig) * 0.95;
        if (heat <= limit)
        {
            return rig;
        }

        var cut = limit / heat;
        return rig with { Flame = rig.Flame * cut, Coals = rig.Coals * cut, Brick = rig.Brick * cut, IsBoiling = false };
    }

    /// <summary>A boil that is seen needs at least so many times the heat at which it would be still; coals stand for what is missing.</summary>
    private RigState Strengthened(RigState rig, double times)
    {
        var boiling = rig with { PanTemperature = rig.Boiling, IsBoiling = true };
        var missing = (RigModel.StillBelow(setting.Description, boiling) * times) - RigModel.HeatToPan(setting.Description, boiling);
        if (missing.Kilowatts <= 0)
        {
            return boiling;
        }

        var more = RigModel.UsualCoals(setting.Description) * 0.02;
        for (var step = 0; step < 50 && RigModel.HeatToPan(setting.Description, boiling) < RigModel.StillBelow(setting.Description, boiling) * times; step++)
        {
            boiling = boiling with { Coals = boiling.Coals + more };
        }

        return boiling;
    }

    private SessionState Do(SessionState state, Did did)
    {
        var rig = state.Rig;
        if (did.Name == DeedName.LitFire || did.Name == DeedName.AddWood)
        {
            var wood = did.Measure is { } mass ? UnitSystem.Mass(mass) : setting.Rig.Charge;
            return state with
            {
                Rig = RigModel.Charged(setting.Description, rig, wood),
                Totals = state.Totals with { WoodKilograms = state.Totals.WoodKilograms + wood.Kilograms },
            };
        }

        if (did.Name == DeedName.OpenDraw)
        {
            return state with { ThisDraw = new(0, IsShut: false) };
        }

        if (did.Name == DeedName.CloseDraw)
        {
            // A draw shut twice without an opening between is two draws.
            var draw = state.ThisDraw is { IsShut: false } open ? open with { IsShut = true } : new ThisDraw(0, IsShut: true);
            state = state with { ThisDraw = draw };
            return did.Measure is { } drawn ? Draw(state, setting.Units.Volume(drawn)) : state;
        }

        if (did.Name == DeedName.RefillTank && did.Measure is { } added)
        {
            var volume = setting.Units.Volume(added);
            return state with
            {
                Rig = rig with { Tank = rig.Tank + volume },
                Totals = state.Totals with { RefilledLiters = state.Totals.RefilledLiters + volume.Liters },
            };
        }

        if (did.Name == DeedName.FloodPan)
        {
            var flooded = setting.Rig.PanVolume(setting.Rig.FloodDepth);
            var poured = rig.Pan < flooded ? flooded - rig.Pan : default;
            var left = rig.Tank is { } tank ? Volume.FromLiters(double.Max((tank - poured).Liters, 0)) : (Volume?)null;
            return state with
            {
                Rig = Cooled(rig, poured) with
                {
                    HeldDepth = setting.Rig.FloodDepth,
                    Pan = rig.Pan + poured,
                    PanSugar = rig.PanSugar + SugarOf(poured, rig.Sap),
                    Fed = rig.Fed + poured,
                    Tank = left,
                },
            };
        }

        return state;
    }

    /// <summary>Cold sap that is poured in takes the pan off the boil until it has warmed through.</summary>
    private static RigState Cooled(RigState rig, Volume poured)
    {
        if (poured.Liters <= 0)
        {
            return rig;
        }

        var share = poured.Liters / (rig.Pan + poured).Liters;
        var cooler = TemperatureRise.FromCelsius((rig.PanTemperature - rig.SapTemperature).Celsius * share);
        return rig with { PanTemperature = rig.PanTemperature - cooler, IsBoiling = false };
    }

    /// <summary>What one draw gave. Told again it is the same draw: the later figure takes the place of the earlier one.</summary>
    private SessionState Draw(SessionState state, Volume told)
    {
        var drawn = told - Volume.FromLiters(state.ThisDraw.Liters);
        state = state with { ThisDraw = state.ThisDraw with { Liters = told.Liters } };
        var sugar = Mass.FromKilograms(
            drawn.Liters / 1000 * SugarSolution.DensityOf(setting.Rig.Target, Temperature.FromCelsius(20)).KilogramsPerCubicMeter
            * setting.Rig.Target.MassFraction);
        var pan = state.Rig.Pan - drawn;
        return state with
        {
            Rig = state.Rig with
            {
                Pan = pan.Liters > 0 ? pan : default,
                PanSugar = sugar < state.Rig.PanSugar ? state.Rig.PanSugar - sugar : default,
            },
            Totals = state.Totals with { DrawnLiters = state.Totals.DrawnLiters + drawn.Liters },
        };
    }

    private SessionState Hydrometer(SessionState state)
    {
        if (SyrupSample.TrueSugar(state) is not { } sugar)
        {
            return state;
        }

        var liters = state.Totals.DrawnLiters - state.Totals.MeasuredLiters;
        return state with
        {
            Totals = state.Totals with
            {
                MeasuredLiterBrix = state.Totals.MeasuredLiterBrix + (double.Max(liters, 0) * sugar.Brix),
                MeasuredLiters = state.Totals.MeasuredLiters + double.Max(liters, 0),
            },
        };
    }

    private static Mass SugarOf(Volume volume, SugarContent sugar) => Mass.FromKilograms(
        volume.Liters / 1000 * SugarSolution.DensityOf(sugar, Temperature.FromCelsius(20)).KilogramsPerCubicMeter * sugar.MassFraction);

    private static Volume NotZero(Volume volume) => volume.Liters > 0.01 ? volume : Volume.FromLiters(0.01);

    private static Energy More(Energy a, Energy b) => a > b ? a : b;

    private static Energy Less(Energy a, Energy b) => a < b ? a : b;
}
