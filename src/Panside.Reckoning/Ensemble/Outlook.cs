using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>What happens from now on with no more wood, for each member: the next four hours.</summary>
public sealed class Outlook
{
    /// <summary>Two minutes: half the span to which a still boil can be told.</summary>
    private const double StepMinutes = 2;

    private const int FourHours = 120;

    private readonly double[] _residual;
    private readonly double[] _reserve;
    private readonly double[] _still;
    private readonly double[] _least;
    private readonly double[] _left;
    private readonly double[] _spare;

    private Outlook(double[] residual, double[] reserve, double[] left, double[] spare, RunResult result)
    {
        (_residual, _reserve) = (Sorted.Of(residual), Sorted.Of(reserve));
        (_left, _spare) = (Sorted.Of(left), Sorted.Of(spare));
        (_still, _least) = (Sorted.Of(result.StillMinutes), Sorted.Of(result.LeastLiters));
    }

    /// <summary>All water that leaves the open pan, in liters, at a quantile.</summary>
    public double ResidualLiters(double quantile) => Sorted.At(_residual, quantile);

    /// <summary>Sap wanted in the tank to stay above the least depth, in liters, at a quantile.</summary>
    public double ReserveLiters(double quantile) => Sorted.At(_reserve, quantile);

    /// <summary>Sap that stays in the tank, in liters, at a quantile; below 0 is what the feed finds too little.</summary>
    public double LeftLiters(double quantile) => Sorted.At(_left, quantile);

    /// <summary>Sap in tank and pan over what keeps the pan at its least depth, in liters, at a quantile; below 0 it is short.</summary>
    public double SpareLiters(double quantile) => Sorted.At(_spare, quantile);

    /// <summary>Minutes until the boil goes still, at a quantile; 0 where it does not boil.</summary>
    public double StillMinutes(double quantile) => Sorted.At(_still, quantile);

    /// <summary>The least liquid that the pan comes to, in liters, at a quantile; 0 is the member that fares worst.</summary>
    public double LeastPanLiters(double quantile) => Sorted.At(_least, quantile);

    /// <summary>Runs an ensemble forward.</summary>
    /// <param name="rig">The ensemble.</param>
    /// <param name="fed">Whether the float goes on feeding the pan, with as much as it takes.</param>
    internal static Outlook Of(RigEnsemble rig, bool fed)
    {
        var members = rig.Members.ToRun();
        var (before, fedBefore) = (rig.Members[Field.Evaporated], rig.Members[Field.Fed]);
        var result = Stepping.Go(members, rig.Constants, new()
        {
            Steps = FourHours,
            StepMinutes = StepMinutes,
            HeldLiters = fed && rig.Rig.HasFloat ? (rig.Rig.PanArea * rig.HeldDepth).Liters : 0,
            TankEnds = rig.IsTankKnown,
            WithoutSugar = true,
        });
        var leftOut = LeftOut.Widened([.. Enumerable.Repeat(1.0, members.Count)], LeftOut.OfResidual(rig.Dying, rig.Rig.ForcedDraft));
        LeftOut.Widened(result.StillMinutes, LeftOut.OfStill(rig.Dying, rig.Rig.ForcedDraft));
        var (residual, reserve) = (new double[members.Count], new double[members.Count]);
        var (left, spare) = (new double[members.Count], new double[members.Count]);
        var least = rig.Rig.LeastVolume.Liters;
        for (var member = 0; member < members.Count; member++)
        {
            residual[member] = (members[Field.Evaporated][member] - before[member]) * leftOut[member];
            reserve[member] = double.Max(residual[member] - (rig.Members[Field.Pan][member] - least), 0);
            left[member] = rig.Members[Field.Tank][member] - (members[Field.Fed][member] - fedBefore[member]);
            spare[member] = rig.Members[Field.Tank][member] + rig.Members[Field.Pan][member] - least - residual[member];
        }

        return new(residual, reserve, left, spare, result);
    }
}
