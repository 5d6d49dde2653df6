using Panside.Workshop.Worlds.Wood;

namespace Panside.Workshop.Worlds.Kinetic;

/// <summary>What pieces of wood did in one second.</summary>
/// <param name="Left">What is left of them.</param>
/// <param name="Taken">Heat that they took, in MJ.</param>
/// <param name="Gas">Heat of what they gave off, in MJ, to burn and of itself.</param>
/// <param name="Char">Heat of the char that they left, in MJ.</param>
internal readonly record struct KineticStep(KineticPieces Left, double Taken, double Gas, double Char);

/// <summary>
/// The pieces of one charge, at one temperature: heat comes through film and half a radius of wood, water boils off at 100 °C before they
/// grow hotter, and dry wood falls to gas, tar and char by three reactions of the first order side by side: Thurner and Mann, Industrial and
/// Engineering Chemistry Process Design and Development 20 (1981), oak, from memory. Wood goes in at 0 °C, from which its heat is counted.
/// </summary>
/// <param name="Whole">Dry wood when it went in, in kg.</param>
/// <param name="Dry">Dry wood that is left, in kg.</param>
/// <param name="Water">Water that is left, in kg.</param>
/// <param name="Celsius">Temperature, in °C.</param>
/// <param name="DryHeat">Heat of the dry wood, in MJ/kg.</param>
/// <param name="Radius">Radius of a piece when it went in, in m; none of the splints that a fire is lit with, which burn evenly.</param>
internal readonly record struct KineticPieces(double Whole, double Dry, double Water, double Celsius, double DryHeat, double Radius)
{
    /// <summary>Numbers in it.</summary>
    public const int Count = 6;

    private const double GasConstant = 8.314;

    /// <summary>Heat capacity of wood, in MJ/(kg K): 1.5 dry and cold to 2.3 near charring, handbooks, from memory; of water.</summary>
    private const double WoodCapacity = 1.9e-3, WaterCapacity = 4.19e-3;

    /// <summary>Heat that falling to gas and char takes, in MJ/kg: 0.1 to 0.5 is reported, from memory.</summary>
    private const double Breaking = 0.3;

    /// <summary>Heat of char, in MJ/kg: 29 to 33, handbooks, from memory.</summary>
    private const double CharHeat = 30;

    /// <summary>Share of the char that comes to lie in the bed: the rest burns on the piece, with its flame. No source, calibrated.</summary>
    private const double CharStays = 0.7;

    /// <summary>Density of dry hardwood, in kg/m³, and its conductivity, in MW/(m K), half of it char: handbooks, from memory.</summary>
    private const double Density = 620, Conducts = 0.18e-6;

    /// <summary>Exchange of a surface with flame and coals around, in MW/(m² K), made linear. No source.</summary>
    private const double Film = 90e-6;

    /// <summary>Share of a charge below which it falls apart.</summary>
    private const double Crumbs = 0.01;

    private const double Boiling = 100;

    /// <summary>Seconds in which splints burn. No source.</summary>
    private const double SplintSeconds = 600;

    /// <summary>Share of the heat of splints that their char holds. No source.</summary>
    private const double SplintChar = 0.25;

    /// <summary>Water beside dry wood below which the last of it holds the temperature no more. No source.</summary>
    private const double LastWater = 0.02;

    /// <summary>The most that a piece warms in a second, in K.</summary>
    private const double MostWarming = 10;

    /// <summary>Share of its dry wood that a charge has lost when it has caught: from then on it smolders to its end. No source.</summary>
    private const double Caught = 0.03;

    /// <summary>Seconds in which a charge that nothing else heats smolders away. No source.</summary>
    private const double SmolderSeconds = 5400;

    /// <summary>Whether it is what a fire is lit with.</summary>
    public bool AreSplints => Radius == 0;

    /// <summary>Net heat that it holds, in MJ: what burns, less what its water takes, and what it was warmed by.</summary>
    public double Heat => (Dry * DryHeat) - (Water * MoistWood.Drying) + (Capacity * Celsius);

    private double Capacity => (Dry * WoodCapacity) + (Water * WaterCapacity);

    /// <summary>One second.</summary>
    /// <param name="around">Flame and coals around it, in °C.</param>
    /// <param name="lit">Share of it that they have come to.</param>
    /// <param name="most">Heat that it takes at most, in MJ.</param>
    public KineticStep Next(double around, double lit, double most)
    {
        if (Dry <= Crumbs * Whole)
        {
            return new(this with { Dry = 0, Water = 0 }, 0, Heat, 0);
        }

        if (AreSplints)
        {
            var splints = this with { Dry = double.Max(Dry - (Whole / SplintSeconds), 0) };
            var gives = Heat - splints.Heat;
            return new(splints, 0, gives * (1 - SplintChar), gives * SplintChar);
        }

        var left = double.Sqrt(Dry / Whole);
        var surface = 2 * Whole / (Density * Radius) * left;
        var exchange = surface / ((1 / Film) + (0.5 * Radius * left / Conducts));
        var comes = double.Clamp(lit * exchange * (around - Celsius), -MostWarming * Capacity, double.Min(most, MostWarming * Capacity));

        // Water that boils holds the temperature, until little of it is left.
        var boils = Celsius >= Boiling && comes > 0 && Water > 0 ? Water / (Water + (LastWater * Dry)) : 0;
        var dried = double.Min(boils * comes / MoistWood.Drying, Water);

        var kelvin = double.Max(Celsius, 0) + FlueGas.Kelvin;
        var (gas, tar, char_) = (
            Rate(1.435e4, 88_600, kelvin),
            Rate(4.125e6, 112_700, kelvin),
            Rate(7.377e5, 106_500, kelvin));
        var sum = gas + tar + char_;
        var smolders = Dry < (1 - Caught) * Whole ? Whole / SmolderSeconds : 0;
        var broken = double.Min(double.Max(Dry * (1 - double.Exp(-sum)), smolders), Dry);
        var yield = CharStays * char_ / sum * broken * CharHeat;

        // What leaves is as hot as the rest; the rest is warmed by what neither drying nor breaking took.
        var rest = this with { Dry = Dry - broken, Water = Water - dried };
        var warms = (comes - (dried * MoistWood.Drying) - (broken * Breaking)) / Capacity;
        rest = rest with { Celsius = double.Max(Celsius + warms, 0) };
        return new(rest, comes, Heat + comes - rest.Heat - yield, yield);
    }

    /// <summary>Reads it from a row of numbers.</summary>
    public static KineticPieces Read(ReadOnlySpan<double> from) => new(from[0], from[1], from[2], from[3], from[4], from[5]);

    /// <summary>Writes it to a row of numbers.</summary>
    public void Write(Span<double> to) => (to[0], to[1], to[2], to[3], to[4], to[5]) = (Whole, Dry, Water, Celsius, DryHeat, Radius);

    /// <summary>A reaction's rate by Arrhenius, a second.</summary>
    private static double Rate(double frequency, double energy, double kelvin) =>
        frequency * double.Exp(-energy / (GasConstant * kelvin));
}
