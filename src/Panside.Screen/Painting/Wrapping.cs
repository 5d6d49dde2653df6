namespace Panside.Screen.Painting;

/// <summary>Breaks text into rows between words.</summary>
internal static class Wrapping
{
    private const int Hang = 2;

    /// <summary>The rows of a text. Rows after the first stand in a little, so that the marks keep a column of their own.</summary>
    public static IReadOnlyList<string> Rows(string text, int width)
    {
        if (width < 1)
        {
            return [];
        }

        var indent = new string(' ', width > 4 * Hang ? Hang : 0);
        var rows = new List<string>();
        var row = Leading(text, width);
        var isFresh = true;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var rest = word;
            var joined = isFresh ? row + rest : row + " " + rest;
            if (Columns.Of(joined) <= width)
            {
                (row, isFresh) = (joined, false);
                continue;
            }

            if (!isFresh)
            {
                rows.Add(row);
                row = indent;
            }

            while (Columns.Of(row + rest) > width)
            {
                var part = Columns.Cut(rest, width - Columns.Of(row));
                if (part.Length == 0)
                {
                    // A wide character in a single column has no place at all.
                    rest = "";
                    break;
                }

                rows.Add(row + part);
                (row, rest) = (indent, rest[part.Length..]);
            }

            (row, isFresh) = (row + rest, rest.Length == 0);
        }

        if (!isFresh || rows.Count == 0)
        {
            rows.Add(row);
        }

        return rows;
    }

    private static string Leading(string text, int width)
    {
        var spaces = text.Length - text.TrimStart(' ').Length;
        return new(' ', int.Min(spaces, width > 4 * Hang ? Hang : 0));
    }
}
