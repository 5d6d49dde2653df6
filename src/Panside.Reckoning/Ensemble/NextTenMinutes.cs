using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>The water of the next ten minutes, charge by charge.</summary>
internal static class NextTenMinutes
{
    private const double TenMinutes = 10;

    /// <summary>As a mean over them, in liters an hour.</summary>
    /// <param name="now">The ensemble, which stays as it is.</param>
    /// <param name="firing">Whether charges go on.</param>
    public static RankedValues Of(RigEnsemble now, bool firing)
    {
        var (rigs, left, fire) = (now, TenMinutes, now.Fire);
        if (firing && !now.Rig.IsBurner)
        {
            var wood = Mass.FromKilograms(fire.MegajoulesPerMinute * fire.MinutesOfCharge / now.Rig.HeatOf(Mass.FromKilograms(1)).Megajoules);
            for (var due = fire.MinutesToCharge; due < left; due = fire.MinutesOfCharge)
            {
                rigs = WentOn(rigs, due).Charged(wood);
                left -= due;
            }
        }

        var members = WentOn(rigs, left, firing && now.Rig.IsBurner ? fire.MegajoulesPerMinute : 0).Members;
        var rates = new double[now.Count];
        for (var member = 0; member < rates.Length; member++)
        {
            rates[member] = (members[Field.Evaporated][member] - now.Members[Field.Evaporated][member]) * (60 / TenMinutes);
        }

        return new(rates, firing ? fire.SetRight(Corrections.OfRate) : Correction.None);
    }

    private static RigEnsemble WentOn(RigEnsemble rigs, double minutes, double woodMegajoulesPerMinute = 0) =>
        minutes < 0.1 ? rigs : rigs.Ran(minutes, woodMegajoulesPerMinute, tankEnds: false, withoutSugar: true);
}
