using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>Sugar along the pan against a mass balance that knows nothing of the loop.</summary>
public class GradientTests
{
    /// <summary>
    /// Equal well-mixed cells, the same evaporation from each: cell i of n holds B0/(1 − i f/n), f = 1 − B0/Bs, when syrup leaves as
    /// fast as the sap's sugar comes. Derived here.
    /// </summary>
    [Theory]
    [InlineData(false, 1.5)]
    [InlineData(false, 2)]
    [InlineData(true, 2)]
    [InlineData(true, 3)]
    public void Drawn_at_syrup_for_hours_the_cells_hold_what_a_mass_balance_says(bool forced, double sap)
    {
        const double Syrup = 0.669;
        var rig = EnsembleRig.Cold(forced, 8);
        var members = rig.Members.Copy();
        Array.Fill(members[Field.Sap], sap / 100);
        Array.Fill(members[Field.Mixing], -50); // Nothing goes back.
        var run = new Run
        {
            Steps = 1,
            StepMinutes = 1,
            WoodMegajoules = rig.Rig.HeatOfCharge.Megajoules / rig.Rig.Interval.TotalMinutes,
            HeldLiters = (rig.Rig.PanArea * rig.Rig.RunDepth).Liters,
        };
        for (var minute = 0; minute < 4000; minute++)
        {
            Stepping.Go(members, rig.Constants, run);
            for (var member = 0; member < members.Count; member++)
            {
                if (Fraction(members, member, members.Cells - 1) >= Syrup)
                {
                    PanDeeds.Draw(members, member, 0.2);
                }
            }
        }

        for (var member = 0; member < members.Count; member++)
        {
            for (var cell = 0; cell < members.Cells; cell++)
            {
                var part = (1 - (sap / 100 / Syrup)) * (cell + 1) / members.Cells;
                var (expected, found) = (sap / (1 - part), 100 * Fraction(members, member, cell));
                Assert.True(double.Abs(found / expected - 1) < 0.05, $"cell {cell}: {expected} expected, {found} found");
            }
        }
    }

    /// <summary>A pan that is read as all but empty holds its sugar all the same: what is told of it stays a sugar content.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(5e-324)]
    [InlineData(0.001)]
    public void However_empty_the_pan_is_read_no_more_than_all_of_it_is_sugar(double inches)
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(forced: false, 64), 60).DepthRead(Length.FromInches(inches), lit: true);
        double[] told = [rig.Expected.PanSugar.Mean, rig.Expected.DrawSugar.Mean, .. rig.Expected.ChannelBrix.SelectMany(band => new[] { band.P5, band.P50, band.P95 })];
        Assert.All(told, brix => Assert.InRange(brix, 0, 100));
        Assert.InRange(rig.Expected.PanSugar.Mean, inches > 0 ? 50 : 0, 100);
    }

    private static double Fraction(Members members, int member, int cell)
    {
        var sugar = members[Field.Sugar + cell][member];
        return sugar / ((members[Field.Pan][member] / members.Cells) + (sugar * (1 - RigConstants.SugarLiters)));
    }
}
