using Panside.Picturing;

namespace Panside.Workshop.Shutdowns;

/// <summary>What lines and areas mean, in a row.</summary>
internal static class Legend
{
    private const double SampleWidth = 26;

    private static readonly Lettering Words = new(12);

    /// <summary>Draws it.</summary>
    /// <param name="page">Where.</param>
    /// <param name="at">The row's left end, at the middle of its height.</param>
    public static void Draw(SvgPage page, Place at)
    {
        at = Entry(page, at, "forecast, 5 to 95 %", () => Sample(page, at, 1));
        at = Entry(page, at, "25 to 75 %", () => Sample(page, at, 2));
        foreach (var (stroke, words) in new[] { (Ink.Median, "50 %"), (Ink.Truth, "truth"), (Ink.Tank, "sap in the tank") })
        {
            at = Entry(page, at, words, () => page.Line(stroke, at, at with { X = at.X + SampleWidth }));
        }
    }

    private static Place Entry(SvgPage page, Place at, string words, Action sample)
    {
        sample();
        page.Text(new(at.X + SampleWidth + 6, at.Y + 4), words, Words);
        return at with { X = at.X + SampleWidth + 6 + Words.WidthOf(words) + 14 };
    }

    /// <summary>A band as it looks where so many lie one over the other.</summary>
    private static void Sample(SvgPage page, Place at, int layers)
    {
        for (var layer = 0; layer < layers; layer++)
        {
            page.Area(
                Ink.Forecast, Ink.Band,
                new Place(at.X, at.Y - 6), new(at.X + SampleWidth, at.Y - 6), new(at.X + SampleWidth, at.Y + 6), new(at.X, at.Y + 6));
        }
    }
}
