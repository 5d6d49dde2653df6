using Panside.Picturing;

namespace Panside.Reporting;

/// <summary>What lines, dots and areas of a picture mean, in a row.</summary>
/// <param name="page">Where.</param>
/// <param name="at">The row's left end, at the middle of its height.</param>
internal sealed class LegendRow(SvgPage page, Place at)
{
    private const double Sample = 24;

    private static readonly Lettering Small = new(11);

    /// <summary>A line, with the dots of readings where it has some.</summary>
    public void Line(string words, Stroke stroke, bool hasDots = false)
    {
        page.Line(stroke, at, at with { X = at.X + Sample });
        if (hasDots)
        {
            page.Dot(stroke.Color, at with { X = at.X + (Sample / 2) });
        }

        Words(words);
    }

    /// <summary>An area.</summary>
    public void Area(string words, string color, double opacity)
    {
        page.Area(color, opacity, new(at.X, at.Y - 6), new(at.X + Sample, at.Y - 6), new(at.X + Sample, at.Y + 6), new(at.X, at.Y + 6));
        Words(words);
    }

    private void Words(string words)
    {
        page.Text(new(at.X + Sample + 6, at.Y + 4), words, Small);
        at = at with { X = at.X + Sample + 6 + Small.WidthOf(words) + 16 };
    }
}
