namespace Panside.Reckoning.Ensemble;

/// <summary>A rig fired on for some time.</summary>
/// <param name="Then">The ensemble as it then stands.</param>
/// <param name="Draws">Draws until then.</param>
/// <param name="BoiledLiters">Water that leaves the pan until then.</param>
/// <param name="TankLiters">Sap in the tank then.</param>
public sealed record FiredOn(RigEnsemble Then, RankedValues Draws, RankedValues BoiledLiters, RankedValues TankLiters);

/// <summary>A whole boil, from lighting the fire to a still pan.</summary>
/// <param name="LastChargeMinutes">Minutes from lighting to the last charge.</param>
/// <param name="StillMinutes">Minutes from lighting until it boils no more.</param>
/// <param name="WoodKilograms">Wood, the last charge with it.</param>
/// <param name="SugarKilograms">Sugar of the sap that is boiled and of the pan before: drawn, or still in the pan.</param>
/// <param name="DrawnKilograms">Sugar in the syrup that is drawn.</param>
/// <param name="PanKilograms">Sugar that stays in the pan.</param>
public sealed record PlannedBoil(
    RankedValues LastChargeMinutes,
    RankedValues StillMinutes,
    RankedValues WoodKilograms,
    RankedValues SugarKilograms,
    RankedValues DrawnKilograms,
    RankedValues PanKilograms);
