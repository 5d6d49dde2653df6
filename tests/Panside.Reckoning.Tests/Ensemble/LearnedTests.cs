using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>An ensemble that begins with what past boils have taught.</summary>
public class LearnedTests
{
    [Fact]
    public void Nothing_learned_is_the_same_ensemble_to_the_last_digit()
    {
        var (plain, learned) = (EnsembleRig.Cold(true), Learned(null));
        for (var field = 0; field < plain.Members.Fields; field++)
        {
            Assert.Equal(plain.Members[field], learned.Members[field]);
        }
    }

    [Fact]
    public void Before_any_reading_a_rig_is_what_its_file_suggests()
    {
        var traits = EnsembleRig.Cold(true).Traits();
        Assert.All(traits.All, trait => Assert.Equal(0, trait.Mean, 1e-12));
        Assert.InRange(traits["heat"].Deviation, 0.9 * RigPrior.Default.Heat, 1.1 * RigPrior.Default.Heat);
    }

    [Fact]
    public void The_heat_that_was_learned_is_what_the_next_boil_begins_with_a_little_wider()
    {
        var found = Learned(Traits((name, at) => new(name, 0.02 * (at - 4), 0.03))).Traits();
        Assert.Equal(-0.08, found["heat"].Mean, 1e-9);
        Assert.InRange(found["heat"].Deviation, 0.03, 0.1);
    }

    [Fact]
    public void What_one_shutdown_was_taken_for_is_not_carried_into_the_next()
    {
        var (cold, found) = (EnsembleRig.Cold(true).Traits(), Learned(Traits((name, at) => new(name, 0.02 * (at - 4), 0.03))).Traits());
        Assert.All(cold.All.Zip(found.All).Where(pair => pair.First.Name != "heat"), pair => Assert.Equal(pair.First, pair.Second));
    }

    [Fact]
    public void No_boil_leaves_a_rig_less_known_than_its_size()
    {
        var (cold, wild) = (EnsembleRig.Cold(true).Traits(), Learned(Traits((name, _) => new(name, 0, 5))).Traits());
        Assert.All(cold.All.Zip(wild.All), pair => Assert.Equal(pair.First.Deviation, pair.Second.Deviation, 1e-9));
    }

    [Fact]
    public void A_rig_that_was_found_hotter_boils_faster()
    {
        double Rate(RigTraits? traits)
        {
            var rigs = Learned(traits).TankRead(Volume.FromLiters(100));
            for (var charge = 0; charge < 8; charge++)
            {
                rigs = rigs.Charged(EnsembleRig.Of(true).UsualCharge).After(8);
            }

            return rigs.Forecasts.RatesLitersPerHour(firing: true).At(0.5);
        }

        Assert.InRange(Rate(Traits((name, _) => new(name, name == "heat" ? 0.2 : 0, 0.05))) / Rate(null), 1.12, 1.4);
    }

    [Fact]
    public void A_young_fire_is_told_no_narrower_than_a_learned_rigs_members_are()
    {
        var traits = Traits((name, _) => new(name, 0, 0.05));
        RigEnsemble Young(RigTraits? known) => EnsembleRig.Fired(Learned(known), 18);
        RigEnsemble Fired(RigTraits? known) => EnsembleRig.Fired(Learned(known), 45);
        var plain = Corrections.OfResidual(FireStage.Warming, true);
        Assert.True(plain.Below < 1);
        Assert.Equal(plain, Young(null).Seen(BoilSeen.Rolling).Fire.SetRight(Corrections.OfResidual));
        Assert.Equal(plain.NoNarrower, Young(traits).Seen(BoilSeen.Rolling).Fire.SetRight(Corrections.OfResidual));
        Assert.Equal(Corrections.OfResidual(FireStage.Fired, true), Fired(traits).Fire.SetRight(Corrections.OfResidual));
    }

    [Theory]
    [InlineData(double.NaN, 0.1)]
    [InlineData(double.PositiveInfinity, 0.1)]
    [InlineData(0, 0)]
    [InlineData(0, -1)]
    [InlineData(0, double.NaN)]
    public void Traits_that_are_no_numbers_are_refused(double mean, double deviation) =>
        Assert.Throws<ArgumentException>(() => Traits((name, _) => new(name, mean, deviation)));

    private static RigEnsemble Learned(RigTraits? traits) =>
        RigEnsemble.Cold(EnsembleRig.Of(true), EnsembleRig.Boiling, RigPrior.Default).Knowing(traits);

    private static RigTraits Traits(Func<string, int, RigTrait> of) => new([.. RigTraits.Names.Select(of)]);
}
