using Panside.Guide.Belief;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Sessions;

/// <summary>What readings, observations and deeds change in what is known and in the rig as reckoned.</summary>
internal sealed class TakenIn(Setting setting)
{
    /// <summary>The state with the line taken as true.</summary>
    /// <param name="state">The state before it.</param>
    /// <param name="line">The line.</param>
    /// <param name="insisted">Whether the operator stands by an amount that was doubted: then less is known of the rig than was thought.</param>
    public SessionState Take(SessionState state, LineIn line, bool insisted)
    {
        var isAmount = line is Reading { Name.Code: not "tank-volume" } or Did { Measure: not null };
        var taken = Take(state, line);
        return insisted && isAmount ? taken with { Rigs = taken.Rigs.Insisted() } : taken;
    }

    private SessionState Take(SessionState state, LineIn line) => line switch
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
        var lit = state.Deeds.ContainsKey(DeedName.LitFire);
        if (reading.Name == ReadingName.TankVolume)
        {
            return Tank(state, setting.Units.Volume(reading.Measure));
        }

        if (reading.Name == ReadingName.PanDepth)
        {
            return state with { Rigs = state.Rigs.DepthRead(UnitSystem.Length(reading.Measure), lit) };
        }

        if (reading.Name == ReadingName.DrawTemperature)
        {
            return DrawOff(state, UnitSystem.Temperature(reading.Measure));
        }

        if (reading.Name == ReadingName.DrawBrix)
        {
            var sugar = UnitSystem.Sugar(reading.Measure);
            return state with { DrawOff = new(sugar, state.Rig.Evaporated.Liters), Rigs = state.Rigs.DrawOffRead(sugar) };
        }

        if (reading.Name == ReadingName.SapBrix)
        {
            var raw = !lit && !state.Readings.ContainsKey(ReadingName.PanBrix);
            return state with { Rigs = state.Rigs.SapRead(UnitSystem.Sugar(reading.Measure), raw) };
        }

        if (reading.Name == ReadingName.PanBrix)
        {
            return state with { Rigs = state.Rigs.PanSugarRead(UnitSystem.Sugar(reading.Measure)) };
        }

        if (reading.Name == ReadingName.DrawnVolume)
        {
            return Draw(state, setting.Units.Volume(reading.Measure));
        }

        if (reading.Name == ReadingName.BoilingWaterTemperature || reading.Name == ReadingName.Barometer
            || reading.Name == ReadingName.StationPressure)
        {
            var read = state.Readings.ContainsKey(ReadingName.BoilingWaterTemperature);
            return state with { Rigs = state.Rigs.BoilingAt(DrawPoint.BoilingToday(setting, state), read) };
        }

        return reading.Name == ReadingName.HydrometerBrix ? Hydrometer(state) : state;
    }

    private static SessionState Tank(SessionState state, Volume tank)
    {
        var (rig, totals) = (state.Rig, state.Totals);
        return state with
        {
            Rigs = state.Rigs.TankRead(tank, insisted: state.Rigs.IsFar(tank)),
            Totals = totals with { TankAtFirst = totals.TankAtFirst ?? (tank.Liters - totals.RefilledLiters + rig.Fed.Liters) },
        };
    }

    private static SessionState DrawOff(SessionState state, Temperature read)
    {
        var rise = read - state.Rig.Boiling;
        if (DrawPoint.SugarAt(state, read) is { } atDraw)
        {
            state = state with { DrawOff = new(atDraw, state.Rig.Evaporated.Liters) };
        }

        // A draw-off that does not boil tells nothing of its sugar.
        return state.Rig.IsBoiling && rise.Celsius is > -0.6 and < 9
            ? state with { Rigs = state.Rigs.DrawOffRead(rise, DrawPoint.PressureAt(state.Rig.Boiling)) }
            : state;
    }

    private static SessionState See(SessionState state, Observed observed) => (observed.Name.Code, observed.Is) switch
    {
        ("boil", "still") => state with { Rigs = state.Rigs.Seen(BoilSeen.Still) },
        ("boil", "simmering") => state with { Rigs = state.Rigs.Seen(BoilSeen.Simmering) },
        ("boil", "steady") => state with { Rigs = state.Rigs.Seen(BoilSeen.Steady) },
        ("boil", "rolling") => state with { Rigs = state.Rigs.Seen(BoilSeen.Rolling) },
        ("coals", "spent") => state with { Rigs = state.Rigs.Seen(CoalsSeen.Spent) },
        ("coals", "thin") => state with { Rigs = state.Rigs.Seen(CoalsSeen.Thin) },
        ("coals", "deep") => state with { Rigs = state.Rigs.Seen(CoalsSeen.Deep) },
        ("gradient", "gone") => state with { Rigs = state.Rigs.Seen(GradientSeen.Gone) },
        ("gradient", "fading") => state with { Rigs = state.Rigs.Seen(GradientSeen.Fading) },
        ("gradient", "clear") => state with { Rigs = state.Rigs.Seen(GradientSeen.Clear) },
        _ => state,
    };

    private SessionState Do(SessionState state, Did did)
    {
        if (did.Name == DeedName.LitFire || did.Name == DeedName.AddWood)
        {
            var wood = did.Measure is { } mass ? UnitSystem.Mass(mass) : setting.Rig.Charge;
            return state with
            {
                Rigs = state.Rigs.Charged(wood),
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
                Rigs = state.Rigs.Refilled(volume),
                Totals = state.Totals with { RefilledLiters = state.Totals.RefilledLiters + volume.Liters },
            };
        }

        if (did.Name == DeedName.SpreadCoals)
        {
            return state with { Rigs = state.Rigs.CoalsSpread() };
        }

        return did.Name == DeedName.FloodPan ? state with { Rigs = state.Rigs.Flooded() } : state;
    }

    /// <summary>What one draw gave. Told again it is the same draw: the later figure takes the place of the earlier one.</summary>
    private static SessionState Draw(SessionState state, Volume told)
    {
        var drawn = told - Volume.FromLiters(state.ThisDraw.Liters);
        return state with
        {
            ThisDraw = state.ThisDraw with { Liters = told.Liters },
            Rigs = state.Rigs.Drawn(drawn),
            Totals = state.Totals with { DrawnLiters = state.Totals.DrawnLiters + drawn.Liters },
        };
    }

    private static SessionState Hydrometer(SessionState state)
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
}
