using Panside.Practice.Physics;
using Panside.Workshop.Worlds.Wood;

namespace Panside.Workshop.Worlds.Drafted;

/// <summary>Air and gas of the drafted world: what the stack draws, what it lets burn, and where its heat goes.</summary>
internal static class DraftedGas
{
    /// <summary>Share of the gas that burns where nothing lights it. No source.</summary>
    private const double Smolders = 0.45;

    /// <summary>Surface of a raked bed beside a heaped one. No source.</summary>
    private const double Raked = 1.2;

    /// <summary>Air that comes in by wind and doors where the stack draws nothing, beside the usual flow. No source.</summary>
    private const double Least = 0.1;

    /// <summary>Air drawn, in kg/s: weight of the cold air less that of the hot gas, against friction that goes with the speed squared.</summary>
    /// <param name="makeup">The rig as it is now.</param>
    /// <param name="rig">Its sizes.</param>
    /// <param name="stack">Mean gas in the stack, in °C.</param>
    public static double Air(Makeup makeup, DraftedRig rig, double stack)
    {
        var gas = FlueGas.DensityKelvin / (stack + FlueGas.Kelvin);
        var outside = FlueGas.DensityKelvin / (makeup.AirCelsius + FlueGas.Kelvin);
        var pulls = (FlueGas.Gravity * rig.StackHeight * double.Max(outside - gas, 0)) + rig.Blower;
        var flow = rig.StackSection * double.Sqrt(2 * gas * pulls * makeup.DraftShare / rig.Friction);
        return double.Max(flow, Least * rig.UsualFlow);
    }

    /// <summary>Heat of the bed that burns in a second, in MJ: air that reaches it and surface that it has, one after the other.</summary>
    public static double Bed(DraftedRig rig, Truth truth, double air)
    {
        var depth = truth.Coals / rig.UsualBed;
        if (depth < 1e-6)
        {
            return truth.Coals;
        }

        // A deeper bed lets less air through.
        var byAir = air * rig.Primary * FlueGas.HeatOfAir / (0.6 + (0.4 * depth));
        var bySurface = rig.BedReach * (truth.CoalsLevel ? Raked : 1) * double.Cbrt(depth * depth);
        return double.Min(byAir * bySurface / (byAir + bySurface), truth.Coals);
    }

    /// <summary>Share of the wood's gas that burns: short of air some leaves unburnt, and so does what no flame lights.</summary>
    /// <param name="gas">Heat of the gas, in MJ/s.</param>
    /// <param name="air">Air that the bed left, in kg/s.</param>
    /// <param name="flames">How far flames fill the fire, 0 to 1.</param>
    public static double Burns(double gas, double air, double flames)
    {
        if (gas <= 0)
        {
            return 1;
        }

        var lit = Smolders + ((1 - Smolders) * double.Min(4 * flames, 1));
        var excess = double.Max(air, 0) * FlueGas.HeatOfAir / gas;
        return lit * excess / double.Sqrt(double.Sqrt(1 + (excess * excess * excess * excess)));
    }

    /// <summary>
    /// Heat from gas to pan and to brick in a second, in MJ, both along the whole way: the gas nears the mean of the two by the number of
    /// transfer units. Half of the exchange is the gas's own radiation, half grows with the 0.8th power of the flow.
    /// </summary>
    public static (double ToPan, double ToBrick) Exchanged(DraftedRig rig, double air, double fire, double pan, double brick)
    {
        var flow = air * FlueGas.Capacity;
        var stirred = 0.5 + (0.5 * double.Pow(air / rig.UsualFlow, 0.8));
        var (byPan, byBrick) = (rig.PanExchange * stirred, rig.BrickExchange * stirred);
        var units = (byPan + byBrick) / flow;
        var nears = ((byPan * pan) + (byBrick * brick)) / (byPan + byBrick);
        var mean = nears + ((fire - nears) * (1 - double.Exp(-units)) / units);
        return (double.Max(byPan * (mean - pan), 0), byBrick * (mean - brick));
    }
}
