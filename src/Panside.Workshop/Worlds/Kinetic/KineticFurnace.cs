using Panside.Workshop.Worlds.Wood;

namespace Panside.Workshop.Worlds.Kinetic;

/// <summary>Where the fire's heat goes in one second, in MJ.</summary>
/// <param name="Celsius">The gas over the fire, in °C.</param>
/// <param name="ToPan">To the pan.</param>
/// <param name="ToFace">To the hot face of the brick.</param>
/// <param name="Leaves">Into the stack.</param>
internal readonly record struct FurnaceHeat(double Celsius, double ToPan, double ToFace, double Leaves);

/// <summary>
/// A well-stirred furnace: all gas over the fire at one temperature, at which what burns is what the gas takes away and what goes to pan and
/// brick, by the fourth power and by touch. Hottel and Sarofim, Radiative Transfer (1967), from memory. The rear of the pan takes its share of
/// what leaves.
/// </summary>
internal static class KineticFurnace
{
    /// <summary>Newton's steps a second: the gas of the second before is near.</summary>
    private const int Steps = 3;

    private const double LeastCelsius = -20, MostCelsius = 2200;

    /// <summary>Heat that brick takes by touch beside what it takes by radiation's area, in MW/(m² K). No source.</summary>
    private const double FaceTouch = 40e-6;

    /// <summary>One second.</summary>
    /// <param name="rig">Its sizes.</param>
    /// <param name="fire">Heat set free in the gas, in MJ.</param>
    /// <param name="air">Air, in kg/s.</param>
    /// <param name="before">The gas a second before, in °C.</param>
    /// <param name="outside">The air, in °C.</param>
    /// <param name="pan">The pan, in °C.</param>
    /// <param name="face">The brick's face, in °C.</param>
    public static FurnaceHeat Next(KineticRig rig, double fire, double air, double before, double outside, double pan, double face)
    {
        var flow = air * FlueGas.Capacity;
        var (panPower, facePower) = (FlueGas.FourthPower(pan), FlueGas.FourthPower(face));
        var (panSees, faceSees) = (FlueGas.Radiation * rig.PanSees, FlueGas.Radiation * rig.BrickSees);
        var faceTouch = FaceTouch * rig.BrickSees;
        var gas = before;
        for (var step = 0; step < Steps; step++)
        {
            var kelvin = gas + FlueGas.Kelvin;
            var power = FlueGas.FourthPower(gas);
            var over = fire - (flow * (gas - outside)) - (panSees * (power - panPower)) - (rig.PanExchange * (gas - pan))
                - (faceSees * (power - facePower)) - (faceTouch * (gas - face));
            var slope = flow + rig.PanExchange + faceTouch + (4 * (panSees + faceSees) * kelvin * kelvin * kelvin);
            gas = double.Clamp(gas + (over / slope), LeastCelsius, MostCelsius);
        }

        var shines = FlueGas.FourthPower(gas);
        var toPan = double.Max((panSees * (shines - panPower)) + (rig.PanExchange * (gas - pan)), 0);
        var toFace = (faceSees * (shines - facePower)) + (faceTouch * (gas - face));
        var rear = double.Max(rig.RearTakes * flow * (gas - pan), 0);
        return new(gas, toPan + rear, toFace, fire - toPan - toFace - rear);
    }
}
