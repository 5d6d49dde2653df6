using Panside.Practice.Chance;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds.Gusty;

/// <summary>What a rig of the gusty world is like: sizes by the pan's area, the firebrick and the charge. No source where none is named.</summary>
internal sealed record GustyRig
{
    /// <summary>What its wood and its wind are hashed from.</summary>
    public required ulong Number { get; init; }

    /// <summary>Air that stack or blower draw in still weather, in kg/s.</summary>
    public required double Air { get; init; }

    /// <summary>Air that leaks in through the arch, beside that.</summary>
    public required double Leaks { get; init; }

    /// <summary>How far a gust raises or lowers the draft at most; a blower feels less of it.</summary>
    public required double Gusts { get; init; }

    /// <summary>Seconds in which flame that has caught grows by e over a usual charge.</summary>
    public required double SpreadSeconds { get; init; }

    /// <summary>Heat of coals that covers the grate, in MJ.</summary>
    public required double GrateCoals { get; init; }

    /// <summary>Heat that a covered grate burns in a second in still weather, in MJ.</summary>
    public required double GrateBurns { get; init; }

    /// <summary>Share of the heat of the gas over the pan's that comes to the pan at the usual flow.</summary>
    public required double PanTakes { get; init; }

    /// <summary>Share of the fire's heat that shines on the pan.</summary>
    public required double PanSees { get; init; }

    /// <summary>Exchange of gas and brick, in MW/K.</summary>
    public required double BrickExchange { get; init; }

    /// <summary>Emissivity times area of brick that shines on the pan, in m²; through the open door the half of it shines out.</summary>
    public required double BrickShines { get; init; }

    /// <summary>Heat capacity of the brick, in MJ/K.</summary>
    public required double BrickCapacity { get; init; }

    /// <summary>Exchange of gas and the arch's metal, in MW/K.</summary>
    public required double MetalExchange { get; init; }

    /// <summary>What the metal gives to the air, in MW/K.</summary>
    public required double MetalLoss { get; init; }

    /// <summary>Heat capacity of the arch's metal, in MJ/K.</summary>
    public required double MetalCapacity { get; init; }

    /// <summary>Conduction from the brick to the base, in MW/K.</summary>
    public required double BrickToBase { get; init; }

    /// <summary>What the base gives to the ground, in MW/K.</summary>
    public required double BaseLoss { get; init; }

    /// <summary>Heat capacity of the base, in MJ/K.</summary>
    public required double BaseCapacity { get; init; }

    /// <summary>Water in the base at the start, in kg.</summary>
    public required double BaseWater { get; init; }

    /// <summary>A rig by its file's sizes.</summary>
    /// <param name="makeup">As practice would make it.</param>
    /// <param name="random">The rig's own chance; null for the nominal rig.</param>
    public static GustyRig Of(Makeup makeup, RandomStream? random)
    {
        var forced = makeup.Forced;
        var size = makeup.Size;
        var brick = double.Max(makeup.Rig.Firebrick.Kilograms, 5);

        // Heat is taken up by a surface: a heavier lining is mostly a thicker one.
        var lining = size * double.Sqrt(brick / 54 / size);
        var charge = makeup.Rig.Charge.Kilograms;
        return new()
        {
            Number = (ulong)((random?.Unit() ?? 0.5) * (1L << 52)),
            Air = random.About((forced ? AirForced : AirNatural) * size, 0.12),
            Leaks = random.About(0.15, 0.3),
            Gusts = forced ? 0.2 : 0.5,
            SpreadSeconds = random.About((forced ? SpreadForced : SpreadNatural) * double.Cbrt(charge / 2.27), 0.15),
            GrateCoals = random.About((forced ? GrateForced : GrateNatural) * size, 0.2),
            GrateBurns = random.About((forced ? BurnsForced : BurnsNatural) * size, 0.15),
            PanTakes = double.Min(random.About(forced ? TakesForced : TakesNatural, 0.14), 0.8),
            PanSees = random.About(0.07, 0.2),
            BrickExchange = random.About((forced ? 24e-6 : 18e-6) * lining, 0.2),
            BrickShines = random.About(0.20 * lining, 0.2),
            BrickCapacity = random.About(brick * 1.0e-3, 0.15),
            MetalExchange = 7e-6 * size,
            MetalLoss = random.About(8e-6, 0.2) * size,
            MetalCapacity = random.About(30 * 0.5e-3, 0.2) * size,
            BrickToBase = random.About(7e-6, 0.2) * lining,
            BaseLoss = random.About(4e-6, 0.3) * size,
            BaseCapacity = random.About(0.04, 0.3) * size,
            BaseWater = random.About(3.5, 0.3) * size,
        };
    }

    private const double AirNatural = 0.042;
    private const double AirForced = 0.064;
    private const double SpreadNatural = 120;
    private const double SpreadForced = 70;
    private const double GrateNatural = 48;
    private const double GrateForced = 10;
    private const double BurnsNatural = 0.0235;
    private const double BurnsForced = 0.055;
    private const double TakesNatural = 0.32;
    private const double TakesForced = 0.235;
}
