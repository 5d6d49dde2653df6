namespace Panside.Reckoning.Rig;

/// <summary>
/// What tank readings say of the heat to this pan: the logarithm of the factor on what its size suggests, as a normal
/// distribution, narrowed by each interval between two readings (a scalar Kalman update).
/// </summary>
/// <param name="LogMean">Mean of the logarithm of the factor.</param>
/// <param name="Deviation">Its standard deviation.</param>
public readonly record struct RateEstimate(double LogMean, double Deviation)
{
    /// <summary>A tank gauge is read to about a third of a gallon: common practice, no source.</summary>
    private const double GaugeLiters = 1.3;

    /// <summary>The model's own count of an interval is off by a few minutes of boiling: no source, calibrated.</summary>
    private const double ModelLiters = 2.5;

    /// <summary>Rates drift with wood and weather: no estimate gets narrower.</summary>
    private const double LeastDeviation = 0.10;

    /// <summary>Before any reading.</summary>
    public static RateEstimate Prior => new(0, Spread.Prior.OfRate);

    /// <summary>The factor's median.</summary>
    public double Factor => double.Exp(LogMean);

    /// <summary>Its spread.</summary>
    public Spread Spread => new(Deviation);

    /// <summary>After an interval.</summary>
    /// <param name="expectedLiters">Water that the model, at factor 1, says has gone; intervals under a gallon say too little.</param>
    /// <param name="measuredLiters">Water that the readings say has gone.</param>
    public RateEstimate After(double expectedLiters, double measuredLiters)
    {
        if (expectedLiters < 3.8 || measuredLiters < 0.5)
        {
            return this;
        }

        var noise = double.Sqrt(2) * GaugeLiters / measuredLiters;
        var timing = ModelLiters / expectedLiters;
        var variance = (noise * noise) + (timing * timing) + (LeastDeviation * LeastDeviation);
        var prior = Deviation * Deviation;
        var gain = prior / (prior + variance);
        var log = double.Clamp(double.Log(measuredLiters / expectedLiters), -1.5, 1.5);
        return new(
            LogMean + (gain * (log - LogMean)),
            double.Max(double.Sqrt((1 - gain) * prior), LeastDeviation));
    }
}
