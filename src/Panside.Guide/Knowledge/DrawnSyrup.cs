using Panside.Guide.Lines;

namespace Panside.Guide.Knowledge;

/// <summary>What a draw's density is known by, the weakest first.</summary>
public enum DensityBy
{
    /// <summary>The thermometer, as it was opened and shut.</summary>
    Thermometer,

    /// <summary>A cooled spoonful under the refractometer.</summary>
    Refractometer,

    /// <summary>The hydrometer, put right for the cup's temperature.</summary>
    Hydrometer,
}

/// <summary>One draw: how it was opened and shut, how much came and how dense it was. Opened again within a few minutes it is the same draw.</summary>
/// <param name="Opened">When it was opened, or told shut where nobody told of the opening.</param>
public sealed record DrawnSyrup(Moment Opened)
{
    /// <summary>Seconds from the advice to the deed; null where it was not advised.</summary>
    public double? DelaySeconds { get; init; }

    /// <summary>What stood at the draw-off as it was opened, by the course of its thermometer, in Brix; null where that tells nothing.</summary>
    public double? OpenedBrix { get; init; }

    /// <summary>How fast it rose then, in K a minute; null as above.</summary>
    public double? RisesKelvin { get; init; }

    /// <summary>At what it was to be shut, in Brix by the thermometer; null as above.</summary>
    public double? ShutBrix { get; init; }

    /// <summary>When it was shut; null while it is open.</summary>
    public Moment? Shut { get; init; }

    /// <summary>How much came, in liters as hot as it is drawn.</summary>
    public double Liters { get; init; }

    /// <summary>Its density as read of a sample, in Brix; null where none was.</summary>
    public double? Brix { get; init; }

    /// <summary>What that is known by.</summary>
    public DensityBy By { get; init; }

    /// <summary>
    /// What the pail holds by the thermometer alone: it runs out faster than it thins, so that more of it is as it was opened. The weight
    /// was read off draws of simulated rigs, no source. Null where the course tells nothing.
    /// </summary>
    public double? ExpectedBrix => OpenedBrix is { } opened && ShutBrix is { } shut ? (OpenedShare * opened) + ((1 - OpenedShare) * shut) : null;

    /// <summary>The weight of the opening in <see cref="ExpectedBrix"/>.</summary>
    public const double OpenedShare = 0.6;

    /// <summary>Opened again so soon after it was shut, with no density read, it is the same draw.</summary>
    public static readonly TimeSpan SameDraw = TimeSpan.FromMinutes(4);
}
