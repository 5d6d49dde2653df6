namespace Panside.Reporting;

/// <summary>The season's book in a few lines, for the home screen: the sum, and the newest boils.</summary>
internal static class SeasonLines
{
    /// <summary>As many boils as leave the choices of the home screen in sight at 80 by 24.</summary>
    private const int Most = 5;

    /// <summary>What is said of a home folder with nothing but practice in it.</summary>
    public static IReadOnlyList<string> Empty { get; } = ["- No boil is in the book yet. Practice has its own: 'panside season --practice'."];

    /// <summary>The lines, newest boil first, 80 columns at the most but for the sum.</summary>
    /// <param name="book">The book.</param>
    public static IReadOnlyList<string> Of(SeasonBook book)
    {
        string[] unread = book.Unreadable.Count > 0 ? [$"- Not read: {book.Unreadable.Count}. 'panside season' tells why."] : [];
        if (book.Boils.Count == 0)
        {
            return [.. Empty, .. unread];
        }

        var columns = SeasonColumns.Of(book);
        var left = book.Boils.Count - Most;
        return
        [
            $"- {SeasonReport.Summary(book, columns)}",
            .. book.Boils.Reverse().Take(Most).Select(boil => $"- {SeasonReport.Date(boil)}: {Told(boil, columns)}"),
            .. unread,
            $"- {(left > 0 ? $"{left} more before these: " : "The whole book: ")}'panside season'; with charts: 'panside season --html'.",
        ];
    }

    private static string Told(BookedBoil boil, IReadOnlyList<SeasonColumn> columns)
    {
        string? Of(string key, string of) => columns.First(column => column.Key == key) is var column && column.Of(boil) is { } value
            ? $"{column.Shown(value)} {column.Unit}{of}" : null;
        var end = SeasonReport.End(boil) switch { "no" => "not ended", "unsafe" => "left before it was clear", var said => said };
        return string.Join(", ", new[] { Of("sap", " of sap"), Of("syrup", " of syrup"), Of("hours", ""), end }.OfType<string>()) + ".";
    }
}
