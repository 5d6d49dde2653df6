using System.Collections.Immutable;

namespace Panside.Practice.Physics;

/// <summary>What the arch gives in one second, in MJ.</summary>
internal readonly record struct Given(double ToPan, Truth After);

/// <summary>
/// Charges, coals and brick. A charge flames like a body that shrinks (its rate goes with the two-thirds power of what is
/// left), after a while of catching fire, and leaves char; coals burn as a shrinking bed; brick takes heat from the gas,
/// radiates to the pan by the fourth power and warms the draft when the fire is low. No source for the constants, calibrated.
/// </summary>
internal static class Fire
{
    /// <summary>The constant of Stefan and Boltzmann, in MW/(m² K⁴).</summary>
    internal const double Radiation = 5.670374e-14;

    internal const double Kelvin = 273.15;

    /// <summary>A charge of wood goes in.</summary>
    public static Truth Charged(Makeup makeup, Truth truth, double kilograms)
    {
        var heat = kilograms * makeup.WoodHeat;
        var flame = heat * (1 - makeup.CharShare);
        return truth with
        {
            Charges = truth.Charges.Add(new(flame, flame, makeup.CharShare / (1 - makeup.CharShare), 0)),
            CoalsLevel = false,
            Ledger = truth.Ledger with { Wood = truth.Ledger.Wood + heat },
        };
    }

    /// <summary>One second of a burner: its flame, and what it has heated.</summary>
    private static Given Burner(Makeup makeup, Truth truth)
    {
        var fire = truth.BurnerOn ? makeup.UsualFire * double.Sqrt(makeup.DraftShare) : 0;
        var (toGas, radiated, walls) = Brick(makeup, truth, fire);
        var toPan = (makeup.ToPan * fire) + radiated + (makeup.SweptToPan * double.Max(toGas, 0));
        return new(toPan, truth with
        {
            BrickCelsius = truth.BrickCelsius - ((toGas + radiated + walls) / makeup.BrickCapacity),
            Ledger = truth.Ledger with
            {
                Wood = truth.Ledger.Wood + fire,
                Stack = truth.Ledger.Stack + fire + toGas + radiated - toPan,
                Walls = truth.Ledger.Walls + walls,
            },
        });
    }

    /// <summary>One second.</summary>
    public static Given Step(Makeup makeup, Truth truth)
    {
        if (makeup.Rig.IsBurner)
        {
            return Burner(makeup, truth);
        }

        var air = double.Sqrt(Air(makeup, truth) * makeup.DraftShare);
        var coals = double.Min(
            double.Min(truth.Coals, Most(makeup)),
            air * (truth.CoalsLevel ? 1.2 : 1) / makeup.CoalSeconds
            * double.Cbrt(makeup.UsualCoals * truth.Coals * truth.Coals));
        var (charges, flame, char_) = Flames(makeup, truth, double.Max(Most(makeup) - coals, 0));
        var fire = flame + coals;

        var (toGas, radiated, walls) = Brick(makeup, truth, fire);
        var toPan = (makeup.ToPan * (fire - double.Max(-toGas, 0))) + radiated + (makeup.SweptToPan * double.Max(toGas, 0));
        var stack = fire + toGas + radiated - toPan;
        return new(toPan, truth with
        {
            Charges = charges,
            Coals = truth.Coals - coals + char_,
            BrickCelsius = truth.BrickCelsius - ((toGas + radiated + walls) / makeup.BrickCapacity),
            Ledger = truth.Ledger with { Stack = truth.Ledger.Stack + stack, Walls = truth.Ledger.Walls + walls },
        });
    }

    /// <summary>Heat still in wood and coals, in MJ.</summary>
    public static double Fuel(Truth truth) =>
        truth.Coals + truth.Charges.Sum(charge => charge.Left * (1 + charge.CharShare));

    private static (ImmutableArray<Charge> Charges, double Flame, double Char) Flames(Makeup makeup, Truth truth, double most)
    {
        if (truth.Charges.IsEmpty)
        {
            return ([], 0, 0);
        }

        var usual = makeup.Rig.Charge.Kilograms * makeup.WoodHeat * (1 - makeup.CharShare);
        var warm = 0.5 + (0.5 * double.Min((truth.BrickCelsius / 450) + (truth.Coals / makeup.UsualCoals), 1));
        double Wants(Charge charge)
        {
            var catching = double.Min((charge.Seconds + 10) / 120, 1);
            var seconds = makeup.FlameSeconds * double.Cbrt(charge.Whole / usual);
            var rate = 3 / seconds * warm * catching * Fanned(makeup) * double.Cbrt(charge.Whole * charge.Left * charge.Left);
            return charge.Left < 1e-4 * charge.Whole ? charge.Left : double.Min(rate, charge.Left);
        }

        var wanted = truth.Charges.Sum(Wants);
        var gets = wanted > most ? most / wanted : 1;
        var (flame, char_) = (0.0, 0.0);
        var left = ImmutableArray.CreateBuilder<Charge>(truth.Charges.Length);
        foreach (var charge in truth.Charges)
        {
            var burnt = Wants(charge) * gets;
            flame += burnt;
            char_ += burnt * charge.CharShare;
            if (burnt < charge.Left)
            {
                left.Add(charge with { Left = charge.Left - burnt, Seconds = charge.Seconds + 1 });
            }
        }

        return (left.DrainToImmutable(), flame, char_);
    }

    /// <summary>
    /// The most that the air lets burn: wood that is put on beyond it burns later, not hotter. No source, calibrated: two and a half
    /// times the usual fire, which single charges at their interval hardly come to.
    /// </summary>
    private static double Most(Makeup makeup) => 2.5 * makeup.UsualFire * double.Sqrt(makeup.DraftShare);

    /// <summary>Flame without air smolders: no source, calibrated so that a dead blower leaves a third of the flame.</summary>
    private static double Fanned(Makeup makeup) => 0.1 + (0.9 * double.Sqrt(makeup.DraftShare));

    /// <summary>The draft beside the usual one: a blower's is always the same, the stack's falls with the fire and the brick.</summary>
    private static double Air(Makeup makeup, Truth truth) => makeup.Forced
        ? 1
        : double.Clamp((truth.BrickCelsius - makeup.AirCelsius) / 500, 0.3, 1.2);

    /// <summary>What the brick gives to the gas (less than nothing where it takes), to the pan, and through the walls.</summary>
    private static (double ToGas, double Radiated, double Walls) Brick(Makeup makeup, Truth truth, double fire)
    {
        var brick = truth.BrickCelsius;
        var strength = fire / makeup.UsualFire;
        var draft = (makeup.Forced ? 1 : double.Clamp(0.1 + (0.9 * double.Sqrt(strength)), 0.1, 1.2)) * double.Max(makeup.DraftShare, 0.1);
        var gas = makeup.AirCelsius + (makeup.GasRise * double.Min(strength / draft, 1.25));
        var toGas = makeup.BrickExchange * draft * (brick - gas);
        toGas = double.Max(toGas, -0.5 * fire);

        var pan = Pan.MeanCelsius(makeup, truth) + Kelvin;
        var hot = brick + Kelvin;
        var radiated = Radiation * makeup.BrickSees * ((hot * hot * hot * hot) - (pan * pan * pan * pan));
        return (toGas, double.Max(radiated, 0), makeup.WallLoss * (brick - makeup.AirCelsius));
    }
}
