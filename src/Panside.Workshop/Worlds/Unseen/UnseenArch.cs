using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds.Unseen;

/// <summary>
/// Where a second's heat goes: flame and bed radiate to pan and walls, the gas passes walls, pan and stack by transfer units (those
/// fall with the fifth root of the flow, Dittus and Boelter's form), the brick gives to the pan by the fourth power and through
/// contact to the steel sides, which give to the air by free convection and radiation. The stack draws by its gas: the flow goes with
/// the root of the difference of densities.
/// </summary>
internal static class UnseenArch
{
    /// <summary>The constant of Stefan and Boltzmann, in MW/(m² K⁴).</summary>
    public const double Radiation = 5.670374e-14;

    private const double Kelvin = 273.15;

    /// <summary>Heat capacity of flue gas, in MJ/(kg K).</summary>
    private const double GasHeat = 1.12e-3;

    /// <summary>Emissivity of rusty steel, its usual value.</summary>
    private const double SteelEmits = 0.85;

    /// <summary>One second.</summary>
    public static Given Burned(Makeup makeup, Truth truth)
    {
        var (rig, state) = ((UnseenRig)makeup.Own!, UnseenState.Of(truth));
        var (air, pan, face) = (makeup.AirCelsius, Pan.MeanCelsius(makeup, truth), truth.BrickCelsius);
        var draft = Draft(makeup, state);
        var burning = UnseenFire.Step(rig, truth, state, draft, air);
        var flow = rig.Air * draft * 1.06 * GasHeat;

        // Soot and gas that leave unburnt: more where the air is short.
        var thick = burning.Flame / (UnseenFire.MegajoulesPerAir * rig.Air * draft);
        var unburnt = burning.Flame * double.Min(0.04 + (0.12 * thick * thick), 0.2);
        var flame = burning.Flame - unburnt;
        var emits = 1 - double.Exp(-2.2 * flame / makeup.UsualFire);
        var bare = 1 - (0.7 * UnseenFire.Covered(rig, truth, state));
        var radiated = (rig.Radiates * emits * flame) + (0.5 * bare * burning.Glow);
        var radiatedToPan = rig.PanView * radiated;

        var lowFlow = double.Pow(draft, -0.2);
        var gas = air + ((flame + burning.Glow - radiated) / flow);
        var toWalls = flow * (1 - double.Exp(-rig.WallUnits * lowFlow));
        var toFace = (toWalls * rig.Lined * (gas - face)) + ((radiated - radiatedToPan) * rig.Lined);
        var toSteel = (toWalls * (1 - rig.Lined) * (gas - state.SteelCelsius)) + ((radiated - radiatedToPan) * (1 - rig.Lined));
        gas -= toWalls * ((rig.Lined * (gas - face)) + ((1 - rig.Lined) * (gas - state.SteelCelsius))) / flow;
        var swept = flow * (1 - double.Exp(-rig.PanUnits * lowFlow)) * (gas - pan);
        gas -= swept / flow;
        var toPipe = flow * 0.35 * (gas - state.PipeCelsius);
        var leaving = flow * (gas - air) - toPipe;

        var faceToPan = rig.FaceSees * rig.Lined * Radiation * (Fourth(face) - Fourth(pan));
        var through = rig.Through * (face - state.BackCelsius);
        var contact = rig.Contact * (state.BackCelsius - state.SteelCelsius);
        var steelToAir = rig.SteelArea * ((1.4e-6 * Third(state.SteelCelsius - air)) + (SteelEmits * Radiation * (Fourth(state.SteelCelsius) - Fourth(air))));
        var pipeToAir = rig.PipeLoss * (state.PipeCelsius - air);

        var ash = state.Ash + burning.Glow;
        var after = state with
        {
            BackCelsius = state.BackCelsius + ((through - contact) / rig.BackCapacity),
            SteelCelsius = state.SteelCelsius + ((toSteel + contact - steelToAir) / rig.SteelCapacity),
            PipeCelsius = state.PipeCelsius + ((toPipe - pipeToAir) / rig.PipeCapacity),
            GasCelsius = state.GasCelsius + ((gas - state.GasCelsius) / 20),
            // Ash falls through the grate; leveled coals have been shaken, and a blower carries it off.
            Ash = ash * (1 - ((truth.CoalsLevel ? 2 : 1) / rig.AshSeconds)),
            Radiant = double.Clamp((radiatedToPan + faceToPan) / double.Max(radiatedToPan + faceToPan + double.Max(swept, 0), 1e-9), 0, 1),
        };
        return new(radiatedToPan + faceToPan + swept, truth with
        {
            Charges = burning.Charges,
            Coals = truth.Coals + burning.Char - burning.Glow,
            BrickCelsius = face + ((toFace - faceToPan - through) / rig.FaceCapacity),
            Own = after.Kept(),
            Ledger = truth.Ledger with
            {
                Stack = truth.Ledger.Stack + leaving + unburnt,
                Walls = truth.Ledger.Walls + steelToAir + pipeToAir,
            },
        });
    }

    /// <summary>Heat that brick, sides and stack hold over 0 °C, in MJ.</summary>
    public static double Stored(UnseenRig rig, Truth truth)
    {
        var state = UnseenState.Of(truth);
        return (truth.BrickCelsius * rig.FaceCapacity) + (state.BackCelsius * rig.BackCapacity)
            + (state.SteelCelsius * rig.SteelCapacity) + (state.PipeCelsius * rig.PipeCapacity);
    }

    /// <summary>
    /// The draft beside the usual one. For outer and inner absolute temperatures with the ratio r, the mass that a stack draws goes
    /// with the root of r(1 − r), whose maximum is a half; a little wind draws through a cold one.
    /// </summary>
    private static double Draft(Makeup makeup, UnseenState state)
    {
        var inner = (0.65 * state.GasCelsius) + (0.35 * state.PipeCelsius) + Kelvin;
        var ratio = double.Min((makeup.AirCelsius + Kelvin) / inner, 1);
        var drawn = double.Sqrt(0.01 + (4 * ratio * (1 - ratio)));
        return double.Max(makeup.DraftShare * (makeup.Forced ? 0.92 + (0.08 * drawn) : drawn), 0.03);
    }

    private static double Fourth(double celsius)
    {
        var square = (celsius + Kelvin) * (celsius + Kelvin);
        return square * square;
    }

    /// <summary>The difference times its third root, as turbulent free convection goes.</summary>
    private static double Third(double difference) => difference * double.Cbrt(double.Abs(difference));
}
