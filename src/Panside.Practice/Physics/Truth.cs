using System.Collections.Immutable;

namespace Panside.Practice.Physics;

/// <summary>One stretch of the pan's path, well mixed.</summary>
/// <param name="Water">Water, in kg.</param>
/// <param name="Sugar">Sugar, in kg.</param>
/// <param name="Heat">Heat over liquid of 0 °C, in MJ.</param>
internal readonly record struct Cell(double Water, double Sugar, double Heat)
{
    /// <summary>Mass, in kg.</summary>
    public double Mass => Water + Sugar;

    /// <summary>Mass fraction of sugar.</summary>
    public double Fraction => Mass > 1e-9 ? Sugar / Mass : 0;

    /// <summary>Heat capacity, in MJ/K.</summary>
    public double Capacity(Materials materials) => (Water * materials.WaterHeat) + (Sugar * materials.SugarHeat);

    /// <summary>Temperature, in °C.</summary>
    public double Celsius(Materials materials) => Mass > 1e-9 ? Heat / Capacity(materials) : 0;

    /// <summary>The part of it that has a mass.</summary>
    public Cell Part(double mass) => Mass > 1e-9 ? this * double.Min(mass / Mass, 1) : default;

    /// <summary>Both together.</summary>
    public static Cell operator +(Cell a, Cell b) => new(a.Water + b.Water, a.Sugar + b.Sugar, a.Heat + b.Heat);

    /// <summary>What is left.</summary>
    public static Cell operator -(Cell a, Cell b) => new(a.Water - b.Water, a.Sugar - b.Sugar, a.Heat - b.Heat);

    /// <summary>A share of it.</summary>
    public static Cell operator *(Cell a, double share) => new(a.Water * share, a.Sugar * share, a.Heat * share);
}

/// <summary>One charge of wood that still gives off flame.</summary>
/// <param name="Whole">Heat of its flame when it went in, in MJ.</param>
/// <param name="Left">What is left of that.</param>
/// <param name="CharShare">Heat of char that it leaves, for each part of flame.</param>
/// <param name="Seconds">Since it went in.</param>
internal readonly record struct Charge(double Whole, double Left, double CharShare, double Seconds);

/// <summary>Sums since the start, by which balances are checked: heat in MJ, masses in kg.</summary>
internal sealed record Ledger
{
    /// <summary>Heat of wood put in.</summary>
    public double Wood { get; init; }

    /// <summary>Heat of coals that a fault heaped on the grates.</summary>
    public double Found { get; init; }

    /// <summary>Heat gone up the stack, or past a dry floor.</summary>
    public double Stack { get; init; }

    /// <summary>Heat gone through the walls of the arch.</summary>
    public double Walls { get; init; }

    /// <summary>Heat given off by the pan's surface or lid without steam.</summary>
    public double Air { get; init; }

    /// <summary>What left as steam, with its heat, latent heat included.</summary>
    public Cell Steam { get; init; }

    /// <summary>What came in from the tank or by hand.</summary>
    public Cell Fed { get; init; }

    /// <summary>What was drawn off or foamed over.</summary>
    public Cell Drawn { get; init; }

    /// <summary>What the tank lost and the pan never got: by a leak, by its drain; of thin sap, the sugar that water took the place of.</summary>
    public Cell Leaked { get; init; }

    /// <summary>What came to tank or pan from elsewhere: water from the pails, sap to refill with, syrup poured back.</summary>
    public Cell Brought { get; init; }
}

/// <summary>The whole rig at one second, as it truly is. Immutable, so that one can look back and run ahead.</summary>
internal sealed record Truth
{
    /// <summary>Seconds since the start.</summary>
    public long Second { get; init; }

    /// <summary>Charges that flame.</summary>
    public ImmutableArray<Charge> Charges { get; init; } = [];

    /// <summary>Whether a burner is on.</summary>
    public bool BurnerOn { get; init; }

    /// <summary>Heat of the bed of coals, in MJ.</summary>
    public double Coals { get; init; }

    /// <summary>Whether the coals lie level over the grates.</summary>
    public bool CoalsLevel { get; init; }

    /// <summary>Temperature of the brick, in °C.</summary>
    public double BrickCelsius { get; init; }

    /// <summary>The cells of the pan, from feed to draw-off; of two, those of the one behind first.</summary>
    public required ImmutableArray<Cell> Pan { get; init; }

    /// <summary>The head tank.</summary>
    public Cell Tank { get; init; }

    /// <summary>Whether the tank's valve is open.</summary>
    public bool ValveOpen { get; init; } = true;

    /// <summary>What a feed valve that is set by hand lets in, in kg/s.</summary>
    public double ValveLets { get; init; }

    /// <summary>The depth at which the float shuts, in m.</summary>
    public double FloatMeters { get; init; }

    /// <summary>The depth at which the float between two pans shuts, in m.</summary>
    public double FrontFloatMeters { get; init; }

    /// <summary>Whether the draw-off is open.</summary>
    public bool DrawOpen { get; init; }

    /// <summary>Whether the pan was poured out and stands off the fire: no heat comes to it.</summary>
    public bool PanOff { get; init; }

    /// <summary>The syrup drawn since it was last opened.</summary>
    public Cell Pail { get; init; }

    /// <summary>Whether the lid is on.</summary>
    public bool Covered { get; init; }

    /// <summary>Foam: 0 none, 1 at the wall's top.</summary>
    public double Foam { get; init; }

    /// <summary>Seconds for which the defoamer still works.</summary>
    public double DefoamerSeconds { get; init; }

    /// <summary>Steam of the boil, in kg/s, over the last minute.</summary>
    public double Boil { get; init; }

    /// <summary>Scorching so far, of the worst cell: 1 is a burnt pan.</summary>
    public double Scorch { get; init; }

    /// <summary>Smell of charring: what has charred over the last minutes.</summary>
    public double Smoke { get; init; }

    /// <summary>States that a world has on top, in its own order and units; empty in the practised one.</summary>
    public ImmutableArray<double> Own { get; init; } = [];

    /// <summary>Sums.</summary>
    public Ledger Ledger { get; init; } = new();
}
