using Panside.Practice.Chance;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds.Kinetic;

/// <summary>What a rig of the kinetic world is like: sizes by the pan's area, the firebrick and the charge. No source where none is named.</summary>
internal sealed record KineticRig
{
    /// <summary>Air that the damper lets in, in kg/s.</summary>
    public required double Air { get; init; }

    /// <summary>Radius of a piece of the usual charge, in m.</summary>
    public required double PieceRadius { get; init; }

    /// <summary>Radius of a stick that the fire is lit with, in m.</summary>
    public required double StickRadius { get; init; }

    /// <summary>Heat of the usual bed, in MJ.</summary>
    public required double UsualBed { get; init; }

    /// <summary>Heat that the usual bed, heaped and without ash, burns in a second at the usual air, in MJ.</summary>
    public required double BedBurns { get; init; }

    /// <summary>Emissivity of flame and pan times the pan's area over the fire, in m².</summary>
    public required double PanSees { get; init; }

    /// <summary>Exchange of gas and pan over the fire, in MW/K.</summary>
    public required double PanExchange { get; init; }

    /// <summary>Share of the gas's heat over the pan's that the rear of the pan takes.</summary>
    public required double RearTakes { get; init; }

    /// <summary>Emissivity of flame and brick times the brick's area, in m².</summary>
    public required double BrickSees { get; init; }

    /// <summary>Heat capacity of the hot face, in MJ/K.</summary>
    public required double FaceCapacity { get; init; }

    /// <summary>Heat capacity of what lies behind it, in MJ/K.</summary>
    public required double BackCapacity { get; init; }

    /// <summary>Conduction from face to back, in MW/K.</summary>
    public required double FaceToBack { get; init; }

    /// <summary>Conduction from back to air, in MW/K.</summary>
    public required double BackLoss { get; init; }

    /// <summary>Face that shines on the pan through the gas: emissivity times area times sight, in m².</summary>
    public required double FaceShines { get; init; }

    /// <summary>A rig by its file's sizes.</summary>
    /// <param name="makeup">As practice would make it.</param>
    /// <param name="random">The rig's own chance; null for the nominal rig.</param>
    public static KineticRig Of(Makeup makeup, RandomStream? random)
    {
        var forced = makeup.Forced;
        var size = makeup.Size;
        var charge = makeup.Rig.Charge.Kilograms;
        var brick = random.About(double.Max(makeup.Rig.Firebrick.Kilograms, 5), 0.12);

        // Brick of a 2 ft by 4 ft arch, 54 kg, lines some 0.85 m²; more brick lines more, and lies thicker.
        var lining = 0.85 * double.Sqrt(brick / 54 * size);
        var face = random.About(0.35, 0.15);
        var pan = random.About(forced ? PanForced : PanNatural, 0.14);
        var bed = (forced ? BedForced : BedNatural) * size;
        return new()
        {
            Air = random.About((forced ? AirForced : AirNatural) * size, 0.12),
            PieceRadius = random.About((forced ? RadiusForced : RadiusNatural) * double.Cbrt(charge / 2.27), 0.15),
            StickRadius = 0.0135 * double.Cbrt(charge / 2.27),
            UsualBed = bed,
            BedBurns = random.About(bed / (forced ? BedSecondsForced : BedSecondsNatural), 0.2),
            PanSees = pan * makeup.Area,
            PanExchange = pan * 60e-6 * makeup.Area,
            RearTakes = double.Clamp(random.About(forced ? 0.15 : 0.17, 0.18), 0.05, 0.5),
            BrickSees = random.About(0.22, 0.2) * lining,
            FaceCapacity = brick * face * 1e-3,
            BackCapacity = brick * (1 - face) * 1e-3,
            FaceToBack = random.About(30e-6, 0.2) * lining,
            BackLoss = random.About(5e-6, 0.2) * lining,
            FaceShines = random.About(0.20, 0.2) * lining,
        };
    }

    private const double AirNatural = 0.040;
    private const double AirForced = 0.062;
    private const double PanNatural = 0.125;
    private const double PanForced = 0.14;
    private const double RadiusNatural = 0.020;
    private const double RadiusForced = 0.0102;
    private const double BedNatural = 45;
    private const double BedForced = 15;
    private const double BedSecondsNatural = 1900;
    private const double BedSecondsForced = 210;
}
