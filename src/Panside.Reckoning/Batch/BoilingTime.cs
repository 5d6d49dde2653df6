using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Batch;

/// <summary>How long a tank of sap takes, and what a flat pan may evaporate before its own rate is known.</summary>
public static class BoilingTime
{
    /// <summary>The time to boil a tank of sap down to a target at a steady rate of evaporation.</summary>
    /// <remarks>
    /// Source: a balance of sugar, [S3]; the rate is the volume of water that leaves, at the temperature of the sap.
    /// Not covered: starting up, firing pauses, and the shutdown.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">No rate, or the sap not thinner than the target.</exception>
    public static TimeSpan For(Portion sap, SugarContent target, VolumeRate evaporation)
    {
        if (evaporation.LitersPerHour is not (>= 0.1 and <= 100_000))
        {
            throw OutOfRange.For("The rate of evaporation in L/h", evaporation.LitersPerHour, "0.1 to 100 000 L/h");
        }

        Mass water = Finishing.WaterToBoilOff(sap, target);
        Volume gone = Portion.OfMass(water, default, sap.Temperature).Volume;
        return TimeSpan.FromHours(gone.Liters / evaporation.LitersPerHour);
    }

    /// <summary>
    /// What a flat pan evaporates by rule of thumb: 1.0 US gallon an hour a square foot, 1.5 with forced draft.
    /// </summary>
    /// <remarks>
    /// Source: [S37] for natural draft, an anecdote for forced draft with warmed feed. Accuracy: flat pans were
    /// reported from under 1.1 to 1.33; a first guess only. Range: 0.05 to 20 m². Not covered: flue pans, at 2 to 2.5.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range of area.</exception>
    public static VolumeRate TypicalEvaporation(Area pan, bool forcedDraft) => pan.SquareMeters is >= 0.05 and <= 20
        ? VolumeRate.FromUsGallonsPerHour(pan.SquareFeet * (forcedDraft ? 1.5 : 1.0))
        : throw OutOfRange.For("The area of the pan in m²", pan.SquareMeters, "0.05 to 20 m² (0.54 to 215 square feet)");
}
