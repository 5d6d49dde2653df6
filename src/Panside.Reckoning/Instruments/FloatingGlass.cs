using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Instruments;

/// <summary>
/// The law of a glass float: rho(shown, t_cal) = rho(true, t) (1 + 25e-6 (t - t_cal)), as the same mass displaces a
/// little more when the glass is warm.
/// </summary>
/// <remarks>
/// Source: densities by [S3]; the expansion of soda-lime glass from memory [S19]. Left out, the hot test reads 0.45
/// Brix lower.
/// </remarks>
internal static class FloatingGlass
{
    private const double ExpansionPerKelvin = 25e-6;

    public static SugarContent True(SugarContent shown, Temperature sample, HydrometerCalibration calibration)
    {
        Temperature calibrated = HydrometerCalibrations.TemperatureOf(calibration);
        double scale = SugarSolution.DensityOf(shown, calibrated).KilogramsPerCubicMeter;
        return SugarSolution.SugarContentOf(
            Density.FromKilogramsPerCubicMeter(scale / Growth(sample, calibrated)), sample);
    }

    public static SugarContent Shown(SugarContent trueContent, Temperature sample, HydrometerCalibration calibration)
    {
        Temperature calibrated = HydrometerCalibrations.TemperatureOf(calibration);
        double liquid = SugarSolution.DensityOf(trueContent, sample).KilogramsPerCubicMeter;
        return SugarSolution.SugarContentOf(
            Density.FromKilogramsPerCubicMeter(liquid * Growth(sample, calibrated)), calibrated);
    }

    public static double Growth(Temperature sample, Temperature calibrated) =>
        1 + (ExpansionPerKelvin * (sample - calibrated).Celsius);
}
