using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>The water of the next ten minutes. It never changes the ensemble.</summary>
public sealed partial class RigEnsemble
{
    private const double TenMinutes = 10;

    private RankedValues? _nextTenFiring;
    private RankedValues? _nextTenWithoutWood;

    /// <summary>
    /// Water leaving the pan over the next ten minutes, as a mean in liters an hour, going on as now: each charge that falls due goes in as
    /// they went in tonight, a burner burns on; or with no more wood.
    /// </summary>
    /// <param name="firing">Whether charges go on.</param>
    public RankedValues NextTenMinutes(bool firing) =>
        firing ? _nextTenFiring ??= ReckonNextTenMinutes(firing) : _nextTenWithoutWood ??= ReckonNextTenMinutes(firing);

    private RankedValues ReckonNextTenMinutes(bool firing)
    {
        var (rigs, left) = (this, TenMinutes);
        if (firing && !Rig.IsBurner)
        {
            var wood = Mass.FromKilograms(FiringMegajoulesPerMinute * MinutesOfCharge / Rig.HeatOf(Mass.FromKilograms(1)).Megajoules);
            for (var due = MinutesToCharge; due < left; due = MinutesOfCharge)
            {
                rigs = rigs.WentOn(due).Charged(wood);
                left -= due;
            }
        }

        var members = rigs.WentOn(left, firing && Rig.IsBurner ? FiringMegajoulesPerMinute : 0).Members;
        var rates = new double[Count];
        for (var member = 0; member < Count; member++)
        {
            rates[member] = (members[Field.Evaporated][member] - Members[Field.Evaporated][member]) * (60 / TenMinutes);
        }

        return new(rates, firing ? SetRight(Corrections.OfRate) : Correction.None);
    }

    /// <summary>Until the charge that comes next; 0 where it is late.</summary>
    private double MinutesToCharge => Common.ChargedAt is { } at ? double.Max(MinutesOfCharge - (Minute - at), 0) : 0;

    private RigEnsemble WentOn(double minutes, double woodMegajoulesPerMinute = 0) =>
        minutes < 0.1 ? this : Ran(minutes, woodMegajoulesPerMinute, tankEnds: false, withoutSugar: true);
}
