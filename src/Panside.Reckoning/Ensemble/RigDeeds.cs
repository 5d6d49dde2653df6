using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>What is done to fire, pan and tank: each gives the ensemble that comes of it.</summary>
public static class RigDeeds
{
    /// <summary>The burner is lit, and stays on until it is shut off.</summary>
    public static RigEnsemble Lit(this RigEnsemble rigs) => rigs.With(rigs.Members, rigs.Told + 1, rigs.Minute, rigs.Common with { IsBurning = true, LitAt = rigs.Common.LitAt ?? rigs.Minute });

    /// <summary>The burner is shut off.</summary>
    public static RigEnsemble ShutOff(this RigEnsemble rigs) => rigs.With(rigs.Members, rigs.Told + 1, rigs.Minute, rigs.Common with { IsBurning = false, ChargedAt = rigs.Minute });

    /// <summary>A charge of wood goes in; it is what was said of it, give or take. Coals that were raked level lie heaped again.</summary>
    public static RigEnsemble Charged(this RigEnsemble rigs, Mass wood) => rigs.Charged(wood, areFlamesDown: false);

    /// <summary>The same.</summary>
    /// <param name="rigs">The ensemble.</param>
    /// <param name="wood">The charge.</param>
    /// <param name="areFlamesDown">Whether the flames of the charge before are taken as burned down by then.</param>
    internal static RigEnsemble Charged(this RigEnsemble rigs, Mass wood, bool areFlamesDown)
    {
        var members = rigs.Common.AreCoalsLevel ? rigs.Members.Copy() : rigs.Members.ToRun();
        var (heat, noise) = (rigs.Rig.HeatOf(wood).Megajoules, rigs.Noise.Noise);
        for (var member = 0; member < members.Count; member++)
        {
            var own = heat * double.Exp(rigs.Prior.Charge * noise[member]);
            var coals = members[Field.CoalShare][member];
            members[Field.Flame][member] = (areFlamesDown ? 0 : members[Field.Flame][member]) + (own * (1 - coals));
            members[Field.Coals][member] += own * coals;
            if (rigs.Common.AreCoalsLevel)
            {
                members[Field.CoalTime][member] += LevelCoals;
            }
        }

        var paced = rigs.Common.ChargedAt is { } last ? rigs.Common.Paced(heat, rigs.Minute - last, 3 * rigs.Rig.Interval.TotalMinutes) : rigs.Common;
        return rigs.With(members, rigs.Told + 1, rigs.Minute, paced with { ChargedAt = rigs.Minute, LitAt = rigs.Common.LitAt ?? rigs.Minute, AreCoalsLevel = false });
    }

    /// <summary>How much faster coals burn that were raked level, as a logarithm: air comes through all of the bed. No source, calibrated.</summary>
    private const double LevelCoals = 0.15;

    /// <summary>Coals were raked level; a second time changes nothing.</summary>
    public static RigEnsemble CoalsSpread(this RigEnsemble rigs) => rigs.Common.AreCoalsLevel ? rigs : rigs.Changed(
        (members, noise) =>
        {
            for (var member = 0; member < members.Count; member++)
            {
                members[Field.CoalTime][member] -= LevelCoals + (0.05 * noise[member]);
            }
        },
        rigs.Common with { AreCoalsLevel = true });

    /// <summary>Syrup is drawn from the last cell, and the pan levels out behind it.</summary>
    public static RigEnsemble Drawn(this RigEnsemble rigs, Volume syrup) => rigs.Changed((members, noise) =>
    {
        for (var member = 0; member < members.Count; member++)
        {
            PanDeeds.Draw(members, member, syrup.Liters * double.Exp(0.05 * noise[member]));
        }
    });

    /// <summary>Sap goes into the tank.</summary>
    public static RigEnsemble Refilled(this RigEnsemble rigs, Volume sap) => rigs.Changed((members, noise) =>
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
    /// <param name="rigs">The ensemble.</param>
    /// <param name="liquid">How much was said.</param>
    /// <param name="isWater">Whether it is clean water, which brings no sugar.</param>
    /// <param name="intoFront">Whether it went into the pan with the draw-off, of two; else into the one that the tank feeds.</param>
    public static RigEnsemble Poured(this RigEnsemble rigs, Volume liquid, bool isWater, bool intoFront = false) => rigs.Changed(
        (members, noise) =>
        {
            for (var member = 0; member < members.Count; member++)
            {
                var fraction = isWater ? 0 : members[Field.Sap][member];
                PanDeeds.PourAtFeed(members, member, liquid.Liters * double.Exp(ByHand * noise[member]), fraction, rigs.Constants.SapCelsius, intoFront ? members.Front : null);
            }
        },
        liquid.Liters > ReadingErrors.PouredLiters ? rigs.Common with { ChilledAt = rigs.Minute } : rigs.Common);

    /// <summary>What clings to a pan that was poured out, as a depth over its floor, in meters. No source.</summary>
    private const double Clings = 0.001;

    /// <summary>The pan with the draw-off is poured out whole: its sugar goes with it, and a film stays.</summary>
    public static RigEnsemble Emptied(this RigEnsemble rigs) => rigs.Changed((members, noise) =>
    {
        var film = (rigs.Rig.PanArea * Length.FromMeters(Clings)).Liters;
        for (var member = 0; member < members.Count; member++)
        {
            var held = members.Liters(members.Front, member);
            var left = double.Min(film, held);
            PanDeeds.ScaleSugar(members, member, members.Front, left / held);
            members.SetLiters(members.Front, member, left);
        }
    });

    /// <summary>Sap that was poured into the pan came out of the tank after all.</summary>
    public static RigEnsemble Dipped(this RigEnsemble rigs, Volume sap) => rigs.Changed((members, noise) =>
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
    public static RigEnsemble Flooded(this RigEnsemble rigs) => rigs.Changed(
        (members, noise) =>
        {
            var flood = (rigs.Rig.PanArea * rigs.Rig.FloodDepth).Liters;
            var floodBack = rigs.Rig.Back?.VolumeAt(rigs.Rig.Back.FloodDepth).Liters ?? 0;
            var hand = Beginning.Noise(members.Count, rigs.Told, purpose: 1);
            for (var member = 0; member < members.Count; member++)
            {
                var wantedInFront = double.Max((flood * (1 + (0.02 * noise[member]))) - members[members.DrawPan][member], 0);
                var wanted = wantedInFront + double.Max(floodBack - members.Liters(members.Back, member), 0);
                var lacking = double.Max(wanted - members[Field.Tank][member], 0);
                var poured = wanted - (lacking * double.Clamp(0.5 + (0.5 * hand[member]), 0, 1));
                // Through the float it comes in at the feed side and pushes what stands there on; by hand it goes in all over the pan.
                var fromTank = double.Min(poured * double.Clamp(0.75 + (0.35 * hand[member]), 0, 1), members[Field.Tank][member]);
                PanDeeds.PourAtFeed(members, member, fromTank, members[Field.Sap][member], rigs.Constants.SapCelsius);
                if (rigs.Rig.Back is null)
                {
                    PanDeeds.Pour(members, member, members.Front, poured - fromTank, rigs.Constants.SapCelsius);
                }
                else
                {
                    FloodBoth(members, member, rigs.Constants, poured - fromTank, wantedInFront, wanted);
                }

                members[Field.Tank][member] -= fromTank;
                members[Field.Fed][member] += poured;
            }
        },
        rigs.Common with
        {
            HeldDepth = rigs.Rig.FloodDepth,
            HeldBackDepth = rigs.Rig.Back?.FloodDepth ?? default,
            ChilledAt = rigs.Minute,
            IsFloodUnread = true,
            IsBackFloodUnread = rigs.Rig.Back is not null,
        });

    /// <summary>By hand each of two pans gets its part of what both want; then the second float lets on what the pan in front still lacks.</summary>
    private static void FloodBoth(Members members, int member, in RigConstants constants, double byHand, double wantedInFront, double wanted)
    {
        var inFront = wanted > 0 ? byHand * wantedInFront / wanted : 0;
        PanDeeds.Pour(members, member, members.Front, inFront, constants.SapCelsius);
        PanDeeds.Pour(members, member, members.Back, byHand - inFront, constants.SapCelsius);
        PanDeeds.PassOn(members, member, wantedInFront - inFront, constants.FlueLiters);
    }
}
