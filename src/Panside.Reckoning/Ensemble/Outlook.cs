using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>What happens from now on with no more wood, for each member: the next four hours.</summary>
public sealed class Outlook
{
    /// <summary>Two minutes: half the span to which a still boil can be told.</summary>
    private const double StepMinutes = 2;

    private const int FourHours = 120;

    private readonly RankedValues _residual;
    private readonly RankedValues _reserve;
    private readonly RankedValues _still;
    private readonly RankedValues _least;
    private readonly RankedValues _left;
    private readonly RankedValues _spare;
    private readonly RankedValues _low;
    private readonly RankedValues? _leastBack;
    private readonly double _leastLiters;
    private readonly double _leastBackLiters;

    private readonly Lazy<RankedValues> _thickest;
    private readonly Lazy<RankedValues> _mixed;

    private Outlook(RankedValues residual, RankedValues still, double[] reserve, double[] left, double[] spare, RunResult run, RigEnsemble rig, double[] on)
    {
        var (least, before) = (run.LeastLiters, rig.Members);
        (_residual, _still, _low) = (residual, still, new(run.LowMinutes));
        (_leastLiters, _leastBackLiters) = (rig.Rig.LeastVolume.Liters, rig.Rig.Back?.LeastVolume.Liters ?? 0);
        _leastBack = rig.Rig.Back is null ? null : new(run.LeastBackLiters);
        _thickest = new(() => new(Thickest(before, run)));
        _mixed = new(() => new([.. Enumerable.Range(0, before.Count).Select(member => rig.Rig.Back is null
            ? 100 * RigConstants.FractionOf(before.SugarOf(member), least[member])
            : Mixed(before, run, member, on[member]))]));
        (_reserve, _left) = (new(reserve), new(left));
        (_spare, _least) = (new(spare), new(least));
    }

    /// <summary>All water that leaves the open pan, in liters, at a quantile.</summary>
    public double ResidualLiters(double quantile) => _residual.At(quantile);

    /// <summary>All water that leaves and the minutes until the boil goes still, as the members have it, before they are set right.</summary>
    internal (RankedValues Residual, RankedValues Still) AsReckoned => (_residual.AsReckoned, _still.AsReckoned);

    /// <summary>Sap wanted in the tank to stay above the least depth, in liters, at a quantile.</summary>
    public double ReserveLiters(double quantile) => _reserve.At(quantile);

    /// <summary>Sap that stays in the tank, in liters, at a quantile; below 0 is what the feed finds too little.</summary>
    public double LeftLiters(double quantile) => _left.At(quantile);

    /// <summary>Sap in tank and pan over what keeps the pan at its least depth, in liters, at a quantile; below 0 it is short.</summary>
    public double SpareLiters(double quantile) => _spare.At(quantile);

    /// <summary>Minutes until the boil goes still, at a quantile; 0 where it does not boil.</summary>
    public double StillMinutes(double quantile) => _still.At(quantile);

    /// <summary>
    /// The least liquid that the pan where the draw-off is comes to, in liters, at a quantile; 0 is the member that fares worst. Of two,
    /// with nothing coming into it out of the one behind.
    /// </summary>
    public double LeastPanLiters(double quantile) => _least.At(quantile);

    /// <summary>The same of the pan behind, with all that the pan in front takes out of it; null where there is none.</summary>
    public double? LeastBackLiters(double quantile) => _leastBack?.At(quantile);

    /// <summary>Whether a pan comes under its least depth, whichever does, at a quantile; 0 is the member that fares worst.</summary>
    public bool IsShort(double quantile) => LeastPanLiters(quantile) < _leastLiters || IsBackShort(quantile);

    /// <summary>Whether the pan behind comes under its least depth, at a quantile.</summary>
    public bool IsBackShort(double quantile) => LeastBackLiters(quantile) < _leastBackLiters;

    /// <summary>
    /// The sweetest that any stretch of the pan can come to, in Brix, at a quantile; 1 is the member that fares worst. With the sugar that
    /// stands there now and the least liquid that the member comes to: what mixing and sinking would take from it is not counted on.
    /// </summary>
    public double ThickestBrix(double quantile) => _thickest.Value.At(quantile);

    /// <summary>The same of the whole pan stirred together; of two, of the sweeter one, with what comes into the one in front out of the one behind.</summary>
    public double MixedBrix(double quantile) => _mixed.Value.At(quantile);

    private static double[] Thickest(Members members, RunResult run)
    {
        var thickest = new double[members.Count];
        for (var cell = 0; cell < members.Cells; cell++)
        {
            var pan = cell < members.BackCells ? members.Back : members.Front;
            var (sugar, least) = (members[Field.Sugar + cell], pan.IsBack ? run.LeastBackLiters : run.LeastLiters);

            // A pan in front that nothing feeds can be reckoned under nothing: it is dry then. Of one pan the figure stays as it always was.
            var floor = members.BackCells > 0 ? 0 : double.NegativeInfinity;
            for (var member = 0; member < members.Count; member++)
            {
                thickest[member] = double.Max(thickest[member], 100 * RigConstants.FractionOf(sugar[member], double.Max(least[member], floor) / pan.Count));
            }
        }

        return thickest;
    }

    /// <summary>The sweeter of two pans, each stirred together: the one in front with the sugar of so many liters that go on into it.</summary>
    private static double Mixed(Members members, RunResult run, int member, double on)
    {
        var (behind, least) = (members.SugarOf(members.Back, member), double.Max(run.LeastBackLiters[member], 0.05));
        var inFront = members.SugarOf(members.Front, member) + (behind * double.Min(on / least, 1));
        return 100 * double.Max(
            RigConstants.FractionOf(inFront, double.Max(run.LeastLiters[member], 0)), RigConstants.FractionOf(behind, least));
    }

    /// <summary>Minutes until the pan comes to its least depth, at a quantile; infinite where it does not in four hours.</summary>
    public double LowMinutes(double quantile) => _low.At(quantile);

    /// <summary>Runs an ensemble forward.</summary>
    /// <param name="rig">The ensemble.</param>
    /// <param name="fed">Whether the pan goes on being fed, by its float or by a hand, with as much as it takes.</param>
    internal static Outlook Of(RigEnsemble rig, bool fed)
    {
        var (members, back) = (rig.Members.ToRun(withoutSugar: true), rig.Rig.Back);
        var (before, fedBefore) = (rig.Members[Field.Evaporated], rig.Members[Field.Fed]);
        var result = Stepping.Go(members, rig.Constants, new()
        {
            Steps = FourHours,
            StepMinutes = StepMinutes,
            HeldLiters = fed || back is not null ? (rig.Rig.PanArea * rig.HeldDepth).Liters : 0,
            HeldBackLiters = fed ? rig.HeldBackLiters : 0,
            HoldsOwn = fed && !rig.Rig.HasFloat,
            LowLiters = fed ? 0 : rig.Rig.LeastVolume.Liters,
            LowBackLiters = back?.LeastVolume.Liters ?? 0,
            TankEnds = rig.IsTankKnown,
            WithoutSugar = true,
        });
        var leftOut = LeftOut.Widened([.. Enumerable.Repeat(1.0, members.Count)], LeftOut.OfResidual(rig.Fire.Dying, rig.Rig.ForcedDraft));
        LeftOut.Widened(result.StillMinutes, LeftOut.OfStill(rig.Fire.Dying, rig.Rig.ForcedDraft));
        var (residual, reserve) = (new double[members.Count], new double[members.Count]);
        var (left, spare) = (new double[members.Count], new double[members.Count]);
        // Of two pans the one behind gives what the one in front boils off and still lacks, so that what stands in front over its least depth is no spare.
        var (least, on) = (back?.LeastVolume.Liters ?? rig.Rig.LeastVolume.Liters, new double[members.Count]);
        for (var member = 0; member < members.Count; member++)
        {
            residual[member] = (members[Field.Evaporated][member] - before[member]) * leftOut[member];
            var (pan, wanted) = (rig.Members.Liters(rig.Members.Fed, member), residual[member]);
            if (back is not null)
            {
                var lacks = double.Max((rig.Rig.PanArea * rig.HeldDepth).Liters - rig.Members.Liters(rig.Members.Front, member), 0);
                (wanted, on[member]) = (wanted + lacks, lacks + (rig.Rig.BoiledInFront * residual[member]));
            }

            reserve[member] = double.Max(wanted - (pan - least), 0);
            if (!fed && back is not null)
            {
                // Whatever the float between them does: the one in front gets nothing, and the one behind gives for both.
                var inFront = rig.Members.Liters(rig.Members.Front, member) - (rig.Rig.BoiledInFront * residual[member]);
                result.LeastLiters[member] = double.Min(result.LeastLiters[member], inFront);
                result.LeastBackLiters[member] = double.Min(result.LeastBackLiters[member], pan - wanted);
            }
            else if (!fed)
            {
                // The promise of leaving rests on it: no less is taken to leave than is told to leave.
                result.LeastLiters[member] = double.Min(result.LeastLiters[member], pan - residual[member]);
            }

            left[member] = rig.Members[Field.Tank][member] - (members[Field.Fed][member] - fedBefore[member]);
            spare[member] = rig.Members[Field.Tank][member] + pan - least - wanted;
        }

        // Safety rests on the members as they are: only what is told of the open pan that is fed is set right.
        return new(
            new(residual, fed ? rig.Fire.SetRight(Corrections.OfResidual) : Correction.None),
            new(result.StillMinutes, fed ? rig.Fire.SetRight(Corrections.OfStill) : Correction.None),
            reserve, left, spare, result, rig, on);
    }
}
