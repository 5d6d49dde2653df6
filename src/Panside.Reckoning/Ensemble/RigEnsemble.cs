using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>
/// What is known of a rig: many possible rigs in possible states, moved on by the minute, corrected by each reading and
/// observation, run forward for each forecast. Immutable, and a pure function of what it was told. Exponentials come from the
/// system: another platform may differ in a last digit.
/// </summary>
public sealed partial class RigEnsemble
{
    /// <summary>Members of a session's ensemble: as many as a promise is checked on.</summary>
    public const int UsualCount = 1000;

    private RigState? _summary;
    private Later? _after;
    private ToldNoise? _noise;

    private RigEnsemble(RigDescription rig, RigPrior prior, Temperature boiling, Members members, Common common)
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
    public int Minute { get; private init; }

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

    /// <summary>How many things were told so far: each draws random numbers of its own.</summary>
    internal int Told { get; private init; }

    /// <summary>The numbers of the members.</summary>
    internal Members Members { get; }

    /// <summary>What the members share.</summary>
    internal RigConstants Constants { get; }

    private Common Common { get; }

    private ToldNoise Noise => _noise ??= new(Count, Told);

    private double HeldLiters => (Rig.PanArea * HeldDepth).Liters;

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
                WoodMegajoules = Common.IsBurning ? FiringMegajoulesPerMinute : 0,
                HeldLiters = Rig.HasFloat ? HeldLiters : 0,
                HeldBackLiters = HeldBackLiters,
                TankEnds = IsTankKnown,
            });
        }

        return With(members, Told, Minute + minutes);
    }

    /// <summary>What a burner gives in some time that boils away so much in an hour.</summary>
    public static Energy HeatOfBurner(VolumeRate boils, TimeSpan time) =>
        Energy.FromMegajoules(boils.LitersPerHour * time.TotalHours * FireConstants.BurnerMegajoulesPerLiter);

    /// <summary>The burner is lit, and stays on until it is shut off.</summary>
    public RigEnsemble Lit() => With(Members, Told + 1, Minute, Common with { IsBurning = true, LitAt = Common.LitAt ?? Minute });

    /// <summary>The burner is shut off.</summary>
    public RigEnsemble ShutOff() => With(Members, Told + 1, Minute, Common with { IsBurning = false, ChargedAt = Minute });

    /// <summary>A charge of wood goes in; it is what was said of it, give or take. Coals that were raked level lie heaped again.</summary>
    public RigEnsemble Charged(Mass wood) => Charged(wood, areFlamesDown: false);

    private RigEnsemble Charged(Mass wood, bool areFlamesDown)
    {
        var members = Common.AreCoalsLevel ? Members.Copy() : Members.ToRun();
        var (heat, noise) = (Rig.HeatOf(wood).Megajoules, Noise.Noise);
        for (var member = 0; member < members.Count; member++)
        {
            var own = heat * double.Exp(Prior.Charge * noise[member]);
            var coals = members[Field.CoalShare][member];
            members[Field.Flame][member] = (areFlamesDown ? 0 : members[Field.Flame][member]) + (own * (1 - coals));
            members[Field.Coals][member] += own * coals;
            if (Common.AreCoalsLevel)
            {
                members[Field.CoalTime][member] += LevelCoals;
            }
        }

        var paced = Common.ChargedAt is { } last ? Common.Paced(heat, Minute - last, 3 * Rig.Interval.TotalMinutes) : Common;
        return With(members, Told + 1, Minute, paced with { ChargedAt = Minute, LitAt = Common.LitAt ?? Minute, AreCoalsLevel = false });
    }

    /// <summary>How much faster coals burn that were raked level, as a logarithm: air comes through all of the bed. No source, calibrated.</summary>
    private const double LevelCoals = 0.15;

    /// <summary>Coals were raked level; a second time changes nothing.</summary>
    public RigEnsemble CoalsSpread() => Common.AreCoalsLevel ? this : Changed(
        (members, noise) =>
        {
            for (var member = 0; member < members.Count; member++)
            {
                members[Field.CoalTime][member] -= LevelCoals + (0.05 * noise[member]);
            }
        },
        Common with { AreCoalsLevel = true });

    /// <summary>Syrup is drawn from the last cell, and the pan levels out behind it.</summary>
    public RigEnsemble Drawn(Volume syrup) => Changed((members, noise) =>
    {
        for (var member = 0; member < members.Count; member++)
        {
            PanDeeds.Draw(members, member, syrup.Liters * double.Exp(0.05 * noise[member]));
        }
    });

    /// <summary>Sap goes into the tank.</summary>
    public RigEnsemble Refilled(Volume sap) => Changed((members, noise) =>
    {
        for (var member = 0; member < members.Count; member++)
        {
            members[Field.Tank][member] += sap.Liters * double.Exp(0.03 * noise[member]);
        }
    });

    /// <summary>A pail's marks, and what is spilled: pouring by hand is off by so much, as a logarithm. No source.</summary>
    private const double ByHand = 0.05;

    /// <summary>
    /// Liquid from a pail is poured into the pan by hand, at the feed side, as cold as the sap. It comes beside the tank, which does
    /// not fall for it.
    /// </summary>
    /// <param name="liquid">How much was said.</param>
    /// <param name="isWater">Whether it is clean water, which brings no sugar.</param>
    /// <param name="intoFront">Whether it went into the pan with the draw-off, of two; else into the one that the tank feeds.</param>
    public RigEnsemble Poured(Volume liquid, bool isWater, bool intoFront = false) => Changed(
        (members, noise) =>
        {
            for (var member = 0; member < members.Count; member++)
            {
                var fraction = isWater ? 0 : members[Field.Sap][member];
                PanDeeds.PourAtFeed(members, member, liquid.Liters * double.Exp(ByHand * noise[member]), fraction, Constants.SapCelsius, intoFront ? members.Front : null);
            }
        },
        liquid.Liters > PouredLiters ? Common with { ChilledAt = Minute } : Common);

    /// <summary>What clings to a pan that was poured out, as a depth over its floor, in meters. No source.</summary>
    private const double Clings = 0.001;

    /// <summary>The pan with the draw-off is poured out whole: its sugar goes with it, and a film stays.</summary>
    public RigEnsemble Emptied() => Changed((members, noise) =>
    {
        var film = (Rig.PanArea * Length.FromMeters(Clings)).Liters;
        for (var member = 0; member < members.Count; member++)
        {
            var held = members.Liters(members.Front, member);
            var left = double.Min(film, held);
            PanDeeds.ScaleSugar(members, member, members.Front, left / held);
            members.SetLiters(members.Front, member, left);
        }
    });

    /// <summary>Sap that was poured into the pan came out of the tank after all.</summary>
    public RigEnsemble Dipped(Volume sap) => Changed((members, noise) =>
    {
        for (var member = 0; member < members.Count; member++)
        {
            members[Field.Tank][member] = double.Max(members[Field.Tank][member] - (sap.Liters * double.Exp(ByHand * noise[member])), 0);
        }
    });

    /// <summary>
    /// The pan is flooded to its flood depth and held there: mostly from the tank, but who floods may pour water in as well. Where the
    /// tank has too little for it, nobody knows how much of what lacks was made up by hand.
    /// </summary>
    public RigEnsemble Flooded() => Changed(
        (members, noise) =>
        {
            var flood = (Rig.PanArea * Rig.FloodDepth).Liters;
            var floodBack = Rig.Back?.VolumeAt(Rig.Back.FloodDepth).Liters ?? 0;
            var hand = Beginning.Noise(members.Count, Told, purpose: 1);
            for (var member = 0; member < members.Count; member++)
            {
                var wantedInFront = double.Max((flood * (1 + (0.02 * noise[member]))) - members[members.DrawPan][member], 0);
                var wanted = wantedInFront + double.Max(floodBack - members.Liters(members.Back, member), 0);
                var lacking = double.Max(wanted - members[Field.Tank][member], 0);
                var poured = wanted - (lacking * double.Clamp(0.5 + (0.5 * hand[member]), 0, 1));
                // Through the float it comes in at the feed side and pushes what stands there on; by hand it goes in all over the pan.
                var fromTank = double.Min(poured * double.Clamp(0.75 + (0.35 * hand[member]), 0, 1), members[Field.Tank][member]);
                PanDeeds.PourAtFeed(members, member, fromTank, members[Field.Sap][member], Constants.SapCelsius);
                if (Rig.Back is null)
                {
                    PanDeeds.Pour(members, member, members.Front, poured - fromTank, Constants.SapCelsius);
                }
                else
                {
                    FloodBoth(members, member, poured - fromTank, wantedInFront, wanted);
                }

                members[Field.Tank][member] -= fromTank;
                members[Field.Fed][member] += poured;
            }
        },
        Common with
        {
            HeldDepth = Rig.FloodDepth,
            HeldBackDepth = Rig.Back?.FloodDepth ?? default,
            ChilledAt = Minute,
            IsFloodUnread = true,
            IsBackFloodUnread = Rig.Back is not null,
        });

    /// <summary>By hand each of two pans gets its part of what both want; then the second float lets on what the pan in front still lacks.</summary>
    private void FloodBoth(Members members, int member, double byHand, double wantedInFront, double wanted)
    {
        var inFront = wanted > 0 ? byHand * wantedInFront / wanted : 0;
        PanDeeds.Pour(members, member, members.Front, inFront, Constants.SapCelsius);
        PanDeeds.Pour(members, member, members.Back, byHand - inFront, Constants.SapCelsius);
        PanDeeds.PassOn(members, member, wantedInFront - inFront, Constants.FlueLiters);
    }

    /// <summary>Where water boils today was read at the thermometer, or follows from the pressure.</summary>
    /// <param name="boiling">The temperature.</param>
    /// <param name="read">Whether it was read: then the thermometer's own error is in it, and cancels in each later reading.</param>
    public RigEnsemble BoilingAt(Temperature boiling, bool read)
    {
        var members = Members.Copy();
        if (read && !IsThermometerKnown)
        {
            for (var member = 0; member < members.Count; member++)
            {
                members[Field.ThermometerOff][member] *= Beginning.ReadThermometer / Beginning.UnreadThermometer;
            }
        }

        return new(Rig, Prior, boiling, members, Common with { IsThermometerKnown = IsThermometerKnown || read })
        {
            Minute = Minute,
            Told = Told + 1,
        };
    }

    private RigEnsemble Changed(Action<Members, double[]> change, Common? common = null) => Changed(members => change(members, Noise.Noise), common);

    private RigEnsemble Changed(Action<Members> change, Common? common = null)
    {
        var members = Members.Copy();
        change(members);
        return With(members, Told + 1, Minute, common);
    }

    private RigEnsemble With(Members members, int told, int minute, Common? common = null) =>
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
