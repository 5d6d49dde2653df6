using System.Collections.Immutable;
using Panside.Practice.Physics;
using Panside.Workshop.Worlds.Wood;

namespace Panside.Workshop.Worlds;

/// <summary>
/// The fire of <see cref="PouredWorld"/>: a thick bed that burns by the air through it. A deep bed uses all of that air, a bed with holes
/// less; the air that is left over and the air over the bed burn what the wood gives off, and what they do not burn is smoke. Wood dries,
/// then gives off its flame at an even rate, like a slab that chars from its faces, the faster the hotter bed and box are. The bed
/// radiates to pan and brick; brick is a slab of four layers. Air-limited beds and slabs: Drysdale, An Introduction to Fire
/// Dynamics, 3rd ed. 2011, ch. 5, from memory; constants calibrated, no source.
/// </summary>
internal static class PouredFire
{
    /// <summary>Layers of brick behind its face.</summary>
    public const int Behind = 3;

    /// <summary>What the usual air burns of a deep bed, beside the usual fire: a sixth more than the char that comes. No source.</summary>
    public const double BedAir = 0.41;

    /// <summary>What the air over the bed burns at most, beside the usual fire: no source.</summary>
    private const double FlameAir = 1.3;

    /// <summary>Holes: the air used goes with this power of the bed beside a deep one. No source.</summary>
    private const double Holes = 0.6;

    /// <summary>Temperature of a deep bed at the usual air, in K: no source, an orange glow.</summary>
    private const double BedKelvin = 1200;

    /// <summary>Emissivity times the part of the pan's area by which the bed is seen, for the pan and for the brick: no source.</summary>
    private const double PanSees = 0.17;

    private const double BrickSeesBed = 0.06;

    /// <summary>Most of the bed's heat that radiates to the pan, and to the brick: no source.</summary>
    private const double MostToPan = 0.5;

    private const double MostToBrick = 0.25;

    /// <summary>Seconds in which wood of 20 % dries in a hot box: no source.</summary>
    private const double Drying = 100;

    /// <summary>The part of its speed at which wood dries and chars in a cold box: no source.</summary>
    private const double Cold = 0.23;

    /// <summary>How much hotter than the air brick's face is in a hot box, in K: no source.</summary>
    private const double HotFace = 480;

    /// <summary>How much hotter than the air the whole brick is when the stack draws as usual, in K: no source.</summary>
    private const double DrawsAt = 300;

    /// <summary>Heat that the gas carries for each K, beside the usual fire, in 1/K: no source; some two and a half times the air needed.</summary>
    private const double GasCarries = 1 / 1050.0;

    /// <summary>Conduction from layer to layer, in MW/K, for brick of 54 kg: no source.</summary>
    private const double Inward = 45e-6;

    /// <summary>Heat in all layers of the brick over 0 °C, in MJ.</summary>
    public static double Stored(Makeup makeup, Truth truth)
    {
        var celsius = truth.BrickCelsius;
        for (var layer = 0; layer < Behind; layer++)
        {
            celsius += truth.Own[PouredWorld.Layers + layer];
        }

        return makeup.BrickCapacity / (1 + Behind) * celsius;
    }

    /// <summary>One second.</summary>
    public static Given Step(Makeup makeup, Truth truth)
    {
        var face = truth.BrickCelsius;
        var own = truth.Own;
        var capacity = makeup.BrickCapacity / (1 + Behind);
        var mean = (face + own[PouredWorld.Layers] + own[PouredWorld.Layers + 1] + own[PouredWorld.Layers + 2]) / (1 + Behind);
        var draws = double.Clamp((mean - makeup.AirCelsius) / DrawsAt, 0.25, 1.25);
        var draft = (makeup.Forced ? 1 : double.Sqrt(draws)) * double.Sqrt(makeup.DraftShare);

        var deep = double.Clamp(truth.Coals / (BedAir * makeup.UsualFire * makeup.CoalSeconds), 0, 1);
        var used = double.Pow(deep, Holes);
        var bedAir = BedAir * makeup.UsualFire * draft;
        var glow = truth.Coals < 1e-3 ? truth.Coals : double.Min(bedAir * used * (truth.CoalsLevel ? 1.15 : 1), truth.Coals);
        var hotBox = Cold + ((1 - Cold) * ((0.5 * used) + (0.5 * double.Clamp((face - makeup.AirCelsius) / HotFace, 0, 1))));
        var (charges, gas, char_) = GivenOff(makeup, truth, hotBox);
        var flame = double.Min(gas, (FlameAir * makeup.UsualFire * draft) + double.Max(bedAir - glow, 0));

        var pan = Pan.MeanCelsius(makeup, truth);
        var bed = Fourth(BedKelvin * double.Sqrt(double.Sqrt(used)) * double.Sqrt(double.Sqrt(draft)));
        var (faceFourth, panFourth) = (Fourth(face + FlueGas.Kelvin), Fourth(pan + FlueGas.Kelvin));
        var bedToPan = double.Clamp(FlueGas.Radiation * PanSees * makeup.Area * (bed - panFourth), 0, MostToPan * glow);
        var bedToBrick = double.Clamp(FlueGas.Radiation * BrickSeesBed * makeup.Area * (bed - faceFourth), 0, MostToBrick * glow);
        var radiated = double.Max(FlueGas.Radiation * makeup.BrickSees * (faceFourth - panFourth), 0);

        var carries = GasCarries * makeup.UsualFire * double.Max(draft, 0.1);
        var hot = makeup.AirCelsius + ((flame + glow - bedToPan - bedToBrick) / carries);
        var toBrick = double.Min(makeup.BrickExchange * double.Sqrt(draft), 0.5 * carries) * (hot - face);
        var overPan = hot - (toBrick / carries);
        var swept = makeup.ToPan * carries * double.Max(overPan - pan, 0);

        var inward = Inward * double.Cbrt(makeup.BrickCapacity / 0.0544);
        var next = own.ToBuilder();
        var from = inward * (face - own[PouredWorld.Layers]);
        var celsius = face + ((bedToBrick + toBrick - radiated - from) / capacity);
        for (var layer = PouredWorld.Layers; layer < PouredWorld.Layers + Behind; layer++)
        {
            var on = layer + 1 < own.Length ? inward * (own[layer] - own[layer + 1]) : makeup.WallLoss * (own[layer] - makeup.AirCelsius);
            next[layer] = own[layer] + ((from - on) / capacity);
            from = on;
        }

        return new(bedToPan + swept + radiated, truth with
        {
            Charges = charges,
            Coals = truth.Coals + char_ - glow,
            BrickCelsius = celsius,
            Own = next.DrainToImmutable(),
            Ledger = truth.Ledger with
            {
                Stack = truth.Ledger.Stack + (carries * (overPan - makeup.AirCelsius)) - swept + (gas - flame),
                Walls = truth.Ledger.Walls + from,
            },
        });
    }

    private static double Fourth(double kelvin) => kelvin * kelvin * kelvin * kelvin;

    /// <summary>First the wood dries, in a time that goes with its moisture; then it gives off its flame evenly.</summary>
    private static (ImmutableArray<Charge> Charges, double Gas, double Char) GivenOff(Makeup makeup, Truth truth, double hotBox)
    {
        var (gas, char_) = (0.0, 0.0);
        if (truth.Charges.IsEmpty)
        {
            return ([], 0, 0);
        }

        var dries = Drying * makeup.Rig.WoodMoisture / 0.2;
        var left = ImmutableArray.CreateBuilder<Charge>(truth.Charges.Length);
        foreach (var charge in truth.Charges)
        {
            var off = charge.Seconds < dries ? 0 : double.Min(charge.Whole * hotBox / makeup.FlameSeconds, charge.Left);
            gas += off;
            char_ += off * charge.CharShare;
            if (off < charge.Left)
            {
                left.Add(charge with { Left = charge.Left - off, Seconds = charge.Seconds + hotBox });
            }
        }

        return (left.DrainToImmutable(), gas, char_);
    }
}
