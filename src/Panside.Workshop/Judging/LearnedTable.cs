using System.Globalization;
using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Rigs;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;

namespace Panside.Workshop.Judging;

/// <summary>
/// What learning is worth: rigs that boil a quarter faster or slower than their file lets expect have two boils, and the third is
/// judged twice, by an assistant that has learned from them and by one that has not.
/// </summary>
internal static class LearnedTable
{
    private const double Off = 0.25;

    private static readonly string[] Forecast = [Forecasts.Rate, Forecasts.Residual, Forecasts.ToStill, Forecasts.ToDraw];

    /// <summary>The table over so many rigs, half of them faster and half slower.</summary>
    /// <param name="setting">What rig number so many runs on, with what was learned of it.</param>
    /// <param name="rigs">How many.</param>
    /// <param name="seed">The first rig's.</param>
    public static IEnumerable<string> Of(Func<int, LearnedRig?, Setting> setting, int rigs, long seed)
    {
        var judged = new (JudgedBoil Without, JudgedBoil With)[rigs];
        Parallel.For(
            0, rigs, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, rig => judged[rig] = Third(learned => setting(rig, learned), seed + rig, rig % 2 == 0 ? 1 + Off : 1 - Off));
        yield return "| forecast of the third boil | looks | in the 90 % band, learned | not | width of that band, learned | not | score, learned | not | better by |";
        yield return "| --- | --: | --: | --: | --: | --: | --: | --: | --: |";
        foreach (var name in Forecast)
        {
            yield return Row(name, Named(judged.Select(one => one.With), name), Named(judged.Select(one => one.Without), name));
        }

        yield return "";
        yield return $"{rigs} rigs, heat to the pan {100 * Off:0} % over or under the file's; scorched {judged.Count(one => one.With.Outcome.IsScorched)} learned, "
            + $"{judged.Count(one => one.Without.Outcome.IsScorched)} not; left too early {judged.Count(one => !one.With.Outcome.IsPromiseKept)} learned, {judged.Count(one => !one.Without.Outcome.IsPromiseKept)} not.";
    }

    private static (JudgedBoil Without, JudgedBoil With) Third(Func<LearnedRig?, Setting> setting, long seed, double heat)
    {
        LearnedRig? learned = null;
        for (var boil = 1; boil <= 2; boil++)
        {
            var one = setting(learned);
            learned = LearnedFile.Write(one.Rig, Boil(one, seed, boil, heat).Traits, learned, default);
        }

        return (Boil(setting(null), seed, 3, heat), Boil(setting(learned), seed, 3, heat));
    }

    /// <summary>A boil of a rig on a day of its own, followed by a person whose slips and instruments are of that day too.</summary>
    private static JudgedBoil Boil(Setting setting, long seed, int boil, double heat)
    {
        var day = (seed * 10) + boil;
        return Judge.Boil(setting, PracticeRig.OnDay(setting.Rig, Scenario.ColdStart, seed, day, heat), day);
    }

    private static List<(int Boil, Judgement Judgement)> Named(IEnumerable<JudgedBoil> boils, string name) =>
        [.. boils.SelectMany((boil, number) => boil.Judgements.Select(one => (number, one))).Where(look => look.one.Forecast == name && double.IsFinite(look.one.Score))];

    private static string Row(string name, List<(int Boil, Judgement Judgement)> learned, List<(int Boil, Judgement Judgement)> not)
    {
        string Shown(double value, string form) => value.ToString(form, CultureInfo.InvariantCulture);
        string Cover(List<(int Boil, Judgement Judgement)> all) => JudgedTable.Share(all, one => one.InBand);
        double Mean(List<(int Boil, Judgement Judgement)> all, Func<Judgement, double> of) => all.Average(look => of(look.Judgement));
        var (with, without) = (Mean(learned, one => one.Score), Mean(not, one => one.Score));
        return $"| {name} | {learned.Count} | {Cover(learned)} | {Cover(not)} | {Shown(Mean(learned, one => one.Width), "F2")} | {Shown(Mean(not, one => one.Width), "F2")} "
            + $"| {Shown(with, "F2")} | {Shown(without, "F2")} | {Shown(100 * (1 - (with / without)), "F0")} % |";
    }
}
