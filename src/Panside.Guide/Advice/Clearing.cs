using Panside.Guide.Lines;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Advice;

/// <summary>How long until it is clear to leave, once no more wood goes in, if nothing is done but to look.</summary>
public static class Clearing
{
    /// <summary>Minutes until somebody has looked once all is down: a look that counts is asked for at once. No source.</summary>
    private static readonly Band Looks = new(0, 2, 10);

    /// <summary>
    /// Minutes until it is clear of itself; null where wood still goes in, or where what stands against it does not pass by waiting: a
    /// pan too shallow, a draw-off open, a smell, foam, sugar at the draw-off side.
    /// </summary>
    public static Band? Minutes(Situation now) => !now.IsHeld || now.Unmet.Count == 0 || WantsADeed(now) ? null
        : new(At(now, 0.05) + Looks.P5, At(now, 0.5) + Looks.P50, At(now, 0.95) + Looks.P95);

    /// <summary>The same at a quantile: until all is down, without the look.</summary>
    internal static double? MinutesAt(Situation now, double quantile) => Minutes(now) is null ? null : At(now, quantile);

    /// <summary>The same once the boil is still at a time: the cautious look on for a while over thin coals, and somebody must look.</summary>
    public static Band Once(Situation now, Band still)
    {
        var stays = now.IsCautious && !now.Setting.Rig.IsBurner ? ClearToLeave.StillLong(now).TotalMinutes : 0;
        return new(still.P5 + Looks.P5, still.P50 + stays + Looks.P50, still.P95 + stays + Looks.P95);
    }

    /// <summary>Sugar at the draw-off side counts once the boil is still: before, it mixes and thickens yet.</summary>
    private static bool WantsADeed(Situation now) =>
        now.IsBurnerOn || now.DrawOpenSince is not null || (!now.IsPanEmptied && now.DepthRead < now.Setting.Rig.LeastDepth) || now.IsBackBelowLeast || ClearToLeave.IsTooShallow(now)
        || now.State.Last(ObservationName.Smell)?.Value == "scorched" || now.State.Last(ObservationName.Foam)?.Value is "rising" or "over"
        || (IsStill(now) && !now.IsPanEmptied && ClearToLeave.CanPassSyrup(now) is not null);

    private static double At(Situation now, double quantile)
    {
        var still = IsStill(now) ? 0 : double.Max(now.Ahead.WithoutWood.StillMinutes(quantile), now.SimmersOn(quantile));
        return double.Max(double.Max(still, ClearToLeave.MinutesToSettle(now.State)), Coals(now, still, quantile));
    }

    private static bool IsStill(Situation now) => now.State.StillSince is not null || now.IsPanEmptied;

    /// <summary>Minutes until the coals count as down: spent, or thin under a pan that has been still for long.</summary>
    private static double Coals(Situation now, double still, double quantile)
    {
        var seen = now.State.Last(ObservationName.Coals) is { } look && !(now.LastWood?.Time >= look.At.Time) ? look.Value : null;
        if (seen == "spent" || now.Setting.Rig.IsBurner)
        {
            return 0;
        }

        var (spent, thin) = (now.Ahead.MinutesToCoals(CoalsSeen.Spent).At(quantile), seen == "thin" ? 0 : now.Ahead.MinutesToCoals(CoalsSeen.Thin).At(quantile));
        var stays = !now.IsCautious ? 0
            : now.State.StillSince is { } since ? double.Max(ClearToLeave.StillLong(now).TotalMinutes - now.State.MinutesSince(since), 0)
            : still + ClearToLeave.StillLong(now).TotalMinutes;
        return double.Min(spent, double.Max(thin, stays));
    }
}
