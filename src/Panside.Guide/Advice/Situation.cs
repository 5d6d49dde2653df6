using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Sessions;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Advice;

/// <summary>A state seen through the reckoning: what is asked of it more than once is reckoned once.</summary>
public sealed class Situation
{
    private readonly Lazy<Shutdown?> _shutdown;
    private readonly Lazy<IReadOnlyList<string>> _unmet;
    private readonly Lazy<double?> _stop;
    private readonly Lazy<double?> _stopOnceCharged;

    /// <summary>The situation of a state.</summary>
    public Situation(Setting setting, SessionState state)
    {
        (Setting, State) = (setting, state);
        _shutdown = new(() => IsLit
            ? Reckoning.Rig.Shutdown.Of(setting.Description, state.Rig, state.Rate.Spread)
            : null);
        _unmet = new(() => ClearToLeave.Unmet(this));
        _stop = new(() => ReckonStop(state.Rig));
        _stopOnceCharged = new(() => ReckonStop(RigModel.Charged(setting.Description, state.Rig, setting.Rig.Charge)));
    }

    /// <summary>What the session runs on.</summary>
    public Setting Setting { get; }

    /// <summary>What is known.</summary>
    public SessionState State { get; }

    /// <summary>Whether there is a fire: it was lit, or what was seen can only come from one.</summary>
    public bool IsLit => State.Deeds.ContainsKey(DeedName.LitFire) || State.Deeds.ContainsKey(DeedName.AddWood)
        || State.Observations.ContainsKey(ObservationName.Boil) || State.Observations.ContainsKey(ObservationName.Coals);

    /// <summary>What happens with no more wood; null before the fire.</summary>
    public Shutdown? Shutdown => _shutdown.Value;

    /// <summary>What still speaks against leaving; empty when it is safe.</summary>
    public IReadOnlyList<string> Unmet => _unmet.Value;

    /// <summary>Sap wanted in the tank, in liters.</summary>
    public Band? ReserveLiters => Shutdown?.ReserveLiters(Setting.Description, State.Rig);

    /// <summary>Water leaving the pan, in liters an hour, with its band; null while nothing boils.</summary>
    public Band? RateLitersPerHour => IsLit
        ? new Band(
            MeanRate * State.Rate.Spread.RateFactor(-Band.Deviate95),
            MeanRate,
            MeanRate * State.Rate.Spread.RateFactor(Band.Deviate95))
        : null;

    /// <summary>
    /// The rate over a charge of wood rather than this minute's: between charges it swings by half. A steady firing's mean
    /// while wood goes in; the present rate once it does not.
    /// </summary>
    public double MeanRate => IsFiring && State.Rig.IsBoiling ? SteadyRate : State.Rig.Rate.LitersPerHour;

    /// <summary>Whether wood still goes in: the last charge is no older than two intervals.</summary>
    public bool IsFiring => LastWood is { } wood && State.MinutesSince(wood) <= 2 * Setting.Rig.Interval.TotalMinutes;

    /// <summary>When wood last went in; null before any.</summary>
    public Moment? LastWood
    {
        get
        {
            var (lit, added) = (State.Last(DeedName.LitFire)?.At, State.Last(DeedName.AddWood)?.At);
            return lit is null || added is null ? lit ?? added : added.Value.Time >= lit.Value.Time ? added : lit;
        }
    }

    /// <summary>The floor of common practice for the sap over and above the pan's own at the last charge, in liters.</summary>
    public double FloorLiters => CommonPractice.ReserveAtLastCharge(Setting.Rig.PanArea, IsCautious).Liters;

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
            if (State.Rig.Tank is not { } tank || StopLiters is not { } stop || RateLitersPerHour is not { P5: > 0.1 } rate
                || IsHeld || !State.Rig.IsBoiling)
            {
                return null;
            }

            var spare = double.Max(tank.Liters - stop, 0);
            return rate.Map(liters => spare / liters * 60);
        }
    }

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
            var untilNext = double.Max(Setting.Rig.Interval.TotalMinutes - sinceWood, 0);
            return tank.Liters - (rate.P50 * untilNext / 60) <= stop;
        }
    }

    /// <summary>Whether a charge now would be the last one: the one after it would find less sap than the shutdown then needs.</summary>
    public bool IsLastChargeNext => State.Rig.Tank is { } tank && RateLitersPerHour is { } rate
        && _stopOnceCharged.Value is { } stop
        && tank.Liters - (rate.P50 * Setting.Rig.Interval.TotalHours) <= stop;

    /// <summary>Whether a tank reading lower than reckoned waits to be believed: until it is settled no wood is asked for.</summary>
    public bool IsTankInDoubt => State.Doubted is Reading { Name.Code: "tank-volume" } doubted
        && State.Now?.Time - doubted.At.Time <= Decider.DoubtLasts
        && State.Rig.Tank is { } tank && Setting.Units.Volume(doubted.Measure) < tank;

    /// <summary>When the draw-off was opened; null where it is shut.</summary>
    public Moment? DrawOpenSince => State.Last(DeedName.OpenDraw) is { } open && !(State.Last(DeedName.CloseDraw)?.At.Time >= open.At.Time)
        ? open.At
        : null;

    /// <summary>Whether the open draw-off was last read at or under the point where a draw ends.</summary>
    public bool HasDrawFallen => DrawOpenSince is { } open && State.Last(ReadingName.DrawTemperature) is { } read
        && read.At.Time > open.Time
        && UnitSystem.Temperature(read.Value) <= DrawPoint.Today(Setting, State) - DrawPoint.Fall;

    /// <summary>Whether the operator has said that no more wood goes in.</summary>
    public bool IsHeld => State.Marks.Contains("wood-held");

    /// <summary>Minutes until the draw point; null where no sugar comes in or nothing boils.</summary>
    public Band? MinutesToDraw
    {
        get
        {
            if (!State.Rig.IsBoiling || IsHeld)
            {
                return null;
            }

            var since = State.Last(DeedName.CloseDraw)?.At.Time;
            var read = State.Last(ReadingName.DrawTemperature) is { } last && !(since > last.At.Time) ? last : (Noted<Measure>?)null;
            var atDraw = read is { } noted ? DrawPoint.SugarAt(State, UnitSystem.Temperature(noted.Value)) : null;
            var rig = State.Rig with { Rate = VolumeRate.FromLitersPerHour(MeanRate) };
            if (SugarBalance.MinutesToDraw(Setting.Description, rig, atDraw) is not { } minutes)
            {
                return null;
            }

            var age = atDraw is { Brix: > 30 } && read is { } reading ? State.MinutesSince(reading.At) : 0;
            var left = double.Max(minutes - age, 0);
            return Band.Ordered(left * 0.55, left, left * 1.8);
        }
    }

    /// <summary>Whether the draw-off was last read so near to the draw point that minutes decide, and not since drawn.</summary>
    public bool IsDrawAtHand => !IsDrawDue
        && State.Last(ReadingName.DrawTemperature) is { } read
        && !(State.Last(DeedName.CloseDraw)?.At.Time >= read.At.Time)
        && UnitSystem.Temperature(read.Value) >= DrawPoint.Today(Setting, State) - DrawPoint.AtHand;

    /// <summary>A draw-off temperature older than this calls for another one, not for a draw.</summary>
    private static int DrawReadingMinutes => 15;

    /// <summary>Whether the last draw-off temperature, since the last draw, is at today's draw point.</summary>
    public bool IsDrawDue =>
        State.Last(ReadingName.DrawTemperature) is { } read
        && !(State.Last(DeedName.CloseDraw)?.At.Time >= read.At.Time)
        && State.MinutesSince(read.At) < DrawReadingMinutes
        && UnitSystem.Temperature(read.Value) >= DrawPoint.Today(Setting, State) - DrawPoint.ReadTo;

    /// <summary>The depth now, as reckoned from the last reading on.</summary>
    public Length Depth => State.Rig.Pan / Setting.Rig.PanArea;

    /// <summary>
    /// With the last charge just in: the flames of the one before have burned down by then, so that the answer does not swing
    /// between two charges.
    /// </summary>
    private double? ReckonStop(RigState rig)
    {
        if (!IsLit)
        {
            return null;
        }

        var charged = RigModel.Charged(Setting.Description, rig with { Flame = default }, Setting.Rig.Charge);
        var shutdown = Reckoning.Rig.Shutdown.Of(Setting.Description, charged, State.Rate.Spread);
        var reserve = IsCautious
            ? shutdown.ReserveLiters99(Setting.Description, charged)
            : shutdown.ReserveLiters(Setting.Description, charged).P95;
        return double.Max(reserve, FloorLiters);
    }

    /// <summary>Mean rate at the rig's own firing, in liters an hour: heat of a charge over its interval, less what never boils.</summary>
    private double SteadyRate => RigModel.SteadyRate(Setting.Description, State.Rig).LitersPerHour;
}
