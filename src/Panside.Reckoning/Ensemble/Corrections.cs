namespace Panside.Reckoning.Ensemble;

/// <summary>
/// What each forecast is set right by: how far the truth lay from the members, stage by stage, in simulated worlds of other physics, each
/// counting alike. No source, calibrated (docs/worlds.md: what it is worth is told there for each world by what was fitted on the others).
/// </summary>
internal static class Corrections
{
    /// <summary>Minutes: under some of them a draw comes sooner or later by minutes, not by parts of its time.</summary>
    public const double DrawOffset = 8;

    /// <summary>The same of the still boil.</summary>
    public const double StillOffset = 4;

    /// <summary>The same of the last charge: charges fall together.</summary>
    public const double LastChargeOffset = 10;

    /// <summary>
    /// How much wider the time to a draw is told on a rig that was learned. No source, calibrated on rigs whose fire is a quarter off
    /// their file, whose gradient runs otherwise too; on a rig that is like its file the band is too wide by as much.
    /// </summary>
    public const double LearnedDraw = 1.12;

    /// <summary>Of the rate of the next ten minutes. A young fire's brick and stack take more than the members say.</summary>
    public static Correction OfRate(FireStage stage, bool forcedDraft) => (stage, forcedDraft) switch
    {
        (FireStage.Warming, false) => new(-0.55, 2.6, 2.5),
        (FireStage.Warming, true) => new(-0.05, 1.15, 0.95),
        (FireStage.Fired, false) => new(0.01, 0.85, 1.25),
        (FireStage.Fired, true) => new(0.01, 0.85, 1.2),
        _ => Correction.None,
    };

    /// <summary>Of the minutes to a draw.</summary>
    public static Correction OfDraw(FireStage stage, bool forcedDraft) => (stage, forcedDraft) switch
    {
        (FireStage.Warming, _) => new(0.05, 1, 1, DrawOffset),
        (FireStage.Fired, false) => new(0.15, 2.1, 1.1, DrawOffset),
        (FireStage.Fired, true) => new(0, 1.9, 1.1, DrawOffset),
        _ => Correction.None,
    };

    /// <summary>Of the minutes to the last charge: it comes sooner where charges are heavier than they are told.</summary>
    public static Correction OfLastCharge(FireStage stage, bool forcedDraft) => (stage, forcedDraft) switch
    {
        (FireStage.Fired, false) => new(-0.1, 1.3, 1.1, LastChargeOffset),
        (FireStage.Fired, true) => new(-0.03, 1.1, 1, LastChargeOffset),
        _ => Correction.None,
    };

    /// <summary>Of the water that leaves without wood.</summary>
    public static Correction OfResidual(FireStage stage, bool forcedDraft) => (stage, forcedDraft) switch
    {
        (FireStage.Kindling, false) => new(-0.21, 0.75, 0.85),
        (FireStage.Kindling, true) => new(-0.15, 0.75, 0.8),
        (FireStage.Warming, _) => new(-0.02, 0.85, 1.1),
        (FireStage.Fired, false) => new(0.03, 1.2, 1.3),
        (FireStage.Fired, true) => new(-0.06, 1.1, 0.95),
        (FireStage.Dying, false) => new(-0.28, 1.35, 1),
        (FireStage.Still, false) => new(-0.06, 1.15, 1.25),
        (FireStage.Still, true) => new(-0.05, 1, 0.75),
        _ => Correction.None,
    };

    /// <summary>
    /// Of the minutes until the boil goes still. A dying boil that is seen to simmer does so in one channel: it is still sooner than
    /// a pan that boils as a whole.
    /// </summary>
    public static Correction OfStill(FireStage stage, bool forcedDraft) => (stage, forcedDraft) switch
    {
        (FireStage.Kindling, false) => new(0.05, 1.25, 1.1, StillOffset),
        (FireStage.Kindling, true) => new(-0.08, 1.15, 1, StillOffset),
        (FireStage.Warming, false) => new(0.1, 1.2, 1.6, StillOffset),
        (FireStage.Warming, true) => new(-0.15, 0.85, 0.85, StillOffset),
        (FireStage.Fired, false) => new(0, 1.1, 1.55, StillOffset),
        (FireStage.Fired, true) => new(-0.3, 1, 0.88, StillOffset),
        (FireStage.Dying, false) => new(-0.38, 1.5, 1.05, StillOffset),
        (FireStage.Still, false) => new(-0.05, 1.35, 1, StillOffset),
        _ => Correction.None,
    };
}
