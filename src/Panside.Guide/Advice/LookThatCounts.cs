using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Reckoning.Ensemble;

namespace Panside.Guide.Advice;

/// <summary>
/// Whether a look taken now could bring leaving nearer. What stands against leaving is often no more than that nobody has looked since it came to
/// count; then the look is asked for at once, and not when its turn comes round.
/// </summary>
internal static class LookThatCounts
{
    /// <summary>
    /// Whether a look at the boil counts now where the last one did not: the pan was seen still too soon after heat or cold sap, or it has by now been
    /// still for as long as thin coals want.
    /// </summary>
    public static bool AtTheBoil(Situation now)
    {
        var state = now.State;
        return now.IsHeld && state.Last(ObservationName.Boil) is { Value: "still" } && ClearToLeave.MinutesToSettle(state) <= 0
            && (state.StillSince is null || (HangsOnThinCoals(now) && state.MinutesSince(state.StillSince!.Value) >= ClearToLeave.StillLong(now).TotalMinutes));
    }

    /// <summary>Whether a look at the coals counts now: the boil is still, and by the middle of what is reckoned they have burned down since they were seen.</summary>
    public static bool AtTheCoals(Situation now) =>
        now.IsHeld && now.State.StillSince is not null && !now.Setting.Rig.IsBurner && now.State.Last(ObservationName.Coals) is { } look
        && look.Value switch
        {
            "deep" => IsDown(now, CoalsSeen.Thin),
            "thin" => HangsOnThinCoals(now) && IsDown(now, CoalsSeen.Spent),
            _ => false,
        };

    private static bool HangsOnThinCoals(Situation now) =>
        now.State.StillSince is not null && now.State.Last(ObservationName.Coals)?.Value == "thin" && !ClearToLeave.AreThinCoalsDown(now);

    private static bool IsDown(Situation now, CoalsSeen to) => now.Ahead.MinutesToCoals(to).At(0.5) <= 0;
}
