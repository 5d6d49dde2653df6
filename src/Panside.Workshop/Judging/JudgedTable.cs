using System.Globalization;
using System.Text.RegularExpressions;
using Panside.Guide.Knowledge;
using Panside.Practice.Physics;
using Panside.Practice.Scenarios;

namespace Panside.Workshop.Judging;

/// <summary>Many judged boils as a table.</summary>
internal static partial class JudgedTable
{
    /// <summary>Every second boil starts cold with a full tank: few draws come in the others, and a draw is to be judged by more than a few boils.</summary>
    private static readonly Scenario[] InTurn = [Scenario.ColdStart, Scenario.RawSap, Scenario.ColdStart, Scenario.LastHour];

    /// <summary>Practises boils with seeds from one on, over all scenarios in turn, and tells how the forecasts fared.</summary>
    /// <param name="setting">What boil number so many runs on.</param>
    /// <param name="world">The world that they are in.</param>
    /// <param name="boils">How many.</param>
    /// <param name="seed">The first boil's.</param>
    /// <param name="waits">Whether to tell of each boil what it waited for as well.</param>
    public static IEnumerable<string> Of(Func<int, Setting> setting, World world, int boils, long seed, bool waits = false)
    {
        var judged = Boils(setting, world, boils, seed);
        return [.. Rows(judged), .. waits ? judged.Where(boil => boil.Outcome.SecondsTrulySafe is not null).Select(Course) : []];
    }

    /// <summary>The judged boils themselves.</summary>
    public static JudgedBoil[] Boils(Func<int, Setting> setting, World world, int boils, long seed)
    {
        var judged = new JudgedBoil[boils];

        // No more at a time than there are cores: each holds many members in memory, and left to itself the pool starts ever more.
        Parallel.For(0, boils, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, boil => judged[boil] = Judge.Boil(setting(boil), world, InTurn[boil / 4 % InTurn.Length], seed + boil));
        return judged;
    }

    /// <summary>What they waited for once it would have been safe to leave, in a sentence: the most first, in minutes a boil.</summary>
    public static string Waited(IReadOnlyList<JudgedBoil> boils)
    {
        var reasons = boils.SelectMany(boil => boil.WaitedFor).GroupBy(look => Unnumbered(look.Unmet)).OrderByDescending(group => group.Count()).Take(8)
            .Select(group => string.Create(CultureInfo.InvariantCulture, $"{(double)JudgedBoil.WaitedMinutes * group.Count() / boils.Count:F1} min {(group.Key.Length == 0 ? "said" : group.Key)}"));
        return $"Safe, and waited for: {string.Join(" | ", reasons)}.";
    }

    /// <summary>What one boil waited for, a sentence: from which minute after the first safe moment on, and for what.</summary>
    private static string Course(JudgedBoil boil)
    {
        var steps = new List<string>();
        var last = "";
        foreach (var (second, unmet) in boil.WaitedFor.Where(look => look.Second <= (boil.Outcome.SecondsSaidClear ?? long.MaxValue)))
        {
            var what = Unnumbered(unmet);
            if (what != last)
            {
                steps.Add(string.Create(CultureInfo.InvariantCulture, $"{(second - boil.Outcome.SecondsTrulySafe!.Value) / 60.0:F0} {what}"));
                last = what;
            }
        }

        return string.Create(CultureInfo.InvariantCulture, $"Waited {boil.Outcome.MinutesPastTruth:F0} min: {boil.Name}: {string.Join(" | ", steps)}.");
    }

    private static string Unnumbered(string reason) => Number().Replace(reason, "#");

    [GeneratedRegex("[0-9]+([./][0-9]+)?")]
    private static partial Regex Number();

    /// <summary>How the boils ended, in a sentence.</summary>
    public static string Ends(IReadOnlyList<JudgedBoil> boils)
    {
        var ended = boils.Where(boil => boil.Outcome.Said is not null).ToList();
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{boils.Count} boils: {ended.Count} ended, {boils.Count(boil => boil.Outcome.IsScorched)} scorched, "
            + $"{boils.Count(boil => !boil.Outcome.IsPromiseKept)} left too early, {boils.Count(boil => !boil.Outcome.IsGood)} not good; "
            + $"median {Median(ended.Select(boil => boil.Outcome.TankLeft.UsGallons)):F1} gal left in the tank, "
            + $"{Median(ended.Select(boil => boil.Outcome.MinutesPastTruth).OfType<double>()):F0} min from the first safe moment to the word, in nine of ten {Level(ended.Select(boil => boil.Outcome.MinutesPastTruth).OfType<double>(), 0.9):F0} at most; "
            + $"draws {Median(ended.Select(boil => boil.Outcome.SyrupErrorBrix).OfType<double>()):F1} Brix off.");
    }

    private static IEnumerable<string> Rows(JudgedBoil[] boils)
    {
        yield return "| phase | forecast | looks | in the 50 % band | in the 90 % band | in it as told | truth less median | score | last rate goes on | better by |";
        yield return "| --- | --- | --: | --: | --: | --: | --: | --: | --: | --: |";
        var all = boils.SelectMany((boil, number) => boil.Judgements.Select(one => (Boil: number, Judgement: one))).ToList();
        foreach (var group in all.GroupBy(one => (one.Judgement.Forecast, one.Judgement.Phase)).OrderBy(group => group.Key.Forecast, StringComparer.Ordinal)
                     .ThenBy(group => group.Key.Phase, StringComparer.Ordinal))
        {
            yield return Row(group.Key.Phase, group.Key.Forecast, [.. group]);
        }

        foreach (var group in all.GroupBy(one => one.Judgement.Forecast).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            yield return Row("all", group.Key, [.. group]);
        }

        yield return "";
        yield return Ends(boils);
        yield return Waited(boils);
        foreach (var boil in boils.Where(boil => !boil.Outcome.IsGood))
        {
            yield return $"Not good: {boil.Name}: {boil.Fault}.";
        }
    }

    private static string Row(string phase, string forecast, IReadOnlyList<(int Boil, Judgement Judgement)> looks)
    {
        var judged = looks.Select(look => look.Judgement).ToList();
        var half = Share(looks, one => one.InHalf);
        var band = Share(looks, one => one.InBand);
        var inTold = looks.Where(look => look.Judgement.InTold is not null).ToList();
        var told = inTold.Count > 0 ? Share(inTold, one => one.InTold!.Value) : "";
        var score = judged.Average(one => one.Score);
        var compared = judged.Where(one => one.ScoreOfLastRate is not null).ToList();
        var last = compared.Count > 0 ? compared.Average(one => one.ScoreOfLastRate!.Value) : double.NaN;
        var better = compared.Count > 0 ? 100 * (1 - (compared.Average(one => one.Score) / last)) : double.NaN;
        string Shown(double value, string format) => double.IsNaN(value) ? "" : value.ToString(format, CultureInfo.InvariantCulture);
        return $"| {phase} | {forecast} | {judged.Count} | {half} | {band} | {told} | {Shown(judged.Average(one => one.Truth - one.Median), "F2")} | {Shown(score, "F2")} "
            + $"| {Shown(last, "F2")} | {Shown(better, "F0")}{(double.IsNaN(better) ? "" : " %")} |";
    }

    /// <summary>
    /// A part of the looks in hundredths, and its standard error. Looks of one boil go together, so the error is that of the mean over
    /// boils of unlike size: the root of the sum over boils of their squared sums of deviations, by the count of looks (the sandwich
    /// estimator of K.-Y. Liang, S. Zeger, Biometrika 73 (1986) 13–22, from memory).
    /// </summary>
    internal static string Share(IReadOnlyList<(int Boil, Judgement Judgement)> looks, Func<Judgement, double> part)
    {
        var share = looks.Average(look => part(look.Judgement));
        var error = double.Sqrt(looks.GroupBy(look => look.Boil, look => part(look.Judgement) - share).Sum(boil => double.Pow(boil.Sum(), 2))) / looks.Count;
        return string.Create(CultureInfo.InvariantCulture, $"{100 * share:F1} ± {100 * error:F1} %");
    }

    private static double Median(IEnumerable<double> values) => Level(values, 0.5);

    private static double Level(IEnumerable<double> values, double level)
    {
        var sorted = values.Order().ToList();
        return sorted.Count > 0 ? sorted[int.Min((int)(level * sorted.Count), sorted.Count - 1)] : double.NaN;
    }
}
