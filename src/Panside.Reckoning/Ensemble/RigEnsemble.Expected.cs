using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>
/// What an instrument would show now: the mean over the members, and the standard deviation of a reading, its own error
/// included. So a reading can be held against it before it is taken.
/// </summary>
public sealed partial class RigEnsemble
{
    /// <summary>A ruler in the pan where the draw-off is, in meters.</summary>
    public (double Mean, double Deviation) ExpectedDepth =>
        Expected(member => Members[Members.DrawPan][member] / (1000 * Rig.PanArea.SquareMeters), RulerMeters);

    /// <summary>A ruler over the flues of the pan behind, in meters; null where there is none.</summary>
    public (double Mean, double Deviation)? ExpectedBackDepth => Rig.Back is { } back
        ? Expected(member => (Members.Liters(Members.Back, member) - back.InFlues.Liters) / (1000 * back.Area.SquareMeters), RulerMeters)
        : null;

    /// <summary>The raw sap, in Brix.</summary>
    public (double Mean, double Deviation) ExpectedSap => Expected(member => 100 * Members[Field.Sap][member], 0.1);

    /// <summary>A sample stirred from the whole pan where the draw-off is, in Brix.</summary>
    public (double Mean, double Deviation) ExpectedPanSugar => Expected(
        member => 100 * FractionOf(Members.SugarOf(Members.Front, member), Members[Members.DrawPan][member]),
        error: mean => 0.04 * mean);

    /// <summary>A cooled sample from the draw-off, in Brix.</summary>
    public (double Mean, double Deviation) ExpectedDrawSugar =>
        Expected(member => 100 * LastFraction(Members, member), error: mean => 0.5 + (0.02 * mean));

    /// <summary>The thermometer at the draw-off of a pan that boils, in K over boiling water today.</summary>
    /// <param name="station">The pressure here.</param>
    public (double Mean, double Deviation) ExpectedRise(Pressure station)
    {
        var rises = new RiseTable(station);
        return Expected(
            member => rises.Of(LastFraction(Members, member)) + Members[Field.ThermometerOff][member], ThermometerEye);
    }

    /// <summary>
    /// The operator stands by something that was not expected: the rig is less like the members than was thought. Their traits
    /// spread by half, and every band with them, up to twice what rigs of this size differ by: however often something is insisted on, a
    /// rig stays a rig.
    /// </summary>
    public RigEnsemble Insisted() => Changed(members => Widen(members));

    private void Widen(Members members)
    {
        var suggested = Cold(Rig, Boiling, Prior, Count).Members;
        Assimilation.Widen(members, InsistedSpread, field => WidestSpread * double.Sqrt(Assimilation.Moments(suggested[field]).Variance));
    }

    private const double InsistedSpread = 1.5;

    private const double WidestSpread = 2;

    /// <summary>By mass. A pan that was read as all but empty holds its sugar all the same: no more than all of it is sugar.</summary>
    internal static double FractionOf(double sugar, double liters) =>
        sugar > 0 ? double.Min(sugar / (liters + (sugar * (1 - RigConstants.SugarLiters))), 1) : 0;

    private (double Mean, double Deviation) Expected(Func<int, double> shows, double error) => Expected(shows, _ => error);

    private (double Mean, double Deviation) Expected(Func<int, double> shows, Func<double, double> error)
    {
        var shown = new double[Count];
        for (var member = 0; member < Count; member++)
        {
            shown[member] = shows(member);
        }

        var (mean, variance) = Assimilation.Moments(shown);
        var own = error(mean);
        return (mean, double.Sqrt(variance + (own * own)));
    }
}
