namespace Panside.Reckoning.Ensemble;

/// <summary>
/// What the members leave out, on top of how they differ: charges that burn otherwise than the last, a draft that turns, cells
/// that are no cells. Standard deviations of logarithms; no source, calibrated against a simulated rig with physics of its own.
/// </summary>
internal static class LeftOut
{
    /// <summary>Of the rate over one charge.</summary>
    public const double OfRate = 0.1;

    /// <summary>Of the time to a draw.</summary>
    public const double OfDraw = 0.45;

    /// <summary>Of the water that leaves after the last charge.</summary>
    public const double OfResidual = 0.08;

    /// <summary>Values of members, each off by a chance of its own; the same for the same telling.</summary>
    public static double[] Widened(double[] values, double deviation, RigEnsemble rig)
    {
        var noise = Beginning.Noise(values.Length, rig.Told, Purpose);
        for (var member = 0; member < values.Length; member++)
        {
            values[member] *= double.Exp(deviation * noise[member]);
        }

        return values;
    }

    private const int Purpose = 99;
}
