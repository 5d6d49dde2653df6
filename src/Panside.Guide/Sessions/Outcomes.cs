using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Sessions;

/// <summary>Ends a session and says what came of it.</summary>
internal static class Outcomes
{
    /// <summary>Tells the phase over and the outcome.</summary>
    public static void End(Turn turn, Setting setting, bool safe)
    {
        var outcome = Of(turn.State, setting, safe);
        turn.Say((at, number) => new PhaseLine(at, number, Flow.End));
        turn.Say((at, number) => new OverLine(at, number, outcome));
    }

    private static Outcome Of(SessionState state, Setting setting, bool safe)
    {
        var units = setting.Units;
        Measure? Liters(double? liters) => liters is { } value ? Rounded(units.From(Volume.FromLiters(double.Max(value, 0)))) : null;
        var used = state.Totals.TankAtFirst is { } first && state.Rig.Tank is { } tank
            ? double.Max(first + state.Totals.RefilledLiters - tank.Liters, 0) + FromPails(state)
            : (double?)null;
        var brix = state.Totals.MeasuredLiters > 0
            ? Rounded(new(state.Totals.MeasuredLiterBrix / state.Totals.MeasuredLiters, Unit.Brix))
            : (Measure?)null;
        var minutes = state.Started is { } started ? state.MinutesSince(started) : 0;
        var judged = safe || !setting.Header.Imported;
        var text = !judged ? "Brought in from a table: whether it was clear to leave was not judged."
            : safe
            ? $"Done in {Amount.Minutes(minutes)}. The pan keeps {Amount.Shown(units.From(state.Rig.Pan))}; leave it {(setting.Rig.HasLid ? "covered" : "deep")}.{(KitchenMeasures.Told(new(setting, state)) is { } batch ? " " + batch : "")}"
            : "Ended without being clear to leave. Let someone go back and look at the pan's depth as soon as it is safe.";
        return new(
            Liters(used),
            Liters(state.Totals.DrawnLiters),
            brix,
            setting.Rig.IsBurner ? null : Rounded(units.From(Mass.FromKilograms(state.Totals.WoodKilograms))),
            new(minutes, Unit.Minute),
            Rounded(units.From(state.Rig.Pan)),
            Liters(state.Rig.Tank?.Liters),
            safe,
            state.Skipped,
            text)
        {
            SapBrix = state.Last(ReadingName.SapBrix) is { } sap ? Rounded(sap.Value) : null,
            PanBrix = Rounded(new(double.Max(state.Rigs.Expected.PanSugar.Mean, 0), Unit.Brix)),
            WaterBoiled = Liters(state.Rig.Evaporated.Liters),
            FiredMinutes = Fired(state),
            Judged = judged,
        };
    }

    /// <summary>Sap that was poured into the pan and never was in the tank, in liters: it is used all the same.</summary>
    private static double FromPails(SessionState state) =>
        state.Pours.Where(pour => pour is { Liquid: Liquids.Sap, IsOutOfTank: false }).Sum(pour => pour.Volume.Liters);

    /// <summary>From lighting to the last wood, or to shutting off; null where no fire was told of.</summary>
    private static Measure? Fired(SessionState state)
    {
        var (lit, wood) = (state.Last(DeedName.LitFire)?.At, state.Last(DeedName.ShutOff)?.At ?? state.Last(DeedName.AddWood)?.At);
        return lit is { } from
            ? new(double.Round(double.Max(((wood ?? from).Time - from.Time).TotalMinutes, 0)), Unit.Minute)
            : null;
    }

    private static Measure Rounded(Measure measure) => measure.With(double.Round(measure.Value, 2));
}
