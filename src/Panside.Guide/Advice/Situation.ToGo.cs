using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Advice;

/// <content>How far it still is.</content>
public sealed partial class Situation
{
    /// <summary>
    /// How far the draw-off was last read under today's draw point, less than nothing where it stood over it; null where it was not read,
    /// not for twice its interval, or drawn since.
    /// </summary>
    public TemperatureRise? ToDrawPoint => State.Last(ReadingName.DrawTemperature) is { } read
        && State.MinutesSince(read.At) <= 2 * ReadingName.DrawTemperature.Interval.TotalMinutes
        && !(State.DrawEnded?.Time >= read.At.Time)
            ? DrawPointToday - UnitSystem.Temperature(read.Value)
            : null;

    /// <summary>
    /// When the next charge of wood goes in, as it is asked for; null where none is to, as over a burner, before a depth that is long unread, or at a step
    /// that rests and asks for none.
    /// </summary>
    public DateTimeOffset? WoodDue =>
        !Setting.Rig.IsBurner && LastWood is { } last && !IsHeld && !IsEnding && !IsDepthStale && !IsDepthOverdue && Setting.Flow.Watches.FirstOrDefault(watch => watch.Deed == DeedName.AddWood) is { } watch
            && !(Setting.Flow.Steps.GetValueOrDefault(State.Step) is { Ask: null } rests && !rests.Watches.Contains(watch.Id))
            && Setting.Flow.Steps.GetValueOrDefault(State.Step) is not { Urgency: "now", Advise: "raise-level" or "hold-wood" }
            ? State.PutOff.TryGetValue(watch.Id, out var until) ? until : last.Time + Setting.Every(watch)
            : null;
}
