using System.Collections.Frozen;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Advice;

/// <summary>What can be the one large figure of a screen. Which of them it is, and when, stands in the flow; each is described in docs/counts.md.</summary>
public static class Counts
{
    private static readonly FrozenDictionary<string, Func<Situation, Count?>> All = new Dictionary<string, Func<Situation, Count?>>
    {
        ["minutes-to-wood"] = now => now.WoodDue is { } due && now.State.Now is { } at
            ? Minutes(double.Ceiling((due - at.Time).TotalMinutes), now.Setting.Rig.Interval.TotalMinutes)
            : null,
        ["minutes-to-draw"] = now => now.MinutesToDraw is { } draw ? After(now, draw.P50, now.State.Last(DeedName.CloseDraw)?.At ?? Lit(now)) : null,
        ["degrees-to-draw"] = ToDraw,
        ["volume-to-stop"] = ToStop,
        ["minutes-to-last-charge"] = now => now.MinutesToLastCharge is { } charge ? After(now, charge.P50, Lit(now)) : null,
        ["minutes-to-still"] = now => now.StillMinutes is { } still ? After(now, still.P50, now.LastWood) : null,
        ["minutes-draw-open"] = now => now.DrawOpenSince is { } open ? Minutes(now.State.MinutesSince(open), now.Setting.Flow.Values[FlowValue.DrawForgotten].TotalMinutes) : null,
        ["depth"] = now => now.State.Readings.ContainsKey(ReadingName.PanDepth)
            ? new Count(now.Setting.Units.From(now.DepthTold), Share(now.DepthTold.Meters, now.Setting.Rig.FloodDepth.Meters))
            : null,
    }.ToFrozenDictionary();

    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. All.Keys.Order(StringComparer.Ordinal)];

    /// <summary>A count, now; null where it is not known.</summary>
    public static Count? Of(Situation now, string name) => All[name](now);

    /// <summary>What counts most now, as the flow has it: its rule and its figure; null where nothing does.</summary>
    public static (CountRule Rule, Count Count)? Most(Situation now)
    {
        if (now.State.Step.Length == 0 || now.State.IsOver)
        {
            return null;
        }

        var phase = now.Setting.Flow.PhaseOf(now.State.Step).Code;
        foreach (var rule in now.Setting.Flow.Counts.Where(rule =>
            (rule.Phases.Count == 0 || rule.Phases.Contains(phase)) && rule.When.All(fact => Facts.Holds(now, fact))))
        {
            if (Of(now, rule.Count) is { } count)
            {
                return (rule, count);
            }
        }

        return null;
    }

    private static Count? ToDraw(Situation now) => now.ToDrawPoint is { } rise
        ? new Count(
            Least(now.Setting.Units.From(rise, now.Degree)), Share(rise.Celsius, (DrawPoint.Today(now.Setting, now.State) - now.State.Rig.Boiling).Celsius))
        : null;

    private static Count? ToStop(Situation now) => now.State.Rig.Tank is { } tank && now.StopLiters is { } stop && !now.IsHeld
        ? new Count(
            Least(now.Setting.Units.From(Volume.FromLiters(tank.Liters - stop))),
            Share(tank.Liters - stop, double.Max(now.State.Totals.TankAtFirst ?? 0, now.Setting.Rig.Tank.Liters) - stop))
        : null;

    /// <summary>Minutes of a forecast, to the five that it is honest to, on the way from a moment.</summary>
    private static Count After(Situation now, double minutes, Moment? from)
    {
        var since = from is { } began ? now.State.MinutesSince(began) : 0;
        return Minutes(Forecasts.Rounded(minutes, 5), minutes + since) with { IsForecast = true };
    }

    private static Count Minutes(double minutes, double whole) => new(Least(new(minutes, Unit.Minute)), Share(minutes, whole));

    private static Moment? Lit(Situation now) => now.State.Last(DeedName.LitFire)?.At ?? now.State.Started;

    private static Measure Least(Measure measure) => measure.With(double.Max(measure.Value, 0));

    private static double Share(double left, double whole) => whole > 0 ? double.Clamp(left / whole, 0, 1) : 0;
}
