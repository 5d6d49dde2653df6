using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Properties;

/// <summary>How far above water a sugar solution boils, from the activity of the water in it, and back.</summary>
/// <remarks>
/// Solves a_w(B, T) p_sat(T) = p with ln a_w = ln(1 - x) + Q/(R T) x² (1 + a x + b x²), x the mole fraction of sucrose.
/// Source: [S11]; its constants were read, its algebraic form is from memory and borne out by the tables below; p_sat
/// by [S1]. Range: 0 to 85 Brix, 75 to 108 kPa. Agreement: 0.11 °C with the handbook table [S13] (from memory) from 5
/// to 65 Brix, 0.3 °C at 75; the quadratic of [S12] runs 0.6 °C higher at 40 Brix and 0.12 °C lower at 66. Between 66
/// and 67 Brix the pure-sucrose sources leave about 0.1 °C (0.2 °F), which is half a Brix: the hydrometer decides, not
/// the thermometer. From 80 to 85 Brix no table was at hand to compare with.
/// </remarks>
public static class BoilingPointElevation
{
    private const double QOverR = -17638 / 8.314462618;
    private const double A = -1.0038;
    private const double B = -0.24653;
    private const double SucroseGramsPerMole = 342.296;
    private const double WaterGramsPerMole = 18.01528;

    // The difference of two measured or reckoned temperatures may end a rounding error outside.
    private const double SlackCelsius = 1e-9;

    private static readonly double MostMoleFraction = MoleFraction(SolutionLimits.MostBrix);

    /// <summary>
    /// The elevation of a solution's boiling point over that of water under the same station pressure.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 85 Brix or 75 to 108 kPa.</exception>
    public static TemperatureRise Of(SugarContent content, Pressure station)
    {
        SolutionLimits.Check(content);
        BoilingWater.CheckPressure(station);
        return TemperatureRise.FromCelsius(Kelvin(content.Brix, station.Kilopascals / 1000));
    }

    /// <summary>
    /// The sugar content of a solution that boils this far above water: the inverse of <see cref="Of"/>.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Below zero, above the elevation at 85 Brix, or outside 75 to 108 kPa.
    /// </exception>
    public static SugarContent SugarContentAt(TemperatureRise elevation, Pressure station)
    {
        BoilingWater.CheckPressure(station);
        double megapascals = station.Kilopascals / 1000;
        double most = Kelvin(SolutionLimits.MostBrix, megapascals);
        if (!(elevation.Celsius >= -SlackCelsius && elevation.Celsius <= most + SlackCelsius))
        {
            throw OutOfRange.For(
                "The elevation over boiling water in °C",
                elevation.Celsius,
                FormattableString.Invariant($"0 to {most:F1} °C; was water measured today, with the same thermometer?"));
        }

        double kelvin = If97Saturation.Kelvin(megapascals) + elevation.Celsius;
        double activity = megapascals / If97Saturation.Megapascals(kelvin);
        return SugarContent.FromBrix(Brix(MoleFractionAt(Math.Log(activity), QOverR / kelvin)));
    }

    /// <remarks>
    /// Each round is one step of T = T_sat(p / a_w(T)); a_w hardly moves with T, so the error falls fiftyfold a round.
    /// </remarks>
    private static double Kelvin(double brix, double megapascals)
    {
        double x = MoleFraction(brix);
        double excess = QOverR * x * x * (1 + (x * (A + (x * B))));
        double water = If97Saturation.Kelvin(megapascals);
        double boiling = water;
        for (int round = 0; round < 12; round++)
        {
            double next = If97Saturation.Kelvin(megapascals / ((1 - x) * Math.Exp(excess / boiling)));
            double change = next - boiling;
            boiling = next;
            if (Math.Abs(change) < 1e-10)
            {
                break;
            }
        }

        return Math.Max(0, boiling - water);
    }

    /// <remarks>
    /// ln a_w falls and bends downward over the whole range, so Newton's steps from the high end never overshoot.
    /// </remarks>
    private static double MoleFractionAt(double logActivity, double qOverRt)
    {
        double x = MostMoleFraction;
        for (int step = 0; step < 30; step++)
        {
            double over = Math.Log(1 - x) + (qOverRt * x * x * (1 + (x * (A + (x * B))))) - logActivity;
            double slope = (-1 / (1 - x)) + (qOverRt * x * (2 + (x * ((3 * A) + (x * 4 * B)))));
            double correction = over / slope;
            x -= correction;
            if (Math.Abs(correction) < 1e-14)
            {
                break;
            }
        }

        return Math.Clamp(x, 0, MostMoleFraction);
    }

    private static double MoleFraction(double brix)
    {
        double sucrose = brix / SucroseGramsPerMole;
        return sucrose / (sucrose + ((100 - brix) / WaterGramsPerMole));
    }

    private static double Brix(double moleFraction)
    {
        double sucrose = moleFraction * SucroseGramsPerMole;
        return Math.Min(SolutionLimits.MostBrix, 100 * sucrose / (sucrose + ((1 - moleFraction) * WaterGramsPerMole)));
    }
}
