using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Advice;

/// <summary>
/// Feeding by hand, by the balance of water: when a portion is due, when the next one is, and by when the pan comes to its least depth if
/// nobody pours. The depth is that of the last reading, with what was poured since, less what has boiled away.
/// </summary>
internal static class HandFeed
{
    /// <summary>
    /// Whether a portion is due: the pan boils and stands half a portion under the depth that it is run at, so that it swings about that
    /// depth; once no more wood goes in as well, for until it is still it lives on what is poured.
    /// </summary>
    public static bool IsDue(Situation now) => now.Setting.Rig is { Feed: Feed.ByHand } rig && now.IsLit && now.State.Rig.IsBoiling && !now.IsPanEmptied && !now.IsBatchNear
        && !Facts.Holds(now, "boil-still") && now.Depth <= rig.RunDepth - Half(now);

    /// <summary>How much goes in at once, in words: <c>one pail, 2 gal</c>.</summary>
    public static string Portion(Situation now)
    {
        // Told as it is counted: a quarter gallon is no 0.3 gal.
        var volume = Amount.Plain(Measured(now.Setting.Rig));
        return now.Setting.Rig.PailIsStated && now.Setting.Rig.Portion == now.Setting.Rig.Pail ? $"one pail, {volume}" : volume;
    }

    /// <summary>One portion as it is told and counted: to the quarter gallon or the liter that a pail's marks are read to.</summary>
    public static Measure Measured(Rig rig)
    {
        var measure = rig.Units.From(rig.Portion);
        var step = rig.Units == UnitSystem.Metric ? 1 : 0.25;
        return measure.With(double.Max(double.Round(measure.Value / step) * step, step));
    }

    /// <summary>Minutes until the portion after the next one is due, with that one in now; null where the rate is not known.</summary>
    public static double? MinutesToNext(Situation now) => now.RateLitersPerHour is { P50: > 0.1 } rate
        ? Minutes(now, now.Setting.Units.Volume(Measured(now.Setting.Rig)).Liters + Over(now, now.Setting.Rig.RunDepth - Half(now)), rate.P50)
        : null;

    /// <summary>Minutes until the pan comes to its least depth if nobody pours, on a rig that boils fast; null where the rate is not known.</summary>
    public static double? MinutesToLeast(Situation now) => now.RateLitersPerHour is { P95: > 0.1 } rate
        ? Minutes(now, Over(now, now.Setting.Rig.LeastDepth), rate.P95)
        : null;

    private static double Minutes(Situation now, double liters, double litersPerHour) => double.Max(liters, 0) / litersPerHour * 60;

    private static double Over(Situation now, Length depth) => (now.Setting.Rig.PanArea * now.Depth).Liters - (now.Setting.Rig.PanArea * depth).Liters;

    private static Length Half(Situation now) => now.Setting.Rig.Portion / now.Setting.Rig.PanArea * 0.5;
}
