namespace Panside.Reckoning.Ensemble;

/// <summary>How members are run on.</summary>
internal readonly record struct Run
{
    /// <summary>Steps to take.</summary>
    public required int Steps { get; init; }

    /// <summary>Minutes of a step: two at the most where sugar moves, since a longer one would carry more than a cell holds.</summary>
    public double StepMinutes { get; init; }

    /// <summary>Heat of the wood that goes in, in MJ a minute, evenly; 0 with no more wood.</summary>
    public double WoodMegajoules { get; init; }

    /// <summary>Liters that the float is said to hold the pan at, beside which each member has its own; 0 without feed. Of two, the pan where the draw-off is, fed out of the one behind.</summary>
    public double HeldLiters { get; init; }

    /// <summary>Liters that its float is said to hold the pan behind at; 0 without feed from the tank, or without such a pan.</summary>
    public double HeldBackLiters { get; init; }

    /// <summary>Liters in the pan behind at which <see cref="RunResult.LowMinutes"/> is looked for as well.</summary>
    public double LowBackLiters { get; init; }

    /// <summary>Whether each member is held about where it stands at the start, by hand, and not at <see cref="HeldLiters"/>: for one run at a stretch.</summary>
    public bool HoldsOwn { get; init; }

    /// <summary>Liters in the pan at which <see cref="RunResult.LowMinutes"/> is looked for; 0 where it is not.</summary>
    public double LowLiters { get; init; }

    /// <summary>Whether the feed ends with what is in the tank.</summary>
    public bool TankEnds { get; init; }

    /// <summary>Whether only heat and water are asked for: then sugar stays where it is, and what the feed brings is left out.</summary>
    public bool WithoutSugar { get; init; }

    /// <summary>Whether <see cref="RunResult.TakenLiters"/> and <see cref="RunResult.AirLiters"/> are summed up, for a balance.</summary>
    public bool Accounts { get; init; }

    /// <summary>
    /// Sugar fraction by mass at which the draw-off is looked for; 0 where it is not. Members that have all come to it are not
    /// run further, so that nothing but <see cref="RunResult.DrawMinutes"/> tells anything then.
    /// </summary>
    public double DrawFraction { get; init; }
}
