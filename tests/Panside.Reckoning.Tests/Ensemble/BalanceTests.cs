using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>Nothing is made and nothing is lost, whatever a run is like: to 1e-9 of what there is.</summary>
public class BalanceTests
{
    [Fact]
    public void Water_is_neither_made_nor_lost() => RandomMembers.Gen.Holds(at =>
    {
        var (before, after) = (at.Members.Copy(), at.Members);
        Stepping.Go(after, SteppingTests.Constants(at.Forced), at.Run);
        for (var member = 0; member < after.Count; member++)
        {
            double Was(int field) => before[field][member];
            double Is(int field) => after[field][member];
            Closes(Was(Field.Pan) + Is(Field.Fed) - Was(Field.Fed), Is(Field.Pan) + Is(Field.Evaporated) - Was(Field.Evaporated));
            if (at.Run.TankEnds)
            {
                Closes(Was(Field.Tank) + Was(Field.Fed), Is(Field.Tank) + Is(Field.Fed));
            }
        }
    }, cases: 300);

    [Fact]
    public void Sugar_is_neither_made_nor_lost() => RandomMembers.Gen.Holds(at =>
    {
        var (before, after) = (at.Members.Copy(), at.Members);
        Stepping.Go(after, SteppingTests.Constants(at.Forced), at.Run);
        for (var member = 0; member < after.Count; member++)
        {
            var fraction = after[Field.Sap][member];
            var brought = (after[Field.Fed][member] - before[Field.Fed][member]) * fraction * RigConstants.KilogramsOfSap(fraction);
            Closes(before.SugarOf(member) + brought, after.SugarOf(member));
        }
    }, cases: 300);

    /// <summary>From liquid of 0 °C: what was in the pan, came from the fire and with the feed, less what went to the air and with steam.</summary>
    [Fact]
    public void Heat_of_the_pan_is_neither_made_nor_lost() => RandomMembers.Gen.Holds(at =>
    {
        var rig = SteppingTests.Constants(at.Forced);
        var (before, after) = (at.Members.Copy(), at.Members);
        var result = Stepping.Go(after, rig, at.Run);
        for (var member = 0; member < after.Count; member++)
        {
            double More(int field) => after[field][member] - before[field][member];
            var taken = result.TakenLiters[member] * rig.Latent;
            var air = result.AirLiters[member] * rig.Latent;
            var feed = More(Field.Fed) * RigConstants.LiterHeat * rig.SapCelsius;
            var steam = More(Field.Evaporated) * (rig.Latent + (RigConstants.LiterHeat * rig.BoilingCelsius));
            Closes(Heat(before, member) + taken + feed, Heat(after, member) + air + steam);
        }
    }, cases: 300);

    /// <summary>What wood brings stays in the stores or is given off; of that the pan never takes more than its share.</summary>
    [Fact]
    public void Heat_of_the_fire_is_neither_made_nor_lost() => RandomMembers.Gen.Holds(at =>
    {
        var rig = SteppingTests.Constants(at.Forced);
        var members = at.Members;
        var one = at.Run with { Steps = 1 };
        for (var step = 0; step < int.Min(at.Run.Steps, 20); step++)
        {
            var before = members.Copy();
            var taken = Stepping.Go(members, rig, one).TakenLiters;
            for (var member = 0; member < members.Count; member++)
            {
                double Was(int field) => before[field][member];
                double Is(int field) => members[field][member];
                var wood = one.WoodMegajoules * one.StepMinutes;
                var fire = Was(Field.Flame) + Was(Field.Coals) + wood - Is(Field.Flame) - Is(Field.Coals);
                var soaked = rig.Soak * double.Max(fire - (Was(Field.Brick) * rig.BrickEvens * one.StepMinutes), 0);
                var brick = Was(Field.Brick) + (double.Exp(Was(Field.ToBrick)) * fire) + (rig.ToPan * soaked) - Is(Field.Brick);
                var comes = double.Exp(Was(Field.Heat) + Was(Field.Weather)) * ((rig.ToPan * (fire - soaked)) + (rig.BrickToPan * brick));
                var takes = taken[member] * rig.Latent;
                Assert.True(fire >= 0 && brick >= 0);
                Assert.True(takes <= comes + 1e-9);
                if (Was(Field.Pan) - (Is(Field.Rate) * one.StepMinutes) > 0.051)
                {
                    Closes(comes, takes);
                }
            }
        }
    }, cases: 100);

    [Fact]
    public void No_pan_gets_colder_than_air_and_sap_nor_hotter_than_the_boil() => RandomMembers.Gen.Holds(at =>
    {
        Stepping.Go(at.Members, SteppingTests.Constants(at.Forced), at.Run with { WoodMegajoules = 0 });
        return at.Members[Field.Temperature].All(celsius => celsius is >= 0 and <= 99.5 + 1e-9)
            && at.Members[Field.Pan].All(liters => liters > 0);
    }, cases: 300);

    [Fact]
    public void A_boil_with_charges_draws_a_flood_and_an_empty_tank_balances()
    {
        var rig = EnsembleRig.Cold(forced: true, count: 104).TankRead(Volume.FromUsGallons(16));
        var start = rig.Members;
        rig = EnsembleRig.Fired(rig, 80);
        var (drawn, beforeDraw) = (rig.Drawn(Volume.FromUsQuarts(1)), rig.Members);
        rig = EnsembleRig.Fired(drawn, 16).Flooded().After(90);
        for (var member = 0; member < rig.Count; member++)
        {
            double More(int field) => rig.Members[field][member] - start[field][member];
            var out1 = beforeDraw[Field.Pan][member] - drawn.Members[Field.Pan][member];
            var sugar1 = beforeDraw.SugarOf(member) - drawn.Members.SugarOf(member);
            var fraction = start[Field.Sap][member];
            var brought = More(Field.Fed) * fraction * RigConstants.KilogramsOfSap(fraction);
            Assert.True(out1 > 0 && sugar1 > 0);
            Closes(start[Field.Pan][member] + More(Field.Fed), rig.Members[Field.Pan][member] + More(Field.Evaporated) + out1);
            Closes(start.SugarOf(member) + brought, rig.Members.SugarOf(member) + sugar1);
            Assert.True(rig.Members[Field.Tank][member] > 0 || More(Field.Fed) >= start[Field.Tank][member] - 1e-9);
        }
    }

    private static double Heat(Members members, int member) =>
        members[Field.Pan][member] * members[Field.Temperature][member] * RigConstants.LiterHeat;

    private static void Closes(double before, double after) =>
        Assert.True(double.Abs(after - before) <= 1e-9 * double.Max(double.Abs(before), 1e-3), $"{before:R} became {after:R}");
}
