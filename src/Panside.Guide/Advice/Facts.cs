using System.Collections.Frozen;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Advice;

/// <summary>What can hold or not, by the names that flows use. Each is described in docs/facts.md.</summary>
public static class Facts
{
    private static readonly FrozenDictionary<string, Func<Situation, bool>> All = new Dictionary<string, Func<Situation, bool>>
    {
        ["beginner"] = now => now.Setting.Guidance == Guidance.Beginner,
        ["cautious"] = now => now.IsCautious,
        ["fire-lit"] = now => now.IsLit,
        ["fired-long"] = now => now.IsLit && now.State.Rig.IsBoiling && HasStood(now, FlowValue.FiredLong),
        ["boil-rolling"] = now => Seen(now, ObservationName.Boil, "rolling"),
        ["boil-up"] = now => Seen(now, ObservationName.Boil, "rolling") || Seen(now, ObservationName.Boil, "steady"),
        ["boil-still"] = now => SeenSinceWood(now, ObservationName.Boil, "still"),
        ["still-counts"] = now => SeenSinceWood(now, ObservationName.Boil, "still") && now.State.StillSince is not null,
        ["coals-deep"] = now => Seen(now, ObservationName.Coals, "deep"),
        ["boil-look-counts"] = LookThatCounts.AtTheBoil,
        ["coals-look-counts"] = LookThatCounts.AtTheCoals,
        ["burner-on"] = now => now.IsBurnerOn,
        ["burner-relit"] = now => now.IsBurnerOn && now.State.RelitAt is not null,
        ["coals-down"] = now => (now.Setting.Rig.IsBurner && now.IsLit && !now.IsBurnerOn) || SeenSinceWood(now, ObservationName.Coals, "spent")
            || (SeenSinceWood(now, ObservationName.Coals, "thin") && ClearToLeave.AreThinCoalsDown(now)),
        ["gradient-clear"] = now => Seen(now, ObservationName.Gradient, "clear"),
        ["gradient-mixed"] = now => SeenSinceWood(now, ObservationName.Gradient, "gone"),
        ["foam-up"] = now => Seen(now, ObservationName.Foam, "rising") || Seen(now, ObservationName.Foam, "over"),
        ["foam-rising"] = now => now.State.Last(ObservationName.Foam) is { Value: "rising" } foam && now.IsFoamUntreated(foam),
        ["pour-stills"] = now => now.StillingPour is not null,
        ["draw-side-wanted"] = ClearToLeave.IsDrawSideWanted,
        ["draw-side-once"] = ClearToLeave.IsDrawSideReadOnce,
        ["draw-side-unknown"] = now => ClearToLeave.HangsOnDrawSide(now),
        ["pan-sweet"] = now => now.Unfed is not null && ClearToLeave.CanPassSyrup(now) == ClearToLeave.WholePanSweet,
        ["draw-side-sweet"] = now => now.Unfed is not null && ClearToLeave.CanPassSyrup(now) is ClearToLeave.NearSyrup or ClearToLeave.NeverRead,
        ["channels-unseen"] = now => now.Unfed is not null && ClearToLeave.CanPassSyrup(now) == ClearToLeave.NeverLooked,
        ["draw-open"] = now => now.DrawOpenSince is not null,
        ["draw-open-long"] = now => now.DrawOpenSince is { } open && !IsWithin(now, open, FlowValue.DrawOpenLong),
        ["draw-in-doubt"] = now => now.State.Doubted is Reading { Name.Code: "draw-temperature" } asked && UnitSystem.Temperature(asked.Measure) >= now.DrawPointToday - DrawPoint.ReadTo
            && now.State.MinutesSince(asked.At) <= Situation.DoubtLasts.TotalMinutes,
        ["draw-forgotten"] = now => now.DrawOpenSince is { } open && !IsWithin(now, open, FlowValue.DrawForgotten),
        ["draw-far-over"] = now => now.IsDrawDue
            && UnitSystem.Temperature(now.State.Last(ReadingName.DrawTemperature)!.Value.Value)
                > DrawPoint.Today(now.Setting, now.State) + now.Setting.Flow.Values.Rise(FlowValue.DrawFarOver),
        ["depth-fresh"] = now => now.State.Last(ReadingName.PanDepth) is { } read && IsWithin(now, read.At, FlowValue.Fresh),
        ["depth-wanted"] = now => now.IsDepthWanted,
        ["depth-overdue"] = now => now.IsDepthOverdue,
        ["depth-unseen"] = now => now.IsDepthUnseen,
        ["depth-stale"] = now => now.IsDepthStale,
        ["back-overdue"] = now => now.IsBackOverdue,
        ["back-unseen"] = now => now.IsBackUnseen,
        ["tank-fresh"] = now => now.State.Last(ReadingName.TankVolume) is { } read && IsWithin(now, read.At, FlowValue.Fresh),
        ["too-shallow-to-leave"] = now => ClearToLeave.IsTooShallow(now),
        ["draw-fallen"] = now => now.HasDrawFallen,
        ["draw-due"] = now => now.IsDrawDue,
        ["draw-missed"] = now => now.IsDrawMissed,
        ["draw-at-hand"] = now => now.IsDrawAtHand,
        ["draw-imminent"] = now => now.IsDrawImminent,
        ["draw-again"] = now => now.IsDrawAgain,
        ["draw-to-wait"] = now => now.IsDrawToWait,
        ["draw-outrun"] = now => now.IsDrawOutrun,
        ["draw-near"] = now => now.MinutesToDraw is { } draw && (draw.P50 <= now.Setting.Flow.Values[FlowValue.DrawNear].TotalMinutes || draw.P5 <= 4) && !now.IsDrawDue && !now.IsDrawMissed,
        ["drawn-volume-known"] = now => now.State.Last(DeedName.CloseDraw)?.Value is not null
            || now.State.Last(ReadingName.DrawnVolume)?.At.Time >= now.State.Last(DeedName.CloseDraw)?.At.Time,
        ["syrup-thin"] = now => now.IsTooThin,
        ["syrup-heavy"] = now => now.IsTooHeavy,
        ["asked-thrice"] = now => now.State.Asked.GetValueOrDefault(now.State.Step) >= 3,
        ["fire-spent"] = now => SeenSinceWood(now, ObservationName.Boil, "still") && (now.Setting.Rig.IsBurner ? !now.IsBurnerOn : SeenSinceWood(now, ObservationName.Coals, "spent")),
        ["depth-known"] = now => now.DepthRead is not null,
        ["unanswered"] = now => HasStood(now, FlowValue.Unanswered),
        ["tank-ample"] = now => !now.IsLastChargeDue && now.State.Rig.Tank is { } tank && tank.Liters > now.StopLiters + 1,
        ["tank-short"] = now => now.State.Rig.Tank is { } tank && tank.Liters < now.FloorLiters,
        ["tank-in-doubt"] = now => now.IsTankInDoubt,
        ["tank-risen"] = now => now.IsTankRisen,
        ["tank-known"] = now => now.State.Rig.Tank is not null,
        ["tank-empty"] = now => now.State.Rig.Tank is { Liters: < 0.4 } || IsTankToldEmpty(now),
        ["tank-told-empty"] = IsTankToldEmpty,
        ["last-charge-due"] = now => now.IsLit && !now.IsHeld && now.IsLastChargeDue,
        ["last-charge-next"] = now => now.IsLit && !now.IsHeld && now.IsLastChargeNext,
        ["last-charge-near"] = now => now.MinutesToLastCharge is { } charge && charge.P50 <= now.Setting.Flow.Values[FlowValue.LastChargeNear].TotalMinutes && !now.IsLastChargeDue,
        ["wood-held"] = now => now.IsHeld,
        ["wood-near"] = now => now.IsFiring,
        ["smell-scorched"] = now => Seen(now, ObservationName.Smell, "scorched"),
        ["reserve-short"] = now => now.State.Rig.Tank is { } tank && now.ReserveLiters is { } reserve && reserve.P95 > tank.Liters + 1,
        ["pan-full"] = now => IsNearFlood(now, now.DepthRead, now.Setting.Rig.FloodDepth),
        ["pan-low"] = now => now.IsLit && !now.IsPanEmptied && now.Depth < now.Setting.Rig.LeastDepth * now.Setting.Flow.Values.Share(FlowValue.PanLow),
        ["pan-below-least"] = now => now.IsLit && !now.IsPanEmptied && now.DepthRead is { } read && read.Meters < now.Setting.Rig.LeastDepth.Meters,
        ["pan-shallow"] = now => now.Depth < now.Setting.Rig.RunDepth * now.Setting.Flow.Values.Share(FlowValue.PanShallow),
        ["pan-fallen"] = now => now.IsPanFallen,
        ["pan-fallen-lately"] = now => now.IsPanFallenLately,
        ["pan-risen"] = now => now.IsPanRisen,
        ["pan-unsteady"] = now => now.IsPanUnsteady,
        ["pan-falling"] = now => now.IsPanFallen && now.Setting.Rig.Feed != Feed.ByHand,
        ["pan-emptied"] = now => now.IsPanEmptied,
        ["batch-near"] = now => now.IsBatchNear,
        ["pour-due"] = HandFeed.IsDue,
        ["pour-unmeasured"] = now => now.IsLit && Poured.IsUnmeasuredSince(now.State.Last(DeedName.FillPan), now.State.Last(ReadingName.PanDepth)?.At),
        ["back-pour-unmeasured"] = now => now.IsLit && now.Setting.Rig.Back is not null
            && Poured.IsUnmeasuredSince(now.State.Last(DeedName.FillPan), now.State.Last(ReadingName.BackPanDepth)?.At),
        ["pan-flooded"] = now => DoneSinceWood(now, DeedName.FloodPan)
            || (IsNearFlood(now, now.DepthRead, now.Setting.Rig.FloodDepth) && (now.Setting.Rig.Back is not { } back || IsNearFlood(now, now.BackDepthRead, back.FloodDepth))),
        ["flooded-lately"] = now => now.State.Last(DeedName.FloodPan) is { } flooded && IsWithin(now, flooded.At, FlowValue.FloodedLately),
        ["covered"] = now => DoneSinceWood(now, DeedName.CoverPan),
        ["depth-since-wood"] = now => now.State.Last(ReadingName.PanDepth) is { } read && !(now.LastWood?.Time >= read.At.Time)
            && (now.Setting.Rig.Back is null || (now.State.Last(ReadingName.BackPanDepth) is { } behind && !(now.LastWood?.Time >= behind.At.Time))),
        ["back-below-least"] = now => now.IsBackBelowLeast,
        ["back-short"] = now => now.Unfed?.IsBackShort(0) ?? false,
        ["pan-unpoured"] = now => now.IsPanUnpoured && !IsGoneThrough(now, "pan-below-least"),
        ["thermometer-lost"] = now => now.State.Marks.Contains(Lacks.Mark("thermometer")),
        ["away"] = now => now.State.Marks.Contains(Absences.Mark),
        ["depth-owed"] = now => now.IsLit && !now.IsPanEmptied && now.State.Marks.Contains(DepthOwed.Mark),
        ["back-fallen"] = now => now.IsBackPanFallen,
        ["back-low"] = now => now.IsBackLow,
        ["back-shallow"] = now => now.IsBackShallow,
        ["back-depth-wanted"] = now => now.IsBackDepthWanted,
        ["channels-unknown"] = now => now.Setting.Rig.Channels > 1
            && (now.State.Last(ObservationName.Gradient) is not { } seen || now.LastWood?.Time >= seen.At.Time),
        ["emergency-on"] = now => now.State.Step.Length > 0 && now.Setting.Flow.PhaseOf(now.State.Step).IsEmergency,
        ["danger-asked"] = now => now.State.Step.Length > 0 && now.Setting.Flow.Steps[now.State.Step].Urgency == "danger",
        ["fire-told"] = now => now.State.Last(DeedName.LitFire) is not null,
        ["wood-told"] = now => now.LastWood is not null,
        ["clear-at-a-look"] = now => now.MinutesToClear?.P50 <= 3,
        ["clear-known"] = now => now.MinutesToClear is not null,
        ["draw-known"] = now => now.MinutesToDraw is not null,
        ["draw-off-read"] = now => now.State.Last(ReadingName.DrawTemperature) is not null,
        ["last-charge-known"] = now => now.MinutesToLastCharge is not null,
        ["sap-used-known"] = now => Evening.SapUsedLiters(now) is not null,
        ["syrup-expected-known"] = now => Evening.SyrupLiters(now) is not null,
        ["bare-known"] = now => now.MinutesToBare is not null,
        ["clear-to-leave"] = now => now.Unmet.Count == 0,
    }.Concat(RigFacts.Names.Select(name => KeyValuePair.Create(name, new Func<Situation, bool>(now => RigFacts.Holds(now.Setting.Rig, name))))).ToFrozenDictionary();

    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. All.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Whether a fact holds now; a leading <c>not </c> turns it round.</summary>
    public static bool Holds(Situation now, string fact)
    {
        if (fact.StartsWith("not ", StringComparison.Ordinal))
        {
            return !Holds(now, fact[4..]);
        }

        return fact.StartsWith(FlowCheck.MarkedPrefix, StringComparison.Ordinal)
            ? now.State.Marks.Contains(fact[FlowCheck.MarkedPrefix.Length..])
            : All[fact](now);
    }

    /// <summary>Who looked into an empty tank is believed before any reckoning of what should still be in it.</summary>
    private static bool IsTankToldEmpty(Situation now) =>
        now.State.Last(ReadingName.TankVolume) is { Value.Value: <= 0 } read && !(now.State.Last(DeedName.RefillTank)?.At.Time >= read.At.Time);

    /// <summary>Whether the step has stood for one of the flow's times.</summary>
    private static bool HasStood(Situation now, FlowValue time) => now.State.MinutesSince(now.State.StepSince) >= now.Setting.Flow.Values[time].TotalMinutes;

    /// <summary>Whether a moment lies less than one of the flow's times ago.</summary>
    private static bool IsWithin(Situation now, Moment moment, FlowValue time) => now.State.MinutesSince(moment) < now.Setting.Flow.Values[time].TotalMinutes;

    /// <summary>Whether the danger that a fact brings back was gone through just now, and does not come back yet.</summary>
    private static bool IsGoneThrough(Situation now, string fact) => now.Setting.Flow.Dangers.Any(danger => danger.While == fact
        && now.State.Watched.TryGetValue(danger.Go, out var gone) && now.State.MinutesSince(gone) < danger.Again.TotalMinutes);

    private static bool IsNearFlood(Situation now, Length? read, Length flood) => read >= flood * now.Setting.Flow.Values.Share(FlowValue.PanFlooded);

    private static bool Seen(Situation now, ObservationName name, string state) => now.State.Last(name)?.Value == state;

    private static bool SeenSinceWood(Situation now, ObservationName name, string state) =>
        now.State.Last(name) is { } seen && seen.Value == state && !(now.LastWood?.Time >= seen.At.Time);

    private static bool DoneSinceWood(Situation now, DeedName name) =>
        now.State.Last(name) is { } done && !(now.LastWood?.Time >= done.At.Time);
}
