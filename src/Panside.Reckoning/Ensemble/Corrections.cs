namespace Panside.Reckoning.Ensemble;

/// <summary>
/// What each forecast is set right by: how far the truth lay from the members, stage by stage, on a simulated rig that has physics
/// of its own. No source, calibrated (docs/model.md): on 1,000 boils other than those that the table there is of.
/// </summary>
internal static class Corrections
{
    /// <summary>Minutes: under some of them a draw comes sooner or later by minutes, not by parts of its time.</summary>
    private const double DrawOffset = 8;

    private const double StillOffset = 4;

    /// <summary>Of the rate at the usual firing. A young fire's brick and stack take more than the members say.</summary>
    public static Correction OfRate(FireStage stage, bool forcedDraft) => (stage, forcedDraft) switch
    {
        (FireStage.Warming, false) => new(-0.28, 1.1, 1.3),
        (FireStage.Warming, true) => new(-0.06, 0.45, 0.5),
        (FireStage.Fired, false) => new(-0.01, 1.05, 1.05),
        (FireStage.Fired, true) => new(-0.03, 0.85, 0.8),
        _ => Correction.None,
    };

    /// <summary>Of the minutes to a draw.</summary>
    public static Correction OfDraw(FireStage stage, bool forcedDraft) => (stage, forcedDraft) switch
    {
        (FireStage.Warming, false) => new(-0.02, 0.6, 0.5, DrawOffset),
        (FireStage.Warming, true) => new(-0.14, 0.4, 0.65, DrawOffset),
        (FireStage.Fired, false) => new(0.01, 1.1, 1.25, DrawOffset),
        (FireStage.Fired, true) => new(-0.03, 0.75, 0.75, DrawOffset),
        _ => Correction.None,
    };

    /// <summary>Of the water that leaves without wood.</summary>
    public static Correction OfResidual(FireStage stage, bool forcedDraft) => (stage, forcedDraft) switch
    {
        (FireStage.Kindling, false) => new(-0.34, 0.7, 0.7),
        (FireStage.Kindling, true) => new(-0.03, 0.65, 0.65),
        (FireStage.Warming, false) => new(-0.16, 0.7, 0.75),
        (FireStage.Warming, true) => new(-0.09, 0.65, 0.65),
        (FireStage.Fired, false) => new(0.03, 0.9, 0.9),
        (FireStage.Fired, true) => new(-0.03, 0.95, 0.85),
        (FireStage.Dying, false) => new(-0.1, 0.85, 0.8),
        (FireStage.Still, false) => new(0.02, 0.8, 0.9),
        (FireStage.Still, true) => new(0.06, 0.65, 0.65),
        _ => Correction.None,
    };

    /// <summary>
    /// Of the minutes until the boil goes still. A dying boil that is seen to simmer does so in one channel: it is still sooner than
    /// a pan that boils as a whole.
    /// </summary>
    public static Correction OfStill(FireStage stage, bool forcedDraft) => (stage, forcedDraft) switch
    {
        (FireStage.Warming, false) => new(-0.06, 1.55, 1, StillOffset),
        (FireStage.Warming, true) => new(-0.04, 0.8, 0.9, StillOffset),
        (FireStage.Fired, false) => new(0.03, 0.9, 0.9, StillOffset),
        (FireStage.Fired, true) => new(-0.04, 0.9, 0.8, StillOffset),
        (FireStage.Dying, false) => new(-0.35, 1.6, 1.2, StillOffset),
        _ => Correction.None,
    };
}
