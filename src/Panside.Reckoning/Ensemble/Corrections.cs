namespace Panside.Reckoning.Ensemble;

/// <summary>
/// What each forecast is set right by: how far the truth lay from the members, stage by stage, on a simulated rig that has physics
/// of its own. No source, calibrated (docs/model.md) on boils other than those that the table there is of.
/// </summary>
internal static class Corrections
{
    /// <summary>Minutes: under some of them a draw comes sooner or later by minutes, not by parts of its time.</summary>
    public const double DrawOffset = 8;

    /// <summary>The same of the still boil.</summary>
    public const double StillOffset = 4;

    /// <summary>What a young fire will give is spread more evenly than the members, which lie thick around their middle.</summary>
    private const double YoungBend = 0.87;

    /// <summary>
    /// How much wider the time to a draw is told on a rig that was learned. No source, calibrated on rigs whose fire is a quarter off
    /// their file, whose gradient runs otherwise too; on a rig that is like its file the band is too wide by as much.
    /// </summary>
    public const double LearnedDraw = 1.12;

    /// <summary>Of the rate at the usual firing. A young fire's brick and stack take more than the members say.</summary>
    public static Correction OfRate(FireStage stage, bool forcedDraft) => (stage, forcedDraft) switch
    {
        (FireStage.Warming, false) => new(-0.33, 0.99, 1.03, Bend: YoungBend),
        (FireStage.Warming, true) => new(-0.07, 0.385, 0.39, Bend: YoungBend),
        (FireStage.Fired, false) => new(-0.01, 0.97, 0.97),
        (FireStage.Fired, true) => new(-0.03, 0.875, 0.835),
        _ => Correction.None,
    };

    /// <summary>Of the minutes to a draw.</summary>
    public static Correction OfDraw(FireStage stage, bool forcedDraft) => (stage, forcedDraft) switch
    {
        (FireStage.Warming, false) => new(-0.015, 0.69, 0.64, DrawOffset),
        (FireStage.Warming, true) => new(-0.14, 0.38, 0.5, DrawOffset),
        (FireStage.Fired, false) => new(0.015, 1.1, 1.3, DrawOffset),
        (FireStage.Fired, true) => new(-0.03, 0.76, 0.75, DrawOffset),
        _ => Correction.None,
    };

    /// <summary>Of the water that leaves without wood.</summary>
    public static Correction OfResidual(FireStage stage, bool forcedDraft) => (stage, forcedDraft) switch
    {
        (FireStage.Kindling, false) => new(-0.35, 0.74, 0.71),
        (FireStage.Kindling, true) => new(-0.03, 0.66, 0.67),
        (FireStage.Warming, false) => new(-0.17, 0.71, 0.72),
        (FireStage.Warming, true) => new(-0.08, 0.67, 0.7),
        (FireStage.Fired, false) => new(0.02, 0.86, 0.845),
        (FireStage.Fired, true) => new(-0.02, 0.965, 0.9),
        (FireStage.Dying, false) => new(-0.11, 0.9, 0.8),
        (FireStage.Still, false) => new(0.01, 0.865, 0.925),
        (FireStage.Still, true) => new(0.06, 0.672, 0.672),
        _ => Correction.None,
    };

    /// <summary>
    /// Of the minutes until the boil goes still. A dying boil that is seen to simmer does so in one channel: it is still sooner than
    /// a pan that boils as a whole.
    /// </summary>
    public static Correction OfStill(FireStage stage, bool forcedDraft) => (stage, forcedDraft) switch
    {
        (FireStage.Warming, false) => new(-0.06, 1.55, 1, StillOffset),
        (FireStage.Warming, true) => new(-0.03, 0.84, 0.92, StillOffset),
        (FireStage.Fired, false) => new(0.02, 0.86, 0.85, StillOffset),
        (FireStage.Fired, true) => new(-0.02, 0.93, 0.86, StillOffset),
        (FireStage.Dying, false) => new(-0.35, 1.6, 1.2, StillOffset),
        _ => Correction.None,
    };
}
