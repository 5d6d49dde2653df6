using System.Collections.Immutable;
using Panside.Guide.Rigs;
using Panside.Practice.Chance;
using Panside.Practice.Mishaps;
using Panside.Practice.Physics;

namespace Panside.Practice.Scenarios;

/// <summary>Where a person takes over.</summary>
public enum Begins
{
    /// <summary>Before the fire.</summary>
    Cold,

    /// <summary>The pan has boiled well for a quarter of an hour.</summary>
    MidBoil,

    /// <summary>The assistant says that a draw is near, or opens one.</summary>
    DrawDue,

    /// <summary>The assistant says to put in no more wood.</summary>
    LastCharge,

    /// <summary>The pan has boiled well, then the laptop was off for twelve minutes.</summary>
    PowerCut,
}

/// <summary>Where a practice boil begins.</summary>
/// <param name="Name">As it is typed.</param>
/// <param name="Summary">What it is, in a sentence.</param>
/// <param name="TankLiters">Sap in the head tank for each square meter of pan.</param>
/// <param name="PanBrix">Mean sugar of what the last boil left in the pan; null where the pan holds raw sap.</param>
/// <param name="PanDepth">Depth in the pan, as a multiple of the depth it is run at.</param>
public sealed record Scenario(string Name, string Summary, double TankLiters, double? PanBrix, double PanDepth)
{
    /// <summary>Where a person takes over; what comes before is done by the simulated operator.</summary>
    public Begins Begins { get; init; } = Begins.Cold;

    /// <summary>The built-in rig that it wants, as its file is named; null for any.</summary>
    public string? RigName { get; init; }

    /// <summary>The weather.</summary>
    public Weather Weather { get; init; } = Weather.Steady;

    /// <summary>What goes wrong, and when.</summary>
    public IReadOnlyList<PlannedMishap> Mishaps { get; init; } = [];

    /// <summary>What the person is asked to try; an operator without a person tries nothing.</summary>
    public IReadOnlyList<Check> Checks { get; init; } = [];

    /// <summary>Whether it burns a pan whose operator goes by habit alone, at least now and then.</summary>
    public bool IsDangerous { get; init; }

    /// <summary>A whole boil from a cold pan that still holds the last boil's half-done sap, with a draw or two.</summary>
    public static readonly Scenario ColdStart = new(
        "cold-start", "a whole boil from a cold pan, some 24 gal of sap in the tank", 122, 18, 1.2);

    /// <summary>A whole boil from raw sap: sweetening without a draw.</summary>
    public static readonly Scenario RawSap = new(
        "raw-sap", "a whole boil from a cold pan of raw sap; some 25 gal in the tank, too little for a draw", 127, null, 1.05);

    /// <summary>Little sap: the shutdown comes soon after the first boil.</summary>
    public static readonly Scenario LastHour = new(
        "last-hour", "a cold pan with little sap in the tank, some 12 gal: the last charge comes within an hour of the boil", 61, 8, 1.2);

    /// <summary>All of them, the default first.</summary>
    public static IReadOnlyList<Scenario> All { get; } = [ColdStart, RawSap, LastHour];

    /// <summary>By its name; null where there is none.</summary>
    public static Scenario? Named(string name) => All.FirstOrDefault(scenario => scenario.Name == name);

    /// <summary>The rig at the start.</summary>
    internal Truth Start(Makeup makeup, RandomStream random)
    {
        var sapBrix = random.Between(1.7, 2.6);
        var panBrix = PanBrix is { } left ? left * random.Factor(0.12) : sapBrix;
        var depth = makeup.Rig.RunDepth.Meters * PanDepth * random.Factor(0.04);
        var tank = double.Min(TankLiters * makeup.Area * random.Factor(0.06), makeup.Rig.Tank.Liters);
        var cell = Liquid(makeup, panBrix, makeup.AirCelsius + 4, depth * makeup.CellArea * 1000);
        var behind = makeup.Rig.Back is { } back ? Enumerable.Repeat(Behind(makeup, back, sapBrix, panBrix, depth / makeup.Rig.RunDepth.Meters), makeup.BackCells) : [];
        return new()
        {
            Pan = [.. behind, .. Enumerable.Repeat(cell, makeup.HeatShares.Length - makeup.BackCells)],
            Tank = Liquid(makeup, sapBrix, makeup.SapCelsius, tank),
            FloatMeters = (makeup.Rig.Back?.RunDepth ?? makeup.Rig.RunDepth).Meters,
            FrontFloatMeters = makeup.Rig.RunDepth.Meters,
            BrickCelsius = makeup.AirCelsius,
        };
    }

    /// <summary>The pan behind is left much thinner than the one where syrup is drawn: a quarter of the way from sap to it. No source.</summary>
    private static Cell Behind(Makeup makeup, PanBehind back, double sapBrix, double panBrix, double filled) => Liquid(
        makeup, sapBrix + ((panBrix - sapBrix) / 4), makeup.AirCelsius + 4,
        (back.RunDepth.Meters * filled * makeup.BackCellArea * 1000) + makeup.FlueLiters);

    /// <summary>A solution of so many liters.</summary>
    internal static Cell Liquid(Makeup makeup, double brix, double celsius, double liters)
    {
        var mass = liters / makeup.Materials.LitersOf(brix / 100, celsius);
        var liquid = new Cell(mass * (1 - (brix / 100)), mass * brix / 100, 0);
        return liquid with { Heat = liquid.Capacity(makeup.Materials) * celsius };
    }
}
