using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Panside.Practice.Chance;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds.Drafted;

/// <summary>
/// A stack that draws by its own heat against friction; air through the grate burns the bed, the rest the gas of the wood; pieces dry and
/// char from the outside in; gas as hot as burnt fuel and excess air make it gives to pan and brick by the effectiveness of an exchanger
/// under its flow (Kays and London, Compact Heat Exchangers, from memory); brick is a slab of six layers whose face shines on the pan; the
/// stack's sheet is a store. Left out: heaping and raking but for a factor, soot, ash, heat from the pan to the gas, the door.
/// </summary>
internal sealed class DraftedWorld : World
{
    /// <summary>
    /// Places in <see cref="Truth.Own"/>: gas in the stack in °C, what burnt in the last second in MJ, seconds that kindling
    /// still burns, the stack's sheet and the layers of brick in °C, then the pieces of each charge.
    /// </summary>
    private const int StackGas = 0, Burnt = 1, Kindling = 2, Sheet = 3, Face = 4, Pieces = Face + DraftedRig.Layers;

    /// <summary>Share of wood's heat that its char holds, by mass 0.2 of 30 MJ/kg: textbooks, from memory.</summary>
    private const double CharShare = 0.32;

    /// <summary>Share of the bed's heat that shines on pan and brick. No source.</summary>
    private const double Shines = 0.35;

    /// <summary>Share of the fire's heat that goes into drying at most. No source.</summary>
    private const double MostDrying = 0.4;

    /// <summary>A glowing bed, in °C. No source.</summary>
    private const double Glow = 880;

    /// <summary>Coals beside the usual bed, and fire beside the usual one, under which wood is lit anew. No source.</summary>
    private const double GoesOut = 0.03;

    /// <summary>What a flame shines on wood like, in °C. No source.</summary>
    private const double FlameCelsius = 1000;

    /// <summary>Seconds in which a charge on a burning bed catches fire all over. No source.</summary>
    private const double CatchingSeconds = 120;

    /// <summary>Seconds that kindling burns, and how hot it shines then, in °C. No source.</summary>
    private const double KindlingSeconds = 700, KindlingCelsius = 600;

    public override string Name => "drafted";

    public override string Summary => "the stack draws by its own heat, pieces char from the outside in, brick is a slab of layers";

    public override Makeup Made(Makeup makeup, RandomStream? random)
    {
        if (makeup.Rig.IsBurner)
        {
            return makeup;
        }

        var rig = DraftedRig.Of(makeup, random);
        return makeup with
        {
            Own = rig,
            BrickCapacity = (rig.LayerCapacity * DraftedRig.Layers) + rig.StackCapacity,
            BrickSees = rig.BrickSees,
            UsualCoals = makeup.UsualFire * (makeup.Forced ? 420 : 1300),
        };
    }

    public override Truth Begun(Makeup makeup, Truth truth) => makeup.Rig.IsBurner ? truth : truth with
    {
        Own = [makeup.AirCelsius, 0, 0, truth.BrickCelsius, .. Enumerable.Repeat(truth.BrickCelsius, DraftedRig.Layers)],
    };

    public override double Fuel(Truth truth) => Fire.Fuel(truth);

    public override Truth Charged(Makeup makeup, Truth truth, double kilograms)
    {
        if (makeup.Own is not DraftedRig rig)
        {
            return Fire.Charged(makeup, truth, kilograms);
        }

        var wood = MoistWood.Of(makeup);
        var (dry, water) = (kilograms * wood.Dry, kilograms * wood.Water);
        var isLit = truth.Coals > GoesOut * rig.UsualBed || truth.Own[Burnt] > GoesOut * makeup.UsualFire;
        var radius = rig.PieceRadius * (isLit ? 1 : 0.85);
        var pieces = new DraftedPieces(dry, dry, water, water, wood.DryHeat, radius);
        var own = new double[truth.Own.Length + DraftedPieces.Count];
        truth.Own.CopyTo(own);
        own[Kindling] = isLit ? own[Kindling] : KindlingSeconds;
        pieces.Write(own.AsSpan(truth.Own.Length));
        return truth with
        {
            Charges = truth.Charges.Add(new(pieces.Heat, pieces.Heat, 0, 0)),
            Own = ImmutableCollectionsMarshal.AsImmutableArray(own),
            CoalsLevel = false,
            Ledger = truth.Ledger with { Wood = truth.Ledger.Wood + pieces.Heat },
        };
    }

    public override Given Burned(Makeup makeup, Truth truth)
    {
        if (makeup.Own is not DraftedRig rig)
        {
            return Fire.Step(makeup, truth);
        }

        var own = truth.Own.AsSpan();
        var air = DraftedGas.Air(makeup, rig, own[StackGas]);
        var coals = DraftedGas.Bed(rig, truth, air);
        var (charges, pieces, gas, char_, drying) = Broken(makeup, rig, truth);
        var flame = gas * DraftedGas.Burns(gas, air - (coals / FlueGas.HeatOfAir), own[Kindling] > 0 ? 1 : Flames(makeup, own));
        var shines = Shines * coals;

        // Gas: as hot as what burns in it makes it, then between pan and brick.
        var pan = Pan.MeanCelsius(makeup, truth);
        var flow = air * FlueGas.Capacity;
        var fire = makeup.AirCelsius + ((flame + coals - shines - drying) / flow);
        var (toPan, toBrick) = DraftedGas.Exchanged(rig, air, fire, pan, own[Face]);
        var exit = fire - ((toPan + toBrick) / flow);

        // Stack: what the gas leaves in the sheet, what the sheet gives to the air.
        var past = 1 - double.Exp(-rig.StackExchange / flow);
        var toSheet = flow * past * (exit - own[Sheet]);
        var fromSheet = rig.StackLoss * (own[Sheet] - makeup.AirCelsius);
        var top = exit - (toSheet / flow);

        // Brick: its face shines on the pan, heat goes from layer to layer, and out at the back.
        var radiated = double.Max(FlueGas.Radiation * makeup.BrickSees * (FlueGas.FourthPower(own[Face]) - FlueGas.FourthPower(pan)), 0);
        var after = new double[Pieces + pieces.Length];
        pieces.CopyTo(after, Pieces);
        var back = DraftedSlab.Conducted(rig, own.Slice(Face, DraftedRig.Layers), after.AsSpan(Face), toBrick + (0.5 * shines) - radiated, makeup.AirCelsius);
        after[StackGas] = 0.5 * (exit + top);
        after[Burnt] = flame + coals;
        after[Sheet] = own[Sheet] + ((toSheet - fromSheet) / rig.StackCapacity);
        after[Kindling] = double.Max(own[Kindling] - 1, 0);
        return new(toPan + (0.5 * shines) + radiated, truth with
        {
            Charges = charges,
            Coals = truth.Coals - coals + char_,
            BrickCelsius = DraftedSlab.Mean(rig, after.AsSpan(Face, DraftedRig.Layers), after[Sheet]),
            Own = ImmutableCollectionsMarshal.AsImmutableArray(after),
            Ledger = truth.Ledger with
            {
                Stack = truth.Ledger.Stack + (flow * (top - makeup.AirCelsius)) + gas - flame,
                Walls = truth.Ledger.Walls + fromSheet + back,
            },
        });
    }

    /// <summary>What the charges do: those left, their numbers, heat of gas and char that they gave in MJ, and heat that drying took.</summary>
    private static (ImmutableArray<Charge> Charges, double[] Pieces, double Gas, double Char, double Drying) Broken(Makeup makeup, DraftedRig rig, Truth truth)
    {
        var own = truth.Own.AsSpan();
        var around = Around(makeup, rig, truth, own);
        var most = MostDrying * own[Burnt] / int.Max(truth.Charges.Length, 1);
        var charges = ImmutableArray.CreateBuilder<Charge>(truth.Charges.Length);
        Span<double> left = stackalloc double[truth.Charges.Length * DraftedPieces.Count];
        var (gas, char_, drying) = (0.0, 0.0, 0.0);
        for (var index = 0; index < truth.Charges.Length; index++)
        {
            var (pieces, broken, dried) = DraftedPieces.Read(own[(Pieces + (index * DraftedPieces.Count))..]).Next(around, Lit(truth.Charges[index], own[Kindling] > 0), most);
            var heat = broken * pieces.DryHeat;
            gas += heat * (1 - CharShare);
            char_ += heat * CharShare;
            drying += dried * MoistWood.Drying;
            if (pieces.Dry > 0)
            {
                pieces.Write(left[(charges.Count * DraftedPieces.Count)..]);
                charges.Add(truth.Charges[index] with { Left = pieces.Heat, Seconds = truth.Charges[index].Seconds + 1 });
            }
        }

        var numbers = left[..(charges.Count * DraftedPieces.Count)].ToArray();
        return (charges.DrainToImmutable(), numbers, gas, char_, drying);
    }

    /// <summary>How far flames fill the fire: wholly from a third of the usual fire on. No source.</summary>
    private static double Flames(Makeup makeup, ReadOnlySpan<double> own) => double.Min(3 * own[Burnt] / makeup.UsualFire, 1);

    /// <summary>Share of a charge that the fire has come to: no source.</summary>
    private static double Lit(Charge charge, bool isKindled) =>
        double.Min((charge.Seconds + 5) / (isKindled ? KindlingSeconds : CatchingSeconds), 1);

    /// <summary>
    /// What shines on the pieces, in °C: from below the bed, which from a quarter of the usual one on covers the grate, from above flame and
    /// brick; kindling at first. No source for the shares.
    /// </summary>
    private static double Around(Makeup makeup, DraftedRig rig, Truth truth, ReadOnlySpan<double> own)
    {
        var bed = 0.55 * double.Min(double.Sqrt(truth.Coals / (0.25 * rig.UsualBed)), 1);
        var shine = (bed * FlueGas.FourthPower(Glow)) + (0.25 * Flames(makeup, own) * FlueGas.FourthPower(FlameCelsius))
            + (0.2 * FlueGas.FourthPower(own[Face]));
        var celsius = double.Sqrt(double.Sqrt(shine)) - FlueGas.Kelvin;
        return own[Kindling] > 0 ? double.Max(celsius, KindlingCelsius) : celsius;
    }
}
