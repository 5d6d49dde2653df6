using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>What a boil teaches of a rig, and an ensemble that begins with it.</summary>
public sealed partial class RigEnsemble
{
    /// <summary>
    /// A rig is not quite the same on another day: wood, draft, whoever fires. So much of the spread that rigs of one size have is
    /// between two boils of one rig. No source, calibrated against the practice rig.
    /// </summary>
    private const double BetweenBoils = 0.3;

    /// <summary>Cold, as <see cref="Cold"/>, each trait drawn where past boils have found it.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="boiling">Where water boils there.</param>
    /// <param name="prior">How unlike such rigs are.</param>
    /// <param name="learned">What past boils have found; null where there are none: then this is <see cref="Cold"/>.</param>
    public static RigEnsemble Cold(RigDescription rig, Temperature boiling, RigPrior prior, RigTraits? learned)
    {
        var cold = Cold(rig, boiling, prior);
        if (learned is null)
        {
            return cold;
        }

        var members = cold.Members.Copy();
        foreach (var (name, field) in RigTraits.Fields)
        {
            var (mean, variance) = Assimilation.Moments(members[field]);
            var (own, trait) = (double.Sqrt(variance), learned[name]);
            var between = BetweenBoils * own;
            var deviation = double.Min(double.Sqrt((trait.Deviation * trait.Deviation) + (between * between)), own);
            var values = members[field];
            for (var member = 0; member < values.Length; member++)
            {
                values[member] = mean + trait.Mean + ((values[member] - mean) * deviation / own);
            }
        }

        return new(rig, prior, boiling, members, cold.Common);
    }

    /// <summary>What is known of the traits now, beside what the rig's file suggests.</summary>
    public RigTraits Traits
    {
        get
        {
            var suggested = Cold(Rig, Boiling, Prior, Count).Members;
            return new([.. RigTraits.Fields.Select(trait =>
            {
                var (from, (mean, variance)) = (Assimilation.Moments(suggested[trait.Field]).Mean, Assimilation.Moments(Members[trait.Field]));
                return new RigTrait(trait.Name, mean - from, double.Max(double.Sqrt(variance), 1e-4));
            })]);
        }
    }
}
