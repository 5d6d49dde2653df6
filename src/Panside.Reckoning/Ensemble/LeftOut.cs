namespace Panside.Reckoning.Ensemble;

/// <summary>
/// What the members leave out, on top of how they differ: charges that burn otherwise than the last, a draft that turns, cells
/// that are no cells. Standard deviations of logarithms; no source, calibrated against simulated rigs with physics of their own. The figures stand in
/// <c>calibration.json</c>.
/// </summary>
internal static class LeftOut
{
    private static CalibratedNoise Noise => CalibrationFile.Own.LeftOut;

    /// <summary>
    /// Part of the rate that the members say for the usual firing: with a blower a rig that was fired slower boils less than in
    /// proportion, since more of the heat goes up the stack.
    /// </summary>
    public static double PartOfRate(bool forcedDraft) => forcedDraft ? Noise.RateForced : 1;

    /// <summary>Of the time to a draw.</summary>
    public static double OfDraw => Noise.Draw;

    /// <summary>Of the time to a draw beside that, in minutes and no logarithm: what stands at the draw-off swings with each charge.</summary>
    public static double OfDrawMinutes => Noise.DrawMinutes;

    /// <summary>
    /// Of the water that leaves after the last charge: while the fire dies it hangs more and more on how the last coals lie.
    /// </summary>
    /// <param name="dying">How far the fire has died down, 0 to 1.</param>
    /// <param name="forcedDraft">Whether a blower burns it down.</param>
    public static double OfResidual(double dying, bool forcedDraft) => Noise.Residual + ((forcedDraft ? Noise.ResidualDyingForced : Noise.ResidualDying) * dying);

    /// <summary>Of the time until the boil goes still.</summary>
    /// <param name="dying">How far the fire has died down, 0 to 1.</param>
    /// <param name="forcedDraft">Whether a blower burns it down.</param>
    public static double OfStill(double dying, bool forcedDraft) => (forcedDraft ? Noise.StillDyingForced : Noise.StillDying) * dying;

    /// <summary>Of the time to the last charge: how the charges to come differ.</summary>
    public static double OfLastCharge => Noise.LastCharge;

    /// <summary>The same in minutes: a person is late, or early.</summary>
    public static double OfLastChargeMinutes => Noise.LastChargeMinutes;

    /// <summary>Values of members, each off by a chance of its own; always the same one, so that a band moves only by what was told.</summary>
    /// <param name="values">One for each member, changed in place.</param>
    /// <param name="deviation">By how much, as a logarithm.</param>
    /// <param name="more">By how much beside that, in their own unit; no value comes below 0 by it.</param>
    public static double[] Widened(double[] values, double deviation, double more = 0)
    {
        if (deviation == 0 && more == 0)
        {
            return values;
        }

        var noise = Kept(ref _noise, values.Length, Purpose);
        var added = more > 0 ? Kept(ref _added, values.Length, Purpose + 1) : null;
        for (var member = 0; member < values.Length; member++)
        {
            values[member] *= double.Exp(deviation * noise[member]);
            values[member] = added is null ? values[member] : double.Max(values[member] + (more * added[member]), 0);
        }

        return values;
    }

    private const int Purpose = 99;

    // The same numbers at each telling: drawn once.
    private static double[] _noise = [];
    private static double[] _added = [];

    private static double[] Kept(ref double[] noise, int count, int purpose)
    {
        var kept = noise;
        return kept.Length == count ? kept : noise = Beginning.Noise(count, told: 0, purpose);
    }
}
