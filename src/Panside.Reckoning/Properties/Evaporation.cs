using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Properties;

/// <summary>What water takes on its way from the feed to steam.</summary>
public static class Evaporation
{
    /// <summary>The heat to warm water from the feed's temperature to its boil and to turn it into steam.</summary>
    /// <remarks>
    /// Source: [S7] for warming, [S1] for the latent heat. Range: feed 0 to 110 °C, boil 90 to 108 °C, feed no hotter
    /// than the boil. Agreement: 0.2 % with 2657 kJ/kg from 40 °F at sea level, computed from [S1]. Not covered: what
    /// fire, pan and air lose.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or a negative mass.</exception>
    public static Energy HeatToBoilAway(Mass water, Temperature feed, Temperature boiling)
    {
        if (water.Kilograms < 0)
        {
            throw OutOfRange.For("The mass of water in kg", water.Kilograms, "0 or more");
        }

        double latent = Steam.LatentHeatMegajoulesPerKilogram(boiling);
        if (feed > boiling)
        {
            throw OutOfRange.For("The temperature of the feed in °C", feed.Celsius, "no more than that of the boil");
        }

        double specific = SugarSolution.SpecificHeatKilojoulesPerKilogramKelvin(default, feed) / 1000;
        return Energy.FromMegajoules(water.Kilograms * ((specific * (boiling - feed).Celsius) + latent));
    }
}
