using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Screen.Painting;

/// <summary>The figures that decide: value, unit and age.</summary>
internal static class FigureRows
{
    /// <summary>A tank that was read just now needs no reckoning beside it.</summary>
    private const double ReckonedAfterMinutes = 2;

    /// <summary>Less than a thermometer's line is there already, in °C.</summary>
    private const double LeastToGo = 0.05;

    /// <summary>Between a reading and its age where nothing says whether it rose or fell.</summary>
    private const string Apart = "·";

    /// <summary>The rows.</summary>
    public static IEnumerable<PanelRow> Of(Situation now, ReplaySight? replay)
    {
        foreach (var name in now.Setting.Readings.All)
        {
            if (!now.Setting.IsThere(name.Code))
            {
                continue;
            }

            if (name.Row is { } row)
            {
                yield return Read(now, name == ReadingName.DrawTemperature && !now.Setting.Rig.HasDrawOff ? "Thermometer" : char.ToUpperInvariant(row[0]) + row[1..], name);
            }

            if (name == ReadingName.DrawTemperature)
            {
                yield return DrawPoint(now);
            }
        }

        if (!now.IsLit)
        {
            yield break;
        }

        yield return PanelRow.Of(PanelRow.Extra, $"Boiling off {Figures.Of(now, "rate")}, as reckoned");
        if (Forecasts.Said(now, Forecasts.Residual) is { P50: { } likely, P95: { } worst, Unit: var unit })
        {
            // Never the worst case alone, be it as little as what is likely: O15.
            yield return PanelRow.Of(PanelRow.Deciding, Saying.BoilsAway(likely, worst, unit, isFiring: !now.IsHeld && !now.IsEnding, now.Setting.Rig.OfFire("With no more wood", "If shut off now,")));
            foreach (var came in ReplaySight.Row(replay, Forecasts.Residual))
            {
                yield return came;
            }
        }
    }

    /// <summary>A reading as it stands beside its name: value, unit, where it goes, and how long ago it was read. O16.</summary>
    /// <param name="now">The situation.</param>
    /// <param name="name">The reading.</param>
    public static string Told(Situation now, ReadingName name) => now.State.Last(name) is { } read
        ? Words(Shown(now, name, read), Trend.Of(now.State, name).Sign is { Length: > 0 } sign ? sign : Apart, Age(now, name, read))
        : "not read yet";

    private static PanelRow Read(Situation now, string label, ReadingName name)
    {
        if (now.State.Last(name) is not { } read)
        {
            return PanelRow.Of(PanelRow.Deciding, $"{label} not read yet");
        }

        var told = $"{label} {Told(now, name)}";
        var tone = IsOld(now, name, read) ? Tone.Strong : Tone.Plain;
        if (name == ReadingName.PanDepth && ChangedBy(now) is { } changed)
        {
            return new(PanelRow.Deciding, tone, $"{told}; {changed} since", $"{told}; {changed}", $"{label} {Shown(now, name, read)} {Age(now, name, read)}; {changed}");
        }

        return name == ReadingName.TankVolume && now.IsLit && now.State.MinutesSince(read.At) >= ReckonedAfterMinutes && now.State.Rig.Tank is { } tank
            && Bare(now, tank) != Bare(now, now.Setting.Units.Volume(read.Value))
            ? new(PanelRow.Deciding, tone, $"{told}; {Figures.Of(now, "tank")} by now, as reckoned", $"{told}; {Figures.Of(now, "tank")} by now", $"{told}; now {Bare(now, tank)}", told)
            : new(PanelRow.Deciding, tone, told);
    }

    /// <summary>What was done since the depth was read and has changed it, in a word; null where nothing was.</summary>
    private static string? ChangedBy(Situation now) => now.State.DepthChangedBy switch
    {
        null => null,
        var deed when deed == DeedName.FloodPan => "flooded",
        var deed when deed == DeedName.FillPan => "poured",
        var deed when deed == DeedName.EmptyPan => null,
        _ => "drawn",
    };

    /// <summary>Where syrup stands today, and how far the draw-off is from it.</summary>
    private static PanelRow DrawPoint(Situation now)
    {
        var at = $"{(now.Setting.Rig.IsBatch ? "Batch ready" : "Draw")} at {Figures.Of(now, "draw-point")}";
        var told = $"{at} today";
        var toGo = now.ToDrawPoint is { Celsius: > LeastToGo } rise ? Amount.Shown(now.Setting.Units.From(rise, now.Degree)) : null;
        return toGo is null ? PanelRow.Of(PanelRow.Deciding, told) : PanelRow.Of(PanelRow.Deciding, $"{told}, {toGo} to go", $"{at}, {toGo} to go", told);
    }

    private static string Words(params string[] words) => string.Join(' ', words.Where(word => word.Length > 0));

    private static string Shown(Situation now, ReadingName name, Noted<Measure> read)
    {
        var unit = name.Kind == Dimension.Temperature ? read.Value.Unit : now.Setting.Units.Preferred(name.Kind);
        return read.Value.Unit == unit ? Amount.Plain(read.Value) : Amount.Shown(now.Setting.Units.Convert(read.Value, unit));
    }

    private static string Age(Situation now, ReadingName name, Noted<Measure> read) => Times.Age(now.State.MinutesSince(read.At), IsOld(now, name, read));

    private static bool IsOld(Situation now, ReadingName name, Noted<Measure> read) => now.State.MinutesSince(read.At) > 2 * name.Interval.TotalMinutes;

    /// <summary>A volume beside one that has told the unit.</summary>
    private static string Bare(Situation now, Volume volume) => Amount.Shown(now.Setting.Units.From(volume)).Split(' ')[0];
}
