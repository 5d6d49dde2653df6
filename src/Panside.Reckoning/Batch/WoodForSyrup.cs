using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Batch;

/// <summary>The heat that a batch of syrup takes, and the wood that brings it.</summary>
public static class WoodForSyrup
{
    /// <summary>
    /// The heat that must reach the sap: warming and boiling away its water, and warming what becomes syrup.
    /// </summary>
    /// <remarks>
    /// Source: [S1], [S3] and [S7]. Range: 0 to 110 °C of sap, water boiling at 91.76 to 101.77 °C. Agreement: 1 % with
    /// 9500 Btu a gallon of water as [S35] has it. The few degrees by which syrup boils higher than water are left out,
    /// 0.3 %.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Outside those ranges, or the sap not thinner than the syrup.
    /// </exception>
    public static Energy UsefulHeat(Portion sap, SugarContent target, Temperature boilingWater)
    {
        Mass water = Finishing.WaterToBoilOff(sap, target);
        Mass syrup = sap.Mass - water;
        double specific = SugarSolution.SpecificHeatKilojoulesPerKilogramKelvin(target, boilingWater) / 1000;
        Energy warming = Energy.FromMegajoules(syrup.Kilograms * specific * (boilingWater - sap.Temperature).Celsius);
        return Evaporation.HeatToBoilAway(water, sap.Temperature, boilingWater) + warming;
    }

    /// <summary>The wood as fired that brings this heat to the sap.</summary>
    /// <remarks>
    /// Source: [S17] and [S18] for the wood. The efficiency is the useful heat over the lower heating value as fired.
    /// Range: 0.05 to 0.85. Published, on that basis: 0.18 to 0.43 for wood under a flat pan [S35] (derived from 10 to
    /// 25 US gallons a cord), 0.65 for an open pan over oil [S36]: a cord may be half or twice what is reckoned, until
    /// the rig's own figure is known.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Outside that range of efficiency, or of the wood's moisture.
    /// </exception>
    public static Mass MassFor(
        Energy useful, FirewoodSpecies? species, double moistureFractionOfDryMass, double efficiencyFraction)
    {
        if (efficiencyFraction is not (>= 0.05 and <= 0.85))
        {
            throw OutOfRange.For("The efficiency as a fraction", efficiencyFraction, "0.05 to 0.85; 25 % is 0.25");
        }

        Energy ofOneKilogram = Firewood.HeatAsFired(species, Mass.FromKilograms(1), moistureFractionOfDryMass);
        return Mass.FromKilograms(useful / ofOneKilogram / efficiencyFraction);
    }

    /// <summary>How many full cords (128 cubic feet stacked) a mass of wood as fired is.</summary>
    /// <remarks>Source: [S17]. Accuracy: 15 % at best, as stacks differ.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Moisture outside 0 to 1.5 of the dry mass.</exception>
    public static double CordsOf(Mass wood, FirewoodSpecies species, double moistureFractionOfDryMass) =>
        wood / Firewood.MassOfCord(species, moistureFractionOfDryMass);
}
