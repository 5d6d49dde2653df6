using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Properties;

/// <summary>Air pressure over altitude, for a place without a barometer of its own.</summary>
/// <remarks>
/// Source: [S2], its defining constants from memory; no printed table was read. Range: -400 to 3000 m.
/// </remarks>
public static class StandardAtmosphere
{
    private const double SeaLevelHectopascals = 1013.25;
    private const double LapsePerSeaLevelTemperature = 0.0065 / 288.15;
    private const double Exponent = 5.255880;
    private const double InverseExponent = 0.190263;

    // The lapse above on the scale of pressure to the inverse exponent, 1013.25 hPa at sea level.
    private const double AltimeterSlopePerMeter = 8.4172e-5;

    /// <summary>
    /// The pressure of the standard day at an altitude: p = 101.325 kPa (1 - 0.0065 h / 288.15)^5.25588.
    /// </summary>
    /// <remarks>
    /// Source: [S2]. Agreement: the rounding of the computed table, 0.0005 kPa. Real days differ by up to 4 kPa.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside -400 to 3000 m.</exception>
    public static Pressure PressureAt(Length altitude)
    {
        CheckAltitude(altitude);
        double ratio = Math.Pow(1 - (LapsePerSeaLevelTemperature * altitude.Meters), Exponent);
        return Pressure.FromHectopascals(SeaLevelHectopascals * ratio);
    }

    /// <summary>
    /// The pressure at the place, from one reduced to sea level by the standard atmosphere as an altimeter setting is:
    /// p = (QNH^0.190263 - 8.4172e-5 h)^5.25588 in hPa and m.
    /// </summary>
    /// <remarks>
    /// Source: [S2]. Range: 940 to 1060 hPa at sea level. A report reduced with the day's own temperature instead
    /// differs, on a freezing day by about 0.3 kPa (0.15 °F of boiling water) at 500 m; that figure has no source beyond the
    /// reduction itself.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of pressure or altitude.</exception>
    public static Pressure StationPressure(Pressure seaLevelReduced, Length altitude)
    {
        CheckAltitude(altitude);
        double reported = seaLevelReduced.Hectopascals;
        if (reported is not (>= 940 and <= 1060))
        {
            throw OutOfRange.For(
                "The sea-level pressure in hPa",
                reported,
                "940 to 1060 hPa (27.76 to 31.30 inHg) as in a weather report; a lower one is perhaps the station's own");
        }

        double scaled = Math.Pow(reported, InverseExponent) - (AltimeterSlopePerMeter * altitude.Meters);
        return Pressure.FromHectopascals(Math.Pow(scaled, Exponent));
    }

    /// <summary>
    /// Whether a reading given as station pressure is too high for the altitude and looks like one reduced to sea
    /// level: nearer to the sea-level standard than to the altitude's own, and the two lie more than 3 kPa apart.
    /// </summary>
    /// <remarks>
    /// Common practice, no source; below about 255 m the weather moves more than the altitude does, so nothing is said.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of altitude.</exception>
    public static bool LooksReducedToSeaLevel(Pressure station, Length altitude)
    {
        double here = PressureAt(altitude).Hectopascals;
        return SeaLevelHectopascals - here > 30 && station.Hectopascals > (SeaLevelHectopascals + here) / 2;
    }

    private static void CheckAltitude(Length altitude)
    {
        if (altitude.Meters is not (>= -400 and <= 3000))
        {
            throw OutOfRange.For(
                "The altitude in m",
                altitude.Meters,
                "-400 to 3000 m (-1300 to 9800 ft); feet were perhaps given as meters");
        }
    }
}
