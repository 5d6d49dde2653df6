using Panside.Practice.Physics;
using Panside.Workshop.Worlds.Wood;

namespace Panside.Workshop.Worlds.Kinetic;

/// <summary>
/// The bed of coals: oxygen comes to its surface through the film of the gas around it and through the ash that lies on it, one after the
/// other; the surface shrinks with the two-thirds power. After the shrinking core of Levenspiel, Chemical Reaction Engineering, from memory.
/// </summary>
internal static class KineticBed
{
    /// <summary>Ash of a MJ of char, in kg: 2 % of char by mass, handbooks for hardwood bark and all, from memory.</summary>
    private const double AshOfHeat = 0.02 / 30;

    /// <summary>Ash a MJ of the usual bed that halves its burning, in kg. No source, calibrated.</summary>
    private const double AshThatHalves = 1.5e-3;

    /// <summary>Share of the ash that poking at a charge lets fall. No source.</summary>
    public const double Poked = 0.25;

    /// <summary>Share of the ash that falls through the grate in a second; from a raked bed. No source.</summary>
    private const double Falls = 1 / 3600.0, FallsRaked = 1 / 60.0;

    /// <summary>Surface of a raked bed beside a heaped one. No source.</summary>
    private const double Raked = 1.25;

    /// <summary>Share of the air's oxygen that the bed can get. No source.</summary>
    private const double Reached = 0.6;

    /// <summary>Heat that burns in a second, in MJ, and ash on the bed afterwards, in kg.</summary>
    /// <param name="rig">Its sizes.</param>
    /// <param name="truth">The rig.</param>
    /// <param name="air">Air, in kg/s.</param>
    /// <param name="ash">Ash on the bed, in kg.</param>
    public static (double Burns, double Ash) Next(KineticRig rig, Truth truth, double air, double ash)
    {
        var share = truth.Coals / rig.UsualBed;
        var surface = double.Cbrt(share * share) * (truth.CoalsLevel ? Raked : 1);
        var film = 1 / double.Sqrt(air / rig.Air);
        var layer = ash / (AshThatHalves * rig.UsualBed * double.Max(surface, 0.05));
        var burns = rig.BedBurns * surface / (film + layer);
        burns = double.Min(double.Min(burns, Reached * air * FlueGas.HeatOfAir), truth.Coals);
        burns = share < 1e-5 ? truth.Coals : burns;
        return (burns, (ash + (burns * AshOfHeat)) * (1 - (truth.CoalsLevel ? FallsRaked : Falls)));
    }
}
