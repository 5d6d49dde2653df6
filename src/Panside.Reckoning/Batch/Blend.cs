using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Batch;

/// <summary>Two batches into one, and the thinner liquid that brings a heavy one to target.</summary>
/// <remarks>
/// Source: balances of mass and of sugar; densities by [S3], heats by [S7]. Range: 0 to 85 Brix, 0 to 110 °C. Accuracy:
/// that of the sugar contents given.
/// </remarks>
public static class Blend
{
    /// <summary>Two batches poured together, at the temperature that they take without loss.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Both are empty.</exception>
    public static Portion Of(Portion one, Portion other)
    {
        Mass whole = one.Mass + other.Mass;
        if (whole.Kilograms <= 0)
        {
            throw OutOfRange.For("The mass of both batches in kg", whole.Kilograms, "more than 0");
        }

        double oneHeat = HeatCapacity(one);
        double otherHeat = HeatCapacity(other);
        double share = oneHeat / (oneHeat + otherHeat);
        double celsius = (share * one.Temperature.Celsius) + ((1 - share) * other.Temperature.Celsius);
        return Portion.OfMass(
            whole,
            SugarContent.FromMassFraction((one.Sugar + other.Sugar) / whole),
            Temperature.FromCelsius(celsius));
    }

    /// <summary>How much of a thinner liquid brings a heavy batch to its target.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The batch is not heavier, or the liquid not thinner, than the target.
    /// </exception>
    public static Portion ThinnerToAdd(
        Portion heavy, SugarContent target, SugarContent thinner, Temperature thinnerTemperature)
    {
        if (heavy.SugarContent <= target)
        {
            throw OutOfRange.For("The heavy batch's sugar content in Brix", heavy.SugarContent.Brix, "over the target's");
        }

        if (thinner >= target)
        {
            throw OutOfRange.For("The thinner liquid's sugar content in Brix", thinner.Brix, "under the target's");
        }

        double share = (heavy.SugarContent.Brix - target.Brix) / (target.Brix - thinner.Brix);
        return Portion.OfMass(heavy.Mass * share, thinner, thinnerTemperature);
    }

    private static double HeatCapacity(Portion portion) =>
        portion.Mass.Kilograms
        * SugarSolution.SpecificHeatKilojoulesPerKilogramKelvin(portion.SugarContent, portion.Temperature);
}
