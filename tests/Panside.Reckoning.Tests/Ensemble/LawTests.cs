using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Ensemble;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>What must hold for every member, whatever it is like: more heat, more sap, less wood.</summary>
public class LawTests
{
    /// <summary>
    /// Of a pan that stands at its float, as the outlook takes it, or has no feed: in one that stands higher, more coals let cold
    /// feed in sooner.
    /// </summary>
    [Fact]
    public void More_coals_never_make_an_earlier_still_pan() => Gen.Select(RandomMembers.Gen, Gen.Double[0, 60]).Holds((at, more) =>
    {
        var run = at.Run with { WoodMegajoules = 0, StepMinutes = 1, Steps = 240, TankEnds = false };
        if (run.HeldLiters > 0)
        {
            Array.Clear(at.Members[Field.FloatOff]);
            Array.Fill(at.Members[Field.Pan], run.HeldLiters);
        }

        var hotter = at.Members.Copy();
        Add(hotter[Field.Coals], more);
        var fewer = Stepping.Go(at.Members, SteppingTests.Constants(at.Forced), run);
        var rest = Stepping.Go(hotter, SteppingTests.Constants(at.Forced), run);
        return NeverLess(rest.StillMinutes, fewer.StillMinutes);
    }, cases: 300);

    [Fact]
    public void More_coals_never_leave_less_to_boil_away() => Gen.Select(RandomMembers.Gen, Gen.Double[0, 60]).Holds((at, more) =>
    {
        var run = at.Run with { TankEnds = false };
        var hotter = at.Members.Copy();
        Add(hotter[Field.Coals], more);
        Stepping.Go(at.Members, SteppingTests.Constants(at.Forced), run);
        Stepping.Go(hotter, SteppingTests.Constants(at.Forced), run);
        return NeverLess(hotter[Field.Evaporated], at.Members[Field.Evaporated]);
    }, cases: 300);

    [Fact]
    public void More_sap_never_makes_a_drier_pan() => Gen.Select(RandomMembers.Gen, Gen.Double[0, 60]).Holds((at, more) =>
    {
        var run = at.Run with { TankEnds = true };
        var fuller = at.Members.Copy();
        Add(fuller[Field.Tank], more);
        var less = Stepping.Go(at.Members, SteppingTests.Constants(at.Forced), run);
        var rest = Stepping.Go(fuller, SteppingTests.Constants(at.Forced), run);
        return NeverLess(rest.LeastLiters, less.LeastLiters)
            && NeverLess(rest.EmptyMinutes, less.EmptyMinutes);
    }, cases: 300);

    [Fact]
    public void Less_heat_of_wood_never_evaporates_more() => Gen.Select(RandomMembers.Gen, Gen.Double[0, 1]).Holds((at, part) =>
    {
        var wetter = at.Members.Copy();
        var run = at.Run with { TankEnds = false };
        Stepping.Go(at.Members, SteppingTests.Constants(at.Forced), run);
        Stepping.Go(wetter, SteppingTests.Constants(at.Forced), run with { WoodMegajoules = run.WoodMegajoules * part });
        return NeverLess(at.Members[Field.Evaporated], wetter[Field.Evaporated]);
    }, cases: 300);

    [Fact]
    public void Long_steps_tell_the_still_pan_and_its_residual_as_short_ones_do()
    {
        foreach (var forced in new[] { false, true })
        {
            for (var minutes = 0; minutes < 60; minutes += 7)
            {
                var rig = EnsembleRig.AtLastCharge(forced).After(minutes);
                var members = rig.Members.Copy();
                var run = new Run { Steps = 1440, StepMinutes = 1.0 / 6, HeldLiters = (rig.Rig.PanArea * rig.HeldDepth).Liters };
                var still = new RankedValues(
                    LeftOut.Widened(Stepping.Go(members, rig.Constants, run).StillMinutes, LeftOut.OfStill(rig.Fire.Dying, forced)), Corrections.OfStill(rig.Fire.Stage, forced));
                double[] gone = [.. members[Field.Evaporated].Zip(rig.Members[Field.Evaporated], (after, before) => after - before)];
                var residual = new RankedValues(LeftOut.Widened(gone, LeftOut.OfResidual(rig.Fire.Dying, forced)), Corrections.OfResidual(rig.Fire.Stage, forced));
                foreach (var quantile in new[] { 0.05, 0.25, 0.5, 0.75, 0.95 })
                {
                    Assert.Equal(still.At(quantile), rig.Forecasts.WithoutWood.StillMinutes(quantile), 2.0);
                    Assert.InRange(rig.Forecasts.WithoutWood.ResidualLiters(quantile) / residual.At(quantile), 0.95, 1.05);
                }
            }
        }
    }

    private static void Add(double[] values, double more)
    {
        for (var member = 0; member < values.Length; member++)
        {
            values[member] += more;
        }
    }

    private static bool NeverLess(double[] values, double[] than) =>
        values.Zip(than).All(pair => pair.First >= pair.Second || pair.Second - pair.First <= 1e-12 * double.Max(pair.Second, 1));
}
