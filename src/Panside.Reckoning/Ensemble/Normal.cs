namespace Panside.Reckoning.Ensemble;

/// <summary>The standard normal distribution.</summary>
internal static class Normal
{
    /// <summary>
    /// The chance of a lower value: 1 − φ(x)(b₁t + … + b₅t⁵), t = 1/(1 + 0.2316419 x), formula 26.2.17 of M. Abramowitz,
    /// I. Stegun, Handbook of Mathematical Functions (1964), from memory; 7.5e-8 over all values.
    /// </summary>
    public static double Below(double value)
    {
        var x = double.Abs(value);
        var t = 1 / (1 + (0.2316419 * x));
        var tail = double.Exp(-0.5 * x * x) / double.Sqrt(2 * double.Pi)
            * t * (0.319381530 + (t * (-0.356563782 + (t * (1.781477937 + (t * (-1.821255978 + (t * 1.330274429))))))));
        return value >= 0 ? 1 - tail : tail;
    }
}
