using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Hearing;

/// <summary>What a number without name and unit can only be, whatever is asked. The bounds have no source: no instrument here shows the other.</summary>
/// <param name="setting">What the session runs on.</param>
internal sealed class BareNumber(Setting setting)
{
    private bool IsFahrenheit => ReadingName.DrawTemperature.UnitIn(setting.Units) == Unit.DegreeFahrenheit;

    /// <summary>
    /// The depth, at a step that asks to pour, and where the thermometer is asked and shows no such number; the thermometer, where a yes is asked, or what no pan or tank holds. Null
    /// where it can be more than one thing, or is what is asked.
    /// </summary>
    /// <param name="value">The number.</param>
    /// <param name="open">The open prompt; null where nothing is asked.</param>
    public ReadingName? Of(double value, Prompt? open)
    {
        if (open is not null && setting.Readings.Find(open.Ask) is { } asked)
        {
            return asked.Code is "draw-temperature" or "boiling-water-temperature" ? IsDepth(value) && value < (IsFahrenheit ? 20 : 15) ? ReadingName.PanDepth : null
                : IsThermometer(value) && asked.Kind is Dimension.Length or Dimension.Volume && !IsHeld(asked, value) ? ReadingName.DrawTemperature
                : null;
        }

        var advised = open is null ? null
            : setting.Flow.Steps.TryGetValue(open.Step, out var step) ? step.Advise
            : setting.Flow.Watches.FirstOrDefault(watch => watch.Id == open.Step)?.Advise;
        return open?.Pour is null && advised is "flood-pan" or "raise-level" or "cool-pan" or "check-level" && IsDepth(value) ? ReadingName.PanDepth
            : IsThermometer(value) ? ReadingName.DrawTemperature
            : null;
    }

    private bool IsThermometer(double value) => setting.Rig.Has("thermometer") && IsFahrenheit && value is > 203 and < 240;

    /// <summary>Whether what is asked can stand at that number: no pan is so deep, and few tanks are so large.</summary>
    private bool IsHeld(ReadingName asked, double value) => asked.Kind == Dimension.Volume
        && setting.Units.Volume(new(value, asked.UnitIn(setting.Units))) <= setting.Rig.Tank * 2;

    /// <summary>Whether a rig's only pan can stand so deep.</summary>
    private bool IsDepth(double value) => setting.Rig.Back is null && value > 0
        && UnitSystem.Length(new(value, ReadingName.PanDepth.UnitIn(setting.Units))) <= setting.Rig.FloodDepth * 2;
}
