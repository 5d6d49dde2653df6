using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Knowledge;

/// <summary>
/// Where sap that was poured into the pan came from. Nobody is asked: it is taken to come from a pail beside the tank, or out of the tank
/// where a hand feeds the pan, until the tank is read nearer to what it would hold had it been the other way.
/// </summary>
internal static class Dipping
{
    /// <summary>The state as a reading finds it: with the tank lower by what was poured, where the reading says so.</summary>
    /// <param name="state">What is known before the reading is taken.</param>
    /// <param name="line">The reading.</param>
    /// <param name="units">The rig's units.</param>
    public static SessionState Of(SessionState state, LineIn line, UnitSystem units)
    {
        if (line is not Reading { Name.Code: "tank-volume" } reading || state.Last(ReadingName.TankVolume) is not { } last)
        {
            return state;
        }

        if (state.Rigs.Expected.Tank is not var (mean, _))
        {
            return state;
        }

        var since = state.Pours.Where(pour => pour.Liquid == Liquids.Sap && pour.At.Time >= last.At.Time).ToList();
        var (read, beside, dipped) = (units.Volume(reading.Measure).Liters, Liters(since, isOutOfTank: false), Liters(since, isOutOfTank: true));
        return beside > 0 && read <= mean - (beside / 2) ? Taken(state, since, isOutOfTank: true, state.Rigs.Dipped(Volume.FromLiters(beside)))
            : dipped > 0 && read >= mean + (dipped / 2) ? Taken(state, since, isOutOfTank: false, state.Rigs.Refilled(Volume.FromLiters(dipped)))
            : state;
    }

    private static double Liters(IEnumerable<Pour> pours, bool isOutOfTank) =>
        pours.Where(pour => pour.IsOutOfTank == isOutOfTank).Sum(pour => pour.Volume.Liters);

    private static SessionState Taken(SessionState state, List<Pour> pours, bool isOutOfTank, RigEnsemble rigs) => state with
    {
        Rigs = rigs,
        Pours = state.Pours.ConvertAll(pour => pours.Contains(pour) ? pour with { IsOutOfTank = isOutOfTank } : pour),
    };
}
