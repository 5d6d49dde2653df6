using Panside.Guide.Rigs;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds;

/// <summary>
/// The pan of <see cref="FlowingWorld"/>: what comes in pushes what is there along, level with what boils away everywhere, and
/// hardly any of it goes back. Losses of the surface and the lid are as in practice, what they take is reckoned slice by slice.
/// </summary>
internal static class FlowingPan
{
    /// <summary>The float is wide open this far below its mark, in m: no source; the more it lets in, the lower the pan stands.</summary>
    private const double Droop = 0.014;

    /// <summary>The float moves only once the pan has moved so far, in m: no source.</summary>
    private const double Sticks = 0.0025;

    /// <summary>Seconds by which the thermometer lags: no source.</summary>
    private const double Lag = 30;

    /// <summary>The draw-off's opening times its discharge coefficient, in m²: no source.</summary>
    private const double Opening = 31e-6;

    private const double Gravity = 9.81;

    /// <summary>Share of a difference in level that evens out in a second: no source.</summary>
    private const double Evens = 0.5;

    /// <summary>The most of a slice that goes on to the next in a second.</summary>
    private const double MostMoved = 1 / 3.0;

    /// <summary>Exchange of heavy and light between slices of a still pan, in kg/s a square meter of pan and a unit of mass fraction: no source.</summary>
    private const double Sinking = 0.4;

    /// <summary>Full boil for mixing and foam, in kg/s a square meter.</summary>
    private const double FullBoil = 0.011;

    /// <summary>Share of steam that a lid lets out: no source.</summary>
    private const double LidLeaks = 0.15;

    /// <summary>A slice with less water than this, in kg, is dry and takes nothing up.</summary>
    private const double Dry = 0.007;

    /// <summary>Seconds for which a smell hangs.</summary>
    private const double SmokeSeconds = 120;

    /// <summary>One second with this heat from below, in MJ.</summary>
    public static Truth Step(Makeup makeup, Truth truth, double heat)
    {
        var materials = makeup.Materials;
        var cells = truth.Pan.ToArray();
        Span<double> depth = stackalloc double[cells.Length];
        for (var cell = 0; cell < cells.Length; cell++)
        {
            depth[cell] = Pan.Depth(makeup, cells[cell]);
        }

        var floats = truth.Own[FlowingWorld.Float];
        floats = double.Abs(depth[0] - floats) > Sticks ? depth[0] : floats;
        var fed = Fed(makeup, truth, floats);
        var leaked = (truth.Tank - fed).Part(makeup.TankLeak);
        var drawn = truth.DrawOpen ? cells[^1].Part(Opening * double.Sqrt(2 * Gravity * double.Max(depth[^1], 0)) * Density(makeup, cells[^1], depth[^1])) : default;
        var dripped = (cells[^1] - drawn).Part(makeup.DrawOffDrip);
        cells[^1] -= drawn + dripped;
        var share = double.Min(truth.Boil / (FullBoil * makeup.Area), 1.2);
        Push(makeup, cells, depth, share);
        cells[0] += fed;
        var foam = Foam(makeup, truth, share);
        var foamed = foam < 1 ? default : cells[0].Part(0.01);
        cells[0] -= foamed;

        var (boil, air, steam) = (0.0, 0.0, default(Cell));
        var (missed, leaks) = (0.0, truth.Covered ? LidLeaks : 1);
        for (var cell = 0; cell < cells.Length; cell++)
        {
            var liquid = cells[cell];
            var comes = heat * Pan.Shares(makeup, truth, cell);
            if (liquid.Water < Dry)
            {
                missed += comes;
                continue;
            }

            var celsius = liquid.Celsius(materials);
            var cools = makeup.SurfaceLoss * makeup.CellArea * double.Max(celsius - makeup.AirCelsius, 0);
            var vapor = makeup.SurfaceVapor * makeup.CellArea * Materials.VaporKilopascals(double.Min(celsius, 105));
            var warmed = liquid.Heat + comes - cools - (vapor * materials.Latent);
            var over = warmed - (liquid.Capacity(materials) * materials.BoilingOf(liquid.Fraction));
            var boils = double.Min(double.Max(over / materials.Latent, 0), liquid.Water / 4);
            var goes = (boils + vapor) * leaks;
            var carried = goes * materials.WaterHeat * celsius;
            boil += boils;
            air += cools + (((boils + vapor) - goes) * materials.Latent);
            steam += new Cell(goes, 0, carried + (goes * materials.Latent));
            cells[cell] = new(liquid.Water - goes, liquid.Sugar, warmed - (boils * materials.Latent) - carried);
        }

        var charred = Scorching.Worst(makeup, truth, heat);
        var bulb = truth.Own[FlowingWorld.Bulb];
        bulb += (cells[^1].Celsius(materials) - bulb) / Lag;
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
            Own = [bulb, floats, truth.Own[FlowingWorld.Back], truth.Own[FlowingWorld.Stack]],
            Ledger = truth.Ledger with
            {
                Fed = truth.Ledger.Fed + fed,
                Drawn = truth.Ledger.Drawn + drawn + dripped + foamed,
                Leaked = truth.Ledger.Leaked + leaked,
                Stack = truth.Ledger.Stack + missed,
                Air = truth.Ledger.Air + air,
                Steam = truth.Ledger.Steam + steam,
            },
        };
    }

    private static Cell Fed(Makeup makeup, Truth truth, double floats)
    {
        if (makeup.Rig.Feed == Feed.ByHand || !truth.ValveOpen)
        {
            return default;
        }

        var wanted = makeup.Rig.Feed == Feed.ByValve
            ? double.Min(truth.ValveLets, makeup.MostFeed)
            : (makeup.FloatHangs ?? double.Clamp((truth.FloatMeters - floats) / Droop, 0, 1)) * makeup.MostFeed;
        return truth.Tank.Part(wanted);
    }

    /// <summary>
    /// What stands over the common level before a place goes on past it, in one second as far as half of it: so all levels come together,
    /// and what flows anywhere is what boils away beyond. A leaning floor has its own depth everywhere.
    /// </summary>
    private static void Push(Makeup makeup, Cell[] cells, Span<double> depth, double boil)
    {
        Span<Cell> before = stackalloc Cell[cells.Length];
        cells.CopyTo(before);
        var mean = 0.0;
        foreach (var one in depth)
        {
            mean += one / depth.Length;
        }

        var calm = double.Max(1 - boil, 0);
        var (over, last) = (0.0, cells.Length - 1);
        for (var cell = 0; cell < last; cell++)
        {
            over += depth[cell] - mean + (makeup.Tilt * (((double)cell / last) - 0.5));
            var (here, there) = (before[cell], before[cell + 1]);
            var moved = over > 0
                ? here * double.Min(Evens * over / double.Max(depth[cell], 1e-6), MostMoved)
                : there * -double.Min(Evens * -over / double.Max(depth[cell + 1], 1e-6), MostMoved);
            var stirred = (makeup.Mixing * boil) + (Sinking * makeup.Area * calm * calm * double.Abs(there.Fraction - here.Fraction));
            moved += here.Part(double.Min(stirred, here.Mass / 6)) - there.Part(double.Min(stirred, there.Mass / 6));
            cells[cell] -= moved;
            cells[cell + 1] += moved;
        }
    }

    private static double Foam(Makeup makeup, Truth truth, double boil)
    {
        var grows = truth.DefoamerSeconds > 0 ? -1 / 120.0 : boil < 0.2 ? -1 / 600.0 : makeup.Foaming * boil;
        return double.Clamp(truth.Foam + grows, 0, 1);
    }

    /// <summary>In kg/m³.</summary>
    private static double Density(Makeup makeup, Cell cell, double depth) => depth > 1e-6 ? cell.Mass / (depth * makeup.CellArea) : 0;
}
