namespace Panside.Reckoning.Rig;

/// <summary>A value with its 5 % and 95 % bounds, in the unit that its holder names.</summary>
/// <param name="P5">One time in twenty it is below.</param>
/// <param name="P50">As often above as below.</param>
/// <param name="P95">One time in twenty it is above.</param>
public readonly record struct Band(double P5, double P50, double P95)
{
    /// <summary>The standard normal deviate of the 95 % bound.</summary>
    public const double Deviate95 = 1.645;

    /// <summary>The standard normal deviate of the 99 % bound.</summary>
    public const double Deviate99 = 2.326;

    /// <summary>Three values in any order, put in order.</summary>
    public static Band Ordered(double a, double b, double c)
    {
        var (low, high) = (double.Min(a, double.Min(b, c)), double.Max(a, double.Max(b, c)));
        return new(low, a + b + c - low - high, high);
    }

    /// <summary>Each bound mapped.</summary>
    public Band Map(Func<double, double> map) => Ordered(map(P5), map(P50), map(P95));
}
