using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Sessions;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Belief;

/// <summary>What no rig could have is refused, with the value, the range and the likely slip.</summary>
public sealed class Possible(Setting setting)
{
    /// <summary>The range of a reading on this rig, in the unit that is shown; where no rig could have more or less.</summary>
    public (double Low, double High, Unit Unit) Range(ReadingName name)
    {
        var units = setting.Units;
        var (low, high) = Limits(name);
        var unit = units.Preferred(name.Kind);
        return (units.Convert(low, unit).Value, units.Convert(high, unit).Value, unit);
    }

    /// <summary>Why the line cannot be, and the field to blame; null where it can.</summary>
    public (string Why, string Field)? Fault(LineIn line) => line switch
    {
        Reading reading => Fault(reading),
        Did did => Fault(did),
        _ => null,
    };

    private (string, string)? Fault(Reading reading)
    {
        var (low, high, unit) = Range(reading.Name);
        var value = setting.Units.Convert(reading.Measure, unit).Value;
        if (value >= low - 1e-9 && value <= high + 1e-9)
        {
            return null;
        }

        var why = $"{Words.Amount.Plain(reading.Measure)} is not possible for {reading.Name.Spoken}: "
            + $"this rig can have {Words.Amount.Range(low, high, unit)}.";
        return (why + Slip(reading, low, high, unit), "value");
    }

    /// <summary>A slip that would bring the value into the range.</summary>
    private string Slip(Reading reading, double low, double high, Unit unit)
    {
        var value = reading.Measure.Value;
        bool Fits(Measure measure) => setting.Units.Convert(measure, unit).Value is var one && one >= low && one <= high;
        if (reading.Name.Kind == Dimension.Temperature)
        {
            var other = reading.Measure.Unit == Unit.DegreeFahrenheit ? Unit.DegreeCelsius : Unit.DegreeFahrenheit;
            var swapped = new Measure(value, other);
            return Fits(swapped) ? $" {Words.Amount.Plain(swapped)} would be possible: is that what you read?" : "";
        }

        if (unit != Unit.DegreeFahrenheit && value is >= 190 and <= 230 && setting.Units != UnitSystem.Metric)
        {
            return $" If it is the thermometer, say 'draw {value}'.";
        }

        var shifted = new Measure(value / 10, reading.Measure.Unit);
        return value > 0 && Fits(shifted) ? $" Did you mean {Words.Amount.Plain(shifted)}?" : "";
    }

    private (string, string)? Fault(Did did)
    {
        if (did.Measure is not { } measure)
        {
            return null;
        }

        var high = Limit(did.Name);
        var unit = high.Unit;
        var value = setting.Units.Convert(measure, unit).Value;
        return value > 0 && value <= high.Value
            ? null
            : ($"{Words.Amount.Plain(measure)} is not possible for {did.Name.Spoken}: more than 0 and no more than "
                + $"{Words.Amount.Plain(high)} was expected.", "value");
    }

    private Measure Limit(DeedName name)
    {
        if (name == DeedName.AddWood)
        {
            return setting.Units.From(setting.Rig.Charge * 20);
        }

        return name == DeedName.CloseDraw
            ? setting.Units.From(setting.Rig.PanVolume(setting.Rig.WallDepth))
            : setting.Units.From(TankLimit());
    }

    private Volume TankLimit() => setting.Rig.TankIsStated ? setting.Rig.Tank : setting.Rig.Tank * 20;

    private (Measure Low, Measure High) Limits(ReadingName name)
    {
        var units = setting.Units;
        static (Measure, Measure) Celsius(double low, double high) =>
            (new(low, Unit.DegreeCelsius), new(high, Unit.DegreeCelsius));
        static (Measure, Measure) Kilopascals(double low, double high) =>
            (new(low, Unit.Kilopascal), new(high, Unit.Kilopascal));
        static (Measure, Measure) Brix(double low, double high) => (new(low, Unit.Brix), new(high, Unit.Brix));
        return name.Code switch
        {
            "tank-volume" => (units.From(default(Volume)), units.From(TankLimit())),
            "pan-depth" => (units.From(default(Length)), units.From(setting.Rig.WallDepth)),
            "drawn-volume" => (units.From(default(Volume)), units.From(setting.Rig.PanVolume(setting.Rig.WallDepth))),
            "draw-temperature" => Celsius(-10, 130),
            "boiling-water-temperature" => Celsius(85, 107),
            "sample-temperature" => Celsius(-5, 125),
            "air-temperature" => Celsius(-50, 60),
            "sap-brix" => Brix(0, 40),
            "pan-brix" or "draw-brix" => Brix(0, 75),
            "hydrometer-brix" => Brix(0, 85),
            "barometer" => Kilopascals(85, 110),
            _ => Kilopascals(60, 110),
        };
    }
}
