using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Advice;

/// <summary>A state seen through the reckoning: what is asked of it more than once is reckoned once.</summary>
public sealed partial class Situation
{
    /// <summary>A question that nobody answered for so long is about another moment.</summary>
    internal static readonly TimeSpan DoubtLasts = TimeSpan.FromMinutes(15);

    private readonly Lazy<Band?> _rate;
    private readonly Lazy<Band?> _nextTen;
    private readonly Lazy<Band?> _toDraw;
    private readonly Lazy<DrawCourse> _course;
    private readonly Lazy<double> _drawShift;
    private readonly Lazy<IReadOnlyList<string>> _unmet;
    private readonly Lazy<StillingPour?> _stillingPour;
    private readonly Lazy<double?> _stop;
    private readonly Lazy<double?> _stopOnceCharged;

    /// <summary>The situation of a state.</summary>
    public Situation(Setting setting, SessionState state)
    {
        (Setting, State) = (setting, state);
        _unmet = new(() => ClearToLeave.Unmet(this));
        _stillingPour = new(() => StillingPour.Of(this));
        _stop = new(() => ReckonStop(Ahead));
        _stopOnceCharged = new(() => ReckonStop(Charged));
        _rate = new(() => IsLit ? Band.Of(Ahead.RatesLitersPerHour(IsFiring && state.Rig.IsBoiling).At) : null);
        _nextTen = new(() => IsLit ? Band.Of(Ahead.NextTenMinutes(IsFiring && !IsHeld && !IsEnding).At) : null);
        _toDraw = new(ReckonDraw);
        _course = new(() => new(State, last => MinutesToDraw is { } minutes ? (minutes.P50, (DrawPoint.Today(Setting, State) - last).Celsius) : null));
        _drawShift = new(ReckonShift);
    }

    /// <summary>What the session runs on.</summary>
    public Setting Setting { get; }

    /// <summary>What is known.</summary>
    public SessionState State { get; }

    /// <summary>What is to come, as the possible rigs have it.</summary>
    public RigForecasts Ahead => State.Rigs.Forecasts;

    /// <summary>The degree that the pan's thermometer shows, as it was read last; else that of the rig's units.</summary>
    public Unit Degree => ThermometerScale.Degree(State, Setting.Units);

    /// <summary>Whether there is a fire: it was lit, or what was seen can only come from one.</summary>
    public bool IsLit => State.Deeds.ContainsKey(DeedName.LitFire) || State.Deeds.ContainsKey(DeedName.AddWood)
        || State.Observations.ContainsKey(ObservationName.Boil) || State.Observations.ContainsKey(ObservationName.Coals);

    /// <summary>What happens with no more wood; null before the fire.</summary>
    public Outlook? Shutdown => IsLit ? Ahead.WithoutWood : null;

    /// <summary>What happens with no more wood and no more feed; null before the fire.</summary>
    public Outlook? Unfed => IsLit ? Ahead.WithoutFeed : null;

    /// <summary>All water that leaves the open pan in the next four hours, in liters; null before the fire.</summary>
    public Band? ResidualLiters => Shutdown is { } s ? Band.Of(s.ResidualLiters) : null;

    /// <summary>Minutes until the boil goes still; null before the fire.</summary>
    public Band? StillMinutes => Shutdown is { } s && Band.Of(s.StillMinutes) is var band
        ? new(band.P5, double.Max(band.P50, SimmersOn(0.5)), double.Max(band.P95, SimmersOn(0.95)))
        : null;

    /// <summary>
    /// Minutes for which a boil that simmers goes on at the least, at a quantile: the longer it was seen to, the longer yet, up to as long again. Members
    /// in which it dies have all but died out at each look, and those that are left die in the next minutes; a simmer that somebody sees is not over
    /// within five. 0 where it was not last seen to simmer. No source: docs/worlds.md has what it changes.
    /// </summary>
    /// <param name="quantile">The quantile, 0 to 1.</param>
    internal double SimmersOn(double quantile) => State.SimmersSince is { } since
        ? quantile * double.Max(double.Max(State.MinutesSince(since) - SinceBoilSeen, JustSeen) - SinceBoilSeen, 0)
        : 0;

    /// <summary>A simmer that is seen is not over for so many minutes, at the far end; no source.</summary>
    private const double JustSeen = 5;

    private double SinceBoilSeen => State.Last(ObservationName.Boil) is { } look ? State.MinutesSince(look.At) : 0;

    /// <summary>What still speaks against leaving; empty when it is safe.</summary>
    public IReadOnlyList<string> Unmet => _unmet.Value;

    /// <summary>Cold sap or water that would still the dying boil for good; null where none would, or none is needed.</summary>
    public StillingPour? StillingPour => _stillingPour.Value;

    /// <summary>Sap wanted in the tank, in liters.</summary>
    public Band? ReserveLiters => Shutdown is { } s ? Band.Of(s.ReserveLiters) : null;

    /// <summary>
    /// Water leaving the pan, in liters an hour, over the time of a charge rather than this minute: between charges it swings by
    /// half. At the usual firing while wood goes in, without wood once it does not. Null before the fire.
    /// </summary>
    public Band? RateLitersPerHour => _rate.Value;

    /// <summary>Water leaving the pan over the next ten minutes, a mean in liters an hour, going on as now; null before the fire.</summary>
    public Band? NextTenMinutesLitersPerHour => _nextTen.Value;

    /// <summary>Whether wood still goes in: the last charge is no older than two intervals.</summary>
    public bool IsFiring => Setting.Rig.IsBurner ? IsBurnerOn : LastWood is { } wood && State.MinutesSince(wood) <= 2 * Setting.Rig.Interval.TotalMinutes;

    /// <summary>Whether a burner is on: it was lit, or what was seen can only come from one that is, and nobody has told since that it is off.</summary>
    public bool IsBurnerOn => Setting.Rig.IsBurner && IsLit && State.Last(DeedName.ShutOff) is null;

    /// <summary>When the fire got heat last: when wood went in, or a burner was still on; null before any.</summary>
    public Moment? LastWood
    {
        get
        {
            if (Setting.Rig.IsBurner)
            {
                return IsBurnerOn ? State.Now : State.Last(DeedName.ShutOff)?.At;
            }

            var (lit, added) = (State.Last(DeedName.LitFire)?.At, State.Last(DeedName.AddWood)?.At);
            return lit is null || added is null ? lit ?? added : added.Value.Time >= lit.Value.Time ? added : lit;
        }
    }

    /// <summary>The floor of common practice for the sap over and above the pan's own at the last charge, in liters.</summary>
    public double FloorLiters => CommonPractice.ReserveAtLastCharge(Setting.Rig.WholeArea, IsCautious).Liters;

    /// <summary>Whether the cautious side is taken: a beginner, or a season's first shutdown.</summary>
    public bool IsCautious => Setting.Guidance == Guidance.Beginner || !State.Marks.Contains("rig-known-this-season");

    /// <summary>Sap that must be in the tank when the last charge goes in, in liters: the reckoning's, or common practice where that is more.</summary>
    public double? StopLiters => _stop.Value;

    /// <summary>Whether common practice, and not the reckoning, sets <see cref="StopLiters"/>.</summary>
    public bool FloorSpeaks => StopLiters is { } stop && stop <= FloorLiters + 0.01;

    /// <summary>Minutes until the last charge; null where tank or rate are not known, or wood is held already.</summary>
    public Band? MinutesToLastCharge
    {
        get
        {
            if (State.Rig.Tank is null || LastChargeBy is not { } rule || RateLitersPerHour is not { P5: > 0.1 } || IsHeld || IsEnding || !State.Rig.IsBoiling)
            {
                return null;
            }

            var band = Band.Of((Setting.Rig.IsBurner ? Ahead.MinutesToTank(rule.Stop) : Ahead.MinutesToLastCharge(rule)).At);
            return band.P50 > Tonight ? null : band;
        }
    }

    /// <summary>
    /// Minutes until it is clear to leave: once no more wood goes in, if nothing is done but to look; before, after the
    /// last charge as this program advises it. Null where that is not known, or where waiting does not bring it.
    /// </summary>
    public Band? MinutesToClear => IsHeld ? Clearing.Minutes(this)
        : MinutesToLastCharge is { } last && Shutdown is not null && Band.Of(Ahead.OnceLastCharged(Setting.Rig.Charge).StillMinutes) is var still
            ? Clearing.Once(this, new(last.P5 + still.P5, last.P50 + still.P50, last.P95 + still.P95))
            : null;

    /// <summary>Whether the charge that comes next would find less sap than the shutdown needs: then the last one is in.</summary>
    public bool IsLastChargeDue
    {
        get
        {
            var hasBoiled = State.Rig.IsBoiling || State.Rig.Evaporated.Liters > 2;
            if ((!hasBoiled && !IsFiring) || State.Rig.Tank is not { } tank || StopLiters is not { } stop || RateLitersPerHour is not { } rate)
            {
                return false;
            }

            var sinceWood = LastWood is { } wood ? State.MinutesSince(wood) : 0;
            var untilNext = Setting.Rig.IsBurner ? ToTheBurner : double.Max(Setting.Rig.Interval.TotalMinutes - sinceWood, 0);
            return tank.Liters - (rate.P50 * untilNext / 60) <= stop;
        }
    }

    /// <summary>Minutes until somebody who is told to has shut a burner off: no source.</summary>
    private const double ToTheBurner = 3;

    /// <summary>What lies further off than these minutes is not tonight's: no last charge is told of.</summary>
    private const double Tonight = 12 * 60;

    private RigForecasts Charged => Ahead.OnceCharged(Setting.Rig.Charge);

    /// <summary>Whether a charge now would be the last one: the one after it would find less sap than the shutdown then needs.</summary>
    public bool IsLastChargeNext => !Setting.Rig.IsBurner && State.Rig.Tank is { } tank && _stopOnceCharged.Value is { } stop
        && tank.Liters - (Charged.RatesLitersPerHour(firing: true).At(0.5) * Setting.Rig.Interval.TotalHours * NearCall) <= stop;

    /// <summary>The rule by which <see cref="IsLastChargeNext"/> tells the last charge; null before the fire.</summary>
    public LastChargeRule? LastChargeBy => (Setting.Rig.IsBurner ? StopLiters : _stopOnceCharged.Value ?? StopLiters) is not { } stop ? null : new(
        Volume.FromLiters(stop),
        LastWood is { } wood ? double.Max(Setting.Rig.Interval.TotalMinutes - State.MinutesSince(wood), 0) : 0,
        Setting.Rig.Interval.TotalMinutes * NearCall);

    /// <summary>A charge that is the last one but for so little is called the last: a minute of weather would make it so.</summary>
    private static double NearCall => 1.15;

    /// <summary>Whether a tank reading lower than reckoned waits to be believed: until it is settled no wood is asked for.</summary>
    public bool IsTankInDoubt => State.Doubted is Reading { Name.Code: "tank-volume" } doubted
        && State.Now?.Time - doubted.At.Time <= DoubtLasts
        && State.Rig.Tank is { } tank && Setting.Units.Volume(doubted.Measure) < tank;

    /// <summary>
    /// Whether the last look at the tank found more in it than the look before, over a fire, with no refill told: one of the two was a slip, and who
    /// stands by the higher one would fire for sap that may not be there. The next look tells.
    /// </summary>
    public bool IsTankRisen => IsLit && State.Readings.GetValueOrDefault(ReadingName.TankVolume, []) is [.., var before, var last]
        && Setting.Units.Volume(last.Value) - Setting.Units.Volume(before.Value) >= Setting.Rig.Tank * TankRose
        && !(State.Last(DeedName.RefillTank)?.At.Time >= before.At.Time);

    /// <summary>So large a part of the tank is no mark more or less at the gauge. No source.</summary>
    private const double TankRose = 0.08;

    /// <summary>Whether the operator has said that no more wood goes in, or that the burner is off.</summary>
    public bool IsHeld => Setting.Rig.IsBurner ? IsLit && !IsBurnerOn : State.Marks.Contains("wood-held");

    /// <summary>Whether sap may be going from the tank into the pan for the flood, which is told when it is done: each shutdown has its own.</summary>
    public bool MayBeFlooding => IsHeld && !(State.Last(DeedName.FloodPan) is { } told && !(LastWood?.Time >= told.At.Time));

    /// <summary>The depth now, as reckoned from the last reading on.</summary>
    public Length Depth => State.Rig.DrawPan / Setting.Rig.PanArea;

    /// <summary>
    /// The depth as it is told: what was read within this very minute, as it was read; else as reckoned. Who has just read a figure
    /// is told no other one, unless something changed the depth since.
    /// </summary>
    public Length DepthTold => State.Last(ReadingName.PanDepth) is { } read && State.Now is { } now
        && now.Time - read.At.Time < TimeSpan.FromMinutes(1) && State.DepthChangedBy is null
            ? UnitSystem.Length(read.Value)
            : Depth;

    /// <summary>Whether the firing is at its end, also while nobody has said yet that no more wood goes in.</summary>
    public bool IsEnding => State.Step.Length > 0 && Setting.Flow.PhaseOf(State.Step).IsEnding;

    /// <summary>The depth as last read; null before any.</summary>
    public Length? DepthRead => State.Last(ReadingName.PanDepth) is { } read ? UnitSystem.Length(read.Value) : null;

    /// <summary>
    /// Whether the pan was last read well under its run depth over a fire. Feed or fire is then not what the reckoning holds it
    /// for, and a shallow pan thickens faster than any forecast says.
    /// </summary>
    public bool IsPanFallen => IsLit && !IsPanEmptied && DepthRead is { } read && IsFallen(read + PouredSince);

    /// <summary>By how much what was poured in since the depth was read has raised it, where a hand feeds the pan: there it is read less often than poured.</summary>
    private Length PouredSince => Setting.Rig.Feed == Feed.ByHand && State.Last(ReadingName.PanDepth) is { } read
        ? Volume.FromLiters(State.Pours.Where(pour => pour.At.Time > read.At.Time).Sum(pour => pour.Volume.Liters)) / Setting.Rig.PanArea
        : default;

    /// <summary>
    /// Whether the pan was read so low within the last half-hour. What took it there, a fire hotter than told or a pan that leans,
    /// takes it there again: filled up once, it is not yet to be trusted.
    /// </summary>
    public bool IsPanFallenLately => IsLit && State.Readings.TryGetValue(ReadingName.PanDepth, out var read)
        && read.Reverse().TakeWhile(one => State.MinutesSince(one.At) < 30).Any(one => IsFallen(UnitSystem.Length(one.Value)));

    /// <summary>
    /// Whether the pan was read so low over a float and has not been read deep for four minutes since: filled up by hand it is deep at once,
    /// and whether feed and fire keep it so shows only then. Until it does, no wood is asked for.
    /// </summary>
    public bool IsPanUnsteady
    {
        get
        {
            if (Setting.Rig.Feed == Feed.ByHand)
            {
                return IsPanFallen;
            }

            if (!IsLit || !State.Readings.TryGetValue(ReadingName.PanDepth, out var read))
            {
                return false;
            }

            var since = read.FindLastIndex(one => IsFallen(UnitSystem.Length(one.Value))) + 1;
            return since > 0 && (since == read.Count || read[^1].At.Time - read[since].At.Time < TimeSpan.FromMinutes(LeastBetweenLooks));
        }
    }

    /// <summary>
    /// Whether the pan stands well over its run depth and higher than it was read before, though nobody flooded it or poured into it: a
    /// float that hangs open lets the tank run into it.
    /// </summary>
    public bool IsPanRisen => IsLit && Setting.Rig.HasFloat && !State.Deeds.ContainsKey(DeedName.FloodPan)
        && State.Readings.TryGetValue(ReadingName.PanDepth, out var read) && read.Count > 1
        && !(State.Last(DeedName.FillPan)?.At.Time >= read[^2].At.Time)
        && UnitSystem.Length(read[^1].Value) is var last && last > Setting.Rig.RunDepth * 1.3
        && last - UnitSystem.Length(read[^2].Value) > Setting.Rig.RunDepth * 0.15;

    /// <summary>Minutes since the depth was read; null before any.</summary>
    public int? MinutesSinceDepth => State.Last(ReadingName.PanDepth) is { } read ? State.MinutesSince(read.At) : null;

    /// <summary>
    /// Minutes in which the pan, from its last depth on, would show its floor if no sap came any more, on a rig that boils fast;
    /// null where nobody read the depth or nothing boils.
    /// </summary>
    public double? MinutesToBare => IsLit && !IsPanEmptied && MayBoil && DepthRead is { } read && FastLitersPerHour is { } rate
        ? double.Max((read + PouredSince - (Setting.Rig.LeastDepth * BareShare)).Meters, 0) * Setting.Rig.PanArea.SquareMeters * 1000
            / (rate * Setting.Description.BoiledInFront) * 60
        : null;

    private double? FastLitersPerHour => RateLitersPerHour is { P95: > 0.1 } rate
        ? IsFiring ? double.Clamp(rate.P95, FiredLitersPerHour, MostOfFired * FiredLitersPerHour)
            : IsFiredUntold ? double.Max(rate.P95, FiredLitersPerHour)
            : rate.P95
        : IsFiredUntold ? FiredLitersPerHour : null;

    private bool MayBoil => State.Rig.IsBoiling || IsFiredUntold;

    /// <summary>
    /// Whether somebody may be firing and not say so: the boil was last seen up, or nobody has said a word of it long after lighting, and none that no more wood goes in. The members let the
    /// fire die of the silence; a guard of the pan's floor must not.
    /// </summary>
    private bool IsFiredUntold => !IsHeld && !IsEnding && !IsSeenDown
        && (State.Last(ObservationName.Boil) is { Value: "rolling" or "steady" } || MinutesSinceLit >= UsuallyBoils);

    /// <summary>
    /// What the rig's own firing boils off, fast reckoned. The rate that readings tell of is no guard: behind a hung float the tank
    /// stands still, and the boil then passes for a slow one just when the pan empties.
    /// </summary>
    private double FiredLitersPerHour => Setting.Rig.IsBurner ? Setting.Rig.Boils.LitersPerHour * FastBurner :
        Firewood.HeatAsFired(FirewoodNames.FromName(Setting.Rig.WoodSpecies), Setting.Rig.Charge, Setting.Rig.WoodMoisture).Megajoules
        * FastShare / LatentMegajoules / Setting.Rig.Interval.TotalHours;

    /// <summary>So many times that no rig boils off, whatever is possible before the tank was read twice: no source.</summary>
    private static double MostOfFired => 1.15;

    /// <summary>The share of the wood's heat that boils off water on a good rig: no source.</summary>
    private static double FastShare => 0.28;

    /// <summary>So many times what it is said to boil away a burner may: no source.</summary>
    private static double FastBurner => 1.35;

    private static double LatentMegajoules => 2.26;

    /// <summary>
    /// Whether the depth is wanted now: a float that hung just after the last look is to be found ten minutes before the floor
    /// shows, with time to ask, to read and to look again. A pan that was read low cannot be asked for all the time.
    /// </summary>
    public bool IsDepthWanted => MinutesToBare is { } bare && MinutesSinceDepth >= double.Max(bare - WarnMinutes - AnswerMinutes, LeastBetweenLooks);

    /// <summary>
    /// Whether a pan that a hand feeds may stand under its least depth though it was read over it: by the balance of water, or since neither a
    /// depth nor a pour was told for as long as the rig's own firing takes to show its floor.
    /// </summary>
    public bool IsPanUnpoured => IsLit && !IsPanEmptied && Setting.Rig.Feed == Feed.ByHand && MayBoil && DepthRead >= Setting.Rig.LeastDepth
        && State.Last(ObservationName.Boil) is not { Value: "still" }
        && (Depth < Setting.Rig.LeastDepth
            || (MinutesSinceDepth >= MinutesToBare && !Poured.IsUnmeasuredSince(State.Last(DeedName.FillPan), State.Last(ReadingName.PanDepth)?.At)));

    /// <summary>The share of the least depth at which the floor shows between the bubbles: no source.</summary>
    private static double BareShare => 0.65;

    private static double WarnMinutes => 10;

    private static double AnswerMinutes => 5;

    private static double LeastBetweenLooks => 4;

    private bool IsFallen(Length depth) => depth < Setting.Rig.RunDepth * Setting.Flow.Values.Share(FlowValue.PanShallow);

    private double? ReckonStop(RigForecasts ahead) =>
        IsLit ? CommonPractice.StopAt(Setting, ahead, IsCautious).Liters : null;
}
