using System.Text;

namespace Panside.Reporting;

/// <summary>Writes a document as Markdown.</summary>
internal static class MarkdownPages
{
    /// <summary>The text. What a person typed stands in it as text: no mark of it becomes markup.</summary>
    public static string Of(Document document)
    {
        var text = new StringBuilder("# ").Append(Plain(document.Title)).Append('\n');
        foreach (var part in document.Parts)
        {
            text.Append('\n');
            switch (part)
            {
                case Heading heading:
                    text.Append("## ").Append(Plain(heading.Text)).Append('\n');
                    break;
                case Paragraph paragraph:
                    text.Append(Plain(paragraph.Text)).Append('\n');
                    break;
                case Picture picture:
                    text.Append(Plain(picture.Words)).Append('\n');
                    break;
                case Table table:
                    Write(text, table);
                    break;
            }
        }

        return text.ToString();
    }

    private static void Write(StringBuilder text, Table table)
    {
        Row(text, table.Columns);
        Row(text, [.. table.Columns.Select((_, column) => column >= table.Numbers ? "--:" : "---")], isRule: true);
        foreach (var row in table.Rows)
        {
            Row(text, row);
        }
    }

    private static void Row(StringBuilder text, IReadOnlyList<string> cells, bool isRule = false) =>
        text.Append("| ").AppendJoin(" | ", isRule ? cells : cells.Select(Plain)).Append(" |\n");

    private static string Plain(string text)
    {
        var plain = new StringBuilder();
        foreach (var letter in text)
        {
            plain.Append(letter switch
            {
                '\\' or '`' or '*' or '_' or '[' or ']' or '<' or '>' or '|' or '#' => $"\\{letter}",
                < ' ' => " ",
                _ => letter.ToString(),
            });
        }

        return plain.ToString();
    }
}
