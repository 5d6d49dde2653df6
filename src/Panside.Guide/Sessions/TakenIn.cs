using Panside.Guide.Advice;
using Panside.Guide.Belief;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Properties;
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
        Reading reading => Read(Noted(Dipping.Of(state, reading, setting.Units), reading), reading),
        Observed observed => See(
            Stilled(state, observed) with
            {
                Observations = state.Observations.SetItem(observed.Name, new(observed.At, observed.Is)),
                CoalsDeepAt = observed is { Name.Code: "coals", Is: "deep" } && !(state.CoalsDeepAt?.Time > observed.At.Time) ? observed.At : state.CoalsDeepAt,
            },
            observed),
        Did did => Do(Stirred(state, did) with { Deeds = state.Deeds.SetItem(did.Name, new(did.At, did.Measure)) }, did),
        _ => state,
    };

    /// <summary>Who was asked to pour, and says that it is still, may have poured: then it tells nothing yet.</summary>
    private bool IsPourAsked(SessionState state) => state.Open is { } open && setting.Flow.IsPourToStill(open.Step);

    private SessionState Stilled(SessionState state, Observed observed) => observed.Name != ObservationName.Boil ? state
        : observed.Is == "still" && IsPourAsked(state) ? Anew(state) with { ChilledAt = observed.At, DepthChangedBy = DeedName.FillPan }
        : IsRelit(state, observed) ? Anew(state) with { RelitAt = observed.At, Deeds = state.Deeds.Remove(DeedName.ShutOff) }
        : state with
        {
            StillSince = observed.Is != "still" ? null : state.StillSince ?? (ClearToLeave.IsBelieved(state, observed.At) ? observed.At : null),
            SimmersSince = observed.Is != "simmering" ? null : state.SimmersSince ?? observed.At,
        };

    /// <summary>Whether a pan boils that a burner no longer heats, as was told: long after it was shut off, or once it was still, somebody has lit it.</summary>
    private bool IsRelit(SessionState state, Observed observed) => setting.Rig.IsBurner && observed.Is is "rolling" or "steady"
        && state.Last(DeedName.ShutOff) is { } off
        && (observed.At.Time - off.At.Time >= ClearToLeave.Settling || state.Last(ObservationName.Boil) is { Value: "still" } still && still.At.Time > off.At.Time);

    /// <summary>Wood boils a still pan again, and cold sap hides for a while that it boils: what was seen before counts no more.</summary>
    private static SessionState Stirred(SessionState state, Did did) =>
        did.Name == DeedName.EmptyPan ? Anew(state) with { DepthChangedBy = DeedName.EmptyPan }
        : did.Name == DeedName.FloodPan || did.Name == DeedName.FillPan ? Anew(state) with { ChilledAt = did.At, DepthChangedBy = did.Name }
        : did.Name == DeedName.OpenDraw || did.Name == DeedName.CloseDraw ? state with { DepthChangedBy = DeedName.CloseDraw }
        : did.Name == DeedName.LitFire || did.Name == DeedName.AddWood || did.Name == DeedName.SpreadCoals ? Anew(state)
        : state;

    /// <summary>How long a boil was seen to die, or still, begins anew.</summary>
    private static SessionState Anew(SessionState state) => state with { StillSince = null, SimmersSince = null };

    /// <summary>
    /// A pan that stands deeper than anything told explains was filled: cold sap hides for a while that it boils. Over a float, which fills
    /// slowly where it was set higher, that counts where the boil was seen up minutes before.
    /// </summary>
    private SessionState Deepened(SessionState state, Reading depth) =>
        IsPouredAsAsked(state, depth) || ((setting.Rig.Feed != Feed.ByFloat || UnitSystem.Length(depth.Measure) > setting.Rig.FloodDepth * OverFlood || (state.Last(ObservationName.Boil) is { Value: not "still" } up && depth.At.Time - up.At.Time < ClearToLeave.SettlingStirred))
        && IsLit(state) && state.Rigs.Expected.IsFilled(UnitSystem.Length(depth.Measure))) ? Anew(state) with { ChilledAt = depth.At } : state;

    /// <summary>
    /// Whether a batch was thinned as it was asked to be: who was told to pour, and then reads the pan deeper than it was read or reckoned before,
    /// has poured, though nobody said how much.
    /// </summary>
    private bool IsPouredAsAsked(SessionState state, Reading depth)
    {
        if (!setting.Rig.IsBatch || !IsLit(state) || state.Open is not { } open || setting.Flow.Steps.GetValueOrDefault(open.Step)?.Advise != "cool-pan")
        {
            return false;
        }

        var read = UnitSystem.Length(depth.Measure);
        return read - (state.Rig.DrawPan / setting.Rig.PanArea) >= Deeper
            || (state.Readings[ReadingName.PanDepth] is [.., var before, _] && read - UnitSystem.Length(before.Value) >= Deeper);
    }

    /// <summary>What a ruler tells apart in a boiling pan: no source.</summary>
    private static Length Deeper => Length.FromInches(0.125);

    /// <summary>No float fills a pan so far over its flood depth: no source.</summary>
    private const double OverFlood = 1.08;

    private static SessionState Noted(SessionState state, Reading reading)
    {
        var all = state.Readings.GetValueOrDefault(reading.Name, []);
        return state with { Readings = state.Readings.SetItem(reading.Name, all.Add(new(reading.At, reading.Measure))) };
    }

    private SessionState Read(SessionState state, Reading reading) => reading.Name.Code switch
    {
        "tank-volume" => Tank(state, setting.Units.Volume(reading.Measure)),
        "pan-depth" => Deepened(state, reading) with { DepthChangedBy = null, Rigs = state.Rigs.DepthRead(UnitSystem.Length(reading.Measure), IsLit(state)) },
        "back-pan-depth" => state with { Rigs = state.Rigs.BackDepthRead(UnitSystem.Length(reading.Measure), IsLit(state)) },
        "draw-temperature" => DrawOff(state, UnitSystem.Temperature(reading.Measure), reading.At),
        "draw-brix" => Spooned(DrawOff(state, UnitSystem.Sugar(reading.Measure), reading.At), reading),
        "sap-brix" => state with { Rigs = state.Rigs.SapRead(UnitSystem.Sugar(reading.Measure), HoldsSapAlone(state)) },
        "pan-brix" => state with { Rigs = state.Rigs.PanSugarRead(UnitSystem.Sugar(reading.Measure), isLeft: !IsLit(state)) },
        "drawn-volume" => Draw(state with { DepthChangedBy = DeedName.CloseDraw }, setting.Units.Volume(reading.Measure)),
        "boiling-water-temperature" or "barometer" or "station-pressure" => state with
        {
            Rigs = state.Rigs.BoilingAt(DrawPoint.BoilingToday(setting, state), state.Readings.ContainsKey(ReadingName.BoilingWaterTemperature)),
        },
        "hydrometer-brix" or "sample-temperature" => Hydrometer(state, reading),
        _ => state,
    };

    private static bool IsLit(SessionState state) => state.Deeds.ContainsKey(DeedName.LitFire);

    /// <summary>Whether nothing but sap can stand in the pan: before the fire, where nobody has read its sugar or poured in water.</summary>
    private static bool HoldsSapAlone(SessionState state) =>
        !IsLit(state) && !state.Readings.ContainsKey(ReadingName.PanBrix) && state.Pours.TrueForAll(pour => pour.Liquid == Liquids.Sap);

    private static SessionState Tank(SessionState state, Volume tank)
    {
        var (rig, totals) = (state.Rig, state.Totals);
        return state with
        {
            Rigs = state.Rigs.TankRead(tank, insisted: state.Rigs.Expected.IsFar(tank)),
            Totals = totals with { TankAtFirst = totals.TankAtFirst ?? (tank.Liters - totals.RefilledLiters + rig.Fed.Liters) },
        };
    }

    private static SessionState DrawOff(SessionState state, SugarContent read, Moment at) =>
        state with { DrawOff = Anchored(state, read, at), Rigs = state.Rigs.DrawOffRead(read) };

    /// <summary>A spoonful that is read while it runs, or soon after, tells of the draw until a glass does.</summary>
    private static SessionState Spooned(SessionState state, Reading reading) =>
        state.NewestSyrup is { By: not DensityBy.Hydrometer } draw && !(reading.At.Time - draw.Shut?.Time > SyrupSample.OneSample)
            ? state.WithNewestSyrup(draw with { Brix = UnitSystem.Sugar(reading.Measure).Brix, By = DensityBy.Refractometer })
            : state;

    private static DrawOffAnchor Anchored(SessionState state, SugarContent read, Moment at)
    {
        var last = state.DrawOff is { } anchor && !(state.DrawEnded?.Time >= anchor.At.Time) ? anchor : null;
        // Told again at once it is the same sample, or its correction.
        var isSame = last is not null && at.Time - last.At.Time < OneSample;
        var before = isSame ? last!.Before : last?.Sugar ?? SugarContent.FromBrix(double.Clamp(state.Rigs.Expected.DrawSugar.Mean, 0, 100));
        return new(read, state.Rig.Evaporated.Liters, before, isSame ? last!.IsReadTwice : last is not null, at);
    }

    /// <summary>Two readings of the draw-off so far apart are two: no source.</summary>
    private static readonly TimeSpan OneSample = TimeSpan.FromMinutes(2);

    private static SessionState DrawOff(SessionState state, Temperature read, Moment at)
    {
        var rise = read - state.Rig.Boiling;
        if (DrawPoint.SugarAt(state, read) is { } atDraw)
        {
            state = state with { DrawOff = Anchored(state, atDraw, at) };
        }

        // A draw-off that does not boil tells nothing of its sugar.
        return state.Rig.IsBoiling && rise.Celsius is > -0.6 and < 9
            ? state with { Rigs = state.Rigs.DrawOffRead(rise, DrawPoint.PressureAt(state.Rig.Boiling)) }
            : state;
    }

    /// <summary>
    /// Whether a look at the boil tells nothing of the fire: something cold was poured in minutes before, nobody knows how much, and the members know
    /// nothing of it.
    /// </summary>
    private static bool IsHiddenByPour(SessionState state, Observed observed) => observed.Name == ObservationName.Boil && state.Last(DeedName.FillPan) is { Value: null } pour
        && observed.At.Time - pour.At.Time <= ClearToLeave.Settling;

    private static SessionState See(SessionState state, Observed observed) => IsHiddenByPour(state, observed) ? state : (observed.Name.Code, observed.Is) switch
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

    private SessionState Do(SessionState state, Did did) => did.Name.Code switch
    {
        // Lit again it is not shut off, whatever the clock says of the two.
        "lit-fire" when setting.Rig.IsBurner => state with { RelitAt = null, Rigs = state.Rigs.Lit(), Deeds = state.Deeds.Remove(DeedName.ShutOff) },
        "shut-off" when setting.Rig.IsBurner => state with { RelitAt = null, Rigs = state.Rigs.ShutOff() },
        "lit-fire" or "add-wood" => Charged(state with { Charges = state.Charges.Add(did.At) }, did.Measure is { } wood ? UnitSystem.Mass(wood) : setting.Rig.Charge),
        "open-draw" => Opened(state, did.At) with { ThisDraw = new(0, IsShut: false), Draws = state.Draws.Add(did.At) },
        "close-draw" => Shut(state.ThisDraw.IsShut ? state with { Draws = state.Draws.Add(did.At) } : state, did),
        "refill-tank" when did.Measure is { } added => Refilled(state, setting.Units.Volume(added)),
        "spread-coals" => state with { Rigs = state.Rigs.CoalsSpread() },
        "fill-pan" when did.IsUnmeasured => state with { Pours = state.Pours.Add(new(did.At, setting.Units.From(default(Volume)), did.Is ?? Liquids.Sap, default) { Pan = did.Pan }) },
        "fill-pan" when did.Measure is { } poured => Poured(state, new(did.At, poured, did.Is ?? Liquids.Sap, setting.Units.Volume(poured)) { Pan = did.Pan }),
        "empty-pan" => Emptied(state, did),
        "flood-pan" => state with { Rigs = state.Rigs.Flooded() },
        _ => state,
    };

    private static SessionState Charged(SessionState state, Mass wood) => state with
    {
        Rigs = state.Rigs.Charged(wood),
        Totals = state.Totals with { WoodKilograms = state.Totals.WoodKilograms + wood.Kilograms },
    };

    /// <summary>A draw begins, with what its course says of it; opened, shut and opened again within minutes it is one.</summary>
    private SessionState Opened(SessionState state, Moment at)
    {
        if (state.NewestSyrup is { Shut: { } shut, Brix: null } before && at.Time - shut.Time <= DrawnSyrup.SameDraw)
        {
            return state.WithNewestSyrup(before with { Shut = null });
        }

        var now = new Situation(setting, state);
        var isAdvised = state.Open is { } open && setting.Flow.Steps.TryGetValue(open.Step, out var step) && step.Advise == "open-draw";
        return state with
        {
            Syrup = state.Syrup.Add(new(at)
            {
                DelaySeconds = isAdvised ? (at.Time - state.OpenSince.Time).TotalSeconds : null,
                OpenedBrix = now.Course.Brix,
                RisesKelvin = now.Course.Rises?.Celsius,
            }),
        };
    }

    /// <summary>A draw shut twice without an opening between is two draws.</summary>
    private SessionState Shut(SessionState state, Did did)
    {
        var draw = state.ThisDraw is { IsShut: false } open ? open with { IsShut = true } : new ThisDraw(0, IsShut: true);
        state = (state.NewestSyrup is { Shut: null } one
            ? state.WithNewestSyrup(one with { Shut = did.At, ShutBrix = one.OpenedBrix is null ? null : new Situation(setting, state).ShutAtBrix })
            : state with { Syrup = state.Syrup.Add(new(did.At) { Shut = did.At }) }) with
        { ThisDraw = draw };
        return did.Measure is { } told ? Draw(state, setting.Units.Volume(told)) : state;
    }

    private static SessionState Refilled(SessionState state, Volume added) => state with
    {
        Rigs = state.Rigs.Refilled(added),
        Totals = state.Totals with { RefilledLiters = state.Totals.RefilledLiters + added.Liters },
    };

    /// <summary>Where a hand feeds the pan, sap comes out of the tank; elsewhere from beside it, until the tank says otherwise.</summary>
    private SessionState Poured(SessionState state, Pour pour)
    {
        var isDipped = setting.Rig.Feed == Feed.ByHand && pour.Liquid == Liquids.Sap;
        var rigs = state.Rigs.Poured(pour.Volume, pour.Liquid == Liquids.Water, pour.Pan == Pans.Front);
        return state with { Rigs = isDipped ? rigs.Dipped(pour.Volume) : rigs, Pours = state.Pours.Add(pour with { IsOutOfTank = isDipped }) };
    }

    /// <summary>
    /// A batch is out: what is told of it, or all that is reckoned to be in the pan, with the sugar that is reckoned to be in it. It counts as
    /// the syrup that it makes: what a pot has still to boil away is left out.
    /// </summary>
    private SessionState Emptied(SessionState state, Did did)
    {
        var emptied = state.Rigs.Emptied();
        if (!setting.Rig.IsBatch || !IsLit(state))
        {
            // Rinse water, or what a cold pan held: no syrup.
            return state with { Rigs = emptied };
        }

        var held = state.Rig.DrawPan.Liters;
        var liters = double.Min(did.Measure is { } told ? setting.Units.Volume(told).Liters : held, double.Max(held, 0.01));
        var sugar = state.Rig.DrawPanSugar.Kilograms * liters / double.Max(held, 0.01);
        var target = setting.Rig.Target;
        var syrup = sugar / target.MassFraction / (SugarSolution.DensityOf(target, SyrupBatch.InThePail).KilogramsPerCubicMeter / 1000);
        return state with
        {
            ThisDraw = new(syrup, IsShut: true),
            Draws = state.Draws.Add(did.At),
            Syrup = state.Syrup.Add(new(did.At) { Shut = did.At, Liters = syrup, Brix = target.Brix }),
            Totals = state.Totals with { DrawnLiters = state.Totals.DrawnLiters + syrup },
            Rigs = emptied,
        };
    }

    /// <summary>What one draw gave. Told again it is the same draw: the later figure takes the place of the earlier one.</summary>
    private static SessionState Draw(SessionState state, Volume told)
    {
        var drawn = told - Volume.FromLiters(state.ThisDraw.Liters);
        var noted = state.NewestSyrup is { } newest
            ? state.WithNewestSyrup(newest with { Liters = double.Max(newest.Liters + drawn.Liters, 0) })
            : state with { Syrup = state.Syrup.Add(new(state.Now!.Value) { Shut = state.Now, Liters = told.Liters }) };
        return noted with
        {
            ThisDraw = state.ThisDraw with { Liters = told.Liters },
            Rigs = state.Rigs.Drawn(drawn),
            Totals = state.Totals with { DrawnLiters = state.Totals.DrawnLiters + drawn.Liters },
        };
    }

    /// <summary>A glass counts once it and its cup's temperature are known: the temperature alone tells of nothing, and not of the draw before.</summary>
    private static SessionState Hydrometer(SessionState state, Reading reading)
    {
        if (SyrupSample.TrueSugar(state) is not { } sugar
            || (reading.Name == ReadingName.SampleTemperature && (state.NewestSyrup is not { By: not DensityBy.Hydrometer } untested
                || state.Last(ReadingName.HydrometerBrix)?.At.Time < untested.Opened.Time)))
        {
            return state;
        }

        if (state.NewestSyrup is { } draw && state.Last(ReadingName.HydrometerBrix)!.Value.At.Time >= draw.Opened.Time)
        {
            state = state.WithNewestSyrup(draw with { Brix = sugar.Brix, By = DensityBy.Hydrometer });
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
