using Panside.Guide.Measures;
using Panside.Picturing;

namespace Panside.Workshop.Shutdowns;

/// <summary>A practised shutdown as a picture: over the clock, what was forecast with no more wood beside what truly came.</summary>
internal static class ShutdownPicture
{
    private const int Width = 800;
    private const double Left = 66;
    private const double Right = 16;
    private const double MarksTop = 84;
    private const double Gap = 20;
    private const double WaterHeight = 240;
    private const double StillHeight = 170;
    private const double DepthHeight = 90;
    private const double Foot = 46;

    private const string Title = "One shutdown: forecast with no more wood, and truth";

    /// <summary>The picture as SVG.</summary>
    public static string Of(Shutdown shutdown)
    {
        var looks = shutdown.Looks;
        var clock = Axis.Clock(looks[0].Minute, looks[^1].Minute);
        var across = new Panel(new(Left, 0), Width - Left - Right, 1, clock, Axis.FromZero(1, 1));
        var top = MarksTop + ((MarkRows.Rows(shutdown.Marks, across.Across).Max() + 1) * MarkRows.RowHeight) + 4;
        var water = Under(across, top, WaterHeight, Axis.FromZero(looks.Max(look => double.Max(look.Water.Most, look.Tank)), 8));
        var still = Under(across, water.Bottom + Gap, StillHeight, Axis.FromZero(looks.Max(look => look.Still.Most), 6));
        var depth = Under(across, still.Bottom + Gap, DepthHeight, Axis.FromZero(looks.Max(look => look.Depth), 4));

        using var page = new SvgPage(Width, (int)(depth.Bottom + Foot), $"{Title}. {shutdown.Boil}", ShutdownWords.Of(shutdown));
        page.Text(new(Left, 26), Title, new(17) { Bold = true });
        page.Text(new(Left, 46), shutdown.Boil, new(12));
        Legend.Draw(page, new(Left, 66));
        water.Frame(page, $"water still to leave, {Unit(shutdown, Dimension.Volume)}");
        still.Frame(page, "time to still, min");
        depth.Frame(page, $"depth, {Unit(shutdown, Dimension.Length)}");
        MarkRows.Draw(page, shutdown.Marks, across.Across, MarksTop, depth.Bottom);
        water.Curve(page, Ink.Tank, looks, look => look.Tank);
        water.Forecast(page, looks, look => look.Water);
        still.Forecast(page, looks, look => look.Still);
        depth.Curve(page, Ink.Least, looks, _ => shutdown.LeastDepth);
        page.Text(new(Left + 6, depth.At(clock.From, shutdown.LeastDepth).Y + 12), "least depth", new(11));
        depth.Curve(page, Ink.Truth, looks, look => look.Depth);
        depth.Times(page);
        return page.End();
    }

    private static Panel Under(Panel above, double top, double height, Axis values) =>
        above with { Corner = above.Corner with { Y = top }, Height = height, Values = values };

    private static string Unit(Shutdown shutdown, Dimension dimension) => shutdown.Units.Preferred(dimension).Shown();
}
