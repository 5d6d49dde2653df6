using System.Globalization;
using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Practice.Physics;
using Panside.Reckoning.Ensemble;
using Panside.Workshop.Judging;

namespace Panside.Workshop.Calibration;

/// <summary>
/// What is fitted is fitted on all worlds but one and judged on the one left out, in turn: what a band is worth at a rig that nobody
/// modelled. At the end stands what is fitted on all of them.
/// </summary>
internal static class LeftOutTable
{
    private static readonly string[] SetRight = [Forecasts.Rate, Forecasts.ToDraw, Forecasts.Residual, Forecasts.ToStill];

    /// <summary>The table.</summary>
    /// <param name="setting">What boil number so many runs on.</param>
    /// <param name="worlds">The worlds.</param>
    /// <param name="boils">How many in each.</param>
    /// <param name="seed">The first boil's.</param>
    public static IEnumerable<string> Of(Func<int, Setting> setting, IReadOnlyList<World> worlds, int boils, long seed)
    {
        var judged = worlds.Select(world => JudgedTable.Boils(setting, world, boils, seed)).ToList();
        var looks = judged.Select(world => world.SelectMany((boil, number) => boil.Judgements.Select(one => (number, one))).ToList()).ToList();
        yield return "| left out | forecast | looks | in the 50 % band | in the 90 % band | as it is set right now | told | truth less median | score | score as now |";
        yield return "| --- | --- | --: | --: | --: | --: | --: | --: | --: | --: |";
        for (var world = 0; world < worlds.Count; world++)
        {
            foreach (var forecast in Forecasts.Names)
            {
                var its = looks[world].Where(look => look.one.Forecast == forecast).ToList();
                if (its.Count > 0)
                {
                    var others = looks.Where((_, other) => other != world || worlds.Count == 1).ToList();
                    yield return Row(worlds[world].Name, forecast, its, [.. its.Select(look => (look.number, Fitted(look.one, others)))]);
                }
            }
        }

        yield return "";
        yield return "| forecast | stage | draft | looks | shift | below | above |";
        yield return "| --- | --- | --- | --: | --: | --: | --: |";
        foreach (var forecast in SetRight)
        {
            foreach (var stage in Enum.GetValues<FireStage>())
            {
                foreach (var forced in new[] { false, true })
                {
                    var group = Group(looks, forecast, stage, forced);
                    var fit = Fit(looks, forecast, stage, forced);
                    yield return string.Create(
                        CultureInfo.InvariantCulture,
                        $"| {forecast} | {stage} | {(forced ? "forced" : "natural")} | {group.Sum(world => world.Count)} | {fit.Shift:F3} | {fit.Below:F3} | {fit.Above:F3} |");
                }
            }
        }

        yield return "";
        for (var world = 0; world < worlds.Count; world++)
        {
            yield return $"{worlds[world].Name}: {JudgedTable.Ends(judged[world])} {JudgedTable.Waited(judged[world])}";
        }
    }

    private static string Row(string world, string forecast, List<(int Boil, Judgement Judgement)> now, List<(int Boil, Judgement Judgement)> fitted)
    {
        var told = now.Where(look => look.Judgement.InTold is not null).ToList();
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {world} | {forecast} | {now.Count} | {JudgedTable.Share(fitted, one => one.InHalf)} | {JudgedTable.Share(fitted, one => one.InBand)} | {JudgedTable.Share(now, one => one.InBand)} "
            + $"| {(told.Count > 0 ? JudgedTable.Share(told, one => one.InTold!.Value) : "")} | {fitted.Average(look => look.Judgement.Truth - look.Judgement.Median):F2} "
            + $"| {fitted.Average(look => look.Judgement.Score):F2} | {now.Average(look => look.Judgement.Score):F2} |");
    }

    private static readonly Dictionary<(object Looks, string Forecast, FireStage Stage, bool Forced), Correction> Known = [];

    private static Judgement Fitted(Judgement look, IReadOnlyList<List<(int Number, Judgement One)>> others) => look.Reckoned.Count == 0 ? look
        : look with { Quantile = CorrectionFit.Applied(look, Fit(others, look.Forecast, look.Stage, look.ForcedDraft)) };

    private static Correction Fit(IReadOnlyList<List<(int Number, Judgement One)>> looks, string forecast, FireStage stage, bool forced)
    {
        var key = ((object)string.Join(",", looks.Select(world => world.GetHashCode())), forecast, stage, forced);
        if (!Known.TryGetValue(key, out var fit))
        {
            var group = Group(looks, forecast, stage, forced);
            Known[key] = fit = group.Sum(world => world.Count) < FewLooks ? Correction.None : CorrectionFit.Of(group, Offset(forecast));
        }

        return fit;
    }

    /// <summary>From fewer looks nothing is fitted.</summary>
    private const int FewLooks = 40;

    private static double Offset(string forecast) => forecast switch
    {
        Forecasts.ToDraw => 8,
        Forecasts.ToStill => 4,
        _ => 0,
    };

    private static List<IReadOnlyList<Judgement>> Group(IReadOnlyList<List<(int Number, Judgement One)>> looks, string forecast, FireStage stage, bool forced) =>
        [.. looks.Select(world => (IReadOnlyList<Judgement>)[.. world.Select(look => look.One).Where(one => one.Forecast == forecast && one.Stage == stage && one.ForcedDraft == forced && one.Reckoned.Count > 0)])];
}
