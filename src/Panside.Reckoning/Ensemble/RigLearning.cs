namespace Panside.Reckoning.Ensemble;

/// <summary>What a boil teaches of a rig, and an ensemble that begins with it.</summary>
public static class RigLearning
{
    /// <summary>
    /// A rig is not quite the same on another day: wood, draft, whoever fires. So much of the spread that rigs of one size have is
    /// between two boils of one rig. No source, calibrated against the practice rig.
    /// </summary>
    private const double BetweenBoils = 0.3;

    /// <summary>The trait that a next boil begins with.</summary>
    private const string Heat = "heat";

    /// <summary>
    /// A cold ensemble with the heat to the pan drawn where past boils have found it. Hours of tank readings tell of it; of how
    /// coals and brick give up theirs only a shutdown does, and what one of them was taken for put the next one's forecasts off by a tenth.
    /// </summary>
    /// <param name="cold">The rig cold, with nothing told.</param>
    /// <param name="learned">What past boils have found; null where there are none: then it stays as it is.</param>
    public static RigEnsemble Knowing(this RigEnsemble cold, RigTraits? learned)
    {
        if (learned is null)
        {
            return cold;
        }

        var members = cold.Members.Copy();
        var heat = members[Field.Heat];
        var (mean, variance) = Assimilation.Moments(heat);
        var (own, trait) = (double.Sqrt(variance), learned[Heat]);
        var between = BetweenBoils * own;
        var deviation = double.Min(double.Sqrt((trait.Deviation * trait.Deviation) + (between * between)), own);
        for (var member = 0; member < heat.Length; member++)
        {
            heat[member] = mean + trait.Mean + ((heat[member] - mean) * deviation / own);
        }

        return cold.With(members, cold.Told, cold.Minute, cold.Common with { IsLearned = true });
    }

    /// <summary>What is known of the traits now, beside what the rig's file suggests.</summary>
    public static RigTraits Traits(this RigEnsemble rigs)
    {
        var suggested = RigEnsemble.Cold(rigs.Rig, rigs.Boiling, rigs.Prior, rigs.Count).Members;
        return new([.. RigTraits.Fields.Select(trait =>
        {
            var (from, (mean, variance)) = (Assimilation.Moments(suggested[trait.Field]).Mean, Assimilation.Moments(rigs.Members[trait.Field]));
            return new RigTrait(trait.Name, mean - from, double.Max(double.Sqrt(variance), 1e-4));
        })]);
    }
}
