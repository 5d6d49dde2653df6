namespace Panside.Guide.Advice;

/// <summary>
/// A level and a rise a minute, as of the newest of some readings: a straight line through them by least squares, together with what is
/// expected of the rise before any of them (a normal prior of the slope; Bayesian regression in its closed form for two unknowns). So one
/// reading moves it by its own error and no more, and two that are apart begin to tell of the rise.
/// </summary>
/// <param name="Level">As of the newest reading.</param>
/// <param name="Slope">A minute.</param>
internal readonly record struct RisingLine(double Level, double Slope)
{
    /// <summary>The line of readings; at least one.</summary>
    /// <param name="readings">Minutes before the newest, none of them over 0, and what was read.</param>
    /// <param name="error">The standard deviation of a reading.</param>
    /// <param name="slope">What is expected of the slope, and its standard deviation.</param>
    /// <param name="bends">By how much a minute the past is another line, as a standard deviation: the older a reading, the less it says.</param>
    public static RisingLine Through(IEnumerable<(double Minutes, double Value)> readings, double error, (double Mean, double Deviation) slope, double bends)
    {
        var prior = 1 / (slope.Deviation * slope.Deviation);
        var (w, wt, wtt, wy, wty) = (0.0, 0.0, prior, 0.0, prior * slope.Mean);
        foreach (var (minutes, value) in readings)
        {
            var weight = 1 / ((error * error) + (bends * bends * minutes * minutes));
            w += weight;
            wt += weight * minutes;
            wtt += weight * minutes * minutes;
            wy += weight * value;
            wty += weight * minutes * value;
        }

        var determinant = (w * wtt) - (wt * wt);
        return new(((wtt * wy) - (wt * wty)) / determinant, ((w * wty) - (wt * wy)) / determinant);
    }

    /// <summary>What it comes to so many minutes after the newest reading.</summary>
    public double After(double minutes) => Level + (Slope * minutes);
}
