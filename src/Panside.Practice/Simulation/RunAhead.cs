using Panside.Guide.Rigs;
using Panside.Practice.Physics;

namespace Panside.Practice.Simulation;

/// <summary>What truly comes: the simulated rig run ahead from a moment, beside the boil that goes on.</summary>
public static class RunAhead
{
    private const int FourHours = 4 * 3600;

    /// <summary>Steam below this, in kg/s for a square meter, is a still boil; the same bound as for the eye.</summary>
    private const double Still = 0.0003;

    /// <summary>With no more wood: liters that leave in four hours, and minutes until the boil goes still.</summary>
    public static (double Liters, double StillMinutes) WithoutWood(PracticeRig rig) => WithoutWood(rig.Makeup, rig.Truth);

    /// <summary>The same from this moment on, reckoned only once it is asked for; the rig may go on meanwhile.</summary>
    public static Lazy<(double Liters, double StillMinutes)> WithoutWoodFromNow(PracticeRig rig)
    {
        var (makeup, truth) = (rig.Makeup, rig.Truth);
        return new(() => WithoutWood(makeup, truth));
    }

    /// <summary>At the usual firing: minutes until the draw-off comes to the target; null where it does not within a span.</summary>
    /// <param name="rig">The rig now.</param>
    /// <param name="secondsSinceWood">Since the last charge.</param>
    /// <param name="secondsOfCharge">From charge to charge, as they go in.</param>
    /// <param name="minutesAtMost">The span.</param>
    public static double? MinutesToDraw(PracticeRig rig, long secondsSinceWood, long secondsOfCharge, int minutesAtMost)
    {
        var target = rig.Makeup.Rig.Target.MassFraction;
        var second = 0;
        foreach (var truth in Fired(rig, secondsSinceWood, secondsOfCharge).Take((minutesAtMost * 60) + 1))
        {
            if (truth.Pan[^1].Fraction >= target)
            {
                return second / 60.0;
            }

            second++;
        }

        return null;
    }

    /// <summary>At the usual firing: liters an hour over the ten minutes to come.</summary>
    /// <param name="rig">The rig now.</param>
    /// <param name="secondsSinceWood">Since the last charge.</param>
    /// <param name="secondsOfCharge">From charge to charge, as they go in.</param>
    public static double Rate(PracticeRig rig, long secondsSinceWood, long secondsOfCharge)
    {
        const int TenMinutes = 600;
        var after = Fired(rig, secondsSinceWood, secondsOfCharge).ElementAt(TenMinutes);
        return (after.Ledger.Steam.Water - rig.Truth.Ledger.Steam.Water) / TenMinutes * 3600;
    }

    /// <summary>
    /// The rig second by second, from now on, with its usual charge, as heavy as tonight's hand puts it in and as often as charges go in, and sap
    /// without an end.
    /// </summary>
    private static IEnumerable<Truth> Fired(PracticeRig rig, long secondsSinceWood, long secondsOfCharge)
    {
        // The draw-off shut: how long a draw that is open goes on nobody has told yet.
        var (makeup, tank) = (rig.Makeup, rig.Truth.Tank);
        var truth = rig.Truth with { Tank = tank * (1000 / double.Max(tank.Mass, 0.1)), DrawOpen = false };
        for (var since = secondsSinceWood; ; since++)
        {
            yield return truth;
            if (since >= secondsOfCharge && !makeup.Rig.IsBurner)
            {
                (truth, since) = (makeup.World.Charged(makeup, truth, makeup.Rig.Charge.Kilograms * rig.Temper.Charges), 0);
            }

            truth = Kept(makeup, PracticeRig.Stepped(makeup, truth));
        }
    }

    /// <summary>Who feeds a pan by hand pours a portion whenever it has fallen by one.</summary>
    private static Truth Kept(Makeup makeup, Truth truth)
    {
        var rig = makeup.Rig;
        return rig.Feed == Feed.ByHand && Pan.Depths(makeup, truth).Average() <= (rig.RunDepth - (rig.Portion / rig.PanArea * 0.5)).Meters
            ? makeup.World.Portioned(makeup, truth, rig.Portion.Liters).Then
            : rig.Feed == Feed.ByValve && truth.Second % 60 == 0 ? truth with { ValveLets = truth.Boil } : truth;
    }

    private static (double Liters, double StillMinutes) WithoutWood(Makeup makeup, Truth truth)
    {
        // The forecast is of the open pan with the draw-off shut: a draw that goes on for hours would empty the pan.
        var (run, still) = (truth with { Covered = false, DrawOpen = false, BurnerOn = false }, 0);
        for (var second = 1; second <= FourHours; second++)
        {
            run = Kept(makeup, PracticeRig.Stepped(makeup, run));
            still = run.Boil / makeup.Area > Still ? second : still;
        }

        return (run.Ledger.Steam.Water - truth.Ledger.Steam.Water, still / 60.0);
    }
}
