using Panside.Practice.Physics;

namespace Panside.Practice;

/// <summary>What truly comes: the simulated rig run ahead from a moment, beside the boil that goes on.</summary>
public static class RunAhead
{
    private const int FourHours = 4 * 3600;

    /// <summary>Steam below this, in kg/s for a square meter, is a still boil; the same bound as for the eye.</summary>
    private const double Still = 0.0003;

    /// <summary>With no more wood: liters that leave in four hours, and minutes until the boil goes still.</summary>
    public static (double Liters, double StillMinutes) WithoutWood(PracticeRig rig)
    {
        // The forecast is of the open pan.
        var (makeup, truth) = (rig.Makeup, rig.Truth with { Covered = false });
        var (run, still) = (truth, 0);
        for (var second = 1; second <= FourHours; second++)
        {
            run = PracticeRig.Stepped(makeup, run);
            still = run.Boil / makeup.Area > Still ? second : still;
        }

        return (run.Ledger.Steam.Water - truth.Ledger.Steam.Water, still / 60.0);
    }

    /// <summary>At the usual firing: minutes until the draw-off comes to the target; null where it does not within a span.</summary>
    public static double? MinutesToDraw(PracticeRig rig, long secondsSinceWood, int minutesAtMost)
    {
        var makeup = rig.Makeup;
        var (run, since) = (WithSap(rig.Truth), secondsSinceWood);
        var interval = (long)makeup.Rig.Interval.TotalSeconds;
        for (var second = 0; second <= minutesAtMost * 60; second++)
        {
            if (run.Pan[^1].Fraction >= makeup.Rig.Target.MassFraction)
            {
                return second / 60.0;
            }

            if (since >= interval)
            {
                (run, since) = (Fire.Charged(makeup, run, makeup.Rig.Charge.Kilograms), 0);
            }

            run = PracticeRig.Stepped(makeup, run);
            since++;
        }

        return null;
    }

    /// <summary>Sap as it is in the tank, but without an end: the usual firing goes on only while there is sap.</summary>
    private static Truth WithSap(Truth truth) => truth with { Tank = truth.Tank * (1000 / double.Max(truth.Tank.Mass, 0.1)) };

    /// <summary>At the usual firing: liters an hour over one charge to come.</summary>
    public static double Rate(PracticeRig rig, long secondsSinceWood)
    {
        var (makeup, truth) = (rig.Makeup, rig.Truth);
        var (run, since) = (WithSap(truth), secondsSinceWood);
        var interval = (long)makeup.Rig.Interval.TotalSeconds;
        for (var second = 0L; second < interval; second++)
        {
            if (since >= interval)
            {
                (run, since) = (Fire.Charged(makeup, run, makeup.Rig.Charge.Kilograms), 0);
            }

            run = PracticeRig.Stepped(makeup, run);
            since++;
        }

        return (run.Ledger.Steam.Water - truth.Ledger.Steam.Water) / interval * 3600;
    }
}
