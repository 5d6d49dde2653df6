using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice.Chance;

namespace Panside.Practice.Physics;

/// <summary>
/// How a rig goes on from second to second, and what its instruments and its operator are like. Practice shows one world; forecasts
/// are judged in others besides, whose fire and pan are made otherwise.
/// </summary>
internal abstract class World
{
    /// <summary>The one that practice shows.</summary>
    public static World Practised { get; } = new PractisedWorld();

    /// <summary>As it is typed.</summary>
    public abstract string Name { get; }

    /// <summary>What it is, in a sentence.</summary>
    public abstract string Summary { get; }

    /// <summary>The operator's delays beside the usual ones.</summary>
    public virtual double Slowness => 1;

    /// <summary>The chance that the operator skips a reading or a look that is asked for.</summary>
    public virtual double Skips => 0;

    /// <summary>The operator's charges beside what is told of them.</summary>
    public virtual double Charges => 1;

    /// <summary>A rig as this world makes it.</summary>
    /// <param name="makeup">As practice would make it: the rig file's sizes, and materials, hold in every world.</param>
    /// <param name="random">The rig's own chance; null for the nominal rig.</param>
    public virtual Makeup Made(Makeup makeup, RandomStream? random) => makeup;

    /// <summary>The rig at the start, with the states that this world has on top (<see cref="Truth.Own"/>).</summary>
    public virtual Truth Begun(Makeup makeup, Truth truth) => truth;

    /// <summary>A charge of wood goes in, in kg.</summary>
    public virtual Truth Charged(Makeup makeup, Truth truth, double kilograms) => Fire.Charged(makeup, truth, kilograms);

    /// <summary>One second of the fire.</summary>
    public abstract Given Burned(Makeup makeup, Truth truth);

    /// <summary>One second of the pan with this heat from below, in MJ.</summary>
    public virtual Truth Boiled(Makeup makeup, Truth truth, double heat) => Pan.Step(makeup, truth, heat);

    /// <summary>Heat still in wood and coals, in MJ.</summary>
    public virtual double Fuel(Truth truth) => Fire.Fuel(truth);

    /// <summary>Heat that masonry and metal hold over 0 °C, in MJ; wood, coals and pan apart.</summary>
    public virtual double Stored(Makeup makeup, Truth truth) => truth.BrickCelsius * makeup.BrickCapacity;

    /// <summary>A portion of so many liters goes by hand from the tank into the pan; and how much sap it came to.</summary>
    public virtual (Truth Then, Cell Sap) Portioned(Makeup makeup, Truth truth, double liters) => Pan.Portioned(makeup, truth, liters);

    /// <summary>What the tank's gauge shows to an eye without error, where so many liters are in it.</summary>
    public virtual double GaugedLiters(Makeup makeup, Truth truth, double liters) => liters;

    /// <summary>What a thermometer without error shows at the draw-off, in °C.</summary>
    public virtual double DrawCelsius(Makeup makeup, Truth truth) => truth.Pan[^1].Celsius(makeup.Materials);

    /// <summary>The smallest step of a scale and the deviation of an eye's error; null for the usual ones.</summary>
    public virtual (double Step, double Eye)? Scale(ReadingName name, Unit unit) => null;

    private sealed class PractisedWorld : World
    {
        public override string Name => "practised";

        public override string Summary => "the rig that practice shows: wood burns as shrinking bodies over a bed of coals, brick is one store";

        public override Given Burned(Makeup makeup, Truth truth) => Fire.Step(makeup, truth);
    }
}
