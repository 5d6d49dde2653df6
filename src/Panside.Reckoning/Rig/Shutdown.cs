using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Rig;

/// <summary>What happens from now on with no more wood: the rig run forward for four hours, at three strengths of its heat.</summary>
/// <param name="ResidualLiters">All water that leaves the open pan, in liters.</param>
/// <param name="StillMinutes">Minutes until the boil goes still; 0 where it does not boil.</param>
/// <param name="ResidualLiters99">The 99 % bound of the water.</param>
public sealed record Shutdown(Band ResidualLiters, Band StillMinutes, double ResidualLiters99)
{
    private const int FourHours = 240;

    /// <summary>Runs the rig forward. The pan is taken as fed, so that the heat and not the sap decides.</summary>
    public static Shutdown Of(RigDescription rig, RigState state, Spread spread)
    {
        var low = Run(rig, state, spread.ResidualFactor(-Band.Deviate95));
        var mid = Run(rig, state, 1);
        var high = Run(rig, state, spread.ResidualFactor(Band.Deviate95));
        var worst = Run(rig, state, spread.ResidualFactor(Band.Deviate99));
        return new(
            Band.Ordered(low.Liters, mid.Liters, high.Liters),
            Band.Ordered(low.Minutes, mid.Minutes, high.Minutes),
            worst.Liters);
    }

    /// <summary>Sap wanted in the tank, in liters, to stay above the least depth: the water to come less what the pan can spare.</summary>
    public Band ReserveLiters(RigDescription rig, RigState state) =>
        ResidualLiters.Map(liters => double.Max(liters - Spare(rig, state), 0));

    /// <summary>The 99 % bound of that.</summary>
    public double ReserveLiters99(RigDescription rig, RigState state) =>
        double.Max(ResidualLiters99 - Spare(rig, state), 0);

    private static double Spare(RigDescription rig, RigState state) => (state.Pan - rig.LeastVolume).Liters;

    private static (double Liters, double Minutes) Run(RigDescription rig, RigState state, double factor)
    {
        var run = state with { HeatFactor = state.HeatFactor * factor, Tank = null, Evaporated = default };
        var still = 0;
        for (var minute = 1; minute <= FourHours; minute++)
        {
            run = RigModel.Step(rig, run);
            still = run.IsBoiling ? minute : still;
        }

        return (run.Evaporated.Liters, still);
    }
}
