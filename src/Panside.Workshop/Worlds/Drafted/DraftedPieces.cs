using Panside.Workshop.Worlds.Wood;

namespace Panside.Workshop.Worlds.Drafted;

/// <summary>
/// The pieces of one charge as long cylinders with two fronts: at the outer one dry wood turns to gas and char at some 400 °C, at the inner
/// one water boils at 100 °C. Heat comes to the outer front through the char, goes from there to the inner one through dry wood, and what it
/// brings more than it gives on moves the front. After the shrinking core of Galgano and Di Blasi, Combustion and Flame 139 (2004), from memory.
/// </summary>
/// <param name="Whole">Dry wood when it went in, in kg.</param>
/// <param name="Dry">Dry wood that is left, in kg.</param>
/// <param name="Water">Water that is left, in kg.</param>
/// <param name="Moist">Water when it went in, in kg.</param>
/// <param name="DryHeat">Heat of the dry wood, in MJ/kg.</param>
/// <param name="Radius">Radius of a piece, in m.</param>
internal readonly record struct DraftedPieces(double Whole, double Dry, double Water, double Moist, double DryHeat, double Radius)
{
    /// <summary>Numbers in it.</summary>
    public const int Count = 6;

    /// <summary>Where wood falls to gas and char, in °C.</summary>
    private const double Front = 400;

    /// <summary>
    /// Heat that a kilogram of dry wood takes to turn to gas and char, in MJ, all losses of its surface with it: 1.8 for woods, Tewarson and
    /// Pion, Combustion and Flame 26 (1976), from memory.
    /// </summary>
    private const double Breaking = 1.8;

    /// <summary>Share of the surface that sees the fire: pieces lie on each other. No source.</summary>
    private const double Open = 0.6;

    /// <summary>Conductivity of cracked, glowing char, in MW/(m K): more than cold char has by what shines through its cracks. No source.</summary>
    private const double CharConducts = 0.36e-6;

    /// <summary>Conductivity of dry wood across the grain, in MW/(m K): some 0.2 W/(m K), handbooks from memory.</summary>
    private const double WoodConducts = 0.2e-6;

    /// <summary>Density of dry hardwood, in kg/m³.</summary>
    private const double Density = 620;

    /// <summary>Emissivity of a charred surface.</summary>
    private const double Emits = 0.9;

    /// <summary>Exchange with the gas around, in MW/(m² K). No source.</summary>
    private const double Film = 20e-6;

    /// <summary>Share of a charge below which it falls apart.</summary>
    private const double Crumbs = 0.004;

    /// <summary>Share of its dry wood that a charge has lost when it has caught: from then on it smolders to its end. No source.</summary>
    private const double Caught = 0.03;

    /// <summary>Seconds in which a charge that nothing else heats smolders away. No source.</summary>
    private const double SmolderSeconds = 5400;

    /// <summary>Net heat that it still holds, in MJ.</summary>
    public double Heat => (Dry * DryHeat) - (Water * MoistWood.Drying);

    /// <summary>One second.</summary>
    /// <param name="around">What shines on it, in °C.</param>
    /// <param name="lit">Share of it that the fire has come to.</param>
    /// <param name="most">Heat that drying takes at most, in MJ.</param>
    /// <returns>What is left, dry wood broken down in kg, water driven out in kg.</returns>
    public (DraftedPieces Left, double Broken, double Dried) Next(double around, double lit, double most)
    {
        if (Dry <= Crumbs * Whole)
        {
            return (this with { Dry = 0, Water = 0 }, Dry, Water);
        }

        // Radii squared go with the mass inside.
        var outer = double.Max(Dry / Whole, 1e-6);
        var wet = Moist > 0 ? double.Min(Water / Moist, outer) : 0;
        var lengths = Whole / (Density * double.Pi * Radius * Radius);
        var surface = outer < 1 || around > Front ? Front : 100;
        var shine = FlueGas.Radiation * Emits * (FlueGas.FourthPower(around) - FlueGas.FourthPower(surface)) / double.Max(around - surface, 1);
        var way = (1 / ((double.Max(shine, 0) + Film) * Open * Radius)) + (0.5 * double.Log(1 / outer) / CharConducts);
        var comes = lit * double.Max(2 * double.Pi * lengths * (around - (around > Front ? Front : 100)) / way, 0);
        var deep = 0.5 * double.Log(double.Max(outer / double.Max(wet, 1e-9), 1.001)) / WoodConducts;
        var goesOn = wet > 0 ? double.Min(double.Min(2 * double.Pi * lengths * (Front - 100) / deep, comes), most) : 0;
        var dried = double.Min(goesOn / MoistWood.Drying, Water);
        var broken = around > Front ? double.Max(comes - goesOn, 0) / Breaking : 0;
        var smolders = Dry < (1 - Caught) * Whole ? Whole / SmolderSeconds : 0;
        broken = double.Min(double.Max(broken, smolders), Dry);

        // Where the outer front has come to the inner one, the wood that breaks down takes its water along.
        var left = Dry - broken;
        var water = double.Min(Water - dried, Moist * left / Whole);
        return (this with { Dry = left, Water = water }, broken, Water - water);
    }

    /// <summary>Reads it from a row of numbers.</summary>
    public static DraftedPieces Read(ReadOnlySpan<double> from) => new(from[0], from[1], from[2], from[3], from[4], from[5]);

    /// <summary>Writes it to a row of numbers.</summary>
    public void Write(Span<double> to) => (to[0], to[1], to[2], to[3], to[4], to[5]) = (Whole, Dry, Water, Moist, DryHeat, Radius);
}
