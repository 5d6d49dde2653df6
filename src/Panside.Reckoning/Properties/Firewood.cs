using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Properties;

/// <summary>Wood as fuel: its heat as it goes into the fire, and what a full cord of it weighs.</summary>
/// <remarks>
/// Moisture here is on the dry basis, as in firewood tables: 20 % is 0.2 kg of water to 1 kg of bone-dry wood, one
/// sixth of what the scales show. Green wood runs from 0.4 to 1.
/// </remarks>
public static class Firewood
{
    private const double DryLowerMegajoulesPerKilogram = 18.7;
    private const double VaporizingMegajoulesPerKilogram = 2.443;

    // 9000 instead of 8600 Btu/lb oven-dry, all of the difference above the heat of the steam from burnt hydrogen.
    private const double ResinousMegajoulesPerKilogram = DryLowerMegajoulesPerKilogram + (400 * 0.002326);
    private const double AirDryMoisture = 0.2;

    /// <summary>
    /// The lower heating value of wood as fired: 18.7 (1 - w) - 2.443 w MJ/kg, w the water in the whole by mass (19.63
    /// for a resinous wood instead of 18.7). What is unknown burns as hardwood.
    /// </summary>
    /// <remarks>
    /// Source: [S18] from memory; resinous by [S17]. Range: 0 to 1.5 on the dry basis. Agreement: at 20 % the gross
    /// value of the tables, 7000 Btu/lb, is 7 % above this net one, which is the heat that leaves with the steam in the
    /// smoke.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A negative mass, or moisture outside its range.</exception>
    public static Energy HeatAsFired(FirewoodSpecies? species, Mass asFired, double moistureFractionOfDryMass)
    {
        CheckMoisture(moistureFractionOfDryMass);
        if (asFired.Kilograms < 0)
        {
            throw OutOfRange.For("The mass of wood in kg", asFired.Kilograms, "0 or more");
        }

        double water = moistureFractionOfDryMass / (1 + moistureFractionOfDryMass);
        double dry = species == FirewoodSpecies.ShortleafPine
            ? ResinousMegajoulesPerKilogram
            : DryLowerMegajoulesPerKilogram;
        double net = (dry * (1 - water)) - (VaporizingMegajoulesPerKilogram * water);
        return Energy.FromMegajoules(asFired.Kilograms * net);
    }

    /// <summary>What a full cord (128 cubic feet stacked) weighs at a moisture on the dry basis.</summary>
    /// <remarks>
    /// Source: [S17], pounds a cord of air-dry wood, taken as 20 %, which its own heat column bears out to 1 %. Range:
    /// 0 to 1.5 on the dry basis. Accuracy: a stack holds 60 to 110 cubic feet of wood (common practice, no source), so
    /// 15 % at best.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Moisture outside its range, or no species of the table.
    /// </exception>
    public static Mass MassOfCord(FirewoodSpecies species, double moistureFractionOfDryMass)
    {
        CheckMoisture(moistureFractionOfDryMass);
        return Mass.FromPounds(AirDryPoundsOfCord(species) * (1 + moistureFractionOfDryMass) / (1 + AirDryMoisture));
    }

    private static double AirDryPoundsOfCord(FirewoodSpecies species) => species switch
    {
        FirewoodSpecies.SugarMaple => 3577,
        FirewoodSpecies.RedOak => 3609,
        FirewoodSpecies.WhiteOak => 3863,
        FirewoodSpecies.ShagbarkHickory => 4160,
        FirewoodSpecies.Ash => 3370,
        FirewoodSpecies.SilverMaple => 2970,
        FirewoodSpecies.AmericanElm => 2868,
        FirewoodSpecies.BlackLocust => 4010,
        FirewoodSpecies.BoxElder => 2500,
        FirewoodSpecies.Basswood => 2100,
        FirewoodSpecies.Cottonwood => 2304,
        FirewoodSpecies.ShortleafPine => 2713,
        _ => throw OutOfRange.For("The species", (int)species, "one of the table"),
    };

    private static void CheckMoisture(double moistureFractionOfDryMass)
    {
        if (moistureFractionOfDryMass is not (>= 0 and <= 1.5))
        {
            throw OutOfRange.For(
                "The moisture as a fraction of the dry mass",
                moistureFractionOfDryMass,
                "0 to 1.5; 20 % is 0.2, and a percentage of the wet mass must be turned first");
        }
    }
}
