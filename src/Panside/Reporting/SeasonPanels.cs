using System.Globalization;
using Panside.Picturing;

namespace Panside.Reporting;

/// <summary>Panels one under the other on one axis, as all pictures of the season have them: where they stand, and what stands under the last.</summary>
/// <param name="across">The axis that they share.</param>
internal sealed class SeasonPanels(Axis across)
{
    /// <summary>How wide a picture is, in pixels.</summary>
    public const int Width = 800;

    private const double Left = 66;
    private const double Right = 16;
    private const double Gap = 16;
    private const double Height = 110;
    private const double Foot = 46;
    private const double LegendTop = 18;
    private const double Top = 34;

    /// <summary>About as many words under a picture as have room beside one another.</summary>
    public const int TicksAtMost = 10;

    /// <summary>Boils in order, the first at 1.</summary>
    public static SeasonPanels OfBoils(int count) => new(new(0.5, int.Max(count, 2) + 0.5, double.MaxValue));

    /// <summary>How high a picture of so many panels is, in pixels.</summary>
    public static int HeightOf(int panels) => (int)(Top + (panels * (Height + Gap)) - Gap + Foot);

    /// <summary>Where a legend begins.</summary>
    public static LegendRow Legend(SvgPage page) => new(page, new(Left, LegendTop));

    /// <summary>A panel with its frame, from nothing to the most.</summary>
    /// <param name="page">Where.</param>
    /// <param name="row">Its number, from 0.</param>
    /// <param name="most">The most that is shown in it.</param>
    /// <param name="label">What it shows, with the unit.</param>
    public Panel Framed(SvgPage page, int row, double most, string label)
    {
        var panel = At(row, Axis.FromZero(double.Max(most, 0), 4));
        panel.Frame(page, label);
        return panel;
    }

    /// <summary>Numbers of boils under the last panel, and the day under the first one that shows it.</summary>
    public void Boils(SvgPage page, int panels, IReadOnlyList<BookedBoil> boils)
    {
        var last = At(panels - 1, new(0, 1, 1));
        var step = int.Max((boils.Count + TicksAtMost - 1) / TicksAtMost, 1);
        var shown = "";
        for (var index = 0; index < boils.Count; index += step)
        {
            var day = boils[index].Begin.Time.ToString("MM-dd", CultureInfo.InvariantCulture);
            Under(page, panels, index + 1, (index + 1).ToString(CultureInfo.InvariantCulture));
            if (day != shown)
            {
                Under(page, panels, index + 1, day, line: 1);
            }

            shown = day;
        }

        page.Text(new(Left - 6, last.Bottom + 17), "boil", new(11) { Anchor = "end" });
    }

    /// <summary>Words under the last panel.</summary>
    /// <param name="page">Where.</param>
    /// <param name="panels">So many panels there are.</param>
    /// <param name="at">On the axis.</param>
    /// <param name="words">The words.</param>
    /// <param name="line">The line of words, 0 or 1.</param>
    public void Under(SvgPage page, int panels, double at, string words, int line = 0)
    {
        var last = At(panels - 1, new(0, 1, 1));
        page.Text(new(last.Across(at), last.Bottom + 17 + (16 * line)), words, new(11) { Anchor = "middle" });
    }

    private Panel At(int row, Axis values) => new(new(Left, Top + (row * (Height + Gap))), Width - Left - Right, Height, across, values);
}
