namespace Panside.Reckoning.Ensemble;

/// <summary>
/// What each forecast is set right by: how far the truth lay from the members, stage by stage, in simulated worlds of other physics, each
/// counting alike. No source, calibrated (docs/worlds.md: what it is worth is told there for each world by what was fitted on the others).
/// The figures stand in <c>calibration.json</c>.
/// </summary>
internal static class Corrections
{
    /// <summary>
    /// How much wider the time to a draw is told on a rig that was learned. No source, calibrated on rigs whose fire is a quarter off
    /// their file, whose gradient runs otherwise too; on a rig that is like its file the band is too wide by as much.
    /// </summary>
    public static double LearnedDraw => CalibrationFile.Own.LearnedDraw;

    /// <summary>Of the rate of the next ten minutes. A young fire's brick and stack take more than the members say.</summary>
    public static Correction OfRate(FireStage stage, bool forcedDraft) => CalibrationFile.Own.Of("evaporation-rate", stage, forcedDraft);

    /// <summary>Of the minutes to a draw: under its offset one comes sooner or later by minutes, not by parts of its time.</summary>
    public static Correction OfDraw(FireStage stage, bool forcedDraft) => CalibrationFile.Own.Of("minutes-to-draw", stage, forcedDraft);

    /// <summary>Of the minutes to the last charge: it comes sooner where charges are heavier than they are told.</summary>
    public static Correction OfLastCharge(FireStage stage, bool forcedDraft) => CalibrationFile.Own.Of("minutes-to-last-charge", stage, forcedDraft);

    /// <summary>Of the water that leaves without wood.</summary>
    public static Correction OfResidual(FireStage stage, bool forcedDraft) => CalibrationFile.Own.Of("residual-evaporation", stage, forcedDraft);

    /// <summary>
    /// Of the minutes until the boil goes still. A dying boil that is seen to simmer does so in one channel: it is still sooner than
    /// a pan that boils as a whole.
    /// </summary>
    public static Correction OfStill(FireStage stage, bool forcedDraft) => CalibrationFile.Own.Of("minutes-to-still", stage, forcedDraft);

    /// <summary>A forecast's offset, in its unit; 0 where it has none.</summary>
    public static double OffsetOf(string forecast) => CalibrationFile.Own.Corrections.GetValueOrDefault(forecast)?.Offset ?? 0;
}
