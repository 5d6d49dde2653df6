using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Panside.Practice.Chance;
using Panside.Practice.Physics;
using Panside.Workshop.Worlds.Wood;

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
    public const int StackGas = 0, Burnt = 1, Kindling = 2, Sheet = 3, Face = 4, Pieces = Face + DraftedRig.Layers;

    /// <summary>Share of the bed's heat that shines on pan and brick. No source.</summary>
    private const double Shines = 0.35;

    /// <summary>Coals beside the usual bed, and fire beside the usual one, under which wood is lit anew. No source.</summary>
    private const double GoesOut = 0.35;

    /// <summary>Seconds that kindling burns. No source.</summary>
    public const double KindlingSeconds = 700;

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

    public override Truth Charged(Makeup makeup, Truth truth, double kilograms)
    {
        if (makeup.Own is not DraftedRig rig)
        {
            return base.Charged(makeup, truth, kilograms);
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
        var fell = DraftedCharges.Next(makeup, rig, truth);
        var flames = own[Kindling] > 0 ? 1 : DraftedCharges.Flames(makeup, truth);
        var flame = fell.Gas * DraftedGas.Burns(fell.Gas, air - (coals / FlueGas.HeatOfAir), flames);
        var shines = Shines * coals;

        // Gas: as hot as what burns in it makes it, then between pan and brick.
        var pan = Pan.MeanCelsius(makeup, truth);
        var flow = air * FlueGas.Capacity;
        var fire = makeup.AirCelsius + ((flame + coals - shines - fell.Drying) / flow);
        var (toPan, toBrick) = DraftedGas.Exchanged(rig, air, fire, pan, own[Face]);
        var exit = fire - ((toPan + toBrick) / flow);

        // Stack: what the gas leaves in the sheet, what the sheet gives to the air.
        var past = 1 - double.Exp(-rig.StackExchange / flow);
        var toSheet = flow * past * (exit - own[Sheet]);
        var fromSheet = rig.StackLoss * (own[Sheet] - makeup.AirCelsius);
        var top = exit - (toSheet / flow);

        // Brick: its face shines on the pan, heat goes from layer to layer, and out at the back.
        var radiated = double.Max(FlueGas.Radiation * makeup.BrickSees * (FlueGas.FourthPower(own[Face]) - FlueGas.FourthPower(pan)), 0);
        var after = new double[Pieces + fell.Numbers.Length];
        fell.Numbers.CopyTo(after, Pieces);
        var toFace = toBrick + (0.5 * shines) - radiated;
        var back = DraftedSlab.Conducted(rig, own.Slice(Face, DraftedRig.Layers), after.AsSpan(Face), toFace, makeup.AirCelsius);
        after[StackGas] = 0.5 * (exit + top);
        after[Burnt] = flame + coals;
        after[Sheet] = own[Sheet] + ((toSheet - fromSheet) / rig.StackCapacity);
        after[Kindling] = double.Max(own[Kindling] - 1, 0);
        return new(toPan + (0.5 * shines) + radiated, truth with
        {
            Charges = fell.Left,
            Coals = truth.Coals - coals + fell.Char,
            BrickCelsius = DraftedSlab.Mean(rig, after.AsSpan(Face, DraftedRig.Layers), after[Sheet]),
            Own = ImmutableCollectionsMarshal.AsImmutableArray(after),
            Ledger = truth.Ledger with
            {
                Stack = truth.Ledger.Stack + (flow * (top - makeup.AirCelsius)) + fell.Gas - flame,
                Walls = truth.Ledger.Walls + fromSheet + back,
            },
        });
    }
}
