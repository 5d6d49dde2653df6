using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>What is poured into the pan by hand is there afterwards: its water, its sugar, its cold, and nothing else.</summary>
public class PourTests
{
    private static readonly Gen<(Members Members, double Liters, double Fraction)> Pours = Gen.Select(
        RandomMembers.Gen, Gen.Double[0.01, 60], Gen.OneOf(Gen.Const(0.0), Gen.Double[0.005, 0.1]), (at, liters, fraction) => (at.Members, liters, fraction));

    [Fact]
    public void A_pour_makes_and_loses_no_liquid_no_sugar_and_no_heat() => Pours.Holds((members, liters, fraction) =>
    {
        const double Celsius = 4;
        var before = members.Copy();
        var sugar = liters * fraction * RigConstants.KilogramsOfSap(fraction);
        for (var member = 0; member < members.Count; member++)
        {
            PanDeeds.PourAtFeed(members, member, liters, fraction, Celsius);
            Closes(before[Field.Pan][member] + liters, members[Field.Pan][member]);
            Closes(before.SugarOf(member) + sugar, members.SugarOf(member));
            Closes(Heat(before, member) + (liters * Celsius), Heat(members, member));
        }
    }, cases: 300);

    [Fact]
    public void A_pour_moves_nothing_but_pan_temperature_and_sugar_and_leaves_no_cell_below_nothing() => Pours.Holds((members, liters, fraction) =>
    {
        var before = members.Copy();
        for (var member = 0; member < members.Count; member++)
        {
            PanDeeds.PourAtFeed(members, member, liters, fraction, 4);
        }

        for (var field = 0; field < members.Fields; field++)
        {
            Assert.True(field is Field.Pan or Field.Temperature or >= Field.Sugar || members[field].SequenceEqual(before[field]));
            Assert.True(field < Field.Sugar || members[field].All(sugar => sugar >= 0));
        }
    }, cases: 200);

    [Fact]
    public void Water_never_makes_the_draw_off_sweeter_than_the_sweetest_cell_was() => Pours.Holds((members, liters, _) =>
    {
        var before = members.Copy();
        for (var member = 0; member < members.Count; member++)
        {
            var (pan, most) = (members[Field.Pan][member], Enumerable.Range(Field.Sugar, members.Cells).Max(cell => before[cell][member]));
            PanDeeds.PourAtFeed(members, member, liters, 0, 4);
            Assert.True(members.LastSugar[member] / members[Field.Pan][member] <= (most / pan * (1 + 1e-9)) + 1e-12);
        }
    }, cases: 200);

    /// <summary>In the whole ensemble: off by a pail's marks in each member, right on the whole; the tank and what it gave stand.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Two_gallons_stand_in_the_pan_of_the_ensemble_and_the_tank_has_not_fallen(bool isWater)
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(forced: false).TankRead(Volume.FromUsGallons(30)), 60);
        var poured = rig.Poured(Volume.FromUsGallons(2), isWater);
        Assert.Equal(2, EnsembleRig.Gallons((poured.Summary.Pan - rig.Summary.Pan).Liters), 1.0 / 50);
        Assert.Equal(rig.Summary.Tank, poured.Summary.Tank);
        Assert.Equal(rig.Summary.Fed, poured.Summary.Fed);
        Assert.Equal(rig.Summary.Evaporated, poured.Summary.Evaporated);
        var (_, deviation) = Moments([.. poured.Members[Field.Pan].Zip(rig.Members[Field.Pan], (after, before) => after - before)]);
        Assert.Equal(0.05 * 2, EnsembleRig.Gallons(deviation), 1.0 / 100);
        var sugar = (poured.Summary.PanSugar - rig.Summary.PanSugar).Kilograms;
        Assert.Equal(isWater ? 0 : Volume.FromUsGallons(2).Liters * 0.02, sugar, 0.01);
        Assert.True(poured.Expected.PanSugar.Mean < rig.Expected.PanSugar.Mean);
        Assert.True(poured.Members[Field.Temperature].Average() < rig.Members[Field.Temperature].Average() - 10);
    }

    [Fact]
    public void A_simmer_after_a_pail_tells_nothing_of_the_fire_and_after_a_cupful_it_does()
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(forced: false), 60);
        var pail = rig.Poured(Volume.FromUsGallons(2), isWater: false).After(3);
        Assert.Equal(pail.Members[Field.Coals], pail.Seen(BoilSeen.Simmering).Members[Field.Coals]);
        var cup = rig.Poured(Volume.FromUsQuarts(1), isWater: false).After(3);
        Assert.NotEqual(cup.Members[Field.Coals], cup.Seen(BoilSeen.Simmering).Members[Field.Coals]);
    }

    private static (double Mean, double Deviation) Moments(double[] values)
    {
        var (mean, variance) = Assimilation.Moments(values);
        return (mean, double.Sqrt(variance));
    }

    private static double Heat(Members members, int member) => members[Field.Pan][member] * members[Field.Temperature][member];

    private static void Closes(double before, double after) =>
        Assert.True(double.Abs(after - before) <= 1e-9 * double.Max(double.Abs(before), 1e-3), $"{before:R} became {after:R}");
}
