using System.Collections.Immutable;
using Panside.Practice.Physics;
using Panside.Workshop.Worlds.Wood;

namespace Panside.Workshop.Worlds;

/// <summary>
/// The fire of <see cref="MarkedWorld"/>. Flame feeds on what has caught fire and dies for want of what is left: its rate goes with the
/// root of burnt times unburnt, half a sine over its time, a logistic burn as in Avrami's and in sigmoid rate laws of solids
/// (Brown, Dollimore, Galwey, Reactions in the Solid State, 1980, from memory). Coals go with the root of their bed, so that their heat
/// falls in a straight line to nothing. The stronger the fire, the more of it goes past the pan. Brick takes a share until it is hot,
/// gives to pan, draft and the steel around it. Constants calibrated, no source.
/// </summary>
internal static class MarkedFire
{
    /// <summary>Share of a charge that the match lights: no source.</summary>
    private const double Lit = 0.007;

    /// <summary>Most fire that air lets burn, beside the usual: no source.</summary>
    private const double Most = 1.8;

    /// <summary>How much more of the coals' heat than of the flame's comes to the pan: no source; a bed glows straight at it.</summary>
    private const double GlowToPan = 2.2;

    /// <summary>The most of the fire that comes to the pan at once: no source.</summary>
    private const double MostToPan = 0.7;

    /// <summary>Share of the fire that cold brick takes: no source.</summary>
    private const double ToBrick = 0.19;

    /// <summary>How much hotter than the air brick takes nothing any more, in K: no source.</summary>
    private const double HottestBrick = 900;

    /// <summary>How much hotter than the air brick draws as usual, and lets wood catch as usual, in K: no source.</summary>
    private const double WarmBrick = 160;

    /// <summary>The same with a blower, whose brick is hotter.</summary>
    private const double BlownBrick = 700;

    /// <summary>The part of its speed at which wood catches in a cold box: no source.</summary>
    private const double Cold = 0.16;

    /// <summary>Steel beside the brick's heat capacity: no source, a third of the brick's mass at half of its heat.</summary>
    private const double SteelShare = 0.17;

    /// <summary>Conduction from brick to steel, in MW/K, for a brick of 54 kg: no source.</summary>
    private const double Outward = 9e-6;

    /// <summary>Heat in brick and steel over 0 °C, in MJ.</summary>
    public static double Stored(Makeup makeup, Truth truth) =>
        makeup.BrickCapacity * (truth.BrickCelsius + (SteelShare * truth.Own[MarkedWorld.Steel]));

    /// <summary>One second.</summary>
    public static Given Step(Makeup makeup, Truth truth)
    {
        var (brick, steel) = (truth.BrickCelsius, truth.Own[MarkedWorld.Steel]);
        var warm = double.Clamp((brick - makeup.AirCelsius) / (makeup.Forced ? BlownBrick : WarmBrick), 0, 1.6);
        var draft = (makeup.Forced ? 1 : double.Clamp(double.Sqrt(warm), 0.9, 1.15)) * double.Sqrt(makeup.DraftShare);
        var (charges, flame, char_) = Flames(makeup, truth, draft * (Cold + ((1 - Cold) * double.Min(warm, 1))));
        var usual = makeup.CharShare * makeup.UsualFire * makeup.CoalSeconds / 2;
        var glow = double.Min(draft * (truth.CoalsLevel ? 1.2 : 1) * 2 / makeup.CoalSeconds * double.Sqrt(usual * truth.Coals), truth.Coals);
        glow = truth.Coals < 1e-3 ? truth.Coals : glow;

        var fire = flame + glow;
        var past = double.Clamp(1.25 - (0.25 * fire / makeup.UsualFire), 0.6, 1.25);
        var direct = double.Min(makeup.ToPan * past * (flame + (GlowToPan * glow)), MostToPan * fire);
        var taken = ToBrick * fire * double.Max(1 - ((brick - makeup.AirCelsius) / HottestBrick), 0);
        var swept = makeup.BrickExchange * draft * double.Max(brick - makeup.AirCelsius, 0);
        var pan = Pan.MeanCelsius(makeup, truth) + FlueGas.Kelvin;
        var hot = brick + FlueGas.Kelvin;
        var radiated = double.Max(FlueGas.Radiation * makeup.BrickSees * ((hot * hot * hot * hot) - (pan * pan * pan * pan)), 0);
        var outward = Outward * double.Cbrt(makeup.BrickCapacity / 0.0544) * (brick - steel);
        var walls = makeup.WallLoss * (steel - makeup.AirCelsius);
        return new(direct + radiated + (makeup.SweptToPan * swept), truth with
        {
            Charges = charges,
            Coals = truth.Coals + char_ - glow,
            BrickCelsius = brick + ((taken - swept - radiated - outward) / makeup.BrickCapacity),
            Own = [truth.Own[MarkedWorld.Number], steel + ((outward - walls) / (SteelShare * makeup.BrickCapacity))],
            Ledger = truth.Ledger with
            {
                Stack = truth.Ledger.Stack + fire - direct - taken + ((1 - makeup.SweptToPan) * swept),
                Walls = truth.Ledger.Walls + walls,
            },
        });
    }

    private static (ImmutableArray<Charge> Charges, double Flame, double Char) Flames(Makeup makeup, Truth truth, double speed)
    {
        if (truth.Charges.IsEmpty)
        {
            return ([], 0, 0);
        }

        double Wants(Charge charge) => charge.Left < 1e-3 * charge.Whole ? charge.Left : double.Min(
            double.Pi / makeup.FlameSeconds * speed * double.Sqrt(((Lit * charge.Whole) + charge.Whole - charge.Left) * charge.Left), charge.Left);
        var wanted = 0.0;
        foreach (var charge in truth.Charges)
        {
            wanted += Wants(charge);
        }

        var crowded = wanted / (Most * makeup.UsualFire * double.Sqrt(makeup.DraftShare));
        var gets = 1 / double.Sqrt(1 + (crowded * crowded));
        var (flame, char_) = (0.0, 0.0);
        var left = ImmutableArray.CreateBuilder<Charge>(truth.Charges.Length);
        foreach (var charge in truth.Charges)
        {
            var burnt = charge.Left < 1e-3 * charge.Whole ? charge.Left : Wants(charge) * gets;
            flame += burnt;
            char_ += burnt * charge.CharShare;
            if (burnt < charge.Left)
            {
                left.Add(charge with { Left = charge.Left - burnt, Seconds = charge.Seconds + 1 });
            }
        }

        return (left.DrainToImmutable(), flame, char_);
    }
}
