using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Panside.Reporting;

/// <summary>The season's book as a document, as CSV and as JSON.</summary>
internal static class SeasonReport
{
    /// <summary>The document.</summary>
    /// <param name="book">The book.</param>
    /// <param name="practice">Whether it is of practice.</param>
    public static Document Of(SeasonBook book, bool practice)
    {
        var columns = SeasonColumns.Of(book);
        var rows = book.Boils.Select(boil => (IReadOnlyList<string>)[Date(boil), boil.Rig, .. columns.Select(column => column.Shown(column.Of(boil))), End(boil)])
            .Append(["all", Boils(book), .. columns.Select(column => column.Shown(column.Total)), ""]);
        List<Part> parts =
        [
            new Paragraph(Summary(book, columns)),
            .. book.Boils.Count(boil => boil.HasEnded) >= 2 ? [.. Pictures(book, columns), new Heading("Every boil")] : Array.Empty<Part>(),
            new Table(["date", "rig", .. columns.Select(column => column.Head), "ended"], [.. rows], Numbers: 2),
            .. book.Learned.Select(one => new Paragraph($"Of the rig {one.Rig}: {one.Learned.Says(null)} So its past boils had taught when its newest one here began ({one.Learned.Boils} of them, the last on {one.Learned.Date}).")),
            new Paragraph("Yield is syrup drawn beside what that boil's sap holds by a balance of sugar; a pan left sweet, or begun sweet, moves it from one boil to the next. "
                + "Rate is water boiled away for each hour from lighting to the last wood or the shut-off, as reckoned."),
        ];
        return new($"{(practice ? "PRACTICE: " : "")}Season's book, {Span(book)}", parts);
    }

    /// <summary>The pictures: its days, its boils, and what they were told ahead; each under what it shows.</summary>
    private static IEnumerable<Part> Pictures(SeasonBook book, IReadOnlyList<SeasonColumn> columns) =>
        new (string Heading, Picture? Picture)[]
        {
            ("Sap, syrup and yield, day by day", SeasonCharts.Of(book, columns)),
            ("How fast it boiled, and the wood for it", SeasonByBoil.Of(book, columns)),
            ("What was told ahead, and what came", SeasonForecasts.Of(book)),
        }.Where(one => one.Picture is not null).SelectMany(one => (Part[])[new Heading(one.Heading), one.Picture!]);

    /// <summary>One row a boil, with units in the names of the columns.</summary>
    public static string CsvOf(SeasonBook book)
    {
        var columns = SeasonColumns.Of(book);
        return Csv.Of(
        [
            ["begin", "file", "rig", .. columns.Select(column => $"{column.Key} ({column.Unit})"), "ended"],
            .. book.Boils.Select(boil => (IReadOnlyList<string>)
                [boil.Begin.Written, boil.File, boil.Rig, .. columns.Select(column => column.Of(boil) is { } value ? Csv.Number(double.Round(value, 4)) : ""), End(boil)]),
        ]);
    }

    /// <summary>Boils and totals; each value with its unit, null where it is not known.</summary>
    public static string JsonOf(SeasonBook book, bool practice)
    {
        var columns = SeasonColumns.Of(book);
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new() { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteBoolean("practice", practice);
            json.WriteStartArray("boils");
            foreach (var boil in book.Boils)
            {
                json.WriteStartObject();
                json.WriteString("begin", boil.Begin.Written);
                json.WriteString("file", boil.File);
                json.WriteString("rig", boil.Rig);
                Values(json, columns, column => column.Of(boil));
                json.WriteString("ended", End(boil));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartObject("all");
            json.WriteNumber("boils", book.Boils.Count);
            Values(json, columns, column => column.Total);
            json.WriteEndObject();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.ToArray()) + "\n";
    }

    /// <summary>The season in a sentence or two.</summary>
    public static string Summary(SeasonBook book, IReadOnlyList<SeasonColumn> columns)
    {
        string? Total(string key) => columns.First(column => column.Key == key) is { Total: { } total } column ? $"{column.Shown(total)} {column.Unit}" : null;
        string Joined(params string?[] parts) => string.Join(", ", parts.OfType<string>());
        var made = Joined(
            Total("sap") is { } sap ? $"{sap} of sap{(Total("sap-brix") is { } brix ? $" at {brix}" : "")}" : null,
            Total("syrup") is { } syrup ? $"{syrup} of syrup made" : null,
            Total("yield") is { } yield ? $"{yield} of what the sap holds" : null,
            Total("hours"), Total("wood") is { } wood ? $"{wood} of wood" : null, Total("rate"));
        var unsafely = book.Boils.Count(boil => boil is { HasEnded: true, IsSafe: false, IsJudged: true });
        var open = book.Boils.Count(boil => !boil.HasEnded);
        return $"{Boils(book)}{(made.Length > 0 ? ": " + made : "")}."
            + (unsafely > 0 ? $" {unsafely} ended without being clear to leave." : "") + (open > 0 ? $" {open} not ended." : "")
            + (book.LeftOut > 0 ? $" Left out: {book.LeftOut} of the other kind (practice and boils are never summed together)." : "");
    }

    /// <summary>The day on which a boil began.</summary>
    public static string Date(BookedBoil boil) => boil.Begin.Time.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>How it ended.</summary>
    public static string End(BookedBoil boil) => !boil.HasEnded ? "no" : boil.IsSafe ? "safe" : boil.IsJudged ? "unsafe" : "not judged";

    private static string Boils(SeasonBook book) => book.Boils.Count == 1 ? "1 boil" : $"{book.Boils.Count} boils";

    private static void Values(Utf8JsonWriter json, IReadOnlyList<SeasonColumn> columns, Func<SeasonColumn, double?> of)
    {
        foreach (var column in columns)
        {
            if (of(column) is { } value)
            {
                json.WriteStartObject(column.Key);
                json.WriteNumber("value", double.Round(value, 4));
                json.WriteString("unit", column.Unit);
                json.WriteEndObject();
            }
            else
            {
                json.WriteNull(column.Key);
            }
        }
    }

    private static string Span(SeasonBook book) =>
        book.Boils.Count == 0 ? "no boil" : Date(book.Boils[0]) == Date(book.Boils[^1]) ? Date(book.Boils[0]) : $"{Date(book.Boils[0])} to {Date(book.Boils[^1])}";
}
