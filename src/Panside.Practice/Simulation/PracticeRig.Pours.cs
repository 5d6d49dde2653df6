using Panside.Practice.Physics;
using Panside.Practice.Scenarios;
using Panside.Reckoning.Quantities;

namespace Panside.Practice.Simulation;

/// <content>What somebody pours by hand: into the pan, into the tank, out of the pails.</content>
public sealed partial class PracticeRig
{
    /// <summary>A portion of sap from the tank is poured in at the feed side.</summary>
    /// <returns>How much it was.</returns>
    public Volume PourPortion(Volume wanted)
    {
        (Truth, var sap) = Makeup.World.Portioned(Makeup, Truth, wanted.Liters);
        BackOn();
        return Volume.FromLiters(Liters(sap));
    }

    /// <summary>The pan is flooded: the float is lifted to that depth, or sap is poured in where there is none.</summary>
    public void Flood()
    {
        LiftFloats();
        if (!Makeup.Rig.HasFloat)
        {
            SetValve(Makeup.Rig.RunDepth);
            PourIn(Makeup.Rig.PanArea * (Makeup.Rig.FloodDepth > Depth ? Makeup.Rig.FloodDepth - Depth : default));
        }
    }

    /// <summary>Sap from elsewhere goes into the tank, as sweet and as cold as what is there.</summary>
    public void Refill(Volume sap)
    {
        var brix = Truth.Tank.Fraction * 100;
        var brought = Brought(Scenario.Liquid(Makeup, brix, Makeup.SapCelsius, sap.Liters));
        Truth = Truth with { Tank = Truth.Tank + brought };
    }

    /// <summary>Water from the pails goes into the tank; as much as is left.</summary>
    /// <returns>How much it was.</returns>
    public Volume RefillWithWater(Volume wanted)
    {
        var water = TakeWater(wanted);
        var brought = Brought(Scenario.Liquid(Makeup, 0, Makeup.SapCelsius, water.Liters));
        Truth = Truth with { Tank = Truth.Tank + brought };
        return water;
    }

    /// <summary>Sap as in the tank, or water, that somebody brought is poured into the pan at the feed side.</summary>
    /// <param name="liquid">How much.</param>
    /// <param name="isWater">Whether it is water.</param>
    /// <param name="intoFront">Whether it goes into the pan with the draw-off, of two.</param>
    public void FillPan(Volume liquid, bool isWater, bool intoFront = false)
    {
        var brix = isWater ? 0 : Truth.Tank.Fraction * 100;
        var brought = Brought(Scenario.Liquid(Makeup, brix, Makeup.SapCelsius, liquid.Liters));
        Truth = intoFront && Makeup.BackCells > 0 ? Pan.PouredOver(Makeup, Truth, brought, isBack: false) : Pan.PouredAtFeed(Truth, brought, Makeup.BackCells > 0 ? Makeup.BackCells : int.Max(Truth.Pan.Length / Makeup.Rig.Channels, 1));
        BackOn();
    }

    /// <summary>Water from the pails goes into the pan at the draw-off; sap from the tank where they are empty.</summary>
    /// <returns>How much it was.</returns>
    public ByHand CoolPan(Volume wanted)
    {
        var water = TakeWater(wanted);
        var brought = Brought(Scenario.Liquid(Makeup, 0, Makeup.SapCelsius, water.Liters));
        Truth = Pan.Poured(Truth, brought, 1);
        var rest = water < wanted ? PourIn(wanted - water) : default;
        return rest with { Water = rest.Water + water };
    }

    /// <summary>Sap from the tank, or water where the tank is empty, is poured all over the pan by hand.</summary>
    /// <returns>How much it was.</returns>
    public ByHand PourIn(Volume wanted)
    {
        var back = Makeup.BackCells > 0 ? Lacks(Pan.BackDepths(Makeup, Truth), Makeup.Rig.Back!.FloodDepth) * Makeup.PanAreaOf(0) : 0;
        var front = Lacks(Pan.Depths(Makeup, Truth), Makeup.Rig.FloodDepth) * Makeup.PanAreaOf(Makeup.BackCells);
        return PourIn(wanted, back / double.Max(back + front, 1e-9));
    }

    /// <summary>The same all over the pan behind.</summary>
    /// <returns>How much it was.</returns>
    public ByHand PourIntoBack(Volume wanted) => PourIn(wanted, 1);

    private static double Lacks(IEnumerable<double> depths, Length flood) => double.Max(flood.Meters - depths.Average(), 0);

    /// <summary>With the part that goes into the pan behind, where there is one.</summary>
    private ByHand PourIn(Volume wanted, double toBack)
    {
        var cells = Truth.Pan.Length;
        var sap = Truth.Tank.Part(wanted.Liters / Makeup.Materials.LitersOf(Truth.Tank.Fraction, Makeup.SapCelsius));
        var missing = wanted - Volume.FromLiters(Liters(sap));
        var water = TakeWater(missing.Liters > 0.05 ? missing : default);
        var brought = Brought(Scenario.Liquid(Makeup, 0, Makeup.SapCelsius, water.Liters));
        Truth = Truth with { Tank = Truth.Tank - sap };
        Truth = Makeup.BackCells == 0
            ? Pan.Poured(Truth, sap + brought, cells)
            : Pan.PouredOver(Makeup, Pan.PouredOver(Makeup, Truth, (sap + brought) * toBack, isBack: true), (sap + brought) * (1 - toBack), isBack: false);
        BackOn();
        return new(Volume.FromLiters(Liters(sap)), water);
    }

    /// <summary>The pan with the draw-off is stirred end to end: its channels are nearly one.</summary>
    public void Stir()
    {
        var (back, front) = (Truth.Pan.Take(Makeup.BackCells), Truth.Pan.Skip(Makeup.BackCells).ToList());
        var mean = front.Aggregate((sum, cell) => sum + cell) * (1.0 / front.Count);
        Truth = Truth with { Pan = [.. back, .. front.Select(cell => (cell * (1 - StirredTo)) + (mean * StirredTo))] };
    }

    /// <summary>How far a ladle brings each cell to the mean of all: no source.</summary>
    private const double StirredTo = 0.9;

    /// <summary>A pail of syrup goes back into the pan at the draw-off.</summary>
    public void PourBack()
    {
        var brought = Brought(Truth.Pail);
        Truth = Pan.Poured(Truth with { Pail = default }, brought, 1);
    }

    /// <summary>A pan that was poured out goes back over the fire once it is filled near its run depth: never bare.</summary>
    private void BackOn() => Truth = Truth with { PanOff = Truth.PanOff && Depth < Makeup.Rig.RunDepth * 0.8 };

    private Cell Brought(Cell liquid)
    {
        Truth = Truth with { Ledger = Truth.Ledger with { Brought = Truth.Ledger.Brought + liquid } };
        return liquid;
    }

    private Volume TakeWater(Volume wanted)
    {
        var taken = wanted < WaterLeft ? wanted : WaterLeft;
        WaterLeft -= taken;
        return taken;
    }
}
