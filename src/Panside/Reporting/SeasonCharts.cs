using System.Globalization;
using Panside.Picturing;

namespace Panside.Reporting;

/// <summary>The season over its days: sap, syrup beside what the sap holds, and rate and wood of the rig.</summary>
internal static class SeasonCharts
{
    private const int Width = 800;
    private const double Left = 66;
    private const double Right = 16;
    private const double Top = 12;
    private const double Gap = 16;
    private const double Height = 110;
    private const double Foot = 30;
    private const int DateTicksAtMost = 8;

    private static readonly Stroke Bar = new("#52606d", 5);
    private static readonly Stroke Held = new("#1f2933", 1.5);
    private static readonly Stroke Line = new("#c2500a", 1.5);
    private static readonly string[] Shown = ["sap", "syrup", "rate", "wood-per-water"];

    /// <summary>The picture with its words.</summary>
    public static Picture Of(SeasonBook book, IReadOnlyList<SeasonColumn> columns)
    {
        var shown = Shown.Select(key => columns.First(column => column.Key == key)).ToList();
        var held = columns.First(column => column.Key == "syrup-by-balance");
        var words = "Over the days of the season: " + string.Join("; ", shown.Select(column => Words(book, column))) + ". The tick over a bar of syrup is what that boil's sap holds.";
        var first = book.Boils[0].Begin.Time.Date;
        double Day(BookedBoil boil) => (boil.Begin.Time.DateTime - first).TotalDays;
        var days = new Axis(-0.5, double.Max(Day(book.Boils[^1]), 1) + 0.5, 1);
        using var page = new SvgPage(Width, (int)(Top + (shown.Count * (Height + Gap)) + Foot), "The season over its days", words);
        var panel = new Panel(new(Left, Top), Width - Left - Right, Height, days, new(0, 1, 1));
        foreach (var (column, row) in shown.Select((column, row) => (column, row)))
        {
            bool isBar = column.Key is "sap" or "syrup";
            var known = book.Boils.Where(boil => column.Of(boil) is not null).Select(boil => (Boil: boil, Value: column.Of(boil)!.Value)).ToList();
            var most = known.Select(one => one.Value).Concat(column.Key == "syrup" ? book.Boils.Select(boil => held.Of(boil) ?? 0) : []).DefaultIfEmpty(1).Max();
            panel = panel with { Corner = new(Left, Top + (row * (Height + Gap))), Values = Axis.FromZero(double.Max(most, 0), 4) };
            Frame(page, panel, column.Head);
            foreach (var (boil, value) in known)
            {
                var at = panel.At(Day(boil), double.Max(value, 0));
                if (isBar)
                {
                    page.Line(Bar, panel.At(Day(boil), 0), at);
                }
                else
                {
                    page.Dot(Line.Color, at);
                }

                if (column.Key == "syrup" && held.Of(boil) is { } balance)
                {
                    var tick = panel.At(Day(boil), balance);
                    page.Line(Held, tick with { X = tick.X - 5 }, tick with { X = tick.X + 5 });
                }
            }

            if (!isBar)
            {
                page.Line(Line, known.Select(one => panel.At(Day(one.Boil), double.Max(one.Value, 0))));
            }
        }

        var step = int.Max((int)double.Ceiling((days.To - days.From) / DateTicksAtMost), 1);
        for (var day = 0; day < days.To; day += step)
        {
            page.Text(new(panel.Across(day), panel.Bottom + 17), first.AddDays(day).ToString("MM-dd", CultureInfo.InvariantCulture), new(11) { Anchor = "middle" });
        }

        return new(page.End(), words);
    }

    private static void Frame(SvgPage page, Panel panel, string label) => (panel with { Clock = panel.Clock with { Step = double.MaxValue } }).Frame(page, label);

    private static string Words(SeasonBook book, SeasonColumn column)
    {
        var values = book.Boils.Select(column.Of).OfType<double>().ToList();
        return values.Count == 0 ? $"{column.Title} not known" : $"{column.Title} {column.Shown(values.Min())} to {column.Shown(values.Max())} {column.Unit}";
    }
}
