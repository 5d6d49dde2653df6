using System.Globalization;
using Panside.Guide.Sessions;
using Panside.Practice;

namespace Panside.Judging;

/// <summary>Many judged boils as a table.</summary>
internal static class JudgedTable
{
    /// <summary>Practises boils with seeds from one on, over all scenarios in turn, and tells how the forecasts fared.</summary>
    /// <param name="setting">What boil number so many runs on.</param>
    /// <param name="boils">How many.</param>
    /// <param name="seed">The first boil's.</param>
    public static IEnumerable<string> Of(Func<int, Setting> setting, int boils, long seed)
    {
        var judged = new JudgedBoil[boils];

        // No more at a time than there are cores: each holds many members in memory, and left to itself the pool starts ever more.
        Parallel.For(0, boils, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, boil => judged[boil] = Judge.Boil(setting(boil), Scenario.All[boil / 4 % Scenario.All.Count], seed + boil));
        return Rows(judged);
    }

    private static IEnumerable<string> Rows(JudgedBoil[] boils)
    {
        yield return "| phase | forecast | looks | in the 50 % band | in the 90 % band | truth less median | score | last rate goes on | better by |";
        yield return "| --- | --- | --: | --: | --: | --: | --: | --: | --: |";
        var all = boils.SelectMany(boil => boil.Judgements).ToList();
        foreach (var group in all.GroupBy(one => (one.Forecast, one.Phase)).OrderBy(group => group.Key.Forecast, StringComparer.Ordinal)
                     .ThenBy(group => group.Key.Phase, StringComparer.Ordinal))
        {
            yield return Row(group.Key.Phase, group.Key.Forecast, [.. group]);
        }

        foreach (var group in all.GroupBy(one => one.Forecast).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            yield return Row("all", group.Key, [.. group]);
        }

        yield return "";
        var ended = boils.Where(boil => boil.Outcome.Said is not null).ToList();
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"{boils.Length} boils: {ended.Count} ended, {boils.Count(boil => boil.Outcome.IsScorched)} scorched, "
            + $"{boils.Count(boil => !boil.Outcome.IsPromiseKept)} left too early, {boils.Count(boil => !boil.Outcome.IsGood)} not good; "
            + $"median {Median(ended.Select(boil => boil.Outcome.TankLeft.UsGallons)):F1} gal left in the tank.");
        foreach (var boil in boils.Where(boil => !boil.Outcome.IsGood))
        {
            yield return $"Not good: {boil.Name}: {boil.Fault}.";
        }
    }

    private static string Row(string phase, string forecast, IReadOnlyList<Judgement> judged)
    {
        var half = 100.0 * judged.Average(one => one.InHalf);
        var band = 100.0 * judged.Average(one => one.InBand);
        var score = judged.Average(one => one.Score);
        var compared = judged.Where(one => one.ScoreOfLastRate is not null).ToList();
        var last = compared.Count > 0 ? compared.Average(one => one.ScoreOfLastRate!.Value) : double.NaN;
        var better = compared.Count > 0 ? 100 * (1 - (compared.Average(one => one.Score) / last)) : double.NaN;
        string Shown(double value, string format) => double.IsNaN(value) ? "" : value.ToString(format, CultureInfo.InvariantCulture);
        return $"| {phase} | {forecast} | {judged.Count} | {Shown(half, "F1")} % | {Shown(band, "F1")} % | {Shown(judged.Average(one => one.Truth - one.Median), "F2")} | {Shown(score, "F2")} "
            + $"| {Shown(last, "F2")} | {Shown(better, "F0")}{(double.IsNaN(better) ? "" : " %")} |";
    }

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted.Count > 0 ? sorted[sorted.Count / 2] : double.NaN;
    }
}
