namespace Panside.Reckoning.Rig;

/// <summary>
/// How unsure the first reckoning is, as the standard deviation of a logarithm. The figures are stated margins, not fitted:
/// hobby rigs of one size are reported to boil between 0.7 and 1.5 times the rule of thumb.
/// </summary>
/// <param name="OfRate">Of the rate now: 0.30 before any reading, less with each interval of tank readings.</param>
public readonly record struct Spread(double OfRate)
{
    /// <summary>Before any reading.</summary>
    public static Spread Prior => new(0.30);

    /// <summary>Of the heat still stored, given the rate: coals and brick differ more between rigs than rates do.</summary>
    public const double OfStores = 0.22;

    /// <summary>Of the heat still to come.</summary>
    public double OfResidual => double.Sqrt((OfRate * OfRate) + (OfStores * OfStores));

    /// <summary>The factor at a standard normal deviate, of the rate now.</summary>
    public double RateFactor(double deviate) => double.Exp(deviate * OfRate);

    /// <summary>The factor at a standard normal deviate, of the heat still to come.</summary>
    public double ResidualFactor(double deviate) => double.Exp(deviate * OfResidual);
}
