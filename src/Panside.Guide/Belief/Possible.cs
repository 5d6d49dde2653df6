using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Belief;

/// <summary>What no rig could have is refused, with the value, the range and the likely slip.</summary>
public sealed class Possible(Setting setting)
{
    /// <summary>The range of a reading on this rig, in the unit that is shown; where no rig could have more or less.</summary>
    /// <param name="name">The reading.</param>
    /// <param name="shown">The unit; null for the one that the rig's units have.</param>
    public (double Low, double High, Unit Unit) Range(ReadingName name, Unit? shown = null)
    {
        var units = setting.Units;
        var (low, high) = name.Possible(setting.Rig);
        var unit = shown ?? units.Preferred(name.Kind);
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
        if (!reading.Name.IsThere(setting.Rig))
        {
            return ($"This rig has no {reading.Name.Spoken}: its file names one pan. Say 'depth' for it.", "reading");
        }

        // A temperature's range is told in the degree that was typed.
        var (low, high, unit) = Range(reading.Name, reading.Name.Kind == Dimension.Temperature ? reading.Measure.Unit : null);
        var value = setting.Units.Convert(reading.Measure, unit).Value;
        if (value >= low - Rounding(low) && value <= high + Rounding(high))
        {
            return null;
        }

        var why = $"{Amount.Plain(reading.Measure)} is not possible for {reading.Name.Spoken}: "
            + $"this rig can have {Amount.Range(low, high, unit)}.";
        return (why + Slip(reading, low, high, unit), "value");
    }

    /// <summary>What a change of unit may have rounded; nothing under nothing, for no rounding goes there.</summary>
    private static double Rounding(double limit) => double.Abs(limit) * 1e-9;

    /// <summary>A slip that would bring the value into the range.</summary>
    private string Slip(Reading reading, double low, double high, Unit unit)
    {
        var value = reading.Measure.Value;
        bool Fits(Measure measure) => setting.Units.Convert(measure, unit).Value is var one && one >= low && one <= high;
        if (reading.Name.MixedUp(setting.Rig, reading.Measure) is { } mixedUp)
        {
            return " " + mixedUp;
        }

        if (reading.Name.Kind == Dimension.Temperature)
        {
            var other = reading.Measure.Unit == Unit.DegreeFahrenheit ? Unit.DegreeCelsius : Unit.DegreeFahrenheit;
            return Measure.Of(value, other) is { } swapped && Fits(swapped) ? $" {Amount.Plain(swapped)} would be possible: is that what you read?" : "";
        }

        if (unit != Unit.DegreeFahrenheit && value is >= 190 and <= 230 && setting.Units != UnitSystem.Metric)
        {
            return $" If it is the thermometer, say 'draw {value}'.";
        }

        var shifted = reading.Measure.With(value / 10);
        return value > 0 && Fits(shifted) ? $" Did you mean {Amount.Plain(shifted)}?" : "";
    }

    private (string, string)? Fault(Did did)
    {
        if (did.Pan is not null && setting.Rig.Back is null)
        {
            return ("This rig has one pan: its file names no other. Say 'poured 2 gal'.", "pan");
        }

        if (did.Measure is not { } measure)
        {
            return did.Name.WantsAmount ? ($"How much was {did.Name.Spoken}? Say it with its amount, like 'poured 2 gal'.", "value") : null;
        }

        var high = did.Name.Most(setting.Rig);
        var unit = high.Unit;
        var value = setting.Units.Convert(measure, unit).Value;
        return value > 0 && value <= high.Value
            ? null
            : ($"{Amount.Plain(measure)} is not possible for {did.Name.Spoken}: more than 0 and no more than "
                + $"{Amount.Plain(high)} was expected.", "value");
    }
}
