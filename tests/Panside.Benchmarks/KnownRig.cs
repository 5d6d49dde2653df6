using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Benchmarks;

/// <summary>A pan of 2 ft by 4 ft, without a blower.</summary>
internal static class KnownRig
{
    public static Volume Tank = Volume.FromUsGallons(26);

    public static RigDescription Pan { get; } = new(
        Area.FromSquareFeet(8), Length.FromInches(1.5), Length.FromInches(0.75), Length.FromInches(2.5), 3, false,
        Mass.FromPounds(120), true, Firewood.HeatAsFired(FirewoodSpecies.SugarMaple, Mass.FromPounds(5), 0.2), Mass.FromPounds(5),
        TimeSpan.FromMinutes(9), Known.Syrup);

    /// <summary>Fired for two hours, with the tank read.</summary>
    public static RigEnsemble Boiling(int members)
    {
        var rig = RigEnsemble.Cold(Pan, Known.Boiling, RigPrior.Default, members).TankRead(Volume.FromUsGallons(40));
        for (var charge = 0; charge < 14; charge++)
        {
            rig = rig.Charged(Pan.UsualCharge).After(9);
        }

        return rig;
    }
}
