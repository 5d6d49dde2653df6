using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Advice;

/// <content>
/// The draw, by the course of its thermometer and not by one reading: when it comes to its point, where that stands for the batch, and
/// where it is shut so that the pail ends on target.
/// </content>
public sealed partial class Situation
{
    /// <summary>When the draw-off was opened; null where it is shut.</summary>
    public Moment? DrawOpenSince => State.Last(DeedName.OpenDraw) is { } open && !(State.Last(DeedName.CloseDraw)?.At.Time >= open.At.Time)
        ? open.At
        : null;

    /// <summary>
    /// Whether the pan was poured out whole, and no sap covers it again since: it stands off the fire, for a bare pan over one burns. Its
    /// depth, its boil and its feed are nothing then. Once covered it is a pan like any other, however low it comes.
    /// </summary>
    public bool IsPanEmptied => Setting.Rig is { IsBatch: true, Back: null } && State.Last(DeedName.EmptyPan) is { } emptied
        && Depth < Setting.Rig.LeastDepth && !IsCoveredSince(emptied.At);

    private bool IsCoveredSince(Moment emptied) =>
        State.Last(DeedName.FloodPan)?.At.Time >= emptied.Time
        || (State.Last(ObservationName.Boil) is { Value: not "still" } boil && boil.At.Time > emptied.Time)
        || State.Readings.GetValueOrDefault(ReadingName.PanDepth, []).Any(read => read.At.Time > emptied.Time && UnitSystem.Length(read.Value) >= Setting.Rig.LeastDepth)
        || Volume.FromLiters(State.Pours.Where(pour => pour.At.Time >= emptied.Time).Sum(pour => pour.Volume.Liters)) >= Setting.Rig.PanArea * Setting.Rig.LeastDepth;

    /// <summary>
    /// Whether a batch comes to its point so soon that no more wood goes under it: it is lifted or poured over a fire that has burned low.
    /// </summary>
    public bool IsBatchNear => Setting.Rig.IsBatch && !IsPanEmptied && State.Last(ObservationName.Boil) is { Value: "rolling" or "steady" } && (IsDrawDue || IsDrawImminent || IsReadyWithin(Setting.Flow.Values[FlowValue.BatchNear].TotalMinutes));

    private bool IsReadyWithin(double minutes) => Course.MinutesTo(OpenAt) <= minutes || MinutesToDraw?.P50 <= minutes;

    /// <summary>The course of its thermometer since the last draw.</summary>
    internal DrawCourse Course => _course.Value;

    /// <summary>Minutes until the draw point; null where no sugar comes in, nothing boils, or it is more than six hours off.</summary>
    public Band? MinutesToDraw => _toDraw.Value;

    /// <summary>
    /// The same as it is told: where the thermometer's course comes to the point in minutes, and in less than half of the time that the members have
    /// it, the course is believed. So no advice that rests on minutes tells of hours.
    /// </summary>
    public double? MinutesToDrawTold => Course.MinutesTo(OpenAt) is { } course && course <= CourseTold && !(course * 2 >= MinutesToDraw?.P50)
        ? double.Max(course, 0)
        : MinutesToDraw?.P50;

    /// <summary>Where the draw-off thermometer stands at syrup today, shifted for this draw so that the batch ends on target.</summary>
    public Temperature DrawPointToday => PointAt(Setting.Rig.LeavesPanAt.Brix + DrawShift);

    /// <summary>Where a thermometer stands at finished syrup today, in the pan or in a pot.</summary>
    public Temperature SyrupPointToday => PointAt(Setting.Rig.Target.Brix);

    /// <summary>
    /// By how much this draw is taken over the target, in Brix by the thermometer, less than nothing under it: what the samples have taught of
    /// the thermometer, and what the batch so far lacks, spread over the syrup that is still to come. No more than 1.5 either way.
    /// </summary>
    public double DrawShift => _drawShift.Value;

    /// <summary>
    /// Whether the draw just tested is thin, so thin that the syrup still to come cannot make up for it: else it stays in the batch, and the next
    /// is drawn heavier.
    /// </summary>
    public bool IsTooThin => SyrupSample.OffTarget(Setting, State) is { } off && off < -MostThin && (off < -MostFall || IsPastMakingUp(-1));

    /// <summary>The same of a draw that is too heavy.</summary>
    public bool IsTooHeavy => SyrupSample.OffTarget(Setting, State) is { } off && off > MostHeavy && (off > MostFall || IsPastMakingUp(1));

    /// <summary>
    /// Whether a draw waits for something greater: foam that was just seen to climb, or a pan just read too low. It waits for minutes only, and
    /// never once the draw-off stands well over its point: what thickens there scorches next.
    /// </summary>
    public bool IsDrawToWait => !IsWellOver && (
        (State.Last(ObservationName.Foam) is { Value: "rising" or "over" } foam && State.MinutesSince(foam.At) < WaitMinutes && IsFoamUntreated(foam))
        || (IsLit && State.Last(ReadingName.PanDepth) is { } depth && State.MinutesSince(depth.At) < WaitMinutes
            && UnitSystem.Length(depth.Value) < Setting.Rig.LeastDepth
            && !(State.Last(DeedName.FillPan)?.At.Time >= depth.At.Time) && !(State.Last(DeedName.FloodPan)?.At.Time >= depth.At.Time)));

    /// <summary>Whether foam is up that no defoamer works on: none went in since the look, nor so shortly before it that it still works.</summary>
    internal bool IsFoamUntreated(Noted<string> foam) =>
        !(State.Last(DeedName.AddDefoamer)?.At.Time >= foam.At.Time - Setting.Flow.Values[FlowValue.DefoamerWorks]);

    /// <summary>Where the draw-off is opened: over the draw point by as much as it ends under it, so that the pail is on it.</summary>
    public Temperature OpenAt => PointAt(Setting.Rig.LeavesPanAt.Brix + DrawShift + (Setting.Rig.IsBatch ? 0 : OpenedOver));

    /// <summary>
    /// Under which reading the draw-off is shut. Opened late the pail has begun heavy, and is drawn on for longer. It is put between two steps
    /// of the thermometer as it is read tonight.
    /// </summary>
    public Temperature ShutUnder
    {
        get
        {
            var (step, unit) = (ThermometerScale.Step(State), ThermometerScale.IsFahrenheit(State) ? Unit.DegreeFahrenheit : Unit.DegreeCelsius);
            double Shown(Temperature temperature) => unit == Unit.DegreeFahrenheit ? temperature.Fahrenheit : temperature.Celsius;
            var mark = double.Round((Shown(PointAt(ShutBrix)) + (step / 2)) / step) * step;
            if (mark - (step / 2) > Shown(PointAt(OpenedBrix - JustUnder)))
            {
                mark -= step;
            }

            return UnitSystem.Temperature(new(mark, unit));
        }
    }

    /// <summary>What stands at the draw-off once the thermometer is read under that: half a step lower, in Brix.</summary>
    internal double ShutAtBrix =>
        DrawPoint.SugarAt(State, ShutUnder - TemperatureRise.FromCelsius(ThermometerScale.StepKelvin(State) / 2))?.Brix ?? ShutBrix;

    /// <summary>Where the draw-off is best shut, in Brix by the thermometer.</summary>
    public double ShutBrix
    {
        get
        {
            var wanted = (Setting.Rig.Target.Brix + DrawShift - (DrawnSyrup.OpenedShare * OpenedBrix)) / (1 - DrawnSyrup.OpenedShare);
            var most = OpenedBrix - LeastFall;
            return double.Clamp(wanted, double.Min(Setting.Rig.Target.Brix - MostFall, most), most);
        }
    }

    /// <summary>Whether the open draw-off was last read under the point where a draw ends.</summary>
    public bool HasDrawFallen => DrawOpenSince is { } open && State.Last(ReadingName.DrawTemperature) is { } read
        && read.At.Time > open.Time && UnitSystem.Temperature(read.Value) < ShutUnder;

    /// <summary>
    /// Whether an open draw-off still rises, by its last two readings: the valve does not keep up with the boil. An old reading tells nothing of
    /// now, and no valve stays open for it over a pan that is low.
    /// </summary>
    public bool IsDrawOutrun => DrawOpenSince is { } open && State.Readings.TryGetValue(ReadingName.DrawTemperature, out var all) && all.Count > 1
        && all[^1].At.Time - open.Time > Running && Course.MinutesSinceRead <= FreshMinutes
        && UnitSystem.Temperature(all[^1].Value) > UnitSystem.Temperature(all[^2].Value) && UnitSystem.Temperature(all[^1].Value) > OpenAt && !IsPanFallen;

    /// <summary>
    /// Whether the draw-off comes to its point within minutes, by its last reading or by its course: then minutes decide.
    /// </summary>
    public bool IsDrawAtHand => !IsDrawDue && !IsDrawMissed && DrawOpenSince is null && Course.Last is { } last
        && (UnitSystem.Temperature(last.Value) >= DrawPointToday - Setting.Flow.Values.Rise(FlowValue.DrawAtHand) || Course.MinutesTo(OpenAt) is <= SoonMinutes);

    /// <summary>Whether it comes to it so soon that the next reading is to follow at once.</summary>
    public bool IsDrawImminent => !IsDrawDue && DrawOpenSince is null && Course.MinutesTo(OpenAt) is <= ImminentMinutes;

    /// <summary>
    /// Whether the draw-off is to be looked at again after a draw: half of the time in which it came back before tonight has gone, or four
    /// minutes where it never did. A batch that is out leaves nothing that thickens on.
    /// </summary>
    public bool IsDrawAgain => !Setting.Rig.IsBatch && DrawOpenSince is null && Course.Last is null && State.DrawEnded is { } shut
        && State.MinutesSince(shut) is var since && since >= Cycle && since < AgainMinutes;

    /// <summary>Whether the draw-off is to be opened now.</summary>
    public bool IsDrawDue => Course.Last is { } last && State.MinutesSince(last.At) < DrawCourse.ReadingMinutes && !IsThinnedSince(last.At)
        && UnitSystem.Temperature(last.Value) is var read && (IsOver(read) ? IsOverEnough(read) : IsForeseen(read));

    /// <summary>
    /// Whether the draw-off stood at its point when it was last read, and nobody has drawn: too long ago to open by that reading, and too long to
    /// leave it.
    /// </summary>
    public bool IsDrawMissed => DrawOpenSince is null && Course.Last is { } last && State.MinutesSince(last.At) >= DrawCourse.ReadingMinutes
        && !(State.ChilledAt?.Time >= last.At.Time) && !(State.Last(DeedName.FillPan)?.At.Time >= last.At.Time) && !(State.Last(DeedName.FloodPan)?.At.Time >= last.At.Time)
        && IsOver(UnitSystem.Temperature(last.Value));

    /// <summary>Whether sap went into a batch since, told or seen by its depth: what was read then stands there no more.</summary>
    private bool IsThinnedSince(Moment read) => Setting.Rig.IsBatch && (State.ChilledAt?.Time >= read.Time || State.Last(DeedName.FillPan)?.At.Time >= read.Time || State.Last(DeedName.FloodPan)?.At.Time >= read.Time);

    /// <summary>Whether it is to be opened by its course, before a reading is over the point.</summary>
    public bool IsDrawForeseen => IsDrawDue && Course.Last is { } last && !IsOver(UnitSystem.Temperature(last.Value));

    /// <summary>Seconds from the advice to open until it is open, as the hand has shown it tonight, with a default that counts as one draw.</summary>
    public double SecondsToOpen
    {
        get
        {
            var told = State.Syrup.Select(draw => draw.DelaySeconds).OfType<double>().ToList();
            return (UsualSecondsToOpen + told.Sum(seconds => double.Clamp(seconds, 5, 180))) / (1 + told.Count);
        }
    }

    /// <summary>The sugar as the draw-off was opened; where that is not known, where it should have been.</summary>
    private double OpenedBrix => (State.NewestSyrup is { Shut: null } draw ? draw.OpenedBrix : null)
        ?? Setting.Rig.Target.Brix + DrawShift + OpenedOver;

    /// <summary>How long the draw-off took to come back after the last draws tonight, halved, in minutes.</summary>
    private double Cycle
    {
        get
        {
            var took = State.Syrup.Zip(State.Syrup.Skip(1), (one, next) => (next.Opened.Time - (one.Shut ?? one.Opened).Time).TotalMinutes).ToList();
            return took.Count == 0 ? FirstAgain : double.Clamp(took.Min() / 2, LeastAgain, MostAgain);
        }
    }

    private bool IsOver(Temperature read) => read >= DrawPointToday - DrawPoint.ReadTo;

    /// <summary>
    /// A reading over the point opens at once where it is as far over as a pail needs, where the course says the same, or where another
    /// reading or two minutes have come after the first over it: no reading holds a valve shut against a second one.
    /// </summary>
    private bool IsOverEnough(Temperature read) => read >= OpenAt - DrawPoint.ReadTo
        || Course.MinutesSinceRead >= HeldMinutes
        || Course.Line is null || Course.IsOverIn(SecondsToOpen, OpenAt)
        || Course.Readings.SkipLast(1).Any(one => IsOver(UnitSystem.Temperature(one.Value)));

    /// <summary>
    /// By its course alone it is opened where the last reading is near the point and the point is passed by the time that the hand is there.
    /// Once it is asked for, it stays asked for.
    /// </summary>
    private bool IsForeseen(Temperature read) =>
        read >= DrawPointToday - TemperatureRise.FromCelsius(ForeseenKelvin + (ThermometerScale.StepKelvin(State) / 2))
        && (Course.Readings.Count > 1 || Course.LastRise is not null)
        && Course.MinutesSinceRead < (IsAskedToOpen ? AskedMinutes : ForeseenMinutes)
        && Course.Rises is { Celsius: > 0 } && Course.IsOverIn(SecondsToOpen, OpenAt);

    /// <summary>Syrup that is still to come tonight, in liters: by the sugar in the tank; where that is not known, two draws like those before; none once no more wood goes in.</summary>
    private double SyrupToCome => IsHeld || IsEnding ? 0
        : Evening.SyrupLiters(this) is { } whole ? double.Max(whole - State.Totals.DrawnLiters, 0)
        : State.Syrup.Count > 0 ? 2 * State.Syrup.Average(draw => draw.Liters) : 0;

    private bool IsPastMakingUp(int side) => SyrupBatch.Of(State) is not { } batch
        || side * (batch.SugarContent.Brix - Setting.Rig.Target.Brix) * batch.Volume.Liters > MostMadeUp * SyrupToCome;

    /// <summary>A degree Fahrenheit over where it is opened.</summary>
    private bool IsWellOver => Course.Last is { } last && UnitSystem.Temperature(last.Value) > OpenAt + TemperatureRise.FromFahrenheit(1);

    private bool IsAskedToOpen => State.Step.Length > 0 && Setting.Flow.Steps[State.Step].Advise == "open-draw";

    private double ReckonShift()
    {
        if (Setting.Rig.IsBatch)
        {
            // A batch is one: nothing makes up for another.
            return 0;
        }

        var target = Setting.Rig.Target.Brix;
        var lacks = 0.0;
        if (SyrupBatch.Of(State) is { } batch)
        {
            var toCome = double.Max(SyrupToCome, 2 * State.Syrup.Average(draw => draw.Liters));
            lacks = double.Clamp((target - batch.SugarContent.Brix) * batch.Volume.Liters / double.Max(toCome, 0.1), -MostMadeUp, MostMadeUp);
        }

        return double.Clamp(lacks - SyrupBatch.PailOver(State), -MostShift, MostShift);
    }

    private Band? ReckonDraw()
    {
        if (!State.Rig.IsBoiling || IsHeld)
        {
            return null;
        }

        var band = Band.Of(Ahead.MinutesTo(Setting.Rig.LeavesPanAt).At);
        return band.P50 >= RigForecasts.LongestToDraw ? null : band with { P95 = double.Min(band.P95, RigForecasts.LongestToDraw) };
    }

    /// <summary>Where the draw-off thermometer stands today over so much sugar.</summary>
    private Temperature PointAt(double brix) => State.Rig.Boiling
        + BoilingPointElevation.Of(SugarContent.FromBrix(double.Clamp(brix, 40, 80)), DrawPoint.PressureAt(State.Rig.Boiling));

    /// <summary>An advice to open by the course lapses after so many minutes: then the thermometer is read again.</summary>
    private const double AskedMinutes = 3;

    /// <summary>Minutes for which a first reading over the point waits for a second.</summary>
    private const double HeldMinutes = 2;

    /// <summary>So long after a reading a course is good for opening a valve.</summary>
    private const double ForeseenMinutes = 1.25;

    /// <summary>So near the point was the reading, in K, after which the course may open: 0.8 °F.</summary>
    private const double ForeseenKelvin = 0.45;

    /// <summary>An older reading of an open draw-off tells nothing of now, in minutes: no source.</summary>
    private const double FreshMinutes = 1.5;

    /// <summary>So long a draw waits for foam or sap: then the look is old.</summary>
    private const int WaitMinutes = 5;

    /// <summary>Minutes until the draw at which the thermometer is read more often, and at once. No source, tried on simulated rigs.</summary>
    private const double SoonMinutes = 5;

    private const double ImminentMinutes = 2.5;

    /// <summary>A course tells of no more minutes than these. No source.</summary>
    private const double CourseTold = 20;

    /// <summary>So long after a draw, in minutes, another one is waited for at the draw-off; then its own watch does. No source.</summary>
    private const double AgainMinutes = 30;

    /// <summary>When it is first looked at after a draw where none came back before, and within what half of its time is kept, in minutes. No source.</summary>
    private const double FirstAgain = 4;

    private const double LeastAgain = 2;

    private const double MostAgain = 8;

    /// <summary>No source: what advice to deed took in simulated boils, in seconds.</summary>
    private const double UsualSecondsToOpen = 40;

    /// <summary>The draw-off is opened so many Brix over its point: half of what it falls until it is shut, a quarter of a degree Fahrenheit. No source.</summary>
    private const double OpenedOver = 0.5;

    /// <summary>Less than this, in Brix, and every draw is a cupful.</summary>
    private const double LeastFall = 1.25;

    /// <summary>Shut no nearer than this, in Brix, to where it was opened, whatever the steps of the thermometer.</summary>
    private const double JustUnder = 0.25;

    /// <summary>More, and what runs out is no syrup.</summary>
    private const double MostFall = 4;

    /// <summary>The draw point is shifted by no more, in Brix, whatever batch and samples say: beyond, one of them is wrong. No source.</summary>
    private const double MostShift = 1.5;

    /// <summary>Thinner by this much, in Brix, it spoils; heavier by that, it turns to sugar. Common practice, no source.</summary>
    private const double MostThin = 0.5;

    private const double MostHeavy = 1;

    /// <summary>A draw makes up for the others by no more than this, in Brix.</summary>
    private const double MostMadeUp = 0.75;

    /// <summary>So long a draw runs before a rise tells of the valve: what stood in the pipe is out. No source.</summary>
    private static readonly TimeSpan Running = TimeSpan.FromSeconds(60);
}
