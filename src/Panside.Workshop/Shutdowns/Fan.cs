namespace Panside.Workshop.Shutdowns;

/// <summary>A forecast by five of its quantiles, beside what truly comes, in the unit that its holder names.</summary>
internal sealed record Fan(double P5, double P25, double P50, double P75, double P95, double Truth)
{
    /// <summary>The fan of a forecast that is known by its quantiles.</summary>
    /// <param name="quantile">The value at a quantile from 0 to 1.</param>
    /// <param name="truth">What truly comes.</param>
    public static Fan Of(Func<double, double> quantile, double truth) =>
        new(quantile(0.05), quantile(0.25), quantile(0.5), quantile(0.75), quantile(0.95), truth);

    /// <summary>The highest of all.</summary>
    public double Most => double.Max(P95, Truth);
}
