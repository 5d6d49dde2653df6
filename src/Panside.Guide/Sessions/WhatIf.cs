using System.Globalization;
using Panside.Guide.Advice;
using Panside.Guide.Belief;
using Panside.Guide.Hearing.Terms;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Sessions;

/// <summary>Answers what would be, from the ensemble as it stands; nothing is changed by asking.</summary>
internal static class WhatIf
{
    /// <summary>Half of the five minutes that a forecast is honest to.</summary>
    private const double HalfStep = 2.5;

    private const string TankUnknown = "The tank was not read";

    /// <summary>The answer: one or two lines.</summary>
    public static IEnumerable<string> Answer(Situation now, Supposition supposed) => supposed switch
    {
        _ when !now.IsLit => ["Nothing heats the pan yet, so there is nothing to stop or to go on with. 'panside plan' reckons a boil beforehand."],
        AddSap(var sap) => Added(now, sap),
        PourIn(var liquid) => PouredIn(now, liquid),
        FireUntil(var until) => Fired(now, until),
        _ => Stopped(now),
    };

    private static IEnumerable<string> Stopped(Situation now)
    {
        var (shutdown, still) = (now.Shutdown!, now.StillMinutes!.Value);
        var quiet = still.P95 < 1
            ? "Nothing boils any more"
            : $"The boil goes still in about {Figures.About(still.P50)}, {Figures.About(still.P95)} at the latest ({Clock(now, still.P95)})";
        yield return $"Stop now: {FromTo(now, now.ResidualLiters!.Value)} of water still leaves the pan. {quiet}.";
        yield return now.State.Rig.Tank is null
            ? $"{TankUnknown}; the shutdown wants up to {Rounded(now, shutdown.ReserveLiters(0.95))} in it."
            : Left(now, shutdown) + Floor(now);
        if (now.Setting.Rig.Feed == Feed.ByHand)
        {
            yield return Unpoured(now, now.Unfed!);
        }
    }

    /// <summary>By the balance of water: to what depth the pan comes where nobody pours, and by when.</summary>
    private static string Unpoured(Situation now, Outlook unfed)
    {
        string Depth(double quantile) => Amount.Shown(now.Setting.Units.From(Volume.FromLiters(unfed.LeastPanLiters(quantile)) / now.Setting.Rig.PanArea));
        var least = Amount.Shown(now.Setting.Units.From(now.Setting.Rig.LeastDepth));
        if (unfed.LeastPanLiters(0.05) >= now.Setting.Description.LeastVolume.Liters)
        {
            return $"If nobody pours, the pan comes down to about {Depth(0.5)}, {Depth(0.05)} at the least; {least} is the least it may have.";
        }

        var (about, soonest) = (unfed.LowMinutes(0.5), unfed.LowMinutes(0.05));
        var by = double.IsInfinity(about) ? $"by {Clock(now, soonest)} at the soonest" : $"about {Clock(now, about)}, {Clock(now, soonest)} at the soonest";
        var wanted = Volume.FromLiters(now.Shutdown!.ReserveLiters(0.95));
        return $"If nobody pours, it comes to {least}, its least depth, {by}, and to {Depth(0.5)} in the end. Pour up to {Rounded(now, wanted.Liters, up: true)} in before you go.";
    }

    private static string Left(Situation now, Outlook shutdown)
    {
        var least = Amount.Shown(now.Setting.Units.From(now.Setting.Rig.LeastDepth));
        var (pans, over, stay) = now.Setting.Rig.Back is null
            ? ("the pan", $"over its least depth of {least}", "still stays")
            : ("both pans", "over their least depths", "still stay");
        return shutdown.SpareLiters(0.05) is < 0 and var lacks ? $"The tank can fall short: up to {Rounded(now, -lacks, up: true)} more is wanted to keep {pans} {over}."
            : shutdown.LeftLiters(0.05) < 0 ? $"The tank can run dry, and {pans} {(IsPoured(now) ? "can be kept" : stay)} {over}."
            : IsPoured(now) ? $"The tank holds enough to keep {pans} {over} by hand."
            : $"{FromTo(now, Band.Of(shutdown.LeftLiters))} stays in the tank, and {pans} {over}.";
    }

    private static bool IsPoured(Situation now) => now.Setting.Rig.Feed == Feed.ByHand;

    /// <remarks>S5: an answer never sounds more daring than common practice.</remarks>
    private static string Floor(Situation now) => !now.IsHeld && now.State.Rig.Tank is { } tank && tank.Liters < now.FloorLiters
        ? $" Common practice wants {Amount.Shown(now.Setting.Units.From(Volume.FromLiters(now.FloorLiters)))} {now.Setting.Rig.OfFire("at the last charge", "when the burner is shut off")}."
        : "";

    private static IEnumerable<string> Added(Situation now, Measure sap)
    {
        var (rig, units) = (now.Setting.Rig, now.Setting.Units);
        if (new Possible(now.Setting).Fault(new Did(now.State.Now!.Value, DeedName.RefillTank, sap)) is var (why, _))
        {
            return [why];
        }

        var added = units.Volume(sap);
        if (now.State.Rig.Tank is not { } tank)
        {
            return [$"{TankUnknown}: how much later {rig.OfFire("the last charge would come", "the burner would be shut off")} is not known."];
        }

        if (rig.TankIsStated && (tank + added).Liters > rig.Tank.Liters * 1.05)
        {
            var room = Volume.FromLiters(double.Max((rig.Tank - tank).Liters, 0));
            return [$"The tank holds {Amount.Shown(units.From(rig.Tank))}: there is room for about {Rounded(now, room.Liters)}."];
        }

        var more = now.State.Rigs.Refilled(added).Forecasts;
        if (now.IsHeld)
        {
            return [$"{rig.OfFire("No more wood goes in", "The burner is to stay off")}. With {sap} more, {FromTo(now, Band.Of(more.WithoutWood.LeftLiters))} would stay in the tank after the shutdown."];
        }

        if (now.MinutesToLastCharge is not { } before || now.StopLiters is not { } stop || now.LastChargeBy is not { } rule)
        {
            return [rig.OfFire("The last charge is not known before the pan boils.", "When to shut off is not known before the pan boils.")];
        }

        var after = Band.Of(more.MinutesToLastCharge(rule).At);
        return
        [
            $"With {sap} more {rig.OfFire("the last charge comes", "the burner goes off")} about {Clock(now, after.P50)}, {Figures.About(after.P50 - before.P50)} later than without ({Clock(now, before.P50)}).",
            $"At the soonest it comes {Clock(now, after.P5)}, with {Stop(now, stop)} in the tank.",
        ];
    }

    private static IEnumerable<string> PouredIn(Situation now, Measure liquid)
    {
        if (new Possible(now.Setting).Fault(new Did(now.State.Now!.Value, DeedName.FillPan, liquid)) is var (why, _))
        {
            return [why];
        }

        var volume = now.Setting.Units.Volume(liquid);
        var depth = Amount.Shown(now.Setting.Units.From(now.Depth + (volume / now.Setting.Rig.PanArea)));
        if (!now.IsHeld)
        {
            return [$"The pan would stand at about {depth} and be off the boil for some minutes; over a fire that is fed it comes back."];
        }

        if (now.Setting.Rig.Back is not null)
        {
            return [$"The pan in front would stand at about {depth}. Which of the two boils on, and how long, is not reckoned."];
        }

        var (poured, waits) = (now.Ahead.WithoutFeedOncePoured(volume), now.StillMinutes!.Value);
        var (about, latest) = (poured.StillMinutes(0.5), poured.StillMinutes(0.95));
        return waits.P95 < 1
            ? [$"The pan would stand at about {depth}; nothing boils any more as it is."]
            :
            [
                latest < 1 ? $"The pan would stand at about {depth} and not boil again: look at the boil ten minutes after the pour."
                : about < 1 ? $"The pan would stand at about {depth} and most likely not boil again; where it does, it is still in {Figures.About(latest)} at the latest."
                : $"The pan would stand at about {depth} and boil again: still in about {Figures.About(about)}, {Figures.About(latest)} at the latest.",
                $"Without it: still in about {Figures.About(waits.P50)}, {Figures.About(waits.P95)} at the latest.",
            ];
    }

    private static IEnumerable<string> Fired(Situation now, DateTimeOffset until)
    {
        if (now.Setting.Flow.PhaseOf(now.State.Step).IsEmergency)
        {
            return [now.Setting.Rig.OfFire("This is an emergency: put in no wood until it is over.", "This is an emergency: keep the burner off until it is over.")];
        }

        var minutes = (int)double.Ceiling((until - now.State.Now!.Value.Time).TotalMinutes);
        var fired = now.State.Rigs.FiredFor(minutes, now.Setting.Rig.LargeDraw);
        var wanted = Band.Of(fired.Then.Forecasts.OnceLastCharged(now.Setting.Rig.Charge).ReserveLiters);
        var water = now.State.Rig.Tank is null
            ? $"{TankUnknown}; until {Clock(until)} {FromTo(now, Band.Of(fired.BoiledLiters.At))} of water leaves the pan"
            : fired.TankLiters.At(0.95) <= 0 ? $"At {Clock(until)} the tank would have run dry"
            : $"At {Clock(until)} {FromTo(now, Band.Of(fired.TankLiters.At))} would be left in the tank";
        return
        [
            Against(now, until, minutes),
            $"{water}; {Draws(fired.Draws)} until then; the shutdown would then want {FromTo(now, wanted)} in the tank.",
        ];
    }

    private static string Against(Situation now, DateTimeOffset until, int minutes)
    {
        if (now.IsHeld)
        {
            return $"{now.Setting.Rig.OfFire("The last charge is in, and no more wood goes in", "The burner is to stay off")}: say 'refill' with sap first if you mean to fire on.";
        }

        if (now.MinutesToLastCharge is not { } last || now.StopLiters is not { } stop)
        {
            return $"{now.Setting.Rig.OfFire("The last charge", "When to shut off")} is not known before the {(now.State.Rig.Tank is null ? "tank is read" : "pan boils")}.";
        }

        var due = now.IsLastChargeDue
            ? $"it is due now, at {Stop(now, stop)} in the tank"
            : $"it must be {now.Setting.Rig.OfFire("in", "off")} by about {Clock(now, last.P50)}, {Clock(now, last.P5)} at the soonest, at {Stop(now, stop)} in the tank";
        var past = now.Setting.Rig.OfFire("the last charge", "the time to shut off");
        return minutes > last.P50 + HalfStep || now.IsLastChargeDue ? $"Too long: {Clock(until)} is past {past}; {due}."
            : minutes > last.P5 ? $"{Clock(until)} can be past {past}: {due}."
            : $"{Clock(until)} is before {past}: {due}.";
    }

    private static string Draws(RankedValues draws)
    {
        var (low, high) = (Number(draws.At(0.05)), Number(draws.At(0.95)));
        return high == "0" ? "no draw comes" : high == "1" && low == "1" ? "one draw comes" : low == high ? $"{low} draws come" : $"{low} to {high} draws come";
    }

    private static string Number(double count) => double.Round(count).ToString("0", CultureInfo.InvariantCulture);

    private static string Stop(Situation now, double liters) => Amount.Shown(now.Setting.Units.From(Volume.FromLiters(liters)));

    private static string FromTo(Situation now, Band liters)
    {
        var (low, high) = (Rounded(now, double.Max(liters.P5, 0)), Rounded(now, double.Max(liters.P95, 0)));
        return low == high ? $"about {low}" : $"{low} to {high}";
    }

    /// <summary>To the step that forecasts are honest to.</summary>
    private static string Rounded(Situation now, double liters, bool up = false)
    {
        var (units, step) = (now.Setting.Units, Forecasts.VolumeStep(now.Setting.Units));
        var measure = units.From(Volume.FromLiters(liters));
        return Amount.Shown(measure.With(up ? double.Ceiling(measure.Value / step) * step : Forecasts.Rounded(measure.Value, step)));
    }

    private static string Clock(Situation now, double minutes) => Figures.In(now, minutes);

    private static string Clock(DateTimeOffset time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);
}
