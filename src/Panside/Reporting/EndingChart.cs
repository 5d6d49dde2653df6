using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Picturing;

namespace Panside.Reporting;

/// <summary>
/// The end of a boil in one picture: the water still to leave as it was told at each time, beside what came of it, and the sap in the tank that
/// had to be enough. What came is reckoned too: nobody weighs it.
/// </summary>
internal sealed class EndingChart
{
    private const int Width = 800;
    private const double Left = 66;
    private const double Right = 16;
    private const double Height = 240;
    private const double Foot = 46;
    private const double LegendTop = 18;
    private const double MarksTop = 34;

    /// <summary>So many minutes before the last wood it begins.</summary>
    private const double Before = 20;

    private readonly BoilStory _story;
    private readonly IReadOnlyList<(double Minute, Forecast Told)> _told;
    private readonly double _lastWood;
    private readonly double _end;
    private readonly Axis _clock;

    private EndingChart(BoilStory story, IReadOnlyList<(double Minute, Forecast Told)> told, double lastWood, double end)
    {
        (_story, _told, _lastWood, _end) = (story, told, lastWood, end);
        _clock = Axis.Clock(told[0].Minute, end);
    }

    /// <summary>The picture with its words; null where the wood was never held, or nothing was told of what it leaves.</summary>
    public static Picture? Of(BoilStory story)
    {
        if (LastHeat(story) is not { } last || story.Phases.All(phase => phase.Phase != "shutdown"))
        {
            return null;
        }

        var (lastWood, end) = (story.Minute(last), story.Minute(story.End));
        var from = double.Max(lastWood - Before, story.Minute(story.Begin));
        var all = story.Residuals.Select(one => (Minute: story.Minute(one.At), Told: one.Forecast)).ToList();
        var first = all.FindLastIndex(one => one.Minute <= from);
        var told = all.Skip(int.Max(first, 0)).Select(one => one with { Minute = double.Max(one.Minute, from) }).ToList();
        return told.Count < 2 || end - from < 1 ? null : new EndingChart(story, told, lastWood, end).Draw();
    }

    /// <summary>When the last wood went in, or a burner was shut off; null where neither was.</summary>
    private static Moment? LastHeat(BoilStory story) => story.Setting.Rig.IsBurner
        ? story.Facts.OfType<Did>().LastOrDefault(did => did.Name == DeedName.ShutOff)?.At
        : story.Wood.Count == 0 ? null : story.Wood[^1].At;

    private Picture Draw()
    {
        var words = Words();
        var (came, tank) = (Came(), Tank());
        var marks = Marks();
        var across = new Panel(new(Left, 0), Width - Left - Right, 1, _clock, Axis.FromZero(1, 1));
        var rows = marks.Count == 0 ? 0 : MarkRows.Rows(marks, across.Across).Max() + 1;
        var most = _told.Select(one => one.Told.P95!.Value).Concat(came.Select(one => one.Value)).Concat(tank.Select(one => one.Value)).Max();
        var panel = across with { Corner = new(Left, MarksTop + (rows * MarkRows.RowHeight) + 4), Height = Height, Values = Axis.FromZero(most, 8) };

        using var page = new SvgPage(Width, (int)(panel.Bottom + Foot), "Water still to leave, told and come", words, "ending");
        var legend = new LegendRow(page, new(Left, LegendTop));
        legend.Area("told, 5 to 95 %", Ink.Forecast, Ink.Band);
        legend.Line("told, 50 %", Ink.Median);
        legend.Line("came, as reckoned", Ink.Truth);
        legend.Line("sap in the tank", Ink.Tank);
        panel.Frame(page, $"water still to leave, {_story.Units.Preferred(Dimension.Volume).Shown()}");
        MarkRows.Draw(page, marks, across.Across, MarksTop, panel.Bottom);
        List<Place> Steps(Func<Forecast, double?> value) =>
        [
            .. _told.SelectMany((one, index) => new[]
            {
                panel.At(one.Minute, value(one.Told)!.Value),
                panel.At(index + 1 < _told.Count ? _told[index + 1].Minute : _end, value(one.Told)!.Value),
            }),
        ];
        page.Area(Ink.Forecast, Ink.Band, Steps(one => one.P95).Concat(Enumerable.Reverse(Steps(one => one.P5))));
        page.Line(Ink.Median, Steps(one => one.P50));
        page.Line(Ink.Tank, tank.Select(one => panel.At(one.Minute, one.Value)));
        page.Line(Ink.Truth, came.Select(one => panel.At(one.Minute, one.Value)));
        panel.Times(page);
        return new(page.End(), words);
    }

    /// <summary>What was still to leave at each time, as it came: from the last wood on, for before it more went in.</summary>
    private List<(double Minute, double Value)> Came()
    {
        var gone = _story.Gone.Select(one => (Minute: _story.Minute(one.At), one.Value)).Where(one => one.Minute >= _lastWood).ToList();
        return gone.Count == 0 ? [] : [.. gone.Select(one => (one.Minute, double.Max(gone[^1].Value - one.Value, 0))), (_end, 0)];
    }

    private List<(double Minute, double Value)> Tank() =>
        [.. _story.TankByNow.Select(one => (Minute: _story.Minute(one.At), one.Value)).Where(one => one.Minute >= _told[0].Minute)];

    private List<Mark> Marks()
    {
        Moment? Seen(ObservationName name, string state) => _story.Facts.OfType<Observed>().FirstOrDefault(seen => seen.Name == name && seen.Is == state && After(seen.At))?.At;
        Moment? Done(DeedName name) => _story.Facts.OfType<Did>().FirstOrDefault(did => did.Name == name && After(did.At))?.At;
        (Moment? At, string Name)[] all =
        [
            (LastHeat(_story), _story.Setting.Rig.OfFire("last wood", "shut off")), (Done(DeedName.FloodPan), "flooded"), (Seen(ObservationName.Boil, "still"), "still"), (Done(DeedName.CoverPan), "covered"), (_story.Clear, "clear"),
        ];
        return [.. all.Where(one => one.At is not null).Select(one => new Mark(_story.Minute(one.At!.Value), one.Name)).OrderBy(mark => mark.Minute)];
    }

    private bool After(Moment at) => _story.Minute(at) >= _lastWood;

    /// <summary>The picture in words, for those who do not see it.</summary>
    private string Words()
    {
        var unit = _story.Units.Preferred(Dimension.Volume);
        var told = _told.LastOrDefault(one => one.Minute <= _lastWood, _told[0]).Told;
        var came = Came();
        var left = came.Count > 0 ? Amount.Shown(new(came[0].Value, unit)) : "not known";
        var tank = Tank().LastOrDefault(one => one.Minute <= _lastWood, (0, double.NaN)).Item2;
        return $"{_story.Setting.Rig.OfFire("At the last wood", "When it was shut off")} {Amount.Range(told.P5!.Value, told.P95!.Value, unit)} were told still to leave; {left} came, as reckoned."
            + (double.IsNaN(tank) ? "" : $" The tank held {Amount.Shown(new(tank, unit))}.");
    }
}
