using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>The bed that an eye compares coals with.</summary>
internal static class UsualCoals
{
    /// <summary>The heat of the coals when the fire has run long at the usual firing.</summary>
    public static Energy Of(RigDescription rig) =>
        rig.HeatOfCharge * (FireConstants.CoalShare * FireConstants.Of(rig).CoalMinutes / rig.Interval.TotalMinutes);
}
