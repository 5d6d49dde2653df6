using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>What was told and holds for every member alike.</summary>
internal readonly record struct Common
{
    /// <summary>What the float is said to hold the pan at.</summary>
    public Length HeldDepth { get; init; }

    /// <summary>What its float is said to hold the pan behind at, over its flues; nothing where there is none.</summary>
    public Length HeldBackDepth { get; init; }

    /// <summary>Whether the pan behind was flooded and its depth not read since.</summary>
    public bool IsBackFloodUnread { get; init; }

    /// <summary>Whether the tank was read.</summary>
    public bool IsTankKnown { get; init; }

    /// <summary>Whether the thermometer was read in boiling water.</summary>
    public bool IsThermometerKnown { get; init; }

    /// <summary>Whether past boils of this rig have taught how it differs from its file.</summary>
    public bool IsLearned { get; init; }

    /// <summary>The minute of the last charge; null before the first.</summary>
    public int? ChargedAt { get; init; }

    /// <summary>The minute of the first charge; null before it.</summary>
    public int? LitAt { get; init; }

    /// <summary>The minute at which much cold liquid last went into the pan, by a flood or by hand; null where none did.</summary>
    public int? ChilledAt { get; init; }

    /// <summary>Whether the pan was flooded and its depth not read since.</summary>
    public bool IsFloodUnread { get; init; }

    /// <summary>Whether a burner is on.</summary>
    public bool IsBurning { get; init; }

    /// <summary>Whether coals were raked level since the last charge.</summary>
    public bool AreCoalsLevel { get; init; }

    /// <summary>Charges that came one after the other in the time that charges do, by which <see cref="PaceMegajoules"/> is known.</summary>
    public int ChargesPaced { get; init; }

    /// <summary>Heat of the wood a minute, in MJ, as charges went in of late: each counts for three tenths, those before it for the rest.</summary>
    public double PaceMegajoules { get; init; }

    /// <summary>Minutes from charge to charge, of late, counted in the same way.</summary>
    public double PaceMinutes { get; init; }

    private const double NewestCounts = 0.3;

    /// <summary>With a charge that went in so many minutes after the one before.</summary>
    /// <param name="megajoules">Its heat.</param>
    /// <param name="minutes">Minutes since the one before.</param>
    /// <param name="most">A longer pause is no pace: something else was done.</param>
    public Common Paced(double megajoules, int minutes, double most) => minutes < 1 || minutes > most ? this : this with
    {
        ChargesPaced = ChargesPaced + 1,
        PaceMinutes = ChargesPaced == 0 ? minutes : (NewestCounts * minutes) + ((1 - NewestCounts) * PaceMinutes),
        PaceMegajoules = ChargesPaced == 0 ? megajoules / minutes : (NewestCounts * megajoules / minutes) + ((1 - NewestCounts) * PaceMegajoules),
    };
}
