using System.Globalization;
using Panside.Picturing;

namespace Panside.Reporting;

/// <summary>The season over its days: sap, syrup beside what the sap holds, and yield.</summary>
internal static class SeasonCharts
{
    /// <summary>A season of fewer days than this shows the clock under it, else the days.</summary>
    private const double FewDays = 2;

    private static readonly Stroke Bar = new(Ink.Tank.Color, 5);
    private static readonly Stroke Drawn = Ink.Truth with { Width = 5 };
    private static readonly Stroke Held = new("#1f2933", 1.5);
    private static readonly Stroke Stem = Ink.Truth with { Width = 1.5 };
    private static readonly string[] Shown = ["sap", "syrup", "yield"];

    /// <summary>The picture with its words.</summary>
    public static Picture Of(SeasonBook book, IReadOnlyList<SeasonColumn> columns)
    {
        var shown = Shown.Select(key => columns.First(column => column.Key == key)).ToList();
        var held = columns.First(column => column.Key == "syrup-by-balance");
        var words = "Over the days of the season: " + string.Join("; ", shown.Select(column => Words(book, column))) + ". The tick over a bar of syrup is what that boil's sap holds.";
        var (from, to) = (book.Boils[0].Begin.Time, book.Boils[^1].Begin.Time);
        var span = double.Max((to - from).TotalDays, 1.0 / 24);
        var panels = new SeasonPanels(new(-span / 30, span * 31 / 30, double.MaxValue));
        using var page = new SvgPage(SeasonPanels.Width, SeasonPanels.HeightOf(shown.Count), "The season over its days", words, "days");
        var legend = SeasonPanels.Legend(page);
        legend.Line("sap", Bar);
        legend.Line("syrup drawn, and its yield", Drawn);
        legend.Line("what that boil's sap holds", Held);
        double Day(BookedBoil boil) => (boil.Begin.Time - from).TotalDays;
        foreach (var (row, column) in shown.Index())
        {
            var known = book.Boils.Where(boil => column.Of(boil) is not null).Select(boil => (Boil: boil, Value: double.Max(column.Of(boil)!.Value, 0))).ToList();
            var most = known.Select(one => one.Value).Concat(column.Key == "syrup" ? book.Boils.Select(boil => held.Of(boil) ?? 0) : []).DefaultIfEmpty(1).Max();
            var panel = panels.Framed(page, row, most, column.Head);
            foreach (var (boil, value) in known)
            {
                var at = panel.At(Day(boil), value);
                page.Line(column.Key switch { "sap" => Bar, "syrup" => Drawn, _ => Stem }, panel.At(Day(boil), 0), at);
                if (column.Key == "yield")
                {
                    page.Dot(Stem.Color, at);
                }

                if (column.Key == "syrup" && held.Of(boil) is { } balance)
                {
                    var tick = panel.At(Day(boil), balance);
                    page.Line(Held, tick with { X = tick.X - 5 }, tick with { X = tick.X + 5 });
                }
            }
        }

        Times(page, panels, shown.Count, from, span);
        return new(page.End(), words);
    }

    /// <summary>A column from its least to its most, in words.</summary>
    internal static string Words(SeasonBook book, SeasonColumn column)
    {
        var values = book.Boils.Select(column.Of).OfType<double>().ToList();
        return values.Count == 0 ? $"{column.Title} not known"
            : values.Count == 1 ? $"{column.Title} {column.Shown(values[0])} {column.Unit}, of one boil"
            : $"{column.Title} {column.Shown(values.Min())} to {column.Shown(values.Max())} {column.Unit}";
    }

    /// <summary>Days under it, counted from the first boil; hours where there are few days.</summary>
    private static void Times(SvgPage page, SeasonPanels panels, int rows, DateTimeOffset from, double span)
    {
        var isClock = span < FewDays;
        var step = isClock ? double.Max(double.Ceiling(span * 24 / SeasonPanels.TicksAtMost), 1) / 24 : double.Max(double.Ceiling(span / SeasonPanels.TicksAtMost), 1);
        var first = isClock ? (double.Ceiling(from.TimeOfDay.TotalHours) - from.TimeOfDay.TotalHours) / 24 : 0;
        for (var at = first; at <= span * 31 / 30; at += step)
        {
            // A second more: a third of a day has no end of digits, and the last of them would show another minute.
            var day = from.AddDays(at).AddSeconds(1);
            panels.Under(page, rows, at, day.ToString(isClock ? "HH:mm" : "MM-dd", CultureInfo.InvariantCulture));
            if (isClock && at == first)
            {
                panels.Under(page, rows, at, day.ToString("MM-dd", CultureInfo.InvariantCulture), line: 1);
            }
        }
    }
}
