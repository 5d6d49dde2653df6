using System.Globalization;
using System.Text;

namespace Panside.Reporting;

/// <summary>Comma-separated values as RFC 4180 has them, with a line feed after each row.</summary>
internal static class Csv
{
    /// <summary>Rows as text.</summary>
    public static string Of(IEnumerable<IReadOnlyList<string>> rows)
    {
        var text = new StringBuilder();
        foreach (var row in rows)
        {
            text.AppendJoin(',', row.Select(cell => Quoted(Neutral(cell)))).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>A number with all its digits and a decimal point.</summary>
    public static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>Text as rows, each with the number of the line that it begins at, from 1. Empty lines are left out.</summary>
    public static IEnumerable<(int Line, IReadOnlyList<string> Cells)> Rows(string text)
    {
        var (cells, cell, line, begin, quoted) = (new List<string>(), new StringBuilder(), 1, 1, false);
        for (var at = 0; at <= text.Length; at++)
        {
            var letter = at < text.Length ? text[at] : '\n';
            if (quoted && at < text.Length)
            {
                if (letter == '"' && at + 1 < text.Length && text[at + 1] == '"')
                {
                    cell.Append('"');
                    at++;
                }
                else if (letter == '"')
                {
                    quoted = false;
                }
                else
                {
                    cell.Append(letter);
                    line += letter == '\n' ? 1 : 0;
                }
            }
            else if (letter == '"' && cell.Length == 0)
            {
                quoted = true;
            }
            else if (letter is ',' or '\n')
            {
                cells.Add(Plain(cell.ToString().Trim()));
                cell.Clear();
                if (letter == '\n')
                {
                    if (cells.Count > 1 || cells[0].Length > 0)
                    {
                        yield return (begin, cells);
                    }

                    (cells, line, quoted) = ([], line + 1, false);
                    begin = line;
                }
            }
            else
            {
                cell.Append(letter);
            }
        }
    }

    /// <summary>
    /// A text that a spreadsheet would take for a formula gets an apostrophe before it, as is good practice, and loses it where
    /// it is read; a number is none.
    /// </summary>
    private static string Neutral(string cell) => IsFormula(cell) ? "'" + cell : cell;

    private static string Plain(string cell) => cell.StartsWith('\'') && IsFormula(cell[1..]) ? cell[1..] : cell;

    private static bool IsFormula(string cell) => cell.TrimStart('\'') is ['=' or '+' or '-' or '@' or '\t' or '\r', ..]
        && !double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out _);

    private static string Quoted(string cell) =>
        cell.AsSpan().IndexOfAny(",\"\r\n") >= 0 ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;
}
