using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Panside.Practice.Chance;
using Panside.Practice.Physics;
using Panside.Workshop.Worlds.Wood;

namespace Panside.Workshop.Worlds.Kinetic;

/// <summary>
/// Pieces of wood at one temperature that dry first and then fall to gas and char by Arrhenius' law (<see cref="KineticPieces"/>); a bed that
/// burns as oxygen comes through film and ash, heaped until it is raked (<see cref="KineticBed"/>); a well-stirred furnace whose flame shines on
/// the pan (<see cref="KineticFurnace"/>); brick as two stores, hot face and back; a damper that holds the draft nearly fixed. Left out: the
/// stack as a store, unburnt gas but for want of air, the door.
/// </summary>
internal sealed class KineticWorld : World
{
    /// <summary>
    /// Places in <see cref="Truth.Own"/>: gas over the fire in °C, what burnt in the last second in MJ, ash on the bed in kg, hot
    /// face and back of the brick in °C, then the pieces of each charge.
    /// </summary>
    public const int Gas = 0, Burnt = 1, Ash = 2, Face = 3, Back = 4, Pieces = 5;

    /// <summary>Radius of the thinner and of the thicker half of a charge beside the mean. No source.</summary>
    private const double Thin = 0.7, Thick = 1.3;

    /// <summary>Share of a charge on a cold grate that is splints; the rest is sticks. No source.</summary>
    private const double Splints = 0.22;

    /// <summary>Coals beside the usual bed, and fire beside the usual one, under which wood is lit anew. No source.</summary>
    private const double GoesOut = 0.35;

    public override string Name => "kinetic";

    public override string Summary => "wood falls to gas and char by its temperature, coals burn through film and ash, brick is face and back";

    public override Makeup Made(Makeup makeup, RandomStream? random)
    {
        if (makeup.Rig.IsBurner)
        {
            return makeup;
        }

        var rig = KineticRig.Of(makeup, random);
        return makeup with
        {
            Own = rig,
            BrickCapacity = rig.FaceCapacity + rig.BackCapacity,
            UsualCoals = makeup.UsualFire * (makeup.Forced ? 550 : 1500),
        };
    }

    public override Truth Begun(Makeup makeup, Truth truth) => makeup.Rig.IsBurner ? truth : truth with
    {
        Own = [makeup.AirCelsius, 0, 0, truth.BrickCelsius, truth.BrickCelsius],
    };

    public override Truth Charged(Makeup makeup, Truth truth, double kilograms)
    {
        if (makeup.Own is not KineticRig rig)
        {
            return base.Charged(makeup, truth, kilograms);
        }

        var wood = MoistWood.Of(makeup);
        KineticPieces Of(double mass, double radius) => new(mass * wood.Dry, mass * wood.Dry, mass * wood.Water, 0, wood.DryHeat, radius);
        KineticPieces[] pieces = truth.Coals > GoesOut * rig.UsualBed || truth.Own[Burnt] > GoesOut * makeup.UsualFire
            ? [Of(0.5 * kilograms, Thin * rig.PieceRadius), Of(0.5 * kilograms, Thick * rig.PieceRadius)]
            : [Of(Splints * kilograms, 0) with { Water = 0 }, Of((1 - Splints) * kilograms, rig.StickRadius)];
        var own = new double[truth.Own.Length + (pieces.Length * KineticPieces.Count)];
        truth.Own.CopyTo(own);
        own[Ash] *= 1 - KineticBed.Poked;
        for (var index = 0; index < pieces.Length; index++)
        {
            pieces[index].Write(own.AsSpan(truth.Own.Length + (index * KineticPieces.Count)));
        }

        return truth with
        {
            Charges = truth.Charges.AddRange(pieces.Select(one => new Charge(one.Heat, one.Heat, 0, 0))),
            Own = ImmutableCollectionsMarshal.AsImmutableArray(own),
            CoalsLevel = false,
            Ledger = truth.Ledger with { Wood = truth.Ledger.Wood + pieces.Sum(one => one.Heat) },
        };
    }

    public override Given Burned(Makeup makeup, Truth truth)
    {
        if (makeup.Own is not KineticRig rig)
        {
            return Fire.Step(makeup, truth);
        }

        var own = truth.Own.AsSpan();
        var air = Air(makeup, rig, own);
        var (coals, ash) = KineticBed.Next(rig, truth, air, own[Ash]);
        var fell = KineticCharges.Next(makeup, rig, truth);

        // Gas beyond what the bed leaves of the air goes unburnt.
        var flame = double.Min(fell.Gas, double.Max((air * FlueGas.HeatOfAir) - coals, 0));
        var pan = Pan.MeanCelsius(makeup, truth);
        var furnace = KineticFurnace.Next(rig, flame + coals - fell.Taken, air, own[Gas], makeup.AirCelsius, pan, own[Face]);
        var radiated = FlueGas.Radiation * rig.FaceShines * double.Max(FlueGas.FourthPower(own[Face]) - FlueGas.FourthPower(pan), 0);
        var inward = rig.FaceToBack * (own[Face] - own[Back]);
        var walls = rig.BackLoss * (own[Back] - makeup.AirCelsius);

        var after = new double[Pieces + fell.Numbers.Length];
        fell.Numbers.CopyTo(after, Pieces);
        after[Gas] = furnace.Celsius;
        after[Burnt] = flame + coals;
        after[Ash] = ash;
        after[Face] = own[Face] + ((furnace.ToFace - radiated - inward) / rig.FaceCapacity);
        after[Back] = own[Back] + ((inward - walls) / rig.BackCapacity);
        return new(furnace.ToPan + radiated, truth with
        {
            Charges = fell.Left,
            Coals = truth.Coals - coals + fell.Char,
            BrickCelsius = ((after[Face] * rig.FaceCapacity) + (after[Back] * rig.BackCapacity)) / makeup.BrickCapacity,
            Own = ImmutableCollectionsMarshal.AsImmutableArray(after),
            Ledger = truth.Ledger with
            {
                Stack = truth.Ledger.Stack + furnace.Leaves + fell.Gas - flame,
                Walls = truth.Ledger.Walls + walls,
            },
        });
    }

    /// <summary>Air, in kg/s: the damper holds it, but a cold arch draws less. No source for how much less.</summary>
    private static double Air(Makeup makeup, KineticRig rig, ReadOnlySpan<double> own)
    {
        var warm = (0.5 * own[Gas]) + (0.5 * own[Face]) - makeup.AirCelsius;
        var draws = makeup.Forced ? double.Clamp(0.4 + (warm / 400), 0.4, 1) : double.Clamp(0.3 + (warm / 600), 0.3, 1);
        return rig.Air * draws * double.Sqrt(makeup.DraftShare);
    }
}
