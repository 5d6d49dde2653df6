using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Sessions;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Belief;

/// <summary>Where a reading usually lies on this rig, now: what a prompt shows as its range. Outside it a value may still be right.</summary>
internal static class Usual
{
    /// <summary>The range of a reading, in the unit that its prompt assumes.</summary>
    public static (double Low, double High, Unit Unit) Range(Setting setting, SessionState state, ReadingName name)
    {
        var rig = setting.Rig;
        var units = setting.Units;
        var boiling = state.Rig.Boiling;
        return name.Code switch
        {
            "tank-volume" => Of(units.From(default(Volume)), units.From(rig.Tank)),
            "pan-depth" => Of(units.From(rig.LeastDepth), units.From(rig.FloodDepth)),
            "draw-temperature" => Of(units.From(boiling), units.From(DrawPoint.Today(setting, state) + TemperatureRise.FromCelsius(1))),
            "boiling-water-temperature" => Of(
                units.From(boiling - TemperatureRise.FromCelsius(2)), units.From(boiling + TemperatureRise.FromCelsius(2))),
            "sample-temperature" => Of(units.From(Temperature.FromCelsius(15)), units.From(boiling)),
            "air-temperature" => Of(units.From(Temperature.FromCelsius(-15)), units.From(Temperature.FromCelsius(20))),
            "sap-brix" => (1, 4, Unit.Brix),
            "pan-brix" => (2, 30, Unit.Brix),
            "draw-brix" => (5, 66, Unit.Brix),
            "hydrometer-brix" => (50, 70, Unit.Brix),
            "drawn-volume" => Of(
                units.From(default(Volume), units.SmallVolume), units.From(CommonPractice.LargeDraw(rig.PanArea), units.SmallVolume)),
            "barometer" => Pressures(units, 97, 105),
            _ => Around(units, StandardAtmosphere.PressureAt(rig.Altitude)),
        };
    }

    private static (double, double, Unit) Of(Measure low, Measure high) => (low.Value, high.Value, low.Unit);

    private static (double, double, Unit) Around(UnitSystem units, Pressure pressure) =>
        Pressures(units, pressure.Kilopascals - 3, pressure.Kilopascals + 3);

    private static (double, double, Unit) Pressures(UnitSystem units, double low, double high)
    {
        var unit = units.Preferred(Dimension.Pressure);
        return (units.Convert(new(low, Unit.Kilopascal), unit).Value, units.Convert(new(high, Unit.Kilopascal), unit).Value, unit);
    }
}
