using Panside.Reckoning.Ensemble;

namespace Panside.Guide.Rigs;

/// <summary>What past boils have taught of a rig.</summary>
/// <param name="Rig">The rig's name.</param>
/// <param name="Mark">What the rig's file said of it then, by <see cref="RigMark"/>.</param>
/// <param name="Boils">After how many boils.</param>
/// <param name="Date">When last, as year-month-day.</param>
/// <param name="Traits">The traits.</param>
/// <param name="Text">The file's text.</param>
public sealed record LearnedRig(string Rig, string Mark, int Boils, string Date, RigTraits Traits, string Text)
{
    private const double WorthTelling = 0.03;

    /// <summary>What it comes to, in a sentence: how fast the rig boils beside what its size suggests, and what it was before.</summary>
    /// <param name="before">What was known before the last boil; null where nothing was.</param>
    public string Says(LearnedRig? before)
    {
        var heat = Traits["heat"];
        var beside = $"This rig boils {Beside(heat.Mean, "faster", "slower")} than its size suggests, give or take {Percent(double.Exp(heat.Deviation) - 1)}";
        var coals = double.Abs(Traits["coal-time"].Mean) >= 3 * WorthTelling ? $"; its coals last {Beside(Traits["coal-time"].Mean, "longer", "shorter")}" : "";
        var was = before is null ? "" : $" (before this boil: {Beside(before.Traits["heat"].Mean, "faster", "slower")})";
        return $"{beside}{coals}{was}.";
    }

    private static string Beside(double logarithm, string more, string less) => double.Abs(double.Exp(logarithm) - 1) < WorthTelling / 2
        ? $"no {more}"
        : $"{Percent(double.Abs(double.Exp(logarithm) - 1))} {(logarithm > 0 ? more : less)}";

    private static string Percent(double share) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{100 * share:0} %");
}
