using System.Collections.Immutable;
using Panside.Guide.Rigs;
using Panside.Practice.Chance;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds.Unseen;

/// <summary>
/// Three pools a channel, from the fire box to the stack and back. Bubbles stir neighbors by the form that Baird and Rice 1975 gave
/// for columns, (length)^4/3 (g u)^1/3, from memory; in a still pool heavy slides under light. The surface loses by free convection
/// (Nusselt by the third root of Rayleigh), by radiation and by vapor in Lewis's analogy, less for the walls and the steam over it.
/// </summary>
internal static class UnseenPan
{
    /// <summary>Pools in a channel.</summary>
    public const int InChannel = 3;

    private const double Gravity = 9.81;

    private const double Kelvin = 273.15;

    /// <summary>The beginning of the fall of the float's valve, in m below its mark.</summary>
    private const double FloatBand = 0.008;

    /// <summary>Steam of a full boil, in kg/s a square meter.</summary>
    private const double FullBoil = 0.011;

    /// <summary>Kelvin of free convection that a kilopascal of vapor is worth: Lewis, at 98 kPa, with the usual two-thirds power.</summary>
    private const double LewisKelvin = 15.3;

    /// <summary>Share of the steam that gets past a lid.</summary>
    private const double LidLets = 0.15;

    /// <summary>Each pool's share of the radiation and of what the gas gives, from the fire box on: no source.</summary>
    private static readonly (double Radiant, double Leveled, double Swept)[] AlongGas = [(0.52, 0.40, 0.41), (0.31, 0.33, 0.33), (0.17, 0.27, 0.26)];

    /// <summary>Each pool's share of the heat, as half of it radiates, with the chance of a rig's own.</summary>
    public static ImmutableArray<double> Shares(int channels, RandomStream? random)
    {
        var shares = Enumerable.Range(0, channels * InChannel)
            .Select(pool => AlongGas[Place(pool)] is var one ? 0.5 * (one.Radiant + one.Swept) * (random?.Factor(0.07) ?? 1) : 0)
            .ToList();
        return [.. shares.Select(share => share / shares.Sum())];
    }

    /// <summary>One second with this heat from below, in MJ.</summary>
    public static Truth Step(Makeup makeup, Truth truth, double heat)
    {
        var (rig, state, materials) = ((UnseenRig)makeup.Own!, UnseenState.Of(truth), makeup.Materials);
        Span<Cell> pools = stackalloc Cell[truth.Pan.Length];
        truth.Pan.CopyTo(pools);
        var fed = Fed(makeup, truth);
        var drawn = pools[^1].Part(truth.DrawOpen ? 0.04 * double.Sqrt(Pan.Depth(makeup, pools[^1]) / 0.038) : 0);
        var dripped = (pools[^1] - drawn).Part(makeup.DrawOffDrip);
        pools[0] += fed;
        pools[^1] = pools[^1] - drawn - dripped;
        var leaked = (truth.Tank - fed).Part(makeup.TankLeak);
        var boil = truth.Boil / makeup.Area;
        Move(makeup, pools, boil, rig.Stirring);
        var (foam, foamed) = Foamed(makeup, truth, boil / FullBoil, pools[0]);
        pools[0] -= foamed;

        Span<double> parts = stackalloc double[pools.Length];
        Split(makeup, truth, state.Radiant, parts);
        var (toStack, toAir, steam, boiled) = (0.0, 0.0, default(Cell), 0.0);
        for (var pool = 0; pool < pools.Length; pool++)
        {
            if (pools[pool].Water < 0.02)
            {
                toStack += heat * parts[pool];
                continue;
            }

            var (lost, gone, boils) = Heated(makeup, truth, rig.Surface, ref pools[pool], heat * parts[pool]);
            (toAir, steam, boiled) = (toAir + lost, steam + gone, boiled + boils);
        }

        var charred = Scorching.Worst(makeup, truth, heat);
        var last = pools[^1].Celsius(materials);
        return truth with
        {
            Pan = [.. pools],
            Tank = truth.Tank - fed - leaked,
            Pail = truth.Pail + drawn,
            Foam = foam,
            DefoamerSeconds = double.Max(truth.DefoamerSeconds - 1, 0),
            Boil = truth.Boil + ((boiled - truth.Boil) / 60),
            Scorch = truth.Scorch + charred,
            Smoke = truth.Smoke + charred - (truth.Smoke / 120),
            Own = (state with { BulbCelsius = state.BulbCelsius + ((last - state.BulbCelsius) / 15) }).Kept(),
            Ledger = truth.Ledger with
            {
                Stack = truth.Ledger.Stack + toStack,
                Air = truth.Ledger.Air + toAir,
                Steam = truth.Ledger.Steam + steam,
                Fed = truth.Ledger.Fed + fed,
                Drawn = truth.Ledger.Drawn + drawn + dripped + foamed,
                Leaked = truth.Ledger.Leaked + leaked,
            },
        };
    }

    /// <summary>Where a pool lies: 0 over the fire box, 2 at the stack. Sap comes in at the stack and goes to and fro.</summary>
    private static int Place(int pool) => pool / InChannel % 2 == 0 ? InChannel - 1 - (pool % InChannel) : pool % InChannel;

    private static void Split(Makeup makeup, Truth truth, double radiant, Span<double> parts)
    {
        var sum = 0.0;
        for (var pool = 0; pool < parts.Length; pool++)
        {
            var along = AlongGas[Place(pool)];
            // The rig's own unevenness is in the usual shares.
            var own = makeup.HeatShares[pool] / (along.Radiant + along.Swept);
            parts[pool] = own * ((radiant * (truth.CoalsLevel ? along.Leveled : along.Radiant)) + ((1 - radiant) * along.Swept));
            sum += parts[pool];
        }

        for (var pool = 0; pool < parts.Length; pool++)
        {
            parts[pool] /= sum;
        }
    }

    private static Cell Fed(Makeup makeup, Truth truth)
    {
        if (makeup.Rig.Feed == Feed.ByHand || !truth.ValveOpen)
        {
            return default;
        }

        if (makeup.Rig.Feed == Feed.ByValve)
        {
            return truth.Tank.Part(double.Min(truth.ValveLets, makeup.MostFeed));
        }

        var open = makeup.FloatHangs ?? double.Clamp((truth.FloatMeters + 0.003 - Pan.Depth(makeup, truth.Pan[0])) / FloatBand, 0, 1);
        return truth.Tank.Part(open * makeup.MostFeed);
    }

    private static void Move(Makeup makeup, Span<Cell> pools, double boil, double stirring)
    {
        Span<Cell> before = stackalloc Cell[pools.Length];
        Span<double> levels = stackalloc double[pools.Length];
        pools.CopyTo(before);
        var depth = 0.0;
        for (var pool = 0; pool < pools.Length; pool++)
        {
            var deep = Pan.Depth(makeup, before[pool]);
            depth += deep / pools.Length;
            levels[pool] = deep + (makeup.Tilt * pool / (pools.Length - 1));
        }

        // A twentieth of what a column has, no source: the pool is wider than it is deep, and its bubbles rise where they are made.
        var diffusing = 0.35 / 20 * stirring * double.Pow(depth, 4.0 / 3) * double.Cbrt(Gravity * double.Max(boil, 0) / 0.58);
        // As of a pan twice as long as wide.
        var (length, channel) = (double.Sqrt(makeup.Area * 2) / InChannel, double.Sqrt(makeup.Area / 2) / makeup.Rig.Channels);
        var bubbles = 960 * diffusing * depth * channel / length;
        var calm = double.Max(1 - (boil / 0.006), 0);
        for (var pool = 0; pool + 1 < pools.Length; pool++)
        {
            var (here, next) = (before[pool], before[pool + 1]);
            // Between channels there is but a gap in the divider.
            var gap = (pool + 1) % InChannel == 0 ? 0.5 : 1;
            var flow = makeup.Passage * (levels[pool] - levels[pool + 1]);
            var sliding = 0.06 * makeup.Area * calm * calm * double.Sqrt(double.Max(next.Fraction - here.Fraction, 0)) * depth / 0.038;
            var mixed = gap * (bubbles + sliding);
            var there = here.Part(double.Min(mixed + double.Max(flow, 0), here.Mass / 5));
            var back = next.Part(double.Min(mixed + double.Max(-flow, 0), next.Mass / 5));
            pools[pool] += back - there;
            pools[pool + 1] += there - back;
        }
    }

    private static (double Lost, Cell Gone, double Boils) Heated(Makeup makeup, Truth truth, double surface, ref Cell pool, double heat)
    {
        var (materials, air, celsius) = (makeup.Materials, makeup.AirCelsius, pool.Celsius(makeup.Materials));
        var warmer = double.Max(celsius - air, 0);
        // Free convection over a level warm surface, in MW/(m² K): Nu = 0.15 Ra^⅓, Lloyd and Moran 1974, from memory.
        var convects = 1.5e-6 * double.Cbrt(warmer) * surface * makeup.CellArea;
        var radiates = 0.95 * UnseenArch.Radiation * makeup.CellArea * surface * (double.Pow(celsius + Kelvin, 4) - double.Pow(air + Kelvin, 4));
        var lost = (convects * warmer) + double.Max(radiates, 0);
        var open = double.Min(convects * LewisKelvin * double.Max(Materials.VaporKilopascals(double.Min(celsius, 100)) - 0.5, 0) / materials.Latent, pool.Water / 8);
        var warmed = pool.Heat + heat - lost;
        var steams = double.Min((warmed - (pool.Capacity(materials) * materials.BoilingOf(pool.Fraction))) / materials.Latent, pool.Water / 5);
        // Steam that bubbles bring keeps the air off: the harder the boil, the less leaves without bubbles.
        var vapor = steams > open ? open * double.Exp(1 - (steams / double.Max(open, 1e-12))) : open;
        var boils = double.Max(steams - vapor, 0);
        var past = truth.Covered ? LidLets : 1;
        var leaves = (vapor + boils) * past;
        var carried = leaves * materials.WaterHeat * celsius;
        var held = (vapor + boils - leaves) * materials.Latent;
        // What the lid holds back drips again, having given its heat to the lid and the air.
        pool = pool with { Water = pool.Water - leaves, Heat = warmed - ((vapor + boils) * materials.Latent) - carried };
        return (lost + held, new(leaves, 0, carried + (leaves * materials.Latent)), boils);
    }

    private static (double Foam, Cell Over) Foamed(Makeup makeup, Truth truth, double boil, Cell first)
    {
        var grows = truth.DefoamerSeconds > 0 ? -1 / 90.0 : boil < 0.15 ? -1 / 400.0 : makeup.Foaming * boil;
        var foam = double.Clamp(truth.Foam + grows, 0, 1);
        return (foam, foam < 1 ? default : first.Part(0.008));
    }
}
