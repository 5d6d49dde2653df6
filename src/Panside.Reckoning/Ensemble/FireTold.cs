namespace Panside.Reckoning.Ensemble;

/// <summary>The fire by what was told of it: how it is fed tonight, how far it has come, and what a forecast is set right by for that.</summary>
/// <param name="rigs">The ensemble that was told.</param>
internal readonly struct FireTold(RigEnsemble rigs)
{
    /// <summary>Nobody fires to the second: a charge goes in so many minutes later than its interval says, on the mean. No source, calibrated.</summary>
    private const double LateMinutes = 1.25;

    private const int PacedFrom = 4;

    /// <summary>Minutes until brick and stack are hot: no source, calibrated.</summary>
    private const int Hot = 32;

    private const int HotWithBlower = 20;

    /// <summary>From one charge to the next, as they go in tonight, once several tell of it; before, a little more than the rig file says.</summary>
    public double MinutesOfCharge => IsPaced
        ? double.Clamp(rigs.Common.PaceMinutes, rigs.Rig.Interval.TotalMinutes / 1.5, rigs.Rig.Interval.TotalMinutes * 2)
        : rigs.Rig.Interval.TotalMinutes + (rigs.Rig.IsBurner ? 0 : LateMinutes);

    /// <summary>Until the charge that comes next; 0 where it is late.</summary>
    public double MinutesToCharge => rigs.Common.ChargedAt is { } at ? double.Max(MinutesOfCharge - (rigs.Minute - at), 0) : 0;

    /// <summary>
    /// The fire as it is really fed tonight, once several charges tell of it; before, as the rig file says. What was told can be wrong, so
    /// that it is never taken to be more than half as much again, nor less than half.
    /// </summary>
    public double MegajoulesPerMinute
    {
        get
        {
            var usual = rigs.Rig.HeatOfCharge.Megajoules / (rigs.Rig.Interval.TotalMinutes + (rigs.Rig.IsBurner ? 0 : LateMinutes));
            return IsPaced ? double.Clamp(rigs.Common.PaceMegajoules, usual / 2, usual * 1.5) : usual;
        }
    }

    /// <summary>
    /// How far a fire has died down that got no wood when it should have: 0 while it is fired, 1 an hour later, with a blower in
    /// a third of the time.
    /// </summary>
    public double Dying => FedAt is { } at
        ? double.Clamp((rigs.Minute - at - (rigs.Rig.IsBurner ? 0 : rigs.Rig.Interval.TotalMinutes)) / (rigs.Rig.ForcedDraft || rigs.Rig.IsBurner ? 20 : 60), 0, 1)
        : 0;

    /// <summary>How far fire and pan have come.</summary>
    public FireStage Stage
    {
        get
        {
            var isDying = FedAt is { } charged && rigs.Minute - charged > (rigs.Rig.IsBurner ? 0 : 2 * rigs.Rig.Interval.TotalMinutes);
            var isHot = rigs.Common.LitAt is { } lit && rigs.Minute - lit >= (rigs.Rig.ForcedDraft ? HotWithBlower : Hot);
            return (isDying, isHot, rigs.Summary.IsBoiling) switch
            {
                (true, _, true) => FireStage.Dying,
                (true, _, false) => FireStage.Still,
                (false, true, _) => FireStage.Fired,
                (false, false, true) => FireStage.Warming,
                (false, false, false) => FireStage.Kindling,
            };
        }
    }

    private bool IsPaced => rigs.Common.ChargesPaced >= PacedFrom && !rigs.Rig.IsBurner;

    /// <summary>The minute at which the fire got heat last: of a burner that is on, now.</summary>
    private int? FedAt => rigs.Common.IsBurning ? rigs.Minute : rigs.Common.ChargedAt;

    /// <summary>
    /// What a forecast is set right by now. A young fire's bands are told narrower than the members say, since rigs of one size differ by
    /// less than the members do at first; the members of a rig that was learned differ less already.
    /// </summary>
    public Correction SetRight(Func<FireStage, bool, Correction> of)
    {
        if (rigs.Rig.IsBurner)
        {
            // What wood fires were off by says nothing of a burner.
            return Correction.None;
        }

        var correction = of(Stage, rigs.Rig.ForcedDraft);
        return rigs.Common.IsLearned && Stage is (FireStage.Kindling or FireStage.Warming) ? correction.NoNarrower : correction;
    }
}
