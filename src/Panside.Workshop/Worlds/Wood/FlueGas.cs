namespace Panside.Workshop.Worlds.Wood;

/// <summary>Smoke of wood, and the air that it was: rounded figures, of which the worlds make different fires.</summary>
internal static class FlueGas
{
    /// <summary>Heat capacity in MJ/(kg K), about that of air at 600 °C with some steam: tables of gases, from memory, 3 %.</summary>
    public const double Capacity = 1.15e-3;

    /// <summary>
    /// Heat that a kilogram of air burns, in MJ: close to 3.0 for most fuels. Thornton, Philosophical Magazine 33 (1917); in fires Huggett,
    /// Fire and Materials 4 (1980): 13.1 MJ for a kilogram of oxygen. From memory.
    /// </summary>
    public const double HeatOfAir = 3.0;

    /// <summary>Density times absolute temperature, in kg K/m³: ideal gas near 100 kPa.</summary>
    public const double DensityKelvin = 345;

    /// <summary>Pull of the earth, in m/s².</summary>
    public const double Gravity = 9.81;

    /// <summary>The constant of Stefan and Boltzmann, in MW/(m² K⁴).</summary>
    public const double Radiation = 5.670374e-14;

    /// <summary>Freezing water, in K.</summary>
    public const double Kelvin = 273.15;

    /// <summary>The fourth power of the absolute temperature, in K⁴.</summary>
    /// <param name="celsius">In °C.</param>
    public static double FourthPower(double celsius)
    {
        var square = (celsius + Kelvin) * (celsius + Kelvin);
        return square * square;
    }
}
