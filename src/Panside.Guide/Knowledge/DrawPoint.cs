using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Knowledge;

/// <summary>Where the draw-off thermometer stands at syrup today, and what its reading says of the sugar there.</summary>
internal static class DrawPoint
{
    /// <summary>
    /// A draw begins at the draw point and ends this far below it: 0.5 °F, a little over a Brix. Less, and every draw is a
    /// cupful; more, and the pail turns thin. The thermometer calls the hydrometer test; the hydrometer decides.
    /// </summary>
    public static TemperatureRise Fall => TemperatureRise.FromFahrenheit(0.5);

    /// <summary>A thermometer is read to this: a draw is due when the reading rounds to the draw point.</summary>
    public static TemperatureRise ReadTo => TemperatureRise.FromFahrenheit(0.1);

    /// <summary>
    /// The last looks at boiling water are averaged where they agree: one look is off by 0.1 K and by its rounding, which is worth half a Brix,
    /// and the weather moves the boil by less within an hour. A look that differs by more than this, in K, shows that the weather has turned,
    /// and older ones no longer count. No source.
    /// </summary>
    private const double LooksAgree = 0.3;

    private const int LooksTogether = 3;

    /// <summary>Where this rig's thermometer stands in boiling water today: as read, else by the pressure, else by the altitude.</summary>
    public static Temperature BoilingToday(Setting setting, SessionState state)
    {
        if (state.Readings.TryGetValue(ReadingName.BoilingWaterTemperature, out var read))
        {
            var newest = UnitSystem.Temperature(read[^1].Value).Celsius;
            return Clamped(Temperature.FromCelsius(read.TakeLast(LooksTogether).Select(one => UnitSystem.Temperature(one.Value).Celsius)
                .Where(celsius => double.Abs(celsius - newest) <= LooksAgree).Average()));
        }

        var station = state.Last(ReadingName.StationPressure);
        var barometer = state.Last(ReadingName.Barometer);
        if (station is { } here && (barometer is not { } report || here.At.Time >= report.At.Time))
        {
            return BoilingWater.TemperatureAt(Setting.Within(UnitSystem.Pressure(here.Value)));
        }

        return barometer is { } reduced
            ? BoilingWater.TemperatureAt(Setting.Within(
                StandardAtmosphere.StationPressure(UnitSystem.Pressure(reduced.Value), setting.Rig.Altitude)))
            : setting.StandardBoiling;
    }

    /// <summary>Today's draw point: boiling water today and the elevation of the target density.</summary>
    public static Temperature Today(Setting setting, SessionState state) =>
        state.Rig.Boiling + Reckoning.Batch.DrawPoint.For(setting.Rig.LeavesPanAt, PressureAt(state.Rig.Boiling)).Elevation;

    /// <summary>The sugar content that a draw-off temperature means today; null below boiling water.</summary>
    public static SugarContent? SugarAt(SessionState state, Temperature drawOff)
    {
        var rise = drawOff - state.Rig.Boiling;
        return rise.Celsius is > 0.03 and < 9
            ? BoilingPointElevation.SugarContentAt(rise, PressureAt(state.Rig.Boiling))
            : null;
    }

    /// <summary>The pressure by the boiling point; a thermometer that is off is brought into the formula's range, which moves the elevation by 0.1 °F at most.</summary>
    public static Pressure PressureAt(Temperature boiling) =>
        Setting.Within(BoilingWater.PressureAt(Temperature.FromCelsius(double.Clamp(boiling.Celsius, 91.8, 101.7))));

    /// <summary>The range of the latent heat; no sugarhouse stands where it is left by more than a faulty thermometer.</summary>
    private static Temperature Clamped(Temperature read) => Temperature.FromCelsius(double.Clamp(read.Celsius, 90, 107));
}
