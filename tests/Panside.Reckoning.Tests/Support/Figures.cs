using System.Globalization;

namespace Panside.Reckoning.Tests.Support;

/// <summary>Published figures, as they stand in the project's own files.</summary>
public static class Figures
{
    public static IReadOnlyList<FigureRow> Of(string table)
    {
        using Stream stream = typeof(Figures).Assembly.GetManifestResourceStream(table + ".csv")
            ?? throw new ArgumentException($"There is no table {table}.", nameof(table));
        using StreamReader reader = new(stream);
        string[] lines = [.. reader.ReadToEnd().Split('\n').Where(l => l.Length > 0 && l[0] != '#')];
        string[] columns = lines[0].Split(',');
        return [.. lines.Skip(1).Select(line => new FigureRow(columns, line.Split(',')))];
    }

    /// <summary>The rows of one column that hold a figure, each beside what the code says for it.</summary>
    public static Within.Row[] Compare(string table, string column, Func<FigureRow, double> actual) =>
        [.. Of(table).Where(r => r.Has(column)).Select(r => new Within.Row(r.Label(column), r[column], actual(r)))];
}

/// <summary>One row of a table of figures.</summary>
public sealed class FigureRow(string[] columns, string[] cells)
{
    public double this[string column] => double.Parse(Text(column), CultureInfo.InvariantCulture);

    public bool Has(string column) => Text(column).Length > 0;

    public string Text(string column) => cells[Array.IndexOf(columns, column)];

    public string Label(string column) => $"{columns[0]} {cells[0]}, {column}";
}
