using Panside.Picturing;

namespace Panside.Reporting;

/// <summary>The season boil by boil: how fast the rig boiled, and what wood its syrup took. A line joins the boils of one rig.</summary>
internal static class SeasonByBoil
{
    private static readonly Stroke Line = Ink.Truth with { Width = 1.5 };
    private static readonly Stroke Wood = new(Ink.Tank.Color, 9);
    private static readonly Stroke All = new("#1f2933", 1.2, "7 4");

    /// <summary>The picture with its words.</summary>
    public static Picture Of(SeasonBook book, IReadOnlyList<SeasonColumn> columns)
    {
        var (rate, wood) = (columns.First(column => column.Key == "rate"), columns.First(column => column.Key == "wood-per-syrup"));
        var words = $"Boil by boil: {SeasonCharts.Words(book, rate)}; {SeasonCharts.Words(book, wood)}. The dashed line is the whole season's.";
        var panels = SeasonPanels.OfBoils(book.Boils.Count);
        using var page = new SvgPage(SeasonPanels.Width, SeasonPanels.HeightOf(2), "The season boil by boil", words, "boils");
        var legend = SeasonPanels.Legend(page);
        legend.Line("water boiled away an hour, as reckoned", Line, hasDots: true);
        legend.Line("wood for the syrup drawn", Wood);
        legend.Line("the whole season", All);

        var fast = panels.Framed(page, 0, Most(book, rate), rate.Head);
        var known = book.Boils.Index().Where(one => rate.Of(one.Item) is not null).Select(one => (one.Item.Rig, At: fast.At(one.Index + 1, rate.Of(one.Item)!.Value))).ToList();
        foreach (var rig in known.GroupBy(one => one.Rig))
        {
            page.Line(Line, rig.Select(one => one.At));
        }

        known.ForEach(one => page.Dot(Line.Color, one.At));
        Season(page, fast, rate);

        var burnt = panels.Framed(page, 1, Most(book, wood), wood.Head);
        foreach (var (index, boil) in book.Boils.Index().Where(one => wood.Of(one.Item) is not null))
        {
            page.Line(Wood, burnt.At(index + 1, 0), burnt.At(index + 1, wood.Of(boil)!.Value));
        }

        Season(page, burnt, wood);
        panels.Boils(page, 2, book.Boils);
        return new(page.End(), words);
    }

    private static double Most(SeasonBook book, SeasonColumn column) => book.Boils.Select(column.Of).Append(column.Total).OfType<double>().DefaultIfEmpty(1).Max();

    private static void Season(SvgPage page, Panel panel, SeasonColumn column)
    {
        if (column.Total is { } total)
        {
            page.Line(All, panel.At(panel.Clock.From, total), panel.At(panel.Clock.To, total));
        }
    }
}
