using System.Collections.Immutable;
using Panside.Guide.Rigs;

namespace Panside.Practice.Physics;

/// <summary>
/// The pan's cells: float feed into the first, flow by the difference of levels, mixing where the flow is weak, heat by each
/// cell's share, boiling where a cell comes to its own boiling point, losses of the surface, the lid, the draw-off. Of two pans a float
/// lets sap out of the last cell of the one behind into the first of the one in front, one way.
/// </summary>
internal static class Pan
{
    /// <summary>The float is wide open this far below its mark, in m.</summary>
    private const double FloatBand = 0.006;

    /// <summary>Flow that halves the mixing back, in kg/s a square meter of pan: no source, calibrated.</summary>
    private const double FlowThatHolds = 0.0008;

    /// <summary>Full boil for mixing and foam, in kg/s a square meter.</summary>
    private const double FullBoil = 0.011;

    /// <summary>Exchange of heavy and light between neighbors in a still pan, in kg/s a square meter of pan and a unit of mass fraction.</summary>
    private const double Sinking = 0.3;

    /// <summary>Seconds for which a smell hangs.</summary>
    private const double SmokeSeconds = 120;

    /// <summary>Share of steam that a lid lets out.</summary>
    private const double LidLeaks = 0.15;

    /// <summary>One second with this heat from below, in MJ.</summary>
    public static Truth Step(Makeup makeup, Truth truth, double heat)
    {
        var cells = truth.Pan.ToArray();
        var fed = Fed(makeup, truth, Depth(makeup, cells[0], 0));
        cells[0] += fed;
        var drawn = cells[^1].Part(truth.DrawOpen ? DrawRate(makeup, cells[^1]) : 0);
        cells[^1] -= drawn;
        var dripped = cells[^1].Part(makeup.DrawOffDrip);
        cells[^1] -= dripped;
        var leaked = (truth.Tank - fed).Part(makeup.TankLeak);
        var on = makeup.BackCells > 0 ? On(makeup, truth, cells) : default;
        Flow(makeup, cells, on, double.Min(truth.Boil / (FullBoil * makeup.Area), 1.2));
        var foamed = Foam(makeup, truth, cells, out var foam);
        var ledger = truth.Ledger with { Fed = truth.Ledger.Fed + fed, Drawn = truth.Ledger.Drawn + drawn + dripped + foamed, Leaked = truth.Ledger.Leaked + leaked };

        var boil = 0.0;
        for (var cell = 0; cell < cells.Length; cell++)
        {
            var before = heat * Shares(makeup, truth, cell);
            ledger = Heat(makeup, truth, cell, ref cells[cell], before, ledger, ref boil);
        }

        var charred = Scorching.Worst(makeup, truth, heat);
        return truth with
        {
            Pan = [.. cells],
            Tank = truth.Tank - fed - leaked,
            Pail = truth.Pail + drawn,
            Foam = foam,
            DefoamerSeconds = double.Max(truth.DefoamerSeconds - 1, 0),
            Boil = truth.Boil + ((boil - truth.Boil) / 60),
            Scorch = truth.Scorch + charred,
            Smoke = truth.Smoke + charred - (truth.Smoke / SmokeSeconds),
            Ledger = ledger,
        };
    }

    /// <summary>Liquid poured in by hand, over cells from the draw-off side.</summary>
    public static Truth Poured(Truth truth, Cell liquid, int cells)
    {
        var pan = truth.Pan.ToArray();
        for (var cell = pan.Length - cells; cell < pan.Length; cell++)
        {
            pan[cell] += liquid * (1.0 / cells);
        }

        return truth with { Pan = [.. pan], Ledger = truth.Ledger with { Fed = truth.Ledger.Fed + liquid } };
    }

    /// <summary>Liquid poured in by hand, over cells from the feed side.</summary>
    public static Truth PouredAtFeed(Truth truth, Cell liquid, int cells)
    {
        var pan = truth.Pan.ToArray();
        for (var cell = 0; cell < cells; cell++)
        {
            pan[cell] += liquid * (1.0 / cells);
        }

        return truth with { Pan = [.. pan], Ledger = truth.Ledger with { Fed = truth.Ledger.Fed + liquid } };
    }

    /// <summary>Liquid poured in by hand all over one of two pans.</summary>
    public static Truth PouredOver(Makeup makeup, Truth truth, Cell liquid, bool isBack)
    {
        var pan = truth.Pan.ToArray();
        var (from, to) = isBack ? (0, makeup.BackCells) : (makeup.BackCells, pan.Length);
        for (var cell = from; cell < to; cell++)
        {
            pan[cell] += liquid * (1.0 / (to - from));
        }

        return truth with { Pan = [.. pan], Ledger = truth.Ledger with { Fed = truth.Ledger.Fed + liquid } };
    }

    /// <summary>So many liters of sap are dipped out of the tank, as far as it has them, and poured in at the feed side.</summary>
    public static (Truth Then, Cell Sap) Portioned(Makeup makeup, Truth truth, double liters)
    {
        var sap = truth.Tank.Part(liters / makeup.Materials.LitersOf(truth.Tank.Fraction, makeup.SapCelsius));
        return (PouredAtFeed(truth with { Tank = truth.Tank - sap }, sap, int.Max(truth.Pan.Length / makeup.Rig.Channels, 1)), sap);
    }

    /// <summary>Depth of a cell, in m.</summary>
    public static double Depth(Makeup makeup, Cell cell) =>
        cell.Mass * makeup.Materials.LitersOf(cell.Fraction, cell.Celsius(makeup.Materials)) / 1000 / makeup.CellArea;

    /// <summary>Depth of a cell at its place, over the flues below it, in m; less than none where they are not full.</summary>
    public static double Depth(Makeup makeup, Cell cell, int at) => at >= makeup.BackCells
        ? Depth(makeup, cell)
        : ((cell.Mass * makeup.Materials.LitersOf(cell.Fraction, cell.Celsius(makeup.Materials))) - makeup.FlueLiters) / 1000 / makeup.BackCellArea;

    /// <summary>Depths of the pan where the draw-off is, in m.</summary>
    public static IEnumerable<double> Depths(Makeup makeup, Truth truth) => truth.Pan.Skip(makeup.BackCells).Select(cell => Depth(makeup, cell));

    /// <summary>Depths of the pan behind, over its flues, in m; none where there is no such pan.</summary>
    public static IEnumerable<double> BackDepths(Makeup makeup, Truth truth) =>
        truth.Pan.Take(makeup.BackCells).Select(cell => Depth(makeup, cell, 0));

    /// <summary>Mean temperature, in °C.</summary>
    public static double MeanCelsius(Makeup makeup, Truth truth)
    {
        var whole = truth.Pan.Aggregate((a, b) => a + b);
        return whole.Celsius(makeup.Materials);
    }

    /// <summary>A cell's share of the heat: heaped coals favor the two cells nearest to the door.</summary>
    public static double Shares(Makeup makeup, Truth truth, int cell)
    {
        var even = makeup.HeatShares[cell];
        var level = makeup.BackCells == 0 ? 1.0 / makeup.HeatShares.Length : even;
        return truth.CoalsLevel ? (0.5 * even) + (0.5 * level) : even;
    }

    private static Cell Fed(Makeup makeup, Truth truth, double depth)
    {
        if (makeup.Rig.Feed == Feed.ByHand || !truth.ValveOpen)
        {
            return default;
        }

        if (makeup.Rig.Feed == Feed.ByValve)
        {
            return truth.Tank.Part(double.Min(truth.ValveLets, makeup.MostFeed));
        }

        var open = makeup.FloatHangs ?? double.Clamp((truth.FloatMeters - depth) / FloatBand, 0, 1);
        return truth.Tank.Part(open * makeup.MostFeed);
    }

    /// <summary>What the float between two pans lets on in a second: as far as sap stands over the flues.</summary>
    private static Cell On(Makeup makeup, Truth truth, Cell[] cells)
    {
        var (last, first) = (makeup.BackCells - 1, makeup.BackCells);
        var open = double.Clamp((truth.FrontFloatMeters - Depth(makeup, cells[first])) / FloatBand, 0, 1);
        return Depth(makeup, cells[last], last) > LeastOn ? cells[last].Part(double.Min(open * makeup.MostOn, cells[last].Mass / 8)) : default;
    }

    /// <summary>The outlet to the pan in front lies so high over the flues, in m.</summary>
    private const double LeastOn = 0.004;

    private static double DrawRate(Makeup makeup, Cell last) =>
        0.035 * double.Sqrt(double.Max(Depth(makeup, last), 0) / 0.038);

    private static void Flow(Makeup makeup, Cell[] cells, Cell on, double boil)
    {
        Span<Cell> before = stackalloc Cell[cells.Length];
        cells.CopyTo(before);
        Span<double> depth = stackalloc double[cells.Length];
        for (var cell = 0; cell < cells.Length; cell++)
        {
            depth[cell] = Depth(makeup, before[cell], cell) + (makeup.Tilt * cell / (cells.Length - 1));
        }

        for (var cell = 0; cell + 1 < cells.Length; cell++)
        {
            if (cell + 1 == makeup.BackCells)
            {
                cells[cell] -= on;
                cells[cell + 1] += on;
                continue;
            }

            var area = makeup.PanAreaOf(cell);
            var flow = makeup.Passage * (depth[cell] - depth[cell + 1]);
            var moved = flow > 0 ? before[cell].Part(double.Min(flow, before[cell].Mass / 4))
                : before[cell + 1].Part(double.Min(-flow, before[cell + 1].Mass / 4)) * -1;
            // A boil keeps heavy and light from sliding over each other; in a still pan they do, and the channels mix.
            var calm = double.Max(1 - boil, 0);
            var sinking = Sinking * area * calm * calm * double.Abs(before[cell + 1].Fraction - before[cell].Fraction);
            var stirred = ((makeup.Mixing * (area / makeup.Area) * boil) + sinking) / (1 + (double.Abs(flow) / (FlowThatHolds * area)));
            var there = before[cell].Part(double.Min(stirred, before[cell].Mass / 4));
            var back = before[cell + 1].Part(double.Min(stirred, before[cell + 1].Mass / 4));
            cells[cell] += back - there - moved;
            cells[cell + 1] += there + moved - back;
        }
    }

    private static Ledger Heat(Makeup makeup, Truth truth, int at, ref Cell cell, double heat, Ledger ledger, ref double boil)
    {
        var materials = makeup.Materials;
        if (cell.Water < 0.02)
        {
            // A dry floor takes nothing up.
            return ledger with { Stack = ledger.Stack + heat };
        }

        var celsius = cell.Celsius(materials);
        var toAir = makeup.SurfaceLoss * makeup.AreaOf(at) * double.Max(celsius - makeup.AirCelsius, 0);
        var vapor = makeup.SurfaceVapor * makeup.AreaOf(at) * Materials.VaporKilopascals(double.Min(celsius, 105));
        var warmed = cell with { Heat = cell.Heat + heat - toAir - (vapor * materials.Latent) };
        var over = warmed.Heat - (warmed.Capacity(materials) * materials.BoilingOf(warmed.Fraction));
        var steam = double.Min(double.Max(over / materials.Latent, 0), warmed.Water / 4);
        boil += steam;

        var gone = steam + vapor;
        var leaks = truth.Covered ? LidLeaks : 1;
        var carried = gone * leaks * materials.WaterHeat * celsius;
        cell = warmed with
        {
            Water = warmed.Water - (gone * leaks),
            Heat = warmed.Heat - (steam * materials.Latent) - carried,
        };
        return ledger with
        {
            Air = ledger.Air + toAir + (gone * (1 - leaks) * materials.Latent),
            Steam = ledger.Steam + new Cell(gone * leaks, 0, carried + (gone * leaks * materials.Latent)),
        };
    }

    private static Cell Foam(Makeup makeup, Truth truth, Cell[] cells, out double foam)
    {
        var boil = truth.Boil / (FullBoil * makeup.Area);
        var grows = truth.DefoamerSeconds > 0 ? -1 / 120.0 : boil < 0.2 ? -1 / 600.0 : makeup.Foaming * boil;
        foam = double.Clamp(truth.Foam + grows, 0, 1);
        if (foam < 1)
        {
            return default;
        }

        var over = cells[0].Part(0.01);
        cells[0] -= over;
        return over;
    }
}
