using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>
/// How unlike rigs of one size are, before anything was read: standard deviations, of logarithms unless said. No source, calibrated on
/// simulated worlds of other physics, each judged by what was found on the others; see docs/model.md.
/// </summary>
public sealed record RigPrior
{
    /// <summary>What is taken without a past session.</summary>
    public static RigPrior Default { get; } = new();

    /// <summary>Heat that comes to the pan.</summary>
    public double Heat { get; init; } = 0.22;

    /// <summary>Its median beside what the size suggests, as a logarithm.</summary>
    public double HeatMean { get; init; }

    /// <summary>Time constant of the volatiles.</summary>
    public double FlameTime { get; init; } = 0.45;

    /// <summary>Time constant of the coals.</summary>
    public double CoalTime { get; init; } = 0.4;

    /// <summary>Time constant of the brick.</summary>
    public double BrickTime { get; init; } = 0.45;

    /// <summary>Share of the heat that goes into the brick.</summary>
    public double ToBrick { get; init; } = 0.5;

    /// <summary>Share of the wood's heat in its coals; not a logarithm.</summary>
    public double CoalShare { get; init; } = 0.07;

    /// <summary>Loss of the surface to the air.</summary>
    public double AirLoss { get; init; } = 0.3;

    /// <summary>Vapor of a surface.</summary>
    public double Vapor { get; init; } = 0.2;

    /// <summary>Exchange between cells.</summary>
    public double Mixing { get; init; } = 1.2;

    /// <summary>What draft, wood and weather do to the heat from hour to hour.</summary>
    public double Weather { get; init; } = 0.1;

    /// <summary>A charge beside its stated mass.</summary>
    public double Charge { get; init; } = 0.15;

    /// <summary>What the float holds in the pan beside what is said.</summary>
    public Length FloatOff { get; init; } = Length.FromMeters(0.003);

    /// <summary>A tank gauge that reads high or low all evening, in liters.</summary>
    public double GaugeOff { get; init; } = 1.0;
}
