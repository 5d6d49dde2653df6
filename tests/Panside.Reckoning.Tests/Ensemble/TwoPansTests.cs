using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>A flue pan behind a syrup pan: heat, water and sugar by balances that know nothing of the loop, and which of the two falls.</summary>
public class TwoPansTests
{
    private static readonly RigDescription Rig = EnsembleRig.Of(forced: true) with
    {
        PanArea = Area.FromSquareFeet(4),
        Back = new(Area.FromSquareFeet(8), Length.FromInches(2), Length.FromInches(1), Length.FromInches(3), 1, 4, Area.FromSquareFeet(8) * Length.FromInches(3)),
    };

    private static readonly RigConstants Constants = RigConstants.Of(Rig, EnsembleRig.Boiling);

    /// <summary>Members in the middle of anything: pans from a film to a flood, tanks empty and full.</summary>
    private static readonly Gen<(Members Members, Run Run)> Any = Gen.Select(
        Gen.ULong, Gen.Double[0.1, 2], Gen.Double[0, 16], Gen.Bool, Gen.Bool, Gen.Bool, Gen.Int[1, 120],
        (seed, minutes, wood, tankEnds, feed, flows, steps) => (RandomMembers.Of(Rig, seed), new Run
        {
            Steps = steps,
            StepMinutes = minutes,
            WoodMegajoules = wood < 4 ? 0 : wood - 4,
            HeldLiters = flows ? 6 + wood : 0,
            HeldBackLiters = feed ? 60 + (wood * 3) : 0,
            TankEnds = tankEnds,
            Accounts = true,
        }));

    [Fact]
    public void Water_of_both_is_neither_made_nor_lost() => Any.Holds(at =>
    {
        var (before, after) = (at.Members.Copy(), at.Members);
        Stepping.Go(after, Constants, at.Run);
        for (var member = 0; member < after.Count; member++)
        {
            double More(int field) => after[field][member] - before[field][member];
            Closes(before[Field.Pan][member] + More(Field.Fed), after[Field.Pan][member] + More(Field.Evaporated));
            Assert.True(after.Liters(after.Front, member) >= 0 && after.Liters(after.Back, member) >= -1e-9);
            Assert.True(!at.Run.TankEnds || double.Abs(More(Field.Fed) + More(Field.Tank)) < 1e-9 * 200);
        }
    }, cases: 300);

    [Fact]
    public void Sugar_of_both_is_neither_made_nor_lost_and_no_cell_owes_any() => Any.Holds(at =>
    {
        var (before, after) = (at.Members.Copy(), at.Members);
        Stepping.Go(after, Constants, at.Run);
        for (var member = 0; member < after.Count; member++)
        {
            var fraction = after[Field.Sap][member];
            var brought = (after[Field.Fed][member] - before[Field.Fed][member]) * fraction * RigConstants.KilogramsOfSap(fraction);
            Closes(before.SugarOf(member) + brought, after.SugarOf(member));
            for (var cell = 0; cell < after.Cells; cell++)
            {
                Assert.True(after[Field.Sugar + cell][member] >= 0);
            }
        }
    }, cases: 300);

    /// <summary>From liquid of 0 °C: what was in the pans, came from the fire and with the feed, less what went to the air and with steam.</summary>
    [Fact]
    public void Heat_of_both_is_neither_made_nor_lost() => Any.Holds(at =>
    {
        var (before, after) = (at.Members.Copy(), at.Members);
        var result = Stepping.Go(after, Constants, at.Run);
        for (var member = 0; member < after.Count; member++)
        {
            double More(int field) => after[field][member] - before[field][member];
            var feed = More(Field.Fed) * RigConstants.LiterHeat * Constants.SapCelsius;
            var steam = More(Field.Evaporated) * (Constants.Latent + (RigConstants.LiterHeat * Constants.BoilingCelsius));
            Closes(
                Heat(before, member) + (result.TakenLiters[member] * Constants.Latent) + feed,
                Heat(after, member) + (result.AirLiters[member] * Constants.Latent) + steam);
        }
    }, cases: 300);

    /// <summary>
    /// Well-mixed cells and none that goes back: when syrup leaves as fast as the sap's sugar comes, the sap that has passed the part c of all
    /// evaporation holds B0/(1 − c f), f = 1 − B0/Bs. Of it the flue pan does its share first. Derived here.
    /// </summary>
    [Fact]
    public void Drawn_at_syrup_for_hours_the_cells_of_both_hold_what_a_mass_balance_says()
    {
        const double Syrup = 0.669;
        const double Sap = 0.02;
        var rig = Cold(8);
        var members = rig.Members.Copy();
        Array.Fill(members[Field.Sap], Sap);
        Array.Fill(members[Field.Mixing], -50); // Nothing goes back.
        var run = Firing(rig) with { StepMinutes = 0.5 };
        for (var step = 0; step < 12000; step++)
        {
            Stepping.Go(members, rig.Constants, run);
            for (var member = 0; member < members.Count; member++)
            {
                if (Fraction(members, member, members.Cells - 1) >= Syrup)
                {
                    PanDeeds.Draw(members, member, 0.05);
                }
            }
        }

        var behind = 1 - Rig.BoiledInFront;
        for (var cell = 0; cell < members.Cells; cell++)
        {
            var passed = cell < members.BackCells
                ? behind * (cell + 1) / members.BackCells
                : behind + (Rig.BoiledInFront * (cell + 1 - members.BackCells) / members.Front.Count);
            var expected = Sap / (1 - ((1 - (Sap / Syrup)) * passed));
            for (var member = 0; member < members.Count; member++)
            {
                Assert.InRange(Fraction(members, member, cell) / expected, 0.94, 1.06);
            }
        }
    }

    [Fact]
    public void Fired_and_fed_both_stand_where_their_floats_hold_them()
    {
        var rig = Cold(64).TankRead(Volume.FromUsGallons(60));
        rig = EnsembleRig.Fired(rig, 90);
        Assert.InRange(rig.Expected.Depth.Mean, 0.036, 0.040);
        Assert.InRange(rig.Expected.BackDepth!.Value.Mean, 0.048, 0.053);
        Assert.True(rig.Summary.IsBoiling);
    }

    [Fact]
    public void When_the_tank_is_empty_the_flue_pan_falls_and_the_syrup_pan_stands()
    {
        var rig = Cold(64).TankRead(Volume.FromUsGallons(2));
        rig = EnsembleRig.Fired(rig, 60);
        Assert.True(rig.Expected.BackDepth!.Value.Mean < 0.035);
        Assert.InRange(rig.Expected.Depth.Mean, 0.036, 0.040);
    }

    /// <summary>Who leaves does not know whether the float between the pans works: each pan is taken in the case that is worse for it.</summary>
    [Fact]
    public void Without_feed_the_flue_pan_gives_for_both_and_the_syrup_pan_gets_nothing()
    {
        var rig = EnsembleRig.Fired(Cold(64).TankRead(Volume.FromUsGallons(60)), 60);
        var unfed = rig.Forecasts.WithoutFeed;
        var (front, back) = (rig.Summary.DrawPan.Liters, rig.Summary.BackPan!.Value.Liters);
        var gone = unfed.ResidualLiters(0.5);
        Assert.True(gone > 1);
        Assert.True(unfed.LeastBackLiters(0.5) <= back - (0.9 * gone));
        Assert.True(unfed.LeastPanLiters(0.5) <= front - (0.9 * gone * Rig.BoiledInFront));
        Assert.True(unfed.IsShort(0));
    }

    [Fact]
    public void Either_pan_alone_under_its_least_depth_speaks_against_leaving()
    {
        var cold = Cold(64).TankRead(Volume.FromUsGallons(60));
        Assert.False(cold.Forecasts.WithoutFeed.IsShort(0));
        Assert.True(cold.DepthRead(Length.FromInches(0.5), lit: true).Forecasts.WithoutFeed.IsShort(0));
        Assert.False(cold.DepthRead(Length.FromInches(0.5), lit: true).Forecasts.WithoutFeed.IsBackShort(0));
        Assert.True(cold.BackDepthRead(Length.FromInches(0.5), lit: true).Forecasts.WithoutFeed.IsBackShort(0));
    }

    [Fact]
    public void The_sap_wanted_is_what_boils_away_from_both_less_what_stands_in_the_flue_pan_alone()
    {
        var rig = EnsembleRig.Fired(Cold(64).TankRead(Volume.FromUsGallons(60)), 60);
        var over = (rig.Summary.BackPan!.Value - Rig.Back!.LeastVolume).Liters;
        var wanted = rig.Forecasts.WithoutWood.ResidualLiters(0.95) - over;
        Assert.True(rig.Forecasts.WithoutWood.ReserveLiters(0.95) >= 0.8 * double.Max(wanted, 0));
        Assert.True(rig.Forecasts.WithoutWood.SpareLiters(0.5) <= rig.Summary.Tank!.Value.Liters + over);
    }

    [Fact]
    public void A_flood_fills_both_and_each_ruler_tells_of_its_own_pan()
    {
        var rig = EnsembleRig.Fired(Cold(64).TankRead(Volume.FromUsGallons(60)), 60);
        var before = rig.Members;
        var flooded = rig.Flooded();
        Assert.InRange(flooded.Expected.Depth.Mean, 0.060, 0.067);
        Assert.InRange(flooded.Expected.BackDepth!.Value.Mean, 0.072, 0.080);
        for (var member = 0; member < rig.Count; member++)
        {
            var fed = flooded.Members[Field.Fed][member] - before[Field.Fed][member];
            var fraction = before[Field.Sap][member];
            Closes(before[Field.Pan][member] + fed, flooded.Members[Field.Pan][member]);
            Closes(before.SugarOf(member) + (fed * fraction * RigConstants.KilogramsOfSap(fraction)), flooded.Members.SugarOf(member));
        }

        var read = flooded.BackDepthRead(Length.FromInches(2.5), lit: true);
        Assert.InRange(read.Expected.BackDepth!.Value.Mean, 0.061, 0.066);
        Assert.Equal(flooded.Expected.Depth.Mean, read.Expected.Depth.Mean, 9);
    }

    [Fact]
    public void A_draw_lowers_the_syrup_pan_alone_and_the_float_fills_it_again()
    {
        var rig = EnsembleRig.Fired(Cold(64).TankRead(Volume.FromUsGallons(60)), 60);
        var drawn = rig.Drawn(Volume.FromLiters(1));
        Assert.InRange(rig.Summary.DrawPan.Liters - drawn.Summary.DrawPan.Liters, 0.9, 1.1);
        Assert.Equal(rig.Summary.BackPan!.Value.Liters, drawn.Summary.BackPan!.Value.Liters, 9);
        Assert.InRange(drawn.After(2).Summary.DrawPan.Liters, rig.Summary.DrawPan.Liters - 0.3, rig.Summary.DrawPan.Liters + 0.3);
    }

    [Fact]
    public void Its_bytes_come_back_to_the_last_bit()
    {
        var rig = EnsembleRig.Fired(Cold(16).TankRead(Volume.FromUsGallons(60)), 30).Flooded();
        using var stream = new MemoryStream();
        EnsembleBytes.Write(new(stream), [rig]);
        stream.Position = 0;
        var back = Assert.Single(EnsembleBytes.Read(new(stream), Cold(16)));
        Assert.Equal(rig.After(7).Expected.BackDepth, back.After(7).Expected.BackDepth);
        Assert.Equal(rig.Summary, back.Summary);
    }

    private static RigEnsemble Cold(int count) => RigEnsemble.Cold(Rig, EnsembleRig.Boiling, RigPrior.Default, count);

    private static Run Firing(RigEnsemble rig) => new()
    {
        Steps = 1,
        StepMinutes = 1,
        WoodMegajoules = Rig.HeatOfCharge.Megajoules / Rig.Interval.TotalMinutes,
        HeldLiters = (Rig.PanArea * Rig.RunDepth).Liters,
        HeldBackLiters = rig.HeldBackLiters,
    };

    private static double Fraction(Members members, int member, int cell)
    {
        var pan = cell < members.BackCells ? members.Back : members.Front;
        return RigConstants.FractionOf(members[Field.Sugar + cell][member], members.Liters(pan, member) / pan.Count);
    }

    private static double Heat(Members members, int member) =>
        members[Field.Pan][member] * members[Field.Temperature][member] * RigConstants.LiterHeat;

    private static void Closes(double before, double after) =>
        Assert.True(double.Abs(after - before) <= 1e-9 * double.Max(double.Abs(before), 1e-3), $"{before:R} became {after:R}");
}
