namespace Panside.Reckoning.Rig;

/// <summary>A value with its 5 % and 95 % bounds, in the unit that its holder names.</summary>
/// <param name="P5">One time in twenty it is below.</param>
/// <param name="P50">As often above as below.</param>
/// <param name="P95">One time in twenty it is above.</param>
public readonly record struct Band(double P5, double P50, double P95)
{
    /// <summary>The band of a value that is known by its quantiles.</summary>
    /// <param name="quantile">The value at a quantile from 0 to 1.</param>
    public static Band Of(Func<double, double> quantile) => new(quantile(0.05), quantile(0.5), quantile(0.95));

    /// <summary>Each bound in another unit.</summary>
    public Band Map(Func<double, double> map) => new(map(P5), map(P50), map(P95));
}
