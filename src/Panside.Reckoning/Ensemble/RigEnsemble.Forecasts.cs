using System.Collections.Immutable;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>The forecasts: nothing here changes the ensemble.</summary>
public sealed partial class RigEnsemble
{
    /// <summary>How far ahead a draw is looked for, in minutes.</summary>
    public const double LongestToDraw = DrawSteps * DrawStepMinutes;

    private const double DrawStepMinutes = 2;

    private const int DrawSteps = 180;

    private Outlook? _withoutWood;
    private Outlook? _withoutFeed;
    private ImmutableDictionary<double, Outlook> _poured = ImmutableDictionary<double, Outlook>.Empty;
    private (Mass Wood, Outlook Outlook)? _onceCharged;
    private (Mass Wood, RigEnsemble Rigs)? _charged;
    private RankedValues? _ratesFiring;
    private RankedValues? _ratesWithoutWood;
    private (SugarContent Sugar, RankedValues Minutes)? _toDraw;
    private (Volume Stop, RankedValues Minutes)? _toTank;
    private (LastChargeRule Rule, RankedValues Minutes)? _toLastCharge;
    private RigEnsemble? _midCharge;

    /// <summary>What happens with no more wood.</summary>
    public Outlook WithoutWood => _withoutWood ??= Outlook.Of(this, fed: true);

    /// <summary>What happens with no more wood and no more feed.</summary>
    public Outlook WithoutFeed => _withoutFeed ??= Outlook.Of(this, fed: false);

    /// <summary>The same with so much cold water poured in now; each amount is reckoned once.</summary>
    public Outlook WithoutFeedOncePoured(Volume water)
    {
        if (!_poured.TryGetValue(water.Liters, out var outlook))
        {
            outlook = Poured(water, isWater: true).WithoutFeed;
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
        if (Rig.IsBurner)
        {
            // Nothing goes in before it is shut off.
            return WithoutWood;
        }

        if (_onceCharged is not { } known || known.Wood != wood)
        {
            _onceCharged = known = (wood, Outlook.Of(Charged(wood, areFlamesDown: true), fed: true));
        }

        return known.Outlook;
    }

    /// <summary>As it would be with a charge just in; asked often, and reckoned once.</summary>
    public RigEnsemble OnceCharged(Mass wood)
    {
        if (Rig.IsBurner)
        {
            return this;
        }

        if (_charged is not { } known || known.Wood != wood)
        {
            _charged = known = (wood, Charged(wood));
        }

        return known.Rigs;
    }

    /// <summary>
    /// Water leaving the pan, in liters an hour, over the time of a charge to come: at the usual firing, or with no more
    /// wood.
    /// </summary>
    public RankedValues RatesLitersPerHour(bool firing) =>
        firing ? _ratesFiring ??= ReckonRates(firing) : _ratesWithoutWood ??= ReckonRates(firing);

    /// <summary>
    /// Minutes until the draw-off comes to a sugar content at the usual firing; infinite for members that do not come to
    /// it in six hours.
    /// </summary>
    public RankedValues MinutesTo(SugarContent atDrawOff)
    {
        if (_toDraw is not { } known || known.Sugar != atDrawOff)
        {
            _toDraw = known = (atDrawOff, ReckonMinutesTo(atDrawOff));
        }

        return known.Minutes;
    }

    private RankedValues ReckonMinutesTo(SugarContent atDrawOff)
    {
        var members = MidCharge.Members.ToRun();
        var minutes = Stepping.Go(members, Constants, new()
        {
            Steps = DrawSteps,
            StepMinutes = DrawStepMinutes,
            WoodMegajoules = FiringMegajoulesPerMinute,
            HeldLiters = HeldLiters,
            HeldBackLiters = HeldBackLiters,
            HoldsOwn = !Rig.HasFloat,
            DrawFraction = atDrawOff.MassFraction,
        }).DrawMinutes;
        var correction = SetRight(Corrections.OfDraw);
        return new(
            LeftOut.Widened(minutes, LeftOut.OfDraw, LeftOut.OfDrawMinutes), Common.IsLearned ? correction.Wider(Corrections.LearnedDraw) : correction);
    }

    /// <summary>Minutes until the tank has come down to a volume at the usual firing; 0 where it has.</summary>
    public RankedValues MinutesToTank(Volume stop)
    {
        if (_toTank is not { } known || known.Stop != stop)
        {
            _toTank = known = (stop, ReckonMinutesToTank(stop));
        }

        return known.Minutes;
    }

    /// <summary>
    /// Minutes until the last charge goes in, charge by charge as the rule has it: the last is the first one after which the tank, by the
    /// gauge, would come down to the stop before the next. Charges fall together, so that the values come in steps.
    /// </summary>
    public RankedValues MinutesToLastCharge(LastChargeRule rule)
    {
        if (_toLastCharge is not { } known || known.Rule != rule)
        {
            _toLastCharge = known = (rule, ReckonMinutesToLastCharge(rule));
        }

        return known.Minutes;
    }

    private RankedValues ReckonMinutesToLastCharge(LastChargeRule rule)
    {
        var rates = RatesLitersPerHour(firing: true);
        var minutes = new double[Count];
        for (var member = 0; member < Count; member++)
        {
            var perMinute = double.Max(rates.Of(member), 1e-3) / 60;
            var atNext = Members[Field.Tank][member] + Members[Field.GaugeOff][member] - (perMinute * rule.MinutesToNext);
            var over = atNext - (perMinute * rule.MinutesAhead) - rule.Stop.Liters;
            minutes[member] = rule.MinutesToNext + (double.Max(double.Ceiling(over / (perMinute * MinutesOfCharge)), 0) * MinutesOfCharge);
        }

        return new(LeftOut.Widened(minutes, LeftOut.OfLastCharge, LeftOut.OfLastChargeMinutes), SetRight(Corrections.OfLastCharge));
    }

    private RankedValues ReckonMinutesToTank(Volume stop)
    {
        var rates = RatesLitersPerHour(firing: true);
        var minutes = new double[Count];
        for (var member = 0; member < Count; member++)
        {
            minutes[member] = double.Max(Members[Field.Tank][member] - stop.Liters, 0) / double.Max(rates.Of(member), 1e-3) * 60;
        }

        return new(minutes);
    }

    /// <summary>
    /// The ensemble as it would be some minutes on with wood going in evenly; for questions and plans. Whoever fires a pan without a float
    /// pours, so that it is held about where it stands, give or take a portion.
    /// </summary>
    /// <param name="minutes">How long; at steps of two minutes at the most.</param>
    /// <param name="woodMegajoulesPerMinute">Heat of the wood.</param>
    /// <param name="tankEnds">Whether the feed ends with the tank.</param>
    /// <param name="withoutSugar">Whether only heat and water are asked for.</param>
    internal RigEnsemble Ran(double minutes, double woodMegajoulesPerMinute, bool tankEnds, bool withoutSugar = false)
    {
        var members = Members.ToRun(withoutSugar);
        var steps = (int)double.Ceiling(minutes / 2);
        Stepping.Go(members, Constants, new()
        {
            Steps = steps,
            StepMinutes = minutes / steps,
            WoodMegajoules = woodMegajoulesPerMinute,
            HeldLiters = HeldLiters,
            HeldBackLiters = HeldBackLiters,
            HoldsOwn = !Rig.HasFloat,
            TankEnds = tankEnds,
            WithoutSugar = withoutSugar,
        });
        return With(members, Told, Minute + (int)minutes);
    }

    /// <summary>
    /// With flames and coals as they are on the mean between two charges, so that it does not matter when in a charge one asks:
    /// the forecasts let the wood go in evenly.
    /// </summary>
    private RigEnsemble MidCharge => _midCharge ??= ReckonMidCharge();

    private RigEnsemble ReckonMidCharge()
    {
        var members = Members.ToRun();
        var interval = MinutesOfCharge;
        var since = Common.ChargedAt is { } at ? double.Min(Minute - at, interval) : interval / 2;
        for (var member = 0; member < members.Count; member++)
        {
            var coals = members[Field.CoalShare][member];
            members[Field.Flame][member] = FiringMegajoulesPerMinute * (1 - coals) * double.Exp(members[Field.FlameTime][member]);
            members[Field.Coals][member] = double.Max(
                members[Field.Coals][member] + (FiringMegajoulesPerMinute * coals * (since - (interval / 2))), 0);
        }

        return With(members, Told, Minute);
    }

    /// <summary>Nobody fires to the second: a charge goes in so many minutes later than its interval says, on the mean. No source, calibrated.</summary>
    private const double LateMinutes = 1.25;

    /// <summary>From one charge to the next, as they go in tonight, once several tell of it; before, a little more than the rig file says.</summary>
    private double MinutesOfCharge => IsPaced
        ? double.Clamp(Common.PaceMinutes, Rig.Interval.TotalMinutes / 1.5, Rig.Interval.TotalMinutes * 2)
        : Rig.Interval.TotalMinutes + (Rig.IsBurner ? 0 : LateMinutes);

    private bool IsPaced => Common.ChargesPaced >= PacedFrom && !Rig.IsBurner;

    /// <summary>
    /// The fire as it is really fed tonight, once several charges tell of it; before, as the rig file says. What was told can be wrong, so
    /// that it is never taken to be more than half as much again, nor less than half.
    /// </summary>
    private double FiringMegajoulesPerMinute
    {
        get
        {
            var usual = Rig.HeatOfCharge.Megajoules / (Rig.Interval.TotalMinutes + (Rig.IsBurner ? 0 : LateMinutes));
            return IsPaced ? double.Clamp(Common.PaceMegajoules, usual / 2, usual * 1.5) : usual;
        }
    }

    private const int PacedFrom = 4;

    /// <summary>The minute at which the fire got heat last: of a burner that is on, now.</summary>
    private int? FedAt => Common.IsBurning ? Minute : Common.ChargedAt;

    /// <summary>
    /// How far a fire has died down that got no wood when it should have: 0 while it is fired, 1 an hour later, with a blower in
    /// a third of the time.
    /// </summary>
    internal double Dying => FedAt is { } at
        ? double.Clamp((Minute - at - (Rig.IsBurner ? 0 : Rig.Interval.TotalMinutes)) / (Rig.ForcedDraft || Rig.IsBurner ? 20 : 60), 0, 1)
        : 0;

    /// <summary>Minutes until brick and stack are hot: no source, calibrated.</summary>
    private const int Hot = 32;

    private const int HotWithBlower = 20;

    /// <summary>How far fire and pan have come, by what was told.</summary>
    internal FireStage Stage
    {
        get
        {
            var isDying = FedAt is { } charged && Minute - charged > (Rig.IsBurner ? 0 : 2 * Rig.Interval.TotalMinutes);
            var isHot = Common.LitAt is { } lit && Minute - lit >= (Rig.ForcedDraft ? HotWithBlower : Hot);
            return (isDying, isHot, Summary.IsBoiling) switch
            {
                (true, _, true) => FireStage.Dying,
                (true, _, false) => FireStage.Still,
                (false, true, _) => FireStage.Fired,
                (false, false, true) => FireStage.Warming,
                (false, false, false) => FireStage.Kindling,
            };
        }
    }

    /// <summary>
    /// What a forecast is set right by now. A young fire's bands are told narrower than the members say, since rigs of one size differ by
    /// less than the members do at first; the members of a rig that was learned differ less already.
    /// </summary>
    internal Correction SetRight(Func<FireStage, bool, Correction> of)
    {
        if (Rig.IsBurner)
        {
            // What wood fires were off by says nothing of a burner.
            return Correction.None;
        }

        var correction = of(Stage, Rig.ForcedDraft);
        return Common.IsLearned && Stage is (FireStage.Kindling or FireStage.Warming) ? correction.NoNarrower : correction;
    }

    private RankedValues ReckonRates(bool firing)
    {
        var minutes = double.Max(Rig.Interval.TotalMinutes, 2);
        var from = firing ? MidCharge : this;
        var members = from.Ran(minutes, firing ? FiringMegajoulesPerMinute : 0, tankEnds: false, withoutSugar: true).Members;
        var rates = new double[Count];
        var perHour = 60 / minutes * (firing ? LeftOut.PartOfRate(Rig.ForcedDraft) : 1);
        for (var member = 0; member < Count; member++)
        {
            rates[member] = (members[Field.Evaporated][member] - Members[Field.Evaporated][member]) * perHour;
        }

        return new(rates);
    }
}
