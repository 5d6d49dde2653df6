using System.Collections.Immutable;
using Panside.Practice.Chance;
using Panside.Practice.Physics;
using Panside.Workshop.Worlds.Wood;

namespace Panside.Workshop.Worlds.Gusty;

/// <summary>
/// Wind: gusts and lulls raise and lower the draft by up to half (<see cref="Gust"/>), a door stands open for a minute at each charge and lets
/// cold air in and the brick's glow out, air leaks in through the arch; every charge differs in heat and time by up to a quarter
/// (<see cref="GustyFire"/>); brick is one heavy store, the arch's metal another, and a wet base takes up heat until its water is gone. What
/// charges and wind are is hashed from rig and second. Left out: the stack's draw by its heat, unburnt gas, layers within the brick, ash.
/// </summary>
internal sealed class GustyWorld : World
{
    /// <summary>
    /// Places in <see cref="Truth.Own"/>: the gust's three numbers, seconds that the door still stands open, brick, metal and base in °C, water
    /// in the base in kg.
    /// </summary>
    private const int GustEnds = 0, GustWanted = 1, GustNow = 2, Door = 3, Brick = 4, Metal = 5, Base = 6, BaseWater = 7;

    /// <summary>How long the door stands open, in s.</summary>
    private const double DoorSeconds = 60;

    /// <summary>Cold air through the open door, beside the usual. No source.</summary>
    private const double DoorAir = 0.5;

    /// <summary>Share of the brick's sight that the open door is. No source.</summary>
    private const double DoorSees = 0.25;

    /// <summary>Share of the fire's heat that shines on the brick. No source.</summary>
    private const double BrickSees = 0.08;

    /// <summary>Brick that draws and lights as a warm one does, in °C over the air. No source.</summary>
    private const double WarmBrick = 400;

    /// <summary>Heat that a kilogram of water in the base takes to leave, in MJ.</summary>
    private const double Latent = 2.26;

    private const double Boiling = 100;

    /// <summary>What a hash is for: a charge's heat.</summary>
    private const int WoodHeat = 4;

    public override string Name => "gusty";

    public override string Summary => "wind at the stack, uneven wood, a door that stands open, one heavy brick over a wet base";

    public override Makeup Made(Makeup makeup, RandomStream? random)
    {
        if (makeup.Rig.IsBurner)
        {
            return makeup;
        }

        var rig = GustyRig.Of(makeup, random);
        return makeup with
        {
            Own = rig,
            BrickCapacity = rig.BrickCapacity + rig.MetalCapacity + rig.BaseCapacity,
            UsualCoals = makeup.UsualFire * (makeup.Forced ? 350 : 1100),
        };
    }

    public override Truth Begun(Makeup makeup, Truth truth) => makeup.Own is not GustyRig rig ? truth : truth with
    {
        Own = [0, 0, 0, 0, truth.BrickCelsius, truth.BrickCelsius, truth.BrickCelsius, rig.BaseWater],
    };

    public override Truth Charged(Makeup makeup, Truth truth, double kilograms)
    {
        if (makeup.Own is not GustyRig rig)
        {
            return base.Charged(makeup, truth, kilograms);
        }

        var uneven = 1 + (GustyFire.Uneven * Hashed.EitherWay(rig.Number, truth.Second, WoodHeat));
        return base.Charged(makeup, truth, kilograms * uneven) with { Own = truth.Own.SetItem(Door, DoorSeconds) };
    }

    public override Given Burned(Makeup makeup, Truth truth)
    {
        if (makeup.Own is not GustyRig rig)
        {
            return Fire.Step(makeup, truth);
        }

        var own = truth.Own.AsSpan();
        var gust = new Gust(own[GustEnds], own[GustWanted], own[GustNow]).Next(rig.Number, truth.Second);
        var isOpen = own[Door] > 0;
        var warm = double.Clamp((own[Brick] - makeup.AirCelsius) / WarmBrick, 0, 1);
        var draws = makeup.Forced ? 1 : 0.5 + (0.5 * warm);
        var air = draws * double.Sqrt(makeup.DraftShare * (1 + (rig.Gusts * gust.Now)));
        var burnt = GustyFire.Next(makeup, rig, truth, air, warm);

        // The gas: as hot as the fire and all the air make it, the leaks' and the door's too.
        var fire = burnt.Flame + burnt.Glow;
        var flow = rig.Air * (air + rig.Leaks + (isOpen ? DoorAir : 0)) * FlueGas.Capacity;
        var shines = fire * (rig.PanSees + BrickSees);
        var gas = makeup.AirCelsius + ((fire - shines) / flow);
        var toBrick = flow * (1 - double.Exp(-rig.BrickExchange / flow)) * (gas - own[Brick]);
        gas -= toBrick / flow;
        var pan = Pan.MeanCelsius(makeup, truth);
        var takes = rig.PanTakes * double.Cbrt(rig.Air * FlueGas.Capacity / flow);
        var toPan = double.Max(double.Min(takes, 0.9) * flow * (gas - pan), 0);
        gas -= toPan / flow;
        var toMetal = flow * (1 - double.Exp(-rig.MetalExchange / flow)) * (gas - own[Metal]);
        var stack = fire - shines - toBrick - toPan - toMetal;

        // The masonry.
        var power = FlueGas.FourthPower(own[Brick]);
        var radiated = double.Max(FlueGas.Radiation * rig.BrickShines * (power - FlueGas.FourthPower(pan)), 0);
        var outDoor = isOpen ? double.Max(FlueGas.Radiation * rig.BrickShines * DoorSees * (power - FlueGas.FourthPower(makeup.AirCelsius)), 0) : 0;
        var down = rig.BrickToBase * (own[Brick] - own[Base]);
        var dries = own[BaseWater] > 0 && own[Base] >= Boiling ? double.Clamp(down, 0, own[BaseWater] * Latent) : 0;
        var ground = rig.BaseLoss * (own[Base] - makeup.AirCelsius);
        var metalLoss = rig.MetalLoss * (own[Metal] - makeup.AirCelsius);
        var brick = own[Brick] + ((toBrick + (fire * BrickSees) - radiated - outDoor - down) / rig.BrickCapacity);
        var metal = own[Metal] + ((toMetal - metalLoss) / rig.MetalCapacity);
        var under = own[Base] + ((down - dries - ground) / rig.BaseCapacity);
        return new(toPan + (fire * rig.PanSees) + radiated, truth with
        {
            Charges = burnt.Charges,
            Coals = truth.Coals - burnt.Glow + burnt.Char,
            BrickCelsius = ((brick * rig.BrickCapacity) + (metal * rig.MetalCapacity) + (under * rig.BaseCapacity)) / makeup.BrickCapacity,
            Own = [gust.Ends, gust.Wanted, gust.Now, double.Max(own[Door] - 1, 0), brick, metal, under, own[BaseWater] - (dries / Latent)],
            Ledger = truth.Ledger with
            {
                Stack = truth.Ledger.Stack + stack,
                Walls = truth.Ledger.Walls + outDoor + dries + ground + metalLoss,
            },
        });
    }
}
