using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Ensemble;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>How a forecast is set right before it is told.</summary>
public class CorrectionTests
{
    private static readonly Gen<Correction> Any = Gen.Select(
        Gen.Double[-0.5, 0.5], Gen.Double[0.2, 3], Gen.Double[0.2, 3], Gen.Double[0, 10],
        (shift, below, above, offset) => new Correction(shift, below, above, offset));

    [Fact]
    public void Values_keep_their_order() => Gen.Select(Any, Gen.Double[0.01, 100], Gen.Double[0, 100], Gen.Double[0, 100]).Holds((correction, middle, one, other) =>
        one == 0 || other == 0 || (correction.Of(one, middle) <= correction.Of(other, middle) + 1e-9) == (one <= other)
        || double.Abs(correction.Of(one, middle) - correction.Of(other, middle)) < 1e-9);

    [Fact]
    public void None_changes_nothing() => Gen.Select(Gen.Double[0, 100], Gen.Double[0, 100]).Holds((value, middle) => Correction.None.Of(value, middle) == value);

    [Fact]
    public void No_narrower_leaves_what_is_wider() => Assert.Equal(new(0.1, 1, 1.5, 8), new Correction(0.1, 0.5, 1.5, 8).NoNarrower);

    [Theory]
    [InlineData(10, 10, 11.0517)] // 10 exp(0.1)
    [InlineData(5, 10, 7.8147)] // 10 exp(0.1 - 0.5 ln 2)
    [InlineData(20, 10, 31.2590)] // 10 exp(0.1 + 1.5 ln 2)
    [InlineData(0, 10, 0)]
    [InlineData(5, 0, 5)]
    [InlineData(double.PositiveInfinity, 10, double.PositiveInfinity)]
    public void A_value_is_moved_and_spread(double value, double middle, double told) =>
        Assert.Equal(told, new Correction(0.1, 0.5, 1.5).Of(value, middle), 4);

    [Fact]
    public void With_an_offset_a_small_value_is_moved_by_parts_of_it_and_never_under_nothing()
    {
        Assert.Equal((14 * double.Exp(0.1)) - 10, new Correction(0.1, 1, 1, 10).Of(4, 4), 9);
        Assert.Equal(0, new Correction(-0.5, 1, 1, 10).Of(1, 4));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void What_a_pan_without_feed_can_lose_is_not_set_right(bool forced)
    {
        // One member more or less lost to a band is a promise less: what the gate rests on is what the members say.
        var rig = EnsembleRig.AtLastCharge(forced).After(40);
        var members = rig.Members.ToRun();
        Stepping.Go(members, rig.Constants, new() { Steps = 120, StepMinutes = 2, TankEnds = true, WithoutSugar = true });
        var lost = Enumerable.Range(0, rig.Count).Select(member => members[Field.Evaporated][member] - rig.Members[Field.Evaporated][member]);
        var noise = LeftOut.Widened([.. lost], LeftOut.OfResidual(rig.Fire.Dying, forced));
        Assert.Equal(noise.Max(), rig.Forecasts.WithoutFeed.ResidualLiters(1), 9);
        Assert.NotEqual(Correction.None, Corrections.OfResidual(FireStage.Still, forced));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_fire_warms_is_fired_and_dies(bool forced)
    {
        var cold = EnsembleRig.Cold(forced);
        Assert.Equal(FireStage.Kindling, cold.Fire.Stage);
        var young = EnsembleRig.Fired(cold, 18);
        Assert.Equal(FireStage.Warming, young.Seen(BoilSeen.Rolling).Fire.Stage);
        var fired = EnsembleRig.Fired(cold, 45);
        Assert.Equal(FireStage.Fired, fired.Fire.Stage);
        Assert.Equal(FireStage.Dying, fired.After(20).Seen(BoilSeen.Rolling).Fire.Stage);
        Assert.Equal(FireStage.Still, fired.After(20).Seen(BoilSeen.Still).Fire.Stage);
    }
}
