using System.Collections.Immutable;
using Panside.Guide.Rigs;
using Panside.Practice.Chance;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Practice.Physics;

/// <summary>
/// What does not change through a boil: the rig file's sizes, and what the rig is like beyond them. No published value exists
/// for most of it; the nominal figures are calibrated to what common practice reports of a pan of 2 ft by 4 ft (8 gal/h by
/// natural draft, 12 gal/h with a blower, 4 to 6 gal after the last charge, a third of the time with a blower), and each rig
/// is drawn around them.
/// </summary>
internal sealed record Makeup
{
    /// <summary>The pan of 2 ft by 4 ft that the figures are made for, in m².</summary>
    public const double SmallPan = 0.743;

    private const double Char = 0.35;

    /// <summary>The rig file.</summary>
    public required Rig Rig { get; init; }

    /// <summary>How it goes on from second to second.</summary>
    public World World { get; init; } = World.Practised;

    /// <summary>What a world has drawn of this rig on top, of a type of its own; null in the practised one.</summary>
    public object? Own { get; init; }

    /// <summary>Water, sugar and steam today.</summary>
    public required Materials Materials { get; init; }

    /// <summary>Plan area of one cell, in m²; of two pans, of one in the pan where the draw-off is.</summary>
    public required double CellArea { get; init; }

    /// <summary>Cells of the pan behind, which are the first ones; 0 where there is one pan.</summary>
    public int BackCells { get; init; }

    /// <summary>Plan area of one of those, in m².</summary>
    public double BackCellArea { get; init; }

    /// <summary>What the flues below one of those hold, in liters.</summary>
    public double FlueLiters { get; init; }

    /// <summary>The most that the float between two pans lets on, in kg/s.</summary>
    public double MostOn { get; init; }

    /// <summary>Each cell's share of the heat when the coals lie level; they add to 1.</summary>
    public required ImmutableArray<double> HeatShares { get; init; }

    /// <summary>Temperature of the air, in °C.</summary>
    public double AirCelsius { get; init; } = 2;

    /// <summary>Temperature of the sap, in °C.</summary>
    public double SapCelsius { get; init; } = 3;

    /// <summary>Share of the fire's heat that comes to the pan at once.</summary>
    public required double ToPan { get; init; }

    /// <summary>Share of what the draft takes from the brick that comes to the pan.</summary>
    public double SweptToPan { get; init; } = 0.3;

    /// <summary>Share of the wood's heat that its char holds.</summary>
    public double CharShare { get; init; } = Char;

    /// <summary>Seconds in which the usual charge flames out.</summary>
    public required double FlameSeconds { get; init; }

    /// <summary>Seconds in which the usual bed of coals would burn at its first rate.</summary>
    public required double CoalSeconds { get; init; }

    /// <summary>Heat of the usual bed of coals, in MJ.</summary>
    public required double UsualCoals { get; init; }

    /// <summary>The fire's power at the rig's own firing, in MW.</summary>
    public required double UsualFire { get; init; }

    /// <summary>Heat capacity of the brick, in MJ/K.</summary>
    public required double BrickCapacity { get; init; }

    /// <summary>Emissivity times the area of brick that the pan sees, in m².</summary>
    public required double BrickSees { get; init; }

    /// <summary>Exchange of brick and gas at the usual draft, in MW/K.</summary>
    public required double BrickExchange { get; init; }

    /// <summary>Loss of the brick through the walls, in MW/K.</summary>
    public required double WallLoss { get; init; }

    /// <summary>
    /// Heat into the pan, in MW, that so many kilograms of water a second leave it at: cold sap warmed up for them, their steam, and what the
    /// surface gives to the air. The balance of water and heat of a pan that boils.
    /// </summary>
    private static double HeatToBoil(Makeup pan, double kilograms) =>
        (kilograms * (pan.Materials.Latent + (pan.Materials.WaterHeat * (pan.Materials.BoilingCelsius - pan.SapCelsius))))
        + (pan.SurfaceLoss * pan.Area * (pan.Materials.BoilingCelsius - pan.AirCelsius));

    /// <summary>How much hotter than the air the gas is at the usual fire, in K.</summary>
    public required double GasRise { get; init; }

    /// <summary>Heat that a square meter of surface gives to the air, in MW/(m² K): no source, calibrated.</summary>
    public double SurfaceLoss { get; init; } = 11e-6;

    /// <summary>Water that a square meter of hot surface gives off below the boil, in kg/(s kPa): no source, calibrated.</summary>
    public double SurfaceVapor { get; init; } = 1.1e-5;

    /// <summary>How fast foam grows at a full boil, a second.</summary>
    public double Foaming { get; init; } = 1 / 5400.0;

    /// <summary>Flow between neighbors, in kg/s for a meter of difference in level.</summary>
    public required double Passage { get; init; }

    /// <summary>Exchange between neighbors at a full boil without any flow, in kg/s.</summary>
    public required double Mixing { get; init; }

    /// <summary>The most that the open float lets in, in kg/s.</summary>
    public required double MostFeed { get; init; }

    /// <summary>Heat of a kilogram of wood as fired, in MJ.</summary>
    public required double WoodHeat { get; init; }

    /// <summary>The opening at which the float hangs: 0 shut, 1 wide open; null where it moves freely.</summary>
    public double? FloatHangs { get; init; }

    /// <summary>What the tank loses beside the pan, in kg/s.</summary>
    public double TankLeak { get; init; }

    /// <summary>What drips out at the shut draw-off, in kg/s.</summary>
    public double DrawOffDrip { get; init; }

    /// <summary>The draft beside what it should be: 1 as it should, 0.1 with a dead blower or a fallen stack.</summary>
    public double DraftShare { get; init; } = 1;

    /// <summary>Resistance of a scaled floor beside a clean one.</summary>
    public double Scale { get; init; } = 1;

    /// <summary>How much higher the floor lies at the draw-off than at the feed, in m.</summary>
    public double Tilt { get; init; }

    /// <summary>Whether a blower feeds the fire.</summary>
    public bool Forced => Rig.Draft == Draft.Forced && !Rig.IsBurner;

    /// <summary>The plan area of all that stands over the fire, in m².</summary>
    public double Area => (BackCellArea * BackCells) + (CellArea * (HeatShares.Length - BackCells));

    /// <summary>The area of all that stands over the fire beside that pan's of 2 ft by 4 ft.</summary>
    public double Size => Area / SmallPan;

    /// <summary>Plan area of a cell, in m².</summary>
    /// <param name="cell">The cell.</param>
    public double AreaOf(int cell) => cell < BackCells ? BackCellArea : CellArea;

    /// <summary>Plan area of the pan that a cell is in, in m².</summary>
    /// <param name="cell">The cell.</param>
    public double PanAreaOf(int cell) => cell < BackCells ? BackCellArea * BackCells : CellArea * (HeatShares.Length - BackCells);

    /// <summary>What the fire sees of a cell's floor, its flues with it, in m².</summary>
    /// <param name="cell">The cell.</param>
    public double HeatedOf(int cell) => AreaOf(cell) * (cell < BackCells ? Rig.Back!.HeatedTimes : 1);

    /// <summary>A rig that is in everything as common practice has it.</summary>
    public static Makeup Nominal(Rig rig) => Of(rig, StandardAtmosphere.PressureAt(rig.Altitude), null);

    /// <summary>A rig of its own, drawn around the nominal one.</summary>
    public static Makeup Drawn(Rig rig, RandomStream random)
    {
        var pressure = Pressure.FromKilopascals(
            StandardAtmosphere.PressureAt(rig.Altitude).Kilopascals + (0.7 * random.Normal()));
        var one = Of(rig, Panside.Guide.Knowledge.Setting.Within(pressure), random);
        return one with
        {
            AirCelsius = random.Between(-4, 8),
            SapCelsius = random.Between(1, 7),
            ToPan = one.ToPan * random.Factor(0.08),
            SweptToPan = random.Between(0.2, 0.4),
            CharShare = rig.IsBurner ? 0 * random.Unit() : random.Between(0.29, 0.41),
            FlameSeconds = one.FlameSeconds * random.Factor(0.12),
            CoalSeconds = one.CoalSeconds * random.Factor(0.15),
            BrickSees = one.BrickSees * random.Factor(0.12),
            BrickExchange = one.BrickExchange * random.Factor(0.12),
            WallLoss = one.WallLoss * random.Factor(0.2),
            SurfaceLoss = one.SurfaceLoss * random.Factor(0.2),
            SurfaceVapor = one.SurfaceVapor * random.Factor(0.2),
            Foaming = one.Foaming * random.Factor(0.3),
            Mixing = one.Mixing * random.Factor(0.25),
            WoodHeat = one.WoodHeat * random.Between(0.94, 1.02),
        };
    }

    /// <summary>
    /// A burner as its rig file has it: its power from what it is said to boil away, most of it straight to the pan, the rest by way of an
    /// arch that gets as hot as it must to radiate so much. Of a coil more comes to the pan at once than of a flame. No source; the nominal
    /// one boils what its file says: tested, in every world.
    /// </summary>
    private static Makeup OfBurner(Makeup wood, Rig rig)
    {
        var (toPan, byArch) = rig.Fuel == Fuel.Electric ? (0.78, 0.05) : (0.44, 0.17);
        var fire = HeatToBoil(wood, rig.Boils.LitersPerHour / 3600) / (toPan + byArch);
        return wood with
        {
            ToPan = toPan,
            UsualFire = fire,
            GasRise = RiseFor(wood, byArch * fire),
            UsualCoals = 1e-3,
            CharShare = 0,
        };
    }

    /// <summary>How much hotter than the air the gas must be, in K, for an arch that radiates so much, in MW: where what it takes is what it gives.</summary>
    private static double RiseFor(Makeup arch, double radiated)
    {
        var pan = double.Pow(arch.Materials.BoilingCelsius + Fire.Kelvin, 4);
        var brick = double.Sqrt(double.Sqrt((radiated / (Fire.Radiation * arch.BrickSees)) + pan)) - Fire.Kelvin;
        var walls = arch.WallLoss * (brick - arch.AirCelsius);
        return brick + ((radiated + walls) / arch.BrickExchange) - arch.AirCelsius;
    }


    private static Makeup Of(Rig rig, Pressure station, RandomStream? random)
    {
        var made = OfWood(rig, station, random);
        return rig.IsBurner ? OfBurner(made, rig) : made;
    }

    private static Makeup OfWood(Rig rig, Pressure station, RandomStream? random)
    {
        var cells = Cells(rig.Channels);
        var backCells = rig.Back is { } behind ? Cells(behind.Channels) : 0;
        var (area, front) = (rig.WholeArea.SquareMeters, rig.PanArea.SquareMeters);
        var backCellArea = rig.Back is { } back ? back.Area.SquareMeters / backCells : 0;
        var forced = rig.Draft == Draft.Forced;
        var heat = Firewood.HeatAsFired(FirewoodNames.FromName(rig.WoodSpecies), rig.Charge, rig.WoodMoisture).Megajoules;
        var fire = heat / rig.Interval.TotalSeconds;
        var coalSeconds = forced ? 330.0 : 2400.0;
        return new()
        {
            Rig = rig,
            ToPan = forced ? 0.295 : 0.275,
            Materials = new(station),
            CellArea = front / cells,
            BackCells = backCells,
            BackCellArea = backCellArea,
            FlueLiters = rig.Back is { } flued ? flued.InFlues.Liters / backCells : 0,
            MostOn = 0.12 * area / SmallPan,
            HeatShares = rig.Back is { } heated ? Shares(heated, front, backCells, cells, random) : Shares(cells, random),
            FlameSeconds = forced ? 420 : 960,
            CoalSeconds = coalSeconds,
            UsualCoals = Char * fire * coalSeconds,
            UsualFire = fire,
            BrickCapacity = double.Max(rig.Firebrick.Kilograms, 5) * 1e-3,
            BrickSees = 0.30 * area,
            BrickExchange = (forced ? 55e-6 : 19e-6) * area / SmallPan,
            WallLoss = 2e-6 * area / SmallPan,
            GasRise = forced ? 900 : 1150,
            Passage = double.Min(30 * area / SmallPan, 200 * (backCells > 0 ? double.Min(front / cells, backCellArea) : area / cells)),
            Mixing = 0.008 * area / SmallPan,
            MostFeed = 0.12 * area / SmallPan,
            WoodHeat = heat / rig.Charge.Kilograms,
        };
    }

    private static int Cells(int channels) => channels == 1 ? 2 : 2 * channels;

    /// <summary>
    /// Of two pans each cell has its part of the floor that the fire sees, give or take. Over the fire itself it is hotter than behind, by
    /// an eighth or so: no source.
    /// </summary>
    private static ImmutableArray<double> Shares(PanBehind back, double front, int backCells, int cells, RandomStream? random)
    {
        var behind = back.Area.SquareMeters * back.HeatedTimes * (random?.Factor(0.1) ?? 1);
        var inFront = front * (random?.Between(1, 1.25) ?? 1.125);
        return
        [
            .. Shares(backCells, random).Select(share => share * behind / (behind + inFront)),
            .. Shares(cells, random).Select(share => share * inFront / (behind + inFront)),
        ];
    }

    /// <summary>The path goes forth and back over the fire: every cell in front of the stack gets less.</summary>
    private static ImmutableArray<double> Shares(int cells, RandomStream? random)
    {
        var shares = Enumerable.Range(0, cells)
            .Select(cell => (((cell + 1) / 2) % 2 == 0 ? 0.85 : 1.15) * (random?.Factor(0.08) ?? 1))
            .ToList();
        return [.. shares.Select(share => share / shares.Sum())];
    }
}
