using Panside.Guide.Advice;
using Panside.Guide.Lines;

namespace Panside.Screen.Painting;

/// <summary>The clocks of what comes next.</summary>
internal static class TimerRows
{
    /// <summary>The rows.</summary>
    public static IEnumerable<PanelRow> Of(Situation now, ReplaySight? replay)
    {
        if (now.State.Now is not { } at || now.State.IsOver)
        {
            yield break;
        }

        foreach (var clock in now.State.Clocks)
        {
            yield return new(PanelRow.Deciding, Tone.Strong, clock.Until <= at.Time ? $"{clock.Text}: done" : $"{clock.Text}: {Times.To(at.Time, clock.Until)} to go");
        }

        // In an emergency nothing that calls for wood or syrup draws the eye away.
        var isCalm = !TopRow.IsEmergency(now.State, now.Setting);
        if (Wood(now, at, isCalm) is { } wood)
        {
            yield return wood;
        }

        if (Dues.Next(now) is { } due)
        {
            yield return PanelRow.Of(PanelRow.Useful, $"{char.ToUpperInvariant(due.What[0])}{due.What[1..]} {Times.Until(at.Time, due.At)}");
        }

        foreach (var row in isCalm ? Forecast(now, replay) : [])
        {
            yield return row;
        }
    }

    /// <summary>When wood goes in, and when it last did; null before any.</summary>
    private static PanelRow? Wood(Situation now, Moment at, bool isCalm)
    {
        var ago = now.LastWood is { } last ? Times.Age(now.State.MinutesSince(last)) : null;
        if (now.Setting.Rig.IsBurner)
        {
            return !now.IsLit ? null : now.IsBurnerOn ? PanelRow.Of(PanelRow.Useful, $"The {now.Setting.Rig.Heater} is on")
                : PanelRow.Of(PanelRow.Deciding, ago is null ? $"The {now.Setting.Rig.Heater} is off" : $"The {now.Setting.Rig.Heater} is off (shut off {ago})", $"The {now.Setting.Rig.Heater} is off");
        }

        if (now.IsHeld)
        {
            return PanelRow.Of(
                PanelRow.Deciding, ago is null ? "No more wood goes in" : $"No more wood goes in (last {ago})", $"No more wood (last {ago})");
        }

        if (isCalm && Dues.Wood(now) is { } due)
        {
            var when = due <= at.Time ? "Wood goes in now" : $"Wood {Times.Until(at.Time, due)}";
            return new(PanelRow.Deciding, due <= at.Time ? Tone.Strong : Tone.Plain, $"{when} (last {ago})", when);
        }

        return ago is null ? null : PanelRow.Of(PanelRow.Useful, $"Wood went in {ago}");
    }

    private static IEnumerable<PanelRow> Forecast(Situation now, ReplaySight? replay)
    {
        var goesOn = !now.IsEnding;
        if (goesOn && Forecasts.Said(now, Forecasts.ToDraw) is { P50: { } draw, P5: { } soon })
        {
            yield return PanelRow.Of(PanelRow.Useful, Saying.NotBefore(now.Setting.Rig.IsBatch ? "Batch" : "Draw", draw, soon));
            foreach (var came in ReplaySight.Row(replay, Forecasts.ToDraw))
            {
                yield return came;
            }
        }

        if (goesOn && Forecasts.Said(now, Forecasts.ToLastCharge) is { P50: { } charge, P5: { } soonest })
        {
            yield return PanelRow.Of(PanelRow.Deciding, Saying.NotBefore(now.Setting.Rig.OfFire("Last charge", "Shut off"), charge, soonest));
            foreach (var came in ReplaySight.Row(replay, Forecasts.ToLastCharge))
            {
                yield return came;
            }
        }

        if (now.IsHeld && Forecasts.Said(now, Forecasts.ToStill) is { P50: { } still, P95: { } latest })
        {
            yield return PanelRow.Of(PanelRow.Deciding, Saying.AtMost("Boil stops", still, latest));
            foreach (var came in ReplaySight.Row(replay, Forecasts.ToStill))
            {
                yield return came;
            }
        }
    }
}
