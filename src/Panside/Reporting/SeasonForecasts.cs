using System.Globalization;
using Panside.Picturing;

namespace Panside.Reporting;

/// <summary>What each boil of the season was told ahead, blue, beside what came, orange: how good the forecasts were, and whether they got better.</summary>
internal static class SeasonForecasts
{
    private const double Aside = 5;
    private const double HalfBar = 4;

    /// <summary>Fewer boils than this do not tell whether anything got better.</summary>
    private const int EnoughToCompare = 4;

    private static readonly (ToldAhead.Kind Kind, string Label, string Words)[] Rows =
    [
        (ToldAhead.Kind.LastWood, "last wood, min", "the last wood, told about an hour before"),
        (ToldAhead.Kind.FirstDraw, "first draw, min", "the first draw, told about half an hour before"),
        (ToldAhead.Kind.Still, "boil stops, min", "the end of the boil, told at the last wood"),
    ];

    /// <summary>The picture with its words; null where no record tells of any.</summary>
    public static Picture? Of(SeasonBook book)
    {
        var shown = Rows.Where(row => Known(book, row.Kind).Count > 0).ToList();
        if (shown.Count == 0)
        {
            return null;
        }

        var words = "Told ahead, and what came: " + string.Join("; ", shown.Select(row => $"{row.Words}, {Score(Known(book, row.Kind))}")) + ".";
        var panels = SeasonPanels.OfBoils(book.Boils.Count);
        using var page = new SvgPage(SeasonPanels.Width, SeasonPanels.HeightOf(shown.Count), "What each boil was told ahead, and what came", words, "told");
        var legend = SeasonPanels.Legend(page);
        legend.Area("told, 5 to 95 %", Ink.Forecast, Ink.Band);
        legend.Line("its middle", Ink.Median);
        legend.Line("came, or since the look before", Ink.Truth, hasDots: true);
        foreach (var (row, one) in shown.Index())
        {
            var known = Known(book, one.Kind);
            var panel = panels.Framed(page, row, known.Max(told => double.Max(told.Told.Latest, told.Told.Came)), one.Label);
            known.ForEach(told => Draw(page, panel, told.Number, told.Told));
        }

        panels.Boils(page, shown.Count, book.Boils);
        return new(page.End(), words);
    }

    private static void Draw(SvgPage page, Panel panel, int number, ToldAhead told)
    {
        var x = panel.Across(number);
        Place At(double aside, double minutes) => panel.At(number, minutes) with { X = x + aside };
        page.Area(
            Ink.Forecast, Ink.Band,
            At(-Aside - HalfBar, told.Soonest), At(-Aside + HalfBar, told.Soonest), At(-Aside + HalfBar, told.Latest), At(-Aside - HalfBar, told.Latest));
        page.Line(Ink.Median, At(-Aside - HalfBar, told.Likely), At(-Aside + HalfBar, told.Likely));
        page.Line(Ink.Truth, At(Aside, told.CameAfter), At(Aside, told.Came));
        page.Dot(Ink.Truth.Color, At(Aside, told.Came));
    }

    /// <summary>How good they were, and how much better they got: the middle's miss over the first half of the boils and over the second.</summary>
    private static string Score(List<(int Number, ToldAhead Told)> known)
    {
        static string Minutes(IEnumerable<(int, ToldAhead Told)> of) => of.Average(one => one.Told.Miss).ToString("0", CultureInfo.InvariantCulture);
        var half = known.Count / 2;
        return $"came as told in {known.Count(one => one.Told.IsHeld)} of {known.Count}, "
            + (known.Count < EnoughToCompare
                ? $"the middle {Minutes(known)} min off"
                : $"the middle {Minutes(known.Take(half))} min off in the first {half} and {Minutes(known.Skip(half))} min in the rest");
    }

    private static List<(int Number, ToldAhead Told)> Known(SeasonBook book, ToldAhead.Kind kind) =>
        [.. book.Boils.Index().SelectMany(boil => boil.Item.Told.Where(told => told.What == kind).Select(told => (boil.Index + 1, told)))];
}
