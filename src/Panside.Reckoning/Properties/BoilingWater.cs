using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Properties;

/// <summary>
/// The temperature at which plain water boils under today's air, and the pressure that such a boil shows.
/// </summary>
/// <remarks>
/// Source: [S1] region 4. Range: 75 to 108 kPa. Agreement: 0.001 °C with an independent implementation, and 0.0006 °C
/// with every row computed from the source. On ITS-90 water boils at 99.974 °C under 101.325 kPa, not at 100.
/// </remarks>
public static class BoilingWater
{
    private const double LeastKilopascals = 75;
    private const double MostKilopascals = 108;

    // A round trip, or a value of six digits, may end a rounding error outside; a kilopascal is under a third of a degree.
    private const double Slack = 1e-5;

    private static readonly double LeastCelsius = TemperatureAt(Pressure.FromKilopascals(LeastKilopascals)).Celsius;
    private static readonly double MostCelsius = TemperatureAt(Pressure.FromKilopascals(MostKilopascals)).Celsius;

    /// <summary>The temperature of boiling water under a station pressure (not reduced to sea level).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 75 to 108 kPa.</exception>
    public static Temperature TemperatureAt(Pressure station)
    {
        CheckPressure(station);
        return Temperature.FromKelvin(If97Saturation.Kelvin(station.Kilopascals / 1000));
    }

    /// <summary>The station pressure under which water boils at a temperature.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 91.758 to 101.772 °C, which is 75 to 108 kPa.</exception>
    public static Pressure PressureAt(Temperature boiling) =>
        boiling.Celsius >= LeastCelsius - (Slack / 5) && boiling.Celsius <= MostCelsius + (Slack / 5)
            ? Pressure.FromKilopascals(If97Saturation.Megapascals(boiling.Kelvin) * 1000)
            : throw OutOfRange.For(
                "The temperature of boiling water",
                boiling.Celsius,
                "91.76 to 101.77 °C (197.2 to 215.2 °F); perhaps in the other unit, or not at a rolling boil");

    internal static void CheckPressure(Pressure station)
    {
        if (station.Kilopascals is not (>= LeastKilopascals - Slack and <= MostKilopascals + Slack))
        {
            throw OutOfRange.For(
                "The station pressure in kPa",
                station.Kilopascals,
                "75 to 108 kPa (22.15 to 31.89 inHg), not reduced to sea level; hPa are ten to a kPa");
        }
    }
}
