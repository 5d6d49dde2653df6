using System.Collections.Immutable;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>What is to come of a rig as it stands. Each is reckoned when it is first asked for, and once.</summary>
public sealed class RigForecasts
{
    /// <summary>How far ahead a draw is looked for, in minutes.</summary>
    public const double LongestToDraw = DrawSteps * DrawStepMinutes;

    private const double DrawStepMinutes = 2;

    private const int DrawSteps = 180;

    private readonly RigEnsemble _rigs;

    private Outlook? _withoutWood;
    private Outlook? _withoutFeed;
    private ImmutableDictionary<double, Outlook> _poured = ImmutableDictionary<double, Outlook>.Empty;
    private (Mass Wood, Outlook Outlook)? _onceLastCharged;
    private (Mass Wood, RigForecasts Forecasts)? _onceCharged;
    private RankedValues? _ratesFiring;
    private RankedValues? _ratesWithoutWood;
    private RankedValues? _nextTenFiring;
    private RankedValues? _nextTenWithoutWood;
    private (SugarContent Sugar, RankedValues Minutes)? _toDraw;
    private (Volume Stop, RankedValues Minutes)? _toTank;
    private (LastChargeRule Rule, RankedValues Minutes)? _toLastCharge;
    private RigEnsemble? _midCharge;

    internal RigForecasts(RigEnsemble rigs) => _rigs = rigs;

    /// <summary>What happens with no more wood.</summary>
    public Outlook WithoutWood => _withoutWood ??= Outlook.Of(_rigs, fed: true);

    /// <summary>What happens with no more wood and no more feed.</summary>
    public Outlook WithoutFeed => _withoutFeed ??= Outlook.Of(_rigs, fed: false);

    /// <summary>The same with so much cold water poured in now; each amount is reckoned once.</summary>
    public Outlook WithoutFeedOncePoured(Volume water)
    {
        if (!_poured.TryGetValue(water.Liters, out var outlook))
        {
            outlook = _rigs.Poured(water, isWater: true).Forecasts.WithoutFeed;
            _poured = _poured.SetItem(water.Liters, outlook);
        }

        return outlook;
    }

    /// <summary>
    /// What happens with no more wood once a last charge is in. The flames of the one before are taken as burned down by then, so
    /// that the answer does not swing between two charges.
    /// </summary>
    public Outlook OnceLastCharged(Mass wood)
    {
        // Nothing goes in before a burner is shut off.
        return _rigs.Rig.IsBurner ? WithoutWood
            : Kept(ref _onceLastCharged, wood, charge => Outlook.Of(_rigs.Charged(charge, areFlamesDown: true), fed: true));
    }

    /// <summary>What would be to come with a charge just in.</summary>
    public RigForecasts OnceCharged(Mass wood) =>
        _rigs.Rig.IsBurner ? this : Kept(ref _onceCharged, wood, charge => _rigs.Charged(charge).Forecasts);

    /// <summary>
    /// Water leaving the pan, in liters an hour, over the time of a charge to come: at the usual firing, or with no more
    /// wood.
    /// </summary>
    public RankedValues RatesLitersPerHour(bool firing) =>
        firing ? _ratesFiring ??= ReckonRates(firing) : _ratesWithoutWood ??= ReckonRates(firing);

    /// <summary>
    /// Water leaving the pan over the next ten minutes, as a mean in liters an hour, going on as now: each charge that falls due goes in as
    /// they went in tonight, a burner burns on; or with no more wood.
    /// </summary>
    /// <param name="firing">Whether charges go on.</param>
    public RankedValues NextTenMinutes(bool firing) =>
        firing ? _nextTenFiring ??= Ensemble.NextTenMinutes.Of(_rigs, firing) : _nextTenWithoutWood ??= Ensemble.NextTenMinutes.Of(_rigs, firing);

    /// <summary>
    /// Minutes until the draw-off comes to a sugar content at the usual firing; infinite for members that do not come to
    /// it in six hours.
    /// </summary>
    public RankedValues MinutesTo(SugarContent atDrawOff) => Kept(ref _toDraw, atDrawOff, ReckonMinutesTo);

    /// <summary>Minutes until the tank has come down to a volume at the usual firing; 0 where it has.</summary>
    public RankedValues MinutesToTank(Volume stop) => Kept(ref _toTank, stop, ReckonMinutesToTank);

    /// <summary>
    /// Minutes until the last charge goes in, charge by charge as the rule has it: the last is the first one after which the tank, by the
    /// gauge, would come down to the stop before the next. Charges fall together, so that the values come in steps.
    /// </summary>
    public RankedValues MinutesToLastCharge(LastChargeRule rule) => Kept(ref _toLastCharge, rule, ReckonMinutesToLastCharge);

    /// <summary>
    /// Minutes until an eye would call the coals thin, or spent, with no more wood: each member's bed empties by its own time constant, and is looked at
    /// by an eye that is as unsure of the bound as <see cref="RigSights.Seen(RigEnsemble, CoalsSeen)"/> takes it to be. 0 where it has.
    /// </summary>
    /// <param name="to">Thin or spent.</param>
    /// <exception cref="ArgumentOutOfRangeException">Deep: that comes of wood, and not of waiting.</exception>
    public RankedValues MinutesToCoals(CoalsSeen to)
    {
        ArgumentOutOfRangeException.ThrowIfEqual(to, CoalsSeen.Deep);
        var bound = UsualCoals.Of(_rigs.Rig).Megajoules * double.Exp(EyeBounds.OfCoals[(int)to]);
        var minutes = new double[_rigs.Count];
        for (var member = 0; member < minutes.Length; member++)
        {
            var fuel = _rigs.Members[Field.Flame][member] + _rigs.Members[Field.Coals][member];
            var called = bound * double.Exp(EyeBounds.CoalsEye * _rigs.Noise.Noise[member]);
            minutes[member] = fuel > called ? double.Exp(_rigs.Members[Field.CoalTime][member]) * double.Log(fuel / called) : 0;
        }

        return new(minutes);
    }

    /// <summary>
    /// With flames and coals as they are on the mean between two charges, so that it does not matter when in a charge one asks:
    /// the forecasts let the wood go in evenly.
    /// </summary>
    private RigEnsemble MidCharge => _midCharge ??= ReckonMidCharge();

    /// <summary>The value asked for last is kept: a session asks for the same one again and again.</summary>
    private static TValue Kept<TKey, TValue>(ref (TKey Key, TValue Value)? kept, TKey key, Func<TKey, TValue> reckon)
        where TKey : IEquatable<TKey>
    {
        if (kept is not { } known || !known.Key.Equals(key))
        {
            kept = known = (key, reckon(key));
        }

        return known.Value;
    }

    private RankedValues ReckonMinutesTo(SugarContent atDrawOff)
    {
        var members = MidCharge.Members.ToRun();
        var minutes = Stepping.Go(members, _rigs.Constants, new()
        {
            Steps = DrawSteps,
            StepMinutes = DrawStepMinutes,
            WoodMegajoules = _rigs.Fire.MegajoulesPerMinute,
            HeldLiters = _rigs.HeldLiters,
            HeldBackLiters = _rigs.HeldBackLiters,
            HoldsOwn = !_rigs.Rig.HasFloat,
            DrawFraction = atDrawOff.MassFraction,
        }).DrawMinutes;
        var correction = _rigs.Fire.SetRight(Corrections.OfDraw);
        return new(
            LeftOut.Widened(minutes, LeftOut.OfDraw, LeftOut.OfDrawMinutes), _rigs.Common.IsLearned ? correction.Wider(Corrections.LearnedDraw) : correction);
    }

    private RankedValues ReckonMinutesToLastCharge(LastChargeRule rule)
    {
        var rates = RatesLitersPerHour(firing: true);
        var minutesOfCharge = _rigs.Fire.MinutesOfCharge;
        var minutes = new double[_rigs.Count];
        for (var member = 0; member < minutes.Length; member++)
        {
            var perMinute = double.Max(rates.Of(member), 1e-3) / 60;
            var atNext = _rigs.Members[Field.Tank][member] + _rigs.Members[Field.GaugeOff][member] - (perMinute * rule.MinutesToNext);
            var over = atNext - (perMinute * rule.MinutesAhead) - rule.Stop.Liters;
            minutes[member] = rule.MinutesToNext + (double.Max(double.Ceiling(over / (perMinute * minutesOfCharge)), 0) * minutesOfCharge);
        }

        return new(LeftOut.Widened(minutes, LeftOut.OfLastCharge, LeftOut.OfLastChargeMinutes), _rigs.Fire.SetRight(Corrections.OfLastCharge));
    }

    private RankedValues ReckonMinutesToTank(Volume stop)
    {
        var rates = RatesLitersPerHour(firing: true);
        var minutes = new double[_rigs.Count];
        for (var member = 0; member < minutes.Length; member++)
        {
            minutes[member] = double.Max(_rigs.Members[Field.Tank][member] - stop.Liters, 0) / double.Max(rates.Of(member), 1e-3) * 60;
        }

        return new(minutes);
    }

    private RigEnsemble ReckonMidCharge()
    {
        var members = _rigs.Members.ToRun();
        var (interval, firing) = (_rigs.Fire.MinutesOfCharge, _rigs.Fire.MegajoulesPerMinute);
        var since = _rigs.Common.ChargedAt is { } at ? double.Min(_rigs.Minute - at, interval) : interval / 2;
        for (var member = 0; member < members.Count; member++)
        {
            var coals = members[Field.CoalShare][member];
            members[Field.Flame][member] = firing * (1 - coals) * double.Exp(members[Field.FlameTime][member]);
            members[Field.Coals][member] = double.Max(members[Field.Coals][member] + (firing * coals * (since - (interval / 2))), 0);
        }

        return _rigs.With(members, _rigs.Told, _rigs.Minute);
    }

    private RankedValues ReckonRates(bool firing)
    {
        var minutes = double.Max(_rigs.Rig.Interval.TotalMinutes, 2);
        var from = firing ? MidCharge : _rigs;
        var members = from.Ran(minutes, firing ? _rigs.Fire.MegajoulesPerMinute : 0, tankEnds: false, withoutSugar: true).Members;
        var rates = new double[_rigs.Count];
        var perHour = 60 / minutes * (firing ? LeftOut.PartOfRate(_rigs.Rig.ForcedDraft) : 1);
        for (var member = 0; member < rates.Length; member++)
        {
            rates[member] = (members[Field.Evaporated][member] - _rigs.Members[Field.Evaporated][member]) * perHour;
        }

        return new(rates);
    }
}
