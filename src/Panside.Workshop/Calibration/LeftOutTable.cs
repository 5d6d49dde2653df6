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
internal sealed class LeftOutTable
{
    private static readonly string[] SetRight = [Forecasts.Rate, Forecasts.ToDraw, Forecasts.ToLastCharge, Forecasts.Residual, Forecasts.ToStill];

    /// <summary>From fewer looks nothing is fitted.</summary>
    private const int FewLooks = 40;

    /// <summary>No world is left out.</summary>
    private const int None = -1;

    private readonly IReadOnlyList<World> _worlds;
    private readonly IReadOnlyList<JudgedBoil[]> _boils;
    private readonly IReadOnlyList<List<(int Boil, Judgement Judgement)>> _looks;
    private readonly Dictionary<(int LeftOut, string Forecast, FireStage Stage, bool Forced), Correction> _fits = [];

    private LeftOutTable(IReadOnlyList<World> worlds, IReadOnlyList<JudgedBoil[]> boils)
    {
        (_worlds, _boils) = (worlds, boils);
        _looks = [.. boils.Select(world => world.SelectMany((boil, number) => boil.Judgements.Select(one => (number, one))).ToList())];
    }

    /// <summary>The table, and the program's calibration with what was fitted on all worlds in its place; what was not fitted stays as it was.</summary>
    /// <param name="setting">What boil number so many runs on.</param>
    /// <param name="worlds">The worlds.</param>
    /// <param name="boils">How many in each.</param>
    /// <param name="seed">The first boil's.</param>
    /// <param name="by">The command, as it was typed.</param>
    public static (IEnumerable<string> Rows, CalibrationFile Fitted) WithFit(Func<int, Setting> setting, IReadOnlyList<World> worlds, int boils, long seed, string by)
    {
        var table = new LeftOutTable(worlds, [.. worlds.Select(world => JudgedTable.Boils(setting, world, boils, seed))]);
        return (table.Rows(), table.Calibrated(by));
    }

    private CalibrationFile Calibrated(string by)
    {
        var own = CalibrationFile.Own;
        return own with
        {
            Version = own.Version + 1,
            FittedOn = $"the corrections: the simulated worlds {string.Join(", ", _worlds.Select(world => world.Name))}, each counting alike; the rest as in version {own.Version}",
            FittedBy = by,
            Corrections = SetRight.ToDictionary(forecast => forecast, forecast => new CalibratedForecast(
                Corrections.OffsetOf(forecast),
                [.. Enum.GetValues<FireStage>().SelectMany(stage => Enum.GetValues<CalibratedDraft>().Select(draft => (stage, draft)))
                    .Select(one => Calibrated(forecast, one.stage, one.draft)).OfType<CalibratedStage>()])),
        };
    }

    private CalibratedStage? Calibrated(string forecast, FireStage stage, CalibratedDraft draft)
    {
        var forced = draft == CalibratedDraft.Forced;
        var fit = Group(None, forecast, stage, forced).Sum(one => one.Count) >= FewLooks ? FitWithout(None, forecast, stage, forced) : CalibrationFile.Own.Of(forecast, stage, forced);
        return fit == Correction.None ? null : new(stage, draft, double.Round(fit.Shift, 2), double.Round(fit.Below, 2), double.Round(fit.Above, 2));
    }

    private IEnumerable<string> Rows() => [.. Judged(), "", .. Fitted(), "", .. Ended()];

    private IEnumerable<string> Judged()
    {
        yield return "| left out | forecast | looks | in the 50 % band | in the 90 % band | as it is set right now | as told | truth less median | score | score as now |";
        yield return "| --- | --- | --: | --: | --: | --: | --: | --: | --: | --: |";
        for (var world = 0; world < _worlds.Count; world++)
        {
            foreach (var its in _looks[world].GroupBy(look => look.Judgement.Forecast).OrderBy(group => group.Key, StringComparer.Ordinal))
            {
                yield return Row(_worlds[world].Name, its.Key, [.. its], [.. its.Select(look => (look.Boil, SetRightWithout(world, look.Judgement)))]);
            }
        }
    }

    private IEnumerable<string> Fitted()
    {
        yield return "| forecast | stage | draft | looks | shift | below | above |";
        yield return "| --- | --- | --- | --: | --: | --: | --: |";
        foreach (var (forecast, stage, forced) in SetRight.SelectMany(forecast => Enum.GetValues<FireStage>().SelectMany(stage => new[] { (forecast, stage, false), (forecast, stage, true) })))
        {
            var looks = Group(None, forecast, stage, forced).Sum(world => world.Count);
            if (looks >= FewLooks)
            {
                var fit = FitWithout(None, forecast, stage, forced);
                yield return string.Create(
                    CultureInfo.InvariantCulture, $"| {forecast} | {stage} | {(forced ? "forced" : "natural")} | {looks} | {fit.Shift:F3} | {fit.Below:F3} | {fit.Above:F3} |");
            }
        }
    }

    private IEnumerable<string> Ended() =>
        _worlds.Select((world, number) => $"{world.Name}: {JudgedTable.Ends(_boils[number])} {JudgedTable.Waited(_boils[number])}");

    private static string Row(string world, string forecast, List<(int Boil, Judgement Judgement)> now, List<(int Boil, Judgement Judgement)> fitted)
    {
        var told = now.Where(look => look.Judgement.InTold is not null).ToList();
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {world} | {forecast} | {now.Count} | {JudgedTable.Share(fitted, one => one.InHalf)} | {JudgedTable.Share(fitted, one => one.InBand)} | {JudgedTable.Share(now, one => one.InBand)} "
            + $"| {(told.Count > 0 ? JudgedTable.Share(told, one => one.InTold!.Value) : "")} | {fitted.Average(look => look.Judgement.Truth - look.Judgement.Median):F2} "
            + $"| {fitted.Average(look => look.Judgement.Score):F2} | {now.Average(look => look.Judgement.Score):F2} |");
    }

    private Judgement SetRightWithout(int world, Judgement look) => look.Reckoned.Count == 0 ? look
        : look with { Quantile = CorrectionFit.Applied(look, FitWithout(_worlds.Count > 1 ? world : None, look.Forecast, look.Stage, look.ForcedDraft)) };

    private Correction FitWithout(int world, string forecast, FireStage stage, bool forced)
    {
        if (!_fits.TryGetValue((world, forecast, stage, forced), out var fit))
        {
            var group = Group(world, forecast, stage, forced);
            _fits[(world, forecast, stage, forced)] = fit = group.Sum(one => one.Count) < FewLooks ? Correction.None : CorrectionFit.Of(group, Corrections.OffsetOf(forecast));
        }

        return fit;
    }

    private List<IReadOnlyList<Judgement>> Group(int without, string forecast, FireStage stage, bool forced) =>
        [.. _looks.Where((_, world) => world != without).Select(world => (IReadOnlyList<Judgement>)
            [.. world.Select(look => look.Judgement).Where(one => one.Forecast == forecast && one.Stage == stage && one.ForcedDraft == forced && one.Reckoned.Count > 0)])];
}
