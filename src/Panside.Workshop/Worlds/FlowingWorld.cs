using Panside.Practice.Chance;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds;

/// <summary>
/// A pan of continuous flow: six thin slices a channel that the sap goes through as a plug, so that sugar stands steep toward the
/// draw-off; heat uneven along the path; a thermometer that lags by half a minute; a float that droops and sticks. Its wood burns
/// by curves of its own time (<see cref="FlowingFire"/>), whose heat a stream of gas carries past brick and pan.
/// Structure: tanks in series (Levenspiel, Chemical Reaction Engineering, 3rd ed. 1999, ch. 14, from memory); heat along an arch
/// falls toward the stack, no source. Leaves out: bends of the path, ripples, drying of the wood as a state.
/// </summary>
internal sealed class FlowingWorld : World
{
    /// <summary>Where the thermometer's bulb stands in <see cref="Truth.Own"/>, in °C.</summary>
    internal const int Bulb = 0;

    /// <summary>The depth that the float has last moved to, in m.</summary>
    internal const int Float = 1;

    /// <summary>The back of the brick, in °C.</summary>
    internal const int Back = 2;

    /// <summary>The stack that draws, in °C.</summary>
    internal const int Stack = 3;

    /// <summary>Slices of a channel.</summary>
    private const int SlicesOfChannel = 6;

    /// <inheritdoc/>
    public override string Name => "flowing";

    /// <inheritdoc/>
    public override string Summary => "sap flows through the pan as a plug of thin slices; the thermometer lags, the float sticks";

    /// <summary>
    /// The spread of one rig beside another, no source: a tenth in what comes to the pan, a fifth in burn times, walls and exchange.
    /// Wet wood burns slower: half as much again of its time for each third of moisture, no source.
    /// </summary>
    public override Makeup Made(Makeup makeup, RandomStream? random)
    {
        var (rig, area) = (makeup.Rig, makeup.Size);
        var cells = SlicesOfChannel * rig.Channels;
        double Factor(double deviation) => random?.Factor(deviation) ?? 1;
        var shares = Enumerable.Range(0, cells).Select(cell => Share(cell) * Factor(0.1)).ToList();
        var made = makeup with
        {
            CellArea = makeup.Area / cells,
            HeatShares = [.. shares.Select(share => share / shares.Sum())],
            MostFeed = (makeup.Forced ? 0.055 : 0.045) * area,
            Mixing = 0.0015 * area * Factor(0.4),
        };
        if (rig.IsBurner)
        {
            return made;
        }

        var slow = (1 + (1.5 * (rig.WoodMoisture - 0.2))) * Factor(0.15);
        var coals = (makeup.Forced ? 840 : 6600) * Factor(0.18);
        return made with
        {
            ToPan = (makeup.Forced ? 0.035 : 0.09) * Factor(0.12),
            CharShare = random?.Between(0.30, 0.40) ?? 0.35,
            FlameSeconds = (makeup.Forced ? 420 : 900) * slow,
            CoalSeconds = coals,
            UsualCoals = makeup.UsualFire * 0.35 * coals * 0.6,
            BrickSees = (makeup.Forced ? 0.24 : 0.30) * makeup.Area * Factor(0.15),
            BrickExchange = (makeup.Forced ? 16e-6 : 10e-6) * area * Factor(0.2),
            WallLoss = 6e-6 * area * Factor(0.2),
        };
    }

    /// <inheritdoc/>
    public override Truth Begun(Makeup makeup, Truth truth) => truth with
    {
        Own = [truth.Pan[^1].Celsius(makeup.Materials), Pan.Depth(makeup, truth.Pan[0]), truth.BrickCelsius, makeup.AirCelsius],
    };

    /// <inheritdoc/>
    public override Given Burned(Makeup makeup, Truth truth) => makeup.Rig.IsBurner ? Fire.Step(makeup, truth) : FlowingFire.Step(makeup, truth);

    /// <inheritdoc/>
    public override Truth Boiled(Makeup makeup, Truth truth, double heat) => FlowingPan.Step(makeup, truth, heat);

    /// <inheritdoc/>
    public override double Stored(Makeup makeup, Truth truth) => makeup.Rig.IsBurner ? base.Stored(makeup, truth) : FlowingFire.Stored(makeup, truth);

    /// <inheritdoc/>
    public override double DrawCelsius(Makeup makeup, Truth truth) => truth.Own[Bulb];

    /// <summary>Along each channel, forth and back, half as much again over the fire as before the stack: no source.</summary>
    private static double Share(int cell)
    {
        var along = ((cell % SlicesOfChannel) + 0.5) / SlicesOfChannel;
        var fromDoor = cell / SlicesOfChannel % 2 == 0 ? 1 - along : along;
        return 1.25 - (0.6 * fromDoor * fromDoor);
    }
}
