using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Knowledge;

/// <summary>How finely the draw-off thermometer is read tonight, as its readings show.</summary>
internal static class ThermometerScale
{
    /// <summary>So many readings tell how finely a thermometer is read: fewer may be round by chance. No source.</summary>
    private const int EnoughReadings = 4;

    /// <summary>The eye at a thermometer, in K, beside the rounding: as the ensemble takes it.</summary>
    private const double EyeKelvin = 0.08;

    /// <summary>The step to which it is read, in the unit of the last reading: a whole degree, a half, or a tenth.</summary>
    public static double Step(SessionState state)
    {
        if (!state.Readings.TryGetValue(ReadingName.DrawTemperature, out var all) || all.Count < EnoughReadings)
        {
            return 0.1;
        }

        bool Divides(double step) => all.All(one => one.Value.Unit == all[^1].Value.Unit && double.Abs((one.Value.Value / step) - double.Round(one.Value.Value / step)) < 1e-6);
        return Divides(1) ? 1 : Divides(0.5) ? 0.5 : 0.1;
    }

    /// <summary>The same in K.</summary>
    public static double StepKelvin(SessionState state) => Step(state) / (IsFahrenheit(state) ? 1.8 : 1);

    /// <summary>The standard deviation of one reading, in K: the eye, and the rounding to a step, evenly spread (step over root 12).</summary>
    public static double Error(SessionState state) =>
        double.Sqrt((EyeKelvin * EyeKelvin) + (StepKelvin(state) * StepKelvin(state) / 12));

    /// <summary>
    /// The degree that the thermometer shows, by whatever it was read in last, at the draw-off or in boiling water; else that of the rig's units.
    /// Who reads in one degree is told no limit in the other.
    /// </summary>
    public static Unit Degree(SessionState state, UnitSystem units) =>
        new[] { state.Last(ReadingName.DrawTemperature), state.Last(ReadingName.BoilingWaterTemperature) }
            .Where(read => read is not null).MaxBy(read => read!.Value.At.Time)?.Value.Unit ?? units.Preferred(Dimension.Temperature);

    /// <summary>Whether it is read in degrees Fahrenheit.</summary>
    public static bool IsFahrenheit(SessionState state) => state.Last(ReadingName.DrawTemperature)?.Value.Unit == Unit.DegreeFahrenheit;
}
