using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Screen.Painting;

/// <summary>The figures that decide: value, unit and age.</summary>
internal static class FigureRows
{
    private const int LabelWidth = 10;
    private const int ValueWidth = 8;

    /// <summary>A tank that was read just now needs no reckoning beside it.</summary>
    private const double ReckonedAfterMinutes = 2;

    /// <summary>The rows.</summary>
    public static IEnumerable<PanelRow> Of(Situation now, ReplaySight? replay)
    {
        foreach (var name in now.Setting.Readings.All)
        {
            if (name.Row is { } row)
            {
                yield return Read(now, char.ToUpperInvariant(row[0]) + row[1..], name);
            }

            if (name == ReadingName.TankVolume && now.IsLit && now.State.Last(name) is { } tank && now.State.MinutesSince(tank.At) >= ReckonedAfterMinutes)
            {
                yield return Row("  by now", Figures.Of(now, "tank"), "reckoned", PanelRow.Extra);
            }

            if (name == ReadingName.DrawTemperature)
            {
                yield return Row("  draw at", Figures.Of(now, "draw-point"), "today", PanelRow.Deciding);
            }
        }

        if (!now.IsLit)
        {
            yield break;
        }

        yield return Row("Rate", Figures.Of(now, "rate"), "reckoned", PanelRow.Useful);
        if (Forecasts.One(now, Forecasts.Residual) is { P50: { } likely, P95: { } worst, Unit: var unit })
        {
            // Never the worst case alone, be it as little as what is likely: O15.
            yield return PanelRow.Of("Boils away", LabelWidth, $"{Times.Number(likely)}, up to {Amount.Shown(new(worst, unit))}", PanelRow.Deciding);
            foreach (var came in ReplaySight.Row(replay, Forecasts.Residual, LabelWidth))
            {
                yield return came;
            }
        }
    }

    private static PanelRow Read(Situation now, string label, ReadingName name)
    {
        if (now.State.Last(name) is not { } read)
        {
            return Row(label, "not read", "", PanelRow.Deciding);
        }

        var unit = now.Setting.Units.Preferred(name.Kind);
        var shown = read.Value.Unit == unit ? Amount.Plain(read.Value) : Amount.Shown(now.Setting.Units.Convert(read.Value, unit));
        var age = now.State.MinutesSince(read.At);
        var marked = Columns.Pad(label, LabelWidth - 1) + Trend.Of(now.State, name);
        var isOld = age > 2 * name.Interval.TotalMinutes;
        return Row(
            marked, shown, isOld ? $"old {Times.Span(age)}" : Times.Span(age), PanelRow.Deciding, isOld ? Tone.Strong : Tone.Plain);
    }

    private static PanelRow Row(string label, string value, string note, int rank, Tone tone = Tone.Plain) =>
        PanelRow.Of(label, LabelWidth, (Columns.Pad(value, ValueWidth) + " " + note).TrimEnd(), rank, tone);
}
