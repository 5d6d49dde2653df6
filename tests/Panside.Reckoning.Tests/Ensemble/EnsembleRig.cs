using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>A pan of 2 ft by 4 ft, as the built-in rigs have it, cold, firing, and at its last charge.</summary>
internal static class EnsembleRig
{
    public static readonly Temperature Boiling = Temperature.FromCelsius(99.5);

    public static RigDescription Of(bool forced)
    {
        var charge = Mass.FromPounds(forced ? 7 : 5);
        return new(
            Area.FromSquareFeet(8), Length.FromInches(1.5), Length.FromInches(0.75), Length.FromInches(2.5), 3, forced,
            Mass.FromPounds(120), true, Firewood.HeatAsFired(FirewoodNames.FromName("sugar maple"), charge, 0.2), charge,
            TimeSpan.FromMinutes(forced ? 8 : 9), SugarContent.FromBrix(66.9));
    }

    public static RigEnsemble Cold(bool forced, int count = RigEnsemble.UsualCount) =>
        RigEnsemble.Cold(Of(forced), Boiling, RigPrior.Default, count);

    /// <summary>Fired at the usual interval for so long.</summary>
    public static RigEnsemble Fired(RigEnsemble rig, int minutes)
    {
        for (var minute = 0; minute < minutes; minute++)
        {
            rig = minute % (int)rig.Rig.Interval.TotalMinutes == 0 ? rig.Charged(rig.Rig.UsualCharge) : rig;
            rig = rig.After(1);
        }

        return rig;
    }

    /// <summary>The last charge has just gone in, after hours of firing.</summary>
    public static RigEnsemble AtLastCharge(bool forced) => Fired(Cold(forced), 216).Charged(Of(forced).UsualCharge);

    public static double Gallons(double liters) => liters / 3.785411784;

    public static double Median(IEnumerable<double> values) => Sorted.At(Sorted.Of([.. values]), 0.5);
}
