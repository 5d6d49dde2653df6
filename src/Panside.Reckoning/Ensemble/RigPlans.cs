using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>What would come of going on: for questions and plans. Nothing here changes the ensemble.</summary>
public static class RigPlans
{
    /// <summary>So long after the last charge a shutdown is followed.</summary>
    private const int FourHours = 240;

    /// <summary>A pan that has not boiled for so long after the last charge boils no more.</summary>
    private const int QuietMinutes = 30;

    /// <summary>Fired on for so long at the usual firing, drawn from whenever syrup stands at the draw-off.</summary>
    /// <param name="rigs">The ensemble.</param>
    /// <param name="minutes">Whole minutes.</param>
    /// <param name="draw">One draw.</param>
    public static FiredOn FiredFor(this RigEnsemble rigs, int minutes, Volume draw)
    {
        var (firing, fired) = (rigs.FiringWith(draw), rigs.AllFired());
        for (var minute = 0; minute < minutes; minute++)
        {
            firing.Minute(fired);
        }

        var boiled = new double[rigs.Count];
        for (var member = 0; member < rigs.Count; member++)
        {
            boiled[member] = firing.Members[Field.Evaporated][member] - rigs.Members[Field.Evaporated][member];
        }

        return new(rigs.With(firing.Members, rigs.Told, rigs.Minute + minutes), new(firing.Draws), new(boiled), new(firing.Members[Field.Tank]));
    }

    /// <summary>
    /// A whole boil: each member is fired until its tank has come down to the sap that the shutdown wants, gets a last charge,
    /// and is followed until it boils no more.
    /// </summary>
    /// <param name="rigs">The ensemble.</param>
    /// <param name="stop">Sap in the tank at the last charge.</param>
    /// <param name="draw">How much is drawn at once.</param>
    /// <param name="atMost">Minutes of firing after which nothing is looked for.</param>
    /// <returns>The boil; null where a member is not done by then.</returns>
    public static PlannedBoil? Planned(this RigEnsemble rigs, Volume stop, Volume draw, int atMost)
    {
        var (firing, fired) = (rigs.FiringWith(draw), rigs.AllFired());
        var (charge, noise) = (rigs.Rig.HeatOfCharge.Megajoules, Beginning.Noise(rigs.Count, rigs.Told));
        var (stopped, still) = (new double[rigs.Count], new double[rigs.Count]);
        var (burning, lastStop, lastBoil) = (rigs.Count, 0, 0);
        for (var minute = 0; burning > 0 || minute - lastStop < FourHours; minute++)
        {
            for (var member = 0; member < rigs.Count && burning > 0; member++)
            {
                if (fired[member] && firing.Members[Field.Tank][member] <= stop.Liters)
                {
                    // As when a session asks what the last charge leads to: it goes in when the flames of the one before are down.
                    if (!rigs.Rig.IsBurner)
                    {
                        firing.Members[Field.Flame][member] = 0;
                        firing.Charge(member, charge * double.Exp(rigs.Prior.Charge * noise[member]));
                    }

                    (fired[member], stopped[member], lastStop) = (false, minute, minute);
                    burning--;
                }
            }

            if (burning > 0 && minute >= atMost)
            {
                return null;
            }

            firing.Minute(fired);
            for (var member = 0; member < rigs.Count; member++)
            {
                if (firing.Members[Field.Steam][member] > 0)
                {
                    (still[member], lastBoil) = (minute + 1, minute);
                }
            }

            if (burning == 0 && minute - int.Max(lastBoil, lastStop) >= QuietMinutes)
            {
                break;
            }
        }

        return rigs.Outcome(firing, stopped, still);
    }

    private static PlannedBoil Outcome(this RigEnsemble rigs, Firing firing, double[] stopped, double[] still)
    {
        var (wood, pan, sugar) = (new double[rigs.Count], new double[rigs.Count], new double[rigs.Count]);
        for (var member = 0; member < rigs.Count; member++)
        {
            still[member] = double.Max(still[member], stopped[member]);
            wood[member] = rigs.Rig.IsBurner ? 0 : rigs.Rig.UsualCharge.Kilograms * ((stopped[member] / rigs.Fire.MinutesOfCharge) + 1);
            pan[member] = firing.Members.SugarOf(member);
            sugar[member] = pan[member] + firing.DrawnKilograms[member];
        }

        return new(new(stopped), new(still), new(wood), new(sugar), new(firing.DrawnKilograms), new(pan));
    }

    private static bool[] AllFired(this RigEnsemble rigs)
    {
        var all = new bool[rigs.Count];
        Array.Fill(all, true);
        return all;
    }

    private static Firing FiringWith(this RigEnsemble rigs, Volume draw) => new(
        rigs.Members.ToRun(),
        rigs.Constants,
        rigs.Fire.MegajoulesPerMinute,
        new() { Steps = 1, StepMinutes = 1, HeldLiters = rigs.HeldLiters, HeldBackLiters = rigs.HeldBackLiters, TankEnds = rigs.IsTankKnown, DrawFraction = rigs.Rig.Target.MassFraction },
        draw.Liters);
}
