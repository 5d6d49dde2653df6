namespace Panside.Reckoning.Ensemble;

/// <summary>Quantiles of equally likely values.</summary>
internal static class Sorted
{
    /// <summary>A sorted copy.</summary>
    public static double[] Of(ReadOnlySpan<double> values)
    {
        var sorted = values.ToArray();
        Array.Sort(sorted);
        return sorted;
    }

    /// <summary>
    /// The value at a quantile of sorted values, linear between the two nearest: definition 7 of Hyndman and Fan, "Sample
    /// Quantiles in Statistical Packages", The American Statistician 50 (1996) 361–365, from memory. An infinite neighbor gives
    /// infinity.
    /// </summary>
    public static double At(double[] sorted, double quantile)
    {
        var place = quantile * (sorted.Length - 1);
        var low = (int)double.Floor(place);
        var high = int.Min(low + 1, sorted.Length - 1);
        var part = place - low;
        return part == 0 || double.IsInfinity(sorted[low]) ? sorted[low] : sorted[low] + (part * (sorted[high] - sorted[low]));
    }
}
