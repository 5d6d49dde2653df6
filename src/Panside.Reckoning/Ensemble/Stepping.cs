using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Panside.Reckoning.Ensemble;

/// <summary>
/// Moves members on. Between charges the fire is a linear system: each store of heat empties exponentially, exactly within a
/// step. The heat covers the surface's losses, warms the pan, and boils. The float feeds the first cell; liquid passes on so
/// that all cells stand equally high; neighbors exchange where the feed is weak. A block of members runs through all steps
/// before the next, so that it stays near the processor; only sums within one member are formed, so that the width of vectors
/// changes no digit. Of two pans over one fire, both have one temperature, and each loses its share of what leaves
/// (<see cref="RigConstants.BoiledInFront"/>); the second float fills the pan in front out of the one behind.
/// </summary>
/// <remarks>
/// Energy, water and sugar are kept: what leaves one place comes to another. The pan's heat is counted from liquid of 0 °C as
/// volume times <see cref="RigConstants.LiterHeat"/> times temperature. Sap brings that of its own temperature. Steam and vapor
/// carry away that of the boiling point and <see cref="RigConstants.Latent"/>, at whatever temperature they leave: true steam
/// carries 5 % less at 20 °C. A pan that is all but dry takes up only the heat that its liquid can use, and the rest goes up
/// the stack.
/// </remarks>
internal static class Stepping
{
    /// <summary>The part of a full feed that halves the exchange between cells: no source, calibrated.</summary>
    internal const double HalvingFeed = 0.025;

    /// <summary>Liters that never leave a dry pan, so that no step divides by nothing: a film.</summary>
    private const double Film = 0.05;

    /// <summary>Part of the first cell that can pass on in a step.</summary>
    private const double MostPassed = 0.9;

    /// <summary>Part of a cell that can change places with a neighbor's in a step.</summary>
    internal const double MostExchanged = 0.25;

    /// <summary>Parts of its warmth over the air's that a pan can lose in a step to the air and to vapor: a drop must not freeze.</summary>
    private const double MostToAir = 0.5;

    private const double MostToVapor = 0.3;

    /// <summary>Runs members on, in place.</summary>
    public static RunResult Go(Members members, in RigConstants rig, in Run run)
    {
        var (result, terms) = (new RunResult(members.Count), members.Terms(run.StepMinutes));
        Span<Vector<double>> sugar = stackalloc Vector<double>[members.Cells];
        for (var at = 0; at < members.Count; at += Vector<double>.Count)
        {
            for (var cell = 0; cell < sugar.Length; cell++)
            {
                sugar[cell] = new(members[Field.Sugar + cell], at);
            }

            Go(members, terms, rig, run, result, sugar, at);
            for (var cell = 0; cell < sugar.Length && !run.WithoutSugar; cell++)
            {
                sugar[cell].CopyTo(members[Field.Sugar + cell], at);
            }
        }

        return result;
    }

    /// <summary>As many members as a vector is wide.</summary>
    private static void Go(Members members, TraitTerms terms, in RigConstants rig, in Run run, RunResult result, Span<Vector<double>> sugar, int at)
    {
        var pace = new Pace(members, terms, rig, run, at);
        var (one, zero, never) = (Vector<double>.One, Vector<double>.Zero, new Vector<double>(double.PositiveInfinity));
        var liter = RigConstants.LiterHeat / rig.Latent;
        var (kelvins, carried) = (1 / liter, (1 / liter) + rig.BoilingCelsius);
        var (boiling, cold) = (new Vector<double>(rig.BoilingCelsius), new Vector<double>(rig.AirCelsius));
        var (airVapor, held, film) = (VaporPressure.Over(zero, cold), Held(members, run, at), new Vector<double>(Film));
        var (soak, evens) = (new Vector<double>(rig.Soak), new Vector<double>(rig.BrickEvens * run.StepMinutes));
        var bubbles = new Vector<double>(rig.StillLiters * run.StepMinutes);

        // Sap that comes in pails runs through the channels for a moment only: between two pours nothing holds them apart.
        var stills = run.HoldsOwn ? zero : new Vector<double>(1 / (HalvingFeed * rig.FullFeed * run.StepMinutes));
        var mostPassed = new Vector<double>(MostPassed / int.Max(sugar.Length - 1, 1));
        var draws = run.DrawFraction > 0;
        var drawn = new Vector<double>(run.DrawFraction / (1 - ((1 - RigConstants.SugarLiters) * run.DrawFraction)) / (sugar.Length - rig.BackCells));

        var (flame, coals, brick) = (Of(Field.Flame), Of(Field.Coals), Of(Field.Brick));
        var (pan, celsius, tank) = (Of(Field.Pan), Of(Field.Temperature), Of(Field.Tank));
        var (evaporated, entered) = (Of(Field.Evaporated), Of(Field.Fed));
        var (still, draw, least, empty, low) = (zero, never, never, never, never);
        var lowLiters = new Vector<double>(run.LowLiters);
        var (taken, toAir, steam, gone) = (zero, zero, zero, zero);
        var two = rig.BackCells > 0 ? new TwoPans(members, rig, run, at) : default;
        var (leastBack, lowBack) = (never, new Vector<double>(run.LowBackLiters));
        for (var step = 1; step <= run.Steps; step++)
        {
            // The fire.
            flame += pace.WoodToFlame;
            coals += pace.WoodToCoals;
            var flames = flame * pace.FlameGives;
            var glows = coals * pace.CoalsGive;
            var gives = brick * pace.BrickGives;
            var fire = flames + glows;
            flame -= flames;
            coals -= glows;
            var soaks = soak * Vector.MaxNative(fire - (brick * evens), zero);
            brick += (pace.ToBrick * fire) + (soaks * rig.ToPan) - gives;

            // The surface first; what is left warms the pan up to the boil; what is left of that boils.
            var heat = (pace.ToPan * (fire - soaks)) + (pace.BrickToPan * gives);
            var (over, most) = (celsius - cold, Vector.MaxNative(pan - film, zero));
            var body = pan * liter;
            var warmth = body * over;
            var comes = heat - (over * Vector.MinNative(pace.Air, body * MostToAir));
            var vapor = pace.Vapor * VaporPressure.Over(airVapor, celsius);
            vapor = Vector.MaxNative(Vector.MinNative(vapor, Vector.MinNative(warmth * MostToVapor, most)), zero);
            var spare = comes - (body * (boiling - celsius));
            var wanted = Vector.MaxNative(spare, vapor);
            gone = Vector.MinNative(wanted, most);
            var left = pan - gone;
            var kept = Vector.MinNative((pan * celsius) + (comes * kelvins) - (gone * carried), left * boiling);
            if (run.Accounts)
            {
                taken += heat - (wanted - gone);
                toAir += heat - comes;
            }

            steam = gone - vapor;

            // The feed, into the first cell, as much as the tank has.
            var fed = rig.BackCells > 0 ? two.Falls(left, gone) : Vector.MaxNative(held - left, zero);
            fed = run.TankEnds ? Vector.MinNative(fed, tank) : fed;
            pan = left + fed;
            tank = Vector.MaxNative(tank - fed, zero);
            celsius = (kept + (fed * rig.SapCelsius)) / pan;
            evaporated += gone;
            entered += fed;
            if (rig.BackCells > 0)
            {
                two.Rises(fed);
                if (!run.WithoutSugar)
                {
                    two.Move(sugar, fed, pace.SapSugar * fed, pace.Mixing);
                }
            }
            else if (!run.WithoutSugar)
            {
                Move(sugar, left, fed, pace.SapSugar * fed, pace.Mixing, stills, mostPassed);
            }

            var minute = new Vector<double>(step * run.StepMinutes);
            still = Vector.ConditionalSelect(Vector.GreaterThan(spare, vapor + bubbles), minute, still);
            var unfed = rig.BackCells > 0 ? two.FrontUnfed : pan;
            least = Vector.MinNative(least, unfed);
            if (rig.BackCells > 0)
            {
                leastBack = Vector.MinNative(leastBack, two.Back);
            }

            if (run.LowLiters > 0)
            {
                low = Vector.MinNative(low, Vector.ConditionalSelect(Vector.LessThanOrEqual(unfed, lowLiters), minute, never));
                if (rig.BackCells > 0)
                {
                    low = Vector.MinNative(low, Vector.ConditionalSelect(Vector.LessThanOrEqual(two.Back, lowBack), minute, never));
                }
            }

            empty = Vector.MinNative(empty, Vector.ConditionalSelect(Vector.LessThanOrEqual(tank, zero), minute, never));
            if (draws)
            {
                draw = Vector.MinNative(draw, Vector.ConditionalSelect(Vector.GreaterThanOrEqual(sugar[^1], (rig.BackCells > 0 ? two.Front : pan) * drawn), minute, never));
                if (Vector.LessThanAll(draw, never))
                {
                    break;
                }
            }
        }

        Store(Field.Flame, flame);
        Store(Field.Coals, coals);
        Store(Field.Brick, brick);
        Store(Field.Pan, pan);
        if (rig.BackCells > 0)
        {
            Store(members.DrawPan, two.Front);
            leastBack.CopyTo(result.LeastBackLiters, at);
        }

        Store(Field.Temperature, celsius);
        Store(Field.Tank, tank);
        Store(Field.Evaporated, evaporated);
        Store(Field.Fed, entered);
        Store(Field.Steam, steam * (1 / run.StepMinutes));
        Store(Field.Rate, gone * (1 / run.StepMinutes));
        still.CopyTo(result.StillMinutes, at);
        draw.CopyTo(result.DrawMinutes, at);
        least.CopyTo(result.LeastLiters, at);
        empty.CopyTo(result.EmptyMinutes, at);
        low.CopyTo(result.LowMinutes, at);
        taken.CopyTo(result.TakenLiters, at);
        toAir.CopyTo(result.AirLiters, at);

        Vector<double> Of(int field) => new(members[field], at);
        void Store(int field, Vector<double> value) => value.CopyTo(members[field], at);
    }

    /// <summary>What each member's float holds in the pan, or the hand that pours.</summary>
    private static Vector<double> Held(Members members, in Run run, int at) =>
        run.HoldsOwn ? Vector.MaxNative(new Vector<double>(members[Field.Pan], at) + new Vector<double>(members[Field.FloatOff], at), Vector<double>.Zero)
        : run.HeldLiters > 0 ? Vector.MaxNative(new Vector<double>(run.HeldLiters) + new Vector<double>(members[Field.FloatOff], at), Vector<double>.Zero) : default;

    /// <summary>
    /// Sugar moves with the liquid. Every cell holds the same volume, and each loses the same share to steam, so that of the
    /// feed f the part f (n − 1 − i)/n passes on from cell i of n.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Move(
        Span<Vector<double>> sugar, Vector<double> left, Vector<double> fed, Vector<double> comes, Vector<double> mixing,
        Vector<double> stills, Vector<double> mostPassed)
    {
        var exchange = Vector.MinNative(mixing / (left + (left * fed * stills)), new Vector<double>(MostExchanged));
        var each = Vector.MinNative(fed / left, mostPassed);
        var passes = each * (sugar.Length - 1);

        // By reference: the check of each index would cost a fifth of the whole loop.
        ref var cell = ref MemoryMarshal.GetReference(sugar);
        ref var last = ref Unsafe.Add(ref cell, sugar.Length - 1);
        var here = cell;
        while (Unsafe.IsAddressLessThan(ref cell, ref last))
        {
            ref var after = ref Unsafe.Add(ref cell, 1);
            var next = after;
            var leaves = (here * (passes + exchange)) - (next * exchange);
            cell = here + comes - leaves;
            (comes, here) = (leaves, next);
            passes -= each;
            cell = ref after;
        }

        last = here + comes;
    }
}
