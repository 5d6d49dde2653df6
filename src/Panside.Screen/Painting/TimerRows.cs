using Panside.Guide.Advice;
using Panside.Guide.Lines;

namespace Panside.Screen.Painting;

/// <summary>The clocks of what comes next.</summary>
internal static class TimerRows
{
    private const int LabelWidth = 11;

    /// <summary>The rows.</summary>
    public static IEnumerable<PanelRow> Of(Situation now, ReplaySight? replay)
    {
        if (now.State.Now is not { } at || now.State.IsOver)
        {
            yield break;
        }

        foreach (var clock in now.State.Clocks)
        {
            yield return Row(clock.Text + " ", Times.To(at.Time, clock.Until), PanelRow.Deciding, Tone.Strong);
        }

        // In an emergency nothing that calls for wood or syrup draws the eye away.
        var isCalm = !TopRow.IsEmergency(now.State, now.Setting);
        if (now.IsHeld)
        {
            yield return Row("Wood", "no more goes in", PanelRow.Deciding);
        }
        else if (isCalm && Dues.Wood(now) is { } wood)
        {
            yield return Row("Wood due", Times.Until(at.Time, wood), PanelRow.Deciding, Pressing(at, wood));
        }

        if (now.LastWood is { } last)
        {
            yield return Row("Wood went", $"in {Times.Span(now.State.MinutesSince(last))} ago", PanelRow.Useful);
        }

        if (Dues.Next(now) is { } due)
        {
            yield return Row(due.Verb.Length > 0 ? "To read" : "To do", $"{due.Name} {Times.To(at.Time, due.At)}", PanelRow.Useful);
        }

        foreach (var row in isCalm ? Forecast(now, replay) : [])
        {
            yield return row;
        }
    }

    private static IEnumerable<PanelRow> Forecast(Situation now, ReplaySight? replay)
    {
        var goesOn = !now.IsEnding;
        if (goesOn && Forecasts.One(now, Forecasts.ToDraw) is { P50: { } draw, P5: { } soon })
        {
            yield return Row("Next draw", Times.Forecast(draw, "least", soon), PanelRow.Useful);
            foreach (var came in ReplaySight.Row(replay, Forecasts.ToDraw, LabelWidth))
            {
                yield return came;
            }
        }

        if (goesOn && Forecasts.One(now, Forecasts.ToLastCharge) is { P50: { } charge, P5: { } soonest })
        {
            yield return Row("Last charge", Times.Forecast(charge, "least", soonest), PanelRow.Deciding);
            foreach (var came in ReplaySight.Row(replay, Forecasts.ToLastCharge, LabelWidth))
            {
                yield return came;
            }
        }

        if (now.IsHeld && Forecasts.One(now, Forecasts.ToStill) is { P50: { } still, P95: { } latest })
        {
            yield return Row("Pan still", (latest < 1 ? "" : "in ") + Times.Forecast(still, "most", latest), PanelRow.Deciding);
            foreach (var came in ReplaySight.Row(replay, Forecasts.ToStill, LabelWidth))
            {
                yield return came;
            }
        }
    }

    private static Tone Pressing(Moment now, DateTimeOffset due) => due <= now.Time ? Tone.Strong : Tone.Plain;

    private static PanelRow Row(string label, string value, int rank, Tone tone = Tone.Plain) =>
        PanelRow.Of(label, LabelWidth, value, rank, tone);
}
