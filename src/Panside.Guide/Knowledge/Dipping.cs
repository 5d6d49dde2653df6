using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Knowledge;

/// <summary>
/// Where sap that was poured into the pan came from. Nobody is asked: it is taken to come from a pail beside the tank, until the
/// tank is read nearer to what it would hold had the sap been dipped out of it.
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

        var poured = state.Pours.Where(pour => pour is { Liquid: Liquids.Sap, IsOutOfTank: false } && pour.At.Time >= last.At.Time).ToList();
        var liters = poured.Sum(pour => pour.Volume.Liters);
        if (liters <= 0 || state.Rigs.ExpectedTank is not var (mean, _) || units.Volume(reading.Measure).Liters > mean - (liters / 2))
        {
            return state;
        }

        return state with
        {
            Rigs = state.Rigs.Dipped(Volume.FromLiters(liters)),
            Pours = state.Pours.ConvertAll(pour => poured.Contains(pour) ? pour with { IsOutOfTank = true } : pour),
        };
    }
}
