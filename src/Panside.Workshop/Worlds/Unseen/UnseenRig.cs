using Panside.Practice.Chance;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds.Unseen;

/// <summary>
/// What this world draws of a rig on top of the rig file. Sizes follow the pan's area, the brick's mass and the usual fire; the
/// rest is calibrated to common practice, without a source where none is named.
/// </summary>
internal sealed record UnseenRig
{
    /// <summary>Seconds of a batch's burning in a hot box, before its shape is taken into account.</summary>
    public required double BatchSeconds { get; init; }

    /// <summary>A batch's pace in a cold box beside a hot one: a blower's cold air holds it back more.</summary>
    public required double ColdPace { get; init; }

    /// <summary>Share of the wood's heat that its char holds: a yield of a fifth to a quarter of 32 MJ/kg in 18.5 MJ/kg.</summary>
    public required double CharShare { get; init; }

    /// <summary>Power of the usual bed of coals at the usual draft, in MW.</summary>
    public required double BedPower { get; init; }

    /// <summary>Heat of the usual bed of coals, in MJ.</summary>
    public required double Bed { get; init; }

    /// <summary>Air at the usual draft, in kg/s.</summary>
    public required double Air { get; init; }

    /// <summary>Transfer units from gas to the pan at the usual draft.</summary>
    public required double PanUnits { get; init; }

    /// <summary>Transfer units from gas to the walls of the fire box at the usual draft.</summary>
    public required double WallUnits { get; init; }

    /// <summary>The most of a flame's heat that it radiates, when it is thick.</summary>
    public required double Radiates { get; init; }

    /// <summary>Share of the radiation that falls on the pan; the walls get the rest.</summary>
    public required double PanView { get; init; }

    /// <summary>Share of the fire box's walls that is lined with brick.</summary>
    public required double Lined { get; init; }

    /// <summary>Heat capacity of the brick's hot third, in MJ/K.</summary>
    public required double FaceCapacity { get; init; }

    /// <summary>Heat capacity of the rest of the brick, in MJ/K.</summary>
    public required double BackCapacity { get; init; }

    /// <summary>Conduction from the brick's face to its back, in MW/K.</summary>
    public required double Through { get; init; }

    /// <summary>Contact of the brick's back and the steel, in MW/K.</summary>
    public required double Contact { get; init; }

    /// <summary>Heat capacity of the steel sides, in MJ/K.</summary>
    public required double SteelCapacity { get; init; }

    /// <summary>Outer area of the steel sides, in m².</summary>
    public required double SteelArea { get; init; }

    /// <summary>Emissivity times view times area by which the brick's face radiates to the pan, in m².</summary>
    public required double FaceSees { get; init; }

    /// <summary>Heat capacity of the stack's metal, in MJ/K.</summary>
    public required double PipeCapacity { get; init; }

    /// <summary>Loss of the stack's metal to the air, in MW/K.</summary>
    public required double PipeLoss { get; init; }

    /// <summary>How much a bed's ash hinders the air, beside a bed without ash.</summary>
    public required double AshHinders { get; init; }

    /// <summary>Seconds for which ash lies over the coals.</summary>
    public required double AshSeconds { get; init; }

    /// <summary>Surface loss of the pan beside the correlation's.</summary>
    public required double Surface { get; init; }

    /// <summary>Mixing of the pan by bubbles beside the usual one.</summary>
    public required double Stirring { get; init; }

    /// <summary>What the tank's gauge shows beside what is there, an error that stays.</summary>
    public required double Gauge { get; init; }

    /// <summary>A rig of its own; the nominal one without chance.</summary>
    public static UnseenRig Of(Makeup makeup, RandomStream? random)
    {
        double Factor(double deviation) => random?.Factor(deviation) ?? 1;
        var (forced, area, fire, brick) = (makeup.Forced, makeup.Area, makeup.UsualFire, makeup.Rig.Firebrick.Kilograms);
        // The day's wood: dry and fine burns faster, and leaves less char, than moist and coarse. That moist logs burn slower is common
        // in stove tests (Skreiberg 1997, from memory); 2 % for a point of moisture has no source.
        var temper = Factor(0.15) * double.Clamp(1 + (2 * (makeup.Rig.WoodMoisture - 0.2)), 0.8, 1.6);
        var charShare = double.Clamp(0.34 * Factor(0.07) * double.Pow(temper, 0.3), 0.22, 0.45);
        var bed = (forced ? 6.5 : 33) * fire / (forced ? 0.098 : 0.063) * Factor(0.12);
        // Firebrick of 1¼ in: 73 kg cover a square meter.
        var (lining, walls, sizes) = (brick / 73, 1.1 * area, makeup.Size);
        var heavy = Factor(0.15);
        return new()
        {
            BatchSeconds = (forced ? 134 : 430) * temper,
            ColdPace = forced ? 0.33 : 0.8,
            CharShare = charShare,
            BedPower = 0.34 * fire * Factor(0.1),
            Bed = bed,
            Air = fire * (forced ? 2.2 : 1.9) / UnseenFire.MegajoulesPerAir,
            PanUnits = (forced ? 0.21 : 0.33) * Factor(0.12),
            WallUnits = (forced ? 0.07 : 0.12) * Factor(0.15),
            Radiates = (forced ? 0.23 : 0.30) * Factor(0.12),
            PanView = 0.5 * Factor(0.06),
            Lined = double.Min(lining / walls, 0.97),
            FaceCapacity = double.Max(brick, 4) * 0.001 * heavy / 3,
            BackCapacity = double.Max(brick, 4) * 0.001 * heavy * 2 / 3,
            Through = 52e-6 * double.Max(lining, 0.05) * Factor(0.15),
            Contact = 11e-6 * double.Max(lining, 0.05) * Factor(0.3),
            SteelCapacity = 0.024 * sizes * Factor(0.15),
            SteelArea = 1.7 * sizes,
            FaceSees = 0.24 * area * Factor(0.12),
            PipeCapacity = 0.0075 * sizes,
            PipeLoss = 22e-6 * sizes * Factor(0.15),
            AshHinders = 1.1 * Factor(0.3),
            AshSeconds = (forced ? 400 : 1600) * Factor(0.2),
            Surface = 0.34 * Factor(0.25),
            Stirring = Factor(0.3),
            Gauge = random is null ? 1.01 : 1 + (0.015 * random.Normal()),
        };
    }
}
