using Panside.Practice.Chance;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds.Drafted;

/// <summary>What a rig of the drafted world is like: sizes by the pan's area, the firebrick and the charge. No source where none is named.</summary>
internal sealed record DraftedRig
{
    /// <summary>Density of hard firebrick, in kg/m³.</summary>
    private const double BrickDensity = 2000;

    /// <summary>Thickness of a split brick, an inch and a quarter, in m.</summary>
    private const double SplitThickness = 0.032;

    /// <summary>Height of the stack over the grate, in m.</summary>
    public required double StackHeight { get; init; }

    /// <summary>Section of the stack, in m².</summary>
    public required double StackSection { get; init; }

    /// <summary>Pressure that the whole way of the gas takes, in heads of its speed in the stack.</summary>
    public required double Friction { get; init; }

    /// <summary>Pressure of the blower, in Pa; none by natural draft.</summary>
    public required double Blower { get; init; }

    /// <summary>Share of the air that comes up through the grate under a usual bed.</summary>
    public required double Primary { get; init; }

    /// <summary>Gas at the usual firing, in kg/s: the flow that the exchanges are for.</summary>
    public required double UsualFlow { get; init; }

    /// <summary>Exchange of gas and pan at that flow, in MW/K.</summary>
    public required double PanExchange { get; init; }

    /// <summary>Exchange of gas and brick at that flow, in MW/K.</summary>
    public required double BrickExchange { get; init; }

    /// <summary>Exchange of gas and stack, in MW/K.</summary>
    public required double StackExchange { get; init; }

    /// <summary>Heat capacity of the stack's sheet, in MJ/K.</summary>
    public required double StackCapacity { get; init; }

    /// <summary>What the stack gives to the air, in MW/K.</summary>
    public required double StackLoss { get; init; }

    /// <summary>Heat capacity of one layer of the brick, in MJ/K.</summary>
    public required double LayerCapacity { get; init; }

    /// <summary>Conduction from layer to layer, in MW/K.</summary>
    public required double LayerConduction { get; init; }

    /// <summary>Conduction from the last layer to the air, in MW/K.</summary>
    public required double BackLoss { get; init; }

    /// <summary>Emissivity times area of brick times what it sees of the pan, in m².</summary>
    public required double BrickSees { get; init; }

    /// <summary>Radius of a piece of the usual charge, in m.</summary>
    public required double PieceRadius { get; init; }

    /// <summary>Heat that the usual bed would burn in a second if air were no limit, in MW.</summary>
    public required double BedReach { get; init; }

    /// <summary>Heat of the usual bed, in MJ.</summary>
    public required double UsualBed { get; init; }

    /// <summary>A rig by its file's sizes.</summary>
    /// <param name="makeup">As practice would make it.</param>
    /// <param name="random">The rig's own chance; null for the nominal rig.</param>
    public static DraftedRig Of(Makeup makeup, RandomStream? random)
    {
        var forced = makeup.Forced;
        var size = makeup.Size;
        var charge = makeup.Rig.Charge.Kilograms;
        var brick = random.About(double.Max(makeup.Rig.Firebrick.Kilograms, 5), 0.12);
        var area = double.Min(brick / (BrickDensity * SplitThickness), 1.4 * makeup.Area);
        var layerThickness = brick / (BrickDensity * area) / Layers;
        var bed = (forced ? BedForced : BedNatural) * size;
        return new()
        {
            StackHeight = random.About(2.7, 0.08),
            StackSection = random.About(0.0314 * size, 0.08),
            Friction = random.About(forced ? 20 : 11, 0.2),
            Blower = forced ? random.About(48, 0.15) : 0,
            Primary = forced ? 0.7 : 0.45,
            UsualFlow = (forced ? 0.060 : 0.041) * size,
            PanExchange = random.About((forced ? PanForced : PanNatural) * size, 0.2),
            BrickExchange = random.About((forced ? 0.8 : 1) * BrickOfGas * area, 0.2),
            StackExchange = 14e-6 * size,
            StackCapacity = 6e-3 * size,
            StackLoss = 22e-6 * size,
            LayerCapacity = brick / Layers * 1e-3,
            LayerConduction = random.About(BrickConducts, 0.15) * area / layerThickness,
            BackLoss = random.About(4e-6, 0.2) * area,
            BrickSees = random.About(0.24, 0.2) * area,
            PieceRadius = random.About((forced ? RadiusForced : RadiusNatural) * double.Cbrt(charge / 2.27), 0.14),
            BedReach = random.About(bed / (forced ? ReachForced : ReachNatural), 0.2),
            UsualBed = bed,
        };
    }

    /// <summary>Layers of the slab.</summary>
    public const int Layers = 6;

    private const double PanNatural = 22.5e-6;
    private const double PanForced = 17.5e-6;

    /// <summary>Exchange of gas and a square meter of brick, in MW/(m² K): mostly the flame's radiation made linear.</summary>
    private const double BrickOfGas = 38e-6;

    /// <summary>Conductivity of fireclay brick, in MW/(m K): handbooks, 0.9 to 1.3 W/(m K), from memory.</summary>
    private const double BrickConducts = 1.0e-6;

    private const double RadiusNatural = 0.021;
    private const double RadiusForced = 0.0152;
    private const double BedNatural = 46;
    private const double BedForced = 14;
    private const double ReachNatural = 2000;
    private const double ReachForced = 190;
}
