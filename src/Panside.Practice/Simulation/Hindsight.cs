using Panside.Practice.Physics;
using Panside.Reckoning.Quantities;

namespace Panside.Practice.Simulation;

/// <summary>What comes when nobody stands by any more and no sap is fed: the rig run on until the fire is out and the pan cools.</summary>
/// <param name="LeastDepth">The shallowest.</param>
/// <param name="MostSugar">The sweetest cell.</param>
/// <param name="IsScorched">Whether the pan burns.</param>
internal readonly record struct Hindsight(Length LeastDepth, SugarContent MostSugar, bool IsScorched)
{
    /// <summary>The shallowest of the pan behind, over its flues; null where there is none.</summary>
    public Length? LeastBackDepth { get; init; }

    private const int HoursAtMost = 12;
    private const double CoolCelsius = 60;

    /// <summary>Sap is past syrup so far over the target.</summary>
    private const double PastSyrupBrix = 5;

    /// <summary>Whether nothing fell below the least depth or passed syrup.</summary>
    public bool IsKept(Makeup makeup) =>
        !IsScorched && LeastDepth >= makeup.Rig.LeastDepth && !(LeastBackDepth < makeup.Rig.Back?.LeastDepth) && MostSugar.Brix <= makeup.Rig.Target.Brix + PastSyrupBrix;

    /// <summary>Runs a rig on without feed.</summary>
    public static Hindsight RunOut(Makeup makeup, Truth truth)
    {
        var run = truth with { ValveOpen = false, DrawOpen = false };
        var (least, leastBack, most) = (double.MaxValue, double.MaxValue, 0.0);
        for (var second = 0; second < HoursAtMost * 3600; second++)
        {
            if (second % 60 == 0)
            {
                least = double.Min(least, Pan.Depths(makeup, run).Min());
                leastBack = makeup.BackCells > 0 ? double.Min(leastBack, Pan.BackDepths(makeup, run).Min()) : leastBack;
                most = double.Max(most, run.Pan.Max(cell => cell.Fraction));
                if (makeup.World.Fuel(run) < 0.05 && Pan.MeanCelsius(makeup, run) < CoolCelsius)
                {
                    break;
                }
            }

            run = PracticeRig.Stepped(makeup, run);
        }

        return new(Length.FromMeters(least), SugarContent.FromMassFraction(most), run.Scorch >= 1 && truth.Scorch < 1)
        {
            LeastBackDepth = makeup.BackCells > 0 ? Length.FromMeters(leastBack) : null,
        };
    }

    /// <summary>
    /// The second from which the rig could truly have been left: the promise of leaving kept, the boil not up, no deep coals.
    /// Null where that never was. The longer one waits the safer it is, so that halving finds it.
    /// </summary>
    public static long? SafeFrom(Makeup makeup, IReadOnlyList<Truth> truths)
    {
        bool IsSafe(Truth truth) => Sights.Boil(makeup, truth) is "still" or "simmering"
            && Sights.Coals(makeup, truth) != "deep" && RunOut(makeup, truth).IsKept(makeup);
        if (truths.Count == 0 || !IsSafe(truths[^1]))
        {
            return null;
        }

        var (unsafeAt, safeAt) = (-1, truths.Count - 1);
        while (safeAt - unsafeAt > 1)
        {
            var middle = (safeAt + unsafeAt) / 2;
            (unsafeAt, safeAt) = IsSafe(truths[middle]) ? (unsafeAt, middle) : (middle, safeAt);
        }

        return truths[safeAt].Second;
    }
}
