using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Picturing;

namespace Panside.Reporting;

/// <summary>
/// A boil over the clock: tank, depth, draw-off against the draw point, rate against its forecast, wood, and what was seen. Dots
/// are readings; lines differ in dash and width, so that the picture reads without color.
/// </summary>
internal sealed class BoilCharts
{
    private const int Width = 800;
    private const double Left = 66;
    private const double Right = 16;
    private const double Gap = 16;
    private const double Foot = 46;
    private const double LegendTop = 18;
    private const double MarksTop = 34;

    /// <summary>The rate between two tank readings says nothing where they are closer than this, in minutes: the gauge is read to a quarter gallon or so.</summary>
    private const double LeastBetween = 10;

    private static readonly Stroke Measured = new("#c2500a", 2);
    private static readonly Stroke DrawPoint = new("#1f2933", 1.2, "7 4");
    private static readonly Stroke Wood = new(Ink.Tank.Color, 3);
    private static readonly Lettering Small = new(11);

    private readonly BoilStory _story;
    private readonly Axis _clock;

    private BoilCharts(BoilStory story)
    {
        _story = story;
        var begin = story.Minute(story.Begin);
        _clock = Axis.Clock(begin, double.Max(story.Minute(story.End), begin + 1));
    }

    /// <summary>The picture with its words.</summary>
    public static Picture Of(BoilStory story)
    {
        var words = Words(story);
        return new(new BoilCharts(story).Draw(words), words);
    }

    private string Draw(string words)
    {
        var marks = Marks();
        var across = new Panel(new(Left, 0), Width - Left - Right, 1, _clock, Axis.FromZero(1, 1));
        var rows = marks.Count == 0 ? 0 : MarkRows.Rows(marks, across.Across).Max() + 1;
        var tank = Panel(MarksTop + (rows * MarkRows.RowHeight) + 4, 110, Axis.FromZero(Most(ReadingName.TankVolume), 5));
        var depth = Under(tank, 80, Axis.FromZero(double.Max(Most(ReadingName.PanDepth), Depths.Run), 4));
        var draw = Under(depth, 120, DrawAxis());
        var rate = Under(draw, 120, Axis.FromZero(_story.Rates.Select(one => one.Forecast.P95!.Value).Concat(Rates().Select(one => one.Value)).DefaultIfEmpty(1).Max(), 5));
        Panel? wood = _story.Setting.Rig.IsBurner ? null : Under(rate, 60, Axis.FromZero(_story.Wood.Select(one => one.Value).DefaultIfEmpty(1).Max(), 3));
        var seen = Under(wood ?? rate, 108, new(0, 3, 1));

        using var page = new SvgPage(Width, (int)(seen.Bottom + Foot), "The boil over the clock", words);
        Legend(page);
        Phases(page, across, tank.Corner.Y, seen.Bottom);
        tank.Frame(page, $"tank, {Unit(Dimension.Volume)}");
        depth.Frame(page, $"depth, {Unit(Dimension.Length)}");
        draw.Frame(page, $"draw-off, {Unit(Dimension.Temperature)}");
        rate.Frame(page, $"rate, {Unit(Dimension.VolumeRate)}");
        wood?.Frame(page, $"wood, {Unit(Dimension.Mass)}");
        MarkRows.Draw(page, marks, across.Across, MarksTop, seen.Bottom);
        Readings(page, tank, ReadingName.TankVolume);
        page.Line(Ink.Least, depth.At(_clock.From, Depths.Least), depth.At(_clock.To, Depths.Least));
        page.Text(new(Left + 6, depth.At(_clock.From, Depths.Least).Y + 12), "least depth", Small);
        Readings(page, depth, ReadingName.PanDepth);
        page.Line(DrawPoint, Steps(draw, _story.DrawPoints));
        Readings(page, draw, ReadingName.DrawTemperature);
        Rate(page, rate);
        foreach (var (at, value) in wood is null ? [] : _story.Wood)
        {
            page.Line(Wood, wood!.At(_story.Minute(at), 0), wood.At(_story.Minute(at), value));
        }

        Seen(page, seen);
        seen.Times(page);
        return page.End();
    }

    private (double Least, double Run) Depths =>
        (_story.Units.From(_story.Setting.Rig.LeastDepth).Value, _story.Units.From(_story.Setting.Rig.RunDepth).Value);

    private static void Legend(SvgPage page)
    {
        var legend = new LegendRow(page, new(Left, LegendTop));
        legend.Line("read", Measured, hasDots: true);
        legend.Line("draw point", DrawPoint);
        legend.Line("rate between tank readings", Measured);
        legend.Line("rate as forecast, 50 %", Ink.Tank);
        legend.Area("5 to 95 %", Ink.Forecast, Ink.Band);
    }

    /// <summary>The phases as bands behind everything: warm while it boils, cool while it ends, gray in an emergency.</summary>
    private void Phases(SvgPage page, Panel across, double top, double bottom)
    {
        for (var index = 0; index < _story.Phases.Count; index++)
        {
            var (color, opacity) = _story.Phases[index].Phase switch
            {
                "steady-boil" or "draw-off" => (Measured.Color, 0.05),
                "shutdown" or "after" => (Ink.Forecast, 0.06),
                "emergency" => (Ink.Text, 0.12),
                _ => (Ink.Ground, 0),
            };
            if (opacity > 0)
            {
                var left = across.Across(_story.Minute(_story.Phases[index].At));
                var right = across.Across(index + 1 < _story.Phases.Count ? _story.Minute(_story.Phases[index + 1].At) : _clock.To);
                page.Area(color, opacity, new(left, top), new(right, top), new(right, bottom), new(left, bottom));
            }
        }
    }

    private void Readings(SvgPage page, Panel panel, ReadingName name)
    {
        var places = _story.Of(name).Select(one => panel.At(_story.Minute(one.At), one.Value)).ToList();
        page.Line(Measured, places);
        places.ForEach(place => page.Dot(Measured.Color, place));
    }

    /// <summary>The forecast as it was told, until it was told anew; it is told when it has moved by enough to matter.</summary>
    private void Rate(SvgPage page, Panel panel)
    {
        if (_story.Rates.Count > 0)
        {
            IReadOnlyList<(Moment At, double Value)> Of(Func<Forecast, double?> value) => [.. _story.Rates.Select(one => (one.At, value(one.Forecast)!.Value))];
            page.Area(Ink.Forecast, Ink.Band, Steps(panel, Of(one => one.P95)).Concat(Enumerable.Reverse(Steps(panel, Of(one => one.P5)))));
            page.Line(Ink.Tank, Steps(panel, Of(one => one.P50)));
        }

        foreach (var (from, to, value) in Rates())
        {
            page.Line(Measured, panel.At(from, value), panel.At(to, value));
        }
    }

    /// <summary>A value that stays until the next one.</summary>
    private List<Place> Steps(Panel panel, IReadOnlyList<(Moment At, double Value)> values)
    {
        var places = new List<Place>();
        for (var index = 0; index < values.Count; index++)
        {
            var until = index + 1 < values.Count ? _story.Minute(values[index + 1].At) : _clock.To;
            places.Add(panel.At(_story.Minute(values[index].At), values[index].Value));
            places.Add(panel.At(until, values[index].Value));
        }

        return places;
    }

    /// <summary>What the tank lost an hour between two readings, where nothing was added or poured between them and it fell.</summary>
    private IEnumerable<(double From, double To, double Value)> Rates()
    {
        var tank = _story.Of(ReadingName.TankVolume);
        var refills = _story.Facts.OfType<Did>().Where(did => did.Name == DeedName.RefillTank || did.Name == DeedName.FillPan).Select(did => _story.Minute(did.At)).ToList();
        var lit = _story.Facts.OfType<Did>().FirstOrDefault(did => did.Name == DeedName.LitFire);
        for (int index = 1, before = 0; index < tank.Count; index++)
        {
            var (from, to) = (_story.Minute(tank[before].At), _story.Minute(tank[index].At));
            if (to - from < LeastBetween)
            {
                continue;
            }

            var fell = tank[before].Value - tank[index].Value;
            if (fell > 0 && lit is not null && from >= _story.Minute(lit.At) && !refills.Exists(minute => minute >= from && minute <= to))
            {
                yield return (from, to, fell * 60 / (to - from));
            }

            before = index;
        }
    }

    /// <summary>What was seen, each word right of its mark, on two levels in turn, so that words close together are all told and no mark runs through a word.</summary>
    private void Seen(SvgPage page, Panel panel)
    {
        ObservationName[] names = [ObservationName.Boil, ObservationName.Coals, ObservationName.Gradient];
        page.Line(Ink.Border, panel.Corner, new(panel.Corner.X + panel.Width, panel.Corner.Y), new(panel.Corner.X + panel.Width, panel.Bottom), new(panel.Corner.X, panel.Bottom), panel.Corner);
        for (var row = 0; row < names.Length; row++)
        {
            var y = panel.Corner.Y + ((row + 0.5) * panel.Height / names.Length);
            page.Text(new(Left - 6, y + 4), names[row].Code, Small with { Anchor = "end" });
            var (state, lower, free) = ("", false, new[] { double.NegativeInfinity, double.NegativeInfinity });
            foreach (var seen in _story.Facts.OfType<Observed>().Where(seen => seen.Name == names[row] && seen.Is != state))
            {
                var x = panel.Across(_story.Minute(seen.At));
                page.Line(Ink.Border, new Place(x, lower ? y : y - 15), new(x, lower ? y + 15 : y));
                var end = x + 3 + Small.WidthOf(seen.Is);
                if (x > free[lower ? 1 : 0])
                {
                    var left = end < Width;
                    page.Text(new(left ? x + 3 : x - 3, y + (lower ? 12 : -4)), seen.Is, left ? Small : Small with { Anchor = "end" });
                    free[lower ? 1 : 0] = left ? end : x;
                }

                (state, lower) = (seen.Is, !lower);
            }
        }
    }

    private List<Mark> Marks() =>
    [
        .. _story.Phases.Skip(1).Where(phase => phase.Phase is not "draw-off" and not "over").Select(phase => new Mark(_story.Minute(phase.At), phase.Phase))
            .Concat(_story.Draws.Select(draw => new Mark(_story.Minute(draw.At), $"drew {Amount.Shown(new(draw.Value, _story.Units.SmallVolume))}")))
            .OrderBy(mark => mark.Minute),
    ];

    private Axis DrawAxis()
    {
        var values = _story.Of(ReadingName.DrawTemperature).Concat(_story.DrawPoints).Select(one => one.Value).ToList();
        return Axis.Between(values.Min(), values.Max(), 6);
    }

    private Panel Panel(double top, double height, Axis values) => new(new(Left, top), Width - Left - Right, height, _clock, values);

    private Panel Under(Panel above, double height, Axis values) => Panel(above.Bottom + Gap, height, values);

    private double Most(ReadingName name) => _story.Of(name).Select(one => one.Value).DefaultIfEmpty(1).Max();

    private string Unit(Dimension dimension) => _story.Units.Preferred(dimension).Shown();

    /// <summary>The picture in words, for those who do not see it.</summary>
    private static string Words(BoilStory story)
    {
        var told = new List<string>();
        foreach (var name in new[] { ReadingName.TankVolume, ReadingName.PanDepth, ReadingName.DrawTemperature })
        {
            var values = story.Of(name);
            var unit = story.Units.Preferred(name.Kind);
            told.Add(values.Count == 0
                ? $"{name.Spoken} not read"
                : $"{name.Spoken} read {values.Count} times, {Amount.Plain(new(values.Min(one => one.Value), unit))} to {Amount.Plain(new(values.Max(one => one.Value), unit))}");
        }

        var point = new Measure(story.DrawPoints[^1].Value, story.Units.Preferred(Dimension.Temperature));
        return $"{string.Join("; ", told)}; draw point {Amount.Shown(point)}; {story.Setting.Rig.OfFire($"{story.Wood.Count} charges of wood; ", "")}{story.Draws.Count} draws.";
    }
}
