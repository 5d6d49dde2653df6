using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using Panside.Reckoning.Ensemble;
using Panside.Workshop.Judging;

namespace Panside.Workshop.Calibration;

/// <summary>
/// Fits what a forecast is set right by: the shift and the two spreads with the least mean pinball loss of the five quantiles that bands are
/// told by, each world counting alike (quantile regression, R. Koenker, G. Bassett, Econometrica 46 (1978) 33–50, from memory; the simplex
/// search of J. Nelder and R. Mead by a library).
/// </summary>
internal static class CorrectionFit
{
    private static readonly double[] Told = [0.05, 0.25, 0.5, 0.75, 0.95];

    /// <summary>A spread beyond these says more of the search than of the forecast.</summary>
    private const double LeastSpread = 0.4;

    private const double MostSpread = 3;

    private const double FirstStep = 0.2;

    /// <summary>The fit.</summary>
    /// <param name="looks">Looks at one forecast in one stage, by world.</param>
    /// <param name="offset">The correction's offset, in the forecast's unit.</param>
    public static Correction Of(IReadOnlyList<IReadOnlyList<Judgement>> looks, double offset)
    {
        var worlds = looks.Where(world => world.Count > 0).ToList();
        double Loss(Vector<double> at)
        {
            var correction = At(at, offset);
            var outside = double.Max(double.Abs(at[1]) - double.Log(MostSpread), 0) + double.Max(double.Abs(at[2]) - double.Log(MostSpread), 0);
            return worlds.Average(world => world.Average(look => LossOf(look, correction))) + outside;
        }

        var objective = ObjectiveFunction.Value(Loss);
        var found = new NelderMeadSimplex(1e-4, 400).FindMinimum(objective, Vector<double>.Build.Dense(3), Vector<double>.Build.Dense(3, FirstStep));
        return At(found.MinimizingPoint, offset);
    }

    /// <summary>A look's quantiles under a correction.</summary>
    public static IReadOnlyList<double> Applied(Judgement look, Correction correction) =>
        [.. look.Reckoned.Select(value => correction.Of(value, MiddleOf(look)))];

    private static Correction At(Vector<double> at, double offset) =>
        new(at[0], double.Clamp(double.Exp(at[1]), LeastSpread, MostSpread), double.Clamp(double.Exp(at[2]), LeastSpread, MostSpread), offset);

    private static double MiddleOf(Judgement look) => (look.Reckoned[Judgement.Middle] + look.Reckoned[Judgement.Middle + 1]) / 2;

    private static double LossOf(Judgement look, Correction correction)
    {
        var (middle, sum) = (MiddleOf(look), 0.0);
        foreach (var level in Told)
        {
            var value = correction.Of(level == 0.5 ? middle : look.Reckoned[Judgement.PlaceOf(level)], middle);
            var off = look.Truth - value;
            sum += off >= 0 ? level * off : (level - 1) * off;
        }

        return sum;
    }
}
