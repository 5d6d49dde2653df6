using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>
/// What is known of a rig: many possible rigs in possible states, moved on by the minute. What is done to a rig, read at it and seen of it
/// changes them (<see cref="RigDeeds"/>, <see cref="RigReadings"/>, <see cref="SugarReadings"/>, <see cref="RigSights"/>), each giving the
/// ensemble that comes of it. Immutable, and a pure function of what it was told. Exponentials come from the system: another platform may
/// differ in a last digit.
/// </summary>
public sealed class RigEnsemble
{
    /// <summary>Members of a session's ensemble: as many as a promise is checked on.</summary>
    public const int UsualCount = 1000;

    private RigState? _summary;
    private Later? _after;
    private ToldNoise? _noise;
    private RigForecasts? _forecasts;
    private ExpectedReadings? _expected;

    internal RigEnsemble(RigDescription rig, RigPrior prior, Temperature boiling, Members members, Common common)
    {
        (Rig, Prior, Boiling, Members, Common) = (rig, prior, boiling, members, common);
        Constants = RigConstants.Of(rig, boiling);
    }

    /// <summary>The rig as its file describes it.</summary>
    public RigDescription Rig { get; }

    /// <summary>How unlike such rigs are.</summary>
    public RigPrior Prior { get; }

    /// <summary>Where water boils today, as the thermometer here shows it.</summary>
    public Temperature Boiling { get; }

    /// <summary>Whole minutes since the start.</summary>
    public int Minute { get; internal init; }

    /// <summary>Whether the tank was read; until then no member knows its own.</summary>
    public bool IsTankKnown => Common.IsTankKnown;

    /// <summary>What the float is said to hold the pan at; beside it each member's float has its own.</summary>
    public Length HeldDepth => Common.HeldDepth;

    /// <summary>Whether the thermometer was read in boiling water, so that its own error cancels.</summary>
    public bool IsThermometerKnown => Common.IsThermometerKnown;

    /// <summary>Members.</summary>
    public int Count => Members.Count;

    /// <summary>The middle of the ensemble as one rig.</summary>
    public RigState Summary => _summary ??= Summarize();

    /// <summary>What is to come: kept with the ensemble, so that each is reckoned once.</summary>
    public RigForecasts Forecasts => _forecasts ??= new(this);

    /// <summary>What instruments would show now.</summary>
    public ExpectedReadings Expected => _expected ??= new(this);

    /// <summary>How many things were told so far: each draws random numbers of its own.</summary>
    internal int Told { get; init; }

    /// <summary>The numbers of the members.</summary>
    internal Members Members { get; }

    /// <summary>What the members share.</summary>
    internal RigConstants Constants { get; }

    /// <summary>What was told and holds for every member alike.</summary>
    internal Common Common { get; }

    /// <summary>The fire by what was told of it.</summary>
    internal FireTold Fire => new(this);

    /// <summary>The random numbers of what is told next.</summary>
    internal ToldNoise Noise => _noise ??= new(Count, Told);

    /// <summary>What its float is said to hold the pan where the draw-off is at, in liters.</summary>
    internal double HeldLiters => (Rig.PanArea * HeldDepth).Liters;

    /// <summary>What its float is said to hold the pan behind at, in liters; 0 where there is none.</summary>
    internal double HeldBackLiters => Rig.Back?.VolumeAt(Common.HeldBackDepth).Liters ?? 0;

    /// <summary>The rig cold, with the pan at its run depth and raw sap of about 2 Brix in it.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="boiling">Where water boils there.</param>
    /// <param name="prior">How unlike such rigs are.</param>
    /// <param name="count">Members; a multiple of 8.</param>
    /// <exception cref="ArgumentOutOfRangeException">No multiple of 8.</exception>
    public static RigEnsemble Cold(RigDescription rig, Temperature boiling, RigPrior prior, int count = UsualCount)
    {
        var members = Beginning.Of(rig, prior, count);
        return new(rig, prior, boiling, members, new() { HeldDepth = rig.RunDepth, HeldBackDepth = rig.Back?.RunDepth ?? default });
    }

    /// <summary>
    /// As it stands at a later minute since the start. The one asked for last is kept: a clock that looks whether anything is due, a
    /// screen and the line that is then heard ask for the same minute, and what one has reckoned of it the others need not.
    /// </summary>
    /// <param name="minute">The minute; an earlier one changes nothing.</param>
    /// <param name="atMost">Longer than this nothing is run: by then a rig is cold.</param>
    public RigEnsemble After(int minute, int atMost)
    {
        if (minute <= Minute)
        {
            return this;
        }

        if (_after is not { } kept || kept.Minute != minute || kept.AtMost != atMost)
        {
            var ran = After(int.Min(minute - Minute, atMost));
            _after = kept = new(minute, atMost, minute > ran.Minute ? ran.With(ran.Members, Told, minute) : ran);
        }

        return kept.Rigs;
    }

    /// <summary>The ensemble at a later minute.</summary>
    private sealed record Later(int Minute, int AtMost, RigEnsemble Rigs);

    /// <summary>Minutes on.</summary>
    public RigEnsemble After(int minutes)
    {
        if (minutes <= 0)
        {
            return this;
        }

        var members = Members.ToRun();
        for (var minute = Minute + 1; minute <= Minute + minutes; minute++)
        {
            Beginning.Drift(members, Prior, Rig, minute);
            Stepping.Go(members, Constants, new()
            {
                Steps = 1,
                StepMinutes = 1,
                WoodMegajoules = Common.IsBurning ? Fire.MegajoulesPerMinute : 0,
                HeldLiters = Rig.HasFloat ? HeldLiters : 0,
                HeldBackLiters = HeldBackLiters,
                TankEnds = IsTankKnown,
            });
        }

        return With(members, Told, Minute + minutes);
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

    /// <summary>One thing more was told.</summary>
    /// <param name="change">What it does to the members, with a normal number for each of them.</param>
    /// <param name="common">What holds for all from now on; null where that stays.</param>
    internal RigEnsemble Changed(Action<Members, double[]> change, Common? common = null) => Changed(members => change(members, Noise.Noise), common);

    /// <summary>The same, where no chance has a part in it.</summary>
    internal RigEnsemble Changed(Action<Members> change, Common? common = null)
    {
        var members = Members.Copy();
        change(members);
        return With(members, Told + 1, Minute, common);
    }

    /// <summary>The same rig with other members.</summary>
    internal RigEnsemble With(Members members, int told, int minute, Common? common = null) =>
        new(Rig, Prior, Boiling, members, common ?? Common)
        {
            Minute = minute,
            Told = told,
            _noise = told == Told ? Noise : told == Told + 1 ? Noise.Next : null,
        };

    private RigState Summarize()
    {
        double Mean(int field) => Members[field].Average();
        double Sugar(Stretch pan)
        {
            var sugar = 0.0;
            for (var cell = pan.First; cell < pan.First + pan.Count; cell++)
            {
                sugar += Mean(Field.Sugar + cell);
            }

            return sugar;
        }

        var (inFront, sugarInFront) = (Mean(Members.DrawPan), Sugar(Members.Front));

        return new()
        {
            Pan = Volume.FromLiters(Mean(Field.Pan)),
            PanSugar = Mass.FromKilograms(Rig.Back is null ? sugarInFront : Sugar(Members.Back) + sugarInFront),
            DrawPan = Volume.FromLiters(inFront),
            DrawPanSugar = Mass.FromKilograms(sugarInFront),
            BackPan = Rig.Back is null ? null : Volume.FromLiters(Mean(Field.Pan) - inFront),
            Tank = IsTankKnown ? Volume.FromLiters(Mean(Field.Tank)) : null,
            Sap = SugarContent.FromMassFraction(Mean(Field.Sap)),
            Boiling = Boiling,
            Evaporated = Volume.FromLiters(Mean(Field.Evaporated)),
            Fed = Volume.FromLiters(Mean(Field.Fed)),
            Rate = VolumeRate.FromLitersPerHour(60 * Mean(Field.Rate)),
            IsBoiling = Members[Field.Steam].Count(liters => liters > 0) * 2 > Members.Count,
        };
    }
}
