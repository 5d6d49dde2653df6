using System.Net;
using System.Text;

namespace Panside.Reporting;

/// <summary>Writes a document as one HTML file that fetches nothing and prints on A4 and on Letter.</summary>
internal static class HtmlPages
{
    /// <summary>Black on white with rules and weights only, light on dark where the reader has it so: it reads the same without color. Paper is always white, and no size of it is named.</summary>
    private const string Style = """
        :root { color-scheme: light dark; }
        body { font: 15px/1.4 Helvetica, Arial, sans-serif; color: #1f2933; background: #fff; max-width: 52rem; margin: 1.5rem auto; padding: 0 1rem; }
        h1 { font-size: 1.5rem; } h2 { font-size: 1.15rem; margin: 1.4rem 0 .4rem; break-after: avoid; }
        table { border-collapse: collapse; width: 100%; } thead { display: table-header-group; }
        th, td { text-align: left; vertical-align: top; padding: .15rem .6rem .15rem 0; border-bottom: 1px solid #9aa5b1; overflow-wrap: anywhere; }
        th:first-child, td:first-child { overflow-wrap: normal; }
        .many { font-size: .85em; line-height: 1.3; } .many th, .many td { overflow-wrap: break-word; padding-right: .45rem; }
        .many th:last-child, .many td:last-child { padding-right: 0; } .many td:first-child { white-space: nowrap; }
        .many tbody tr:last-child td { font-weight: bold; border-top: 2px solid #9aa5b1; border-bottom: 0; }
        th { border-bottom-width: 2px; } th.n, td.n { text-align: right; } tr, figure { break-inside: avoid; }
        figure { margin: .5rem 0; } svg { width: 100%; height: auto; }
        .wide { overflow-x: auto; }
        @page { margin: 14mm; }
        @media screen and (prefers-color-scheme: dark) {
          body { color: #d5dbe1; background: #141414; } th, td { border-color: #4a545e; } svg { filter: invert(.92) hue-rotate(180deg); }
        }
        @media print { body { font-size: 10pt; max-width: none; margin: 0; padding: 0; } .wide { overflow: visible; } .many { font-size: 8pt; } .many th, .many td { padding-right: .3rem; } }
        """;

    /// <summary>A table of more columns is set smaller, and no word in it is broken: on a narrow screen it slides instead.</summary>
    private const int Many = 8;

    /// <summary>The file's text.</summary>
    public static string Of(Document document)
    {
        var text = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
            .Append("<title>").Append(Plain(document.Title)).Append("</title>\n<style>\n").Append(Style).Append("\n</style>\n</head>\n<body>\n<h1>")
            .Append(Plain(document.Title)).Append("</h1>\n");
        foreach (var part in document.Parts)
        {
            switch (part)
            {
                case Heading heading:
                    text.Append("<h2>").Append(Plain(heading.Text)).Append("</h2>\n");
                    break;
                case Paragraph paragraph:
                    text.Append("<p>").Append(Plain(paragraph.Text)).Append("</p>\n");
                    break;
                case Picture picture:
                    text.Append("<figure>\n").Append(picture.Svg).Append("</figure>\n");
                    break;
                case Table table:
                    Write(text, table);
                    break;
            }
        }

        return text.Append("</body>\n</html>\n").ToString();
    }

    private static void Write(StringBuilder text, Table table)
    {
        text.Append("<div class=\"wide\"><table").Append(table.Columns.Count > Many ? " class=\"many\"" : "").Append(">\n<thead>");
        Row(text, "th", table.Columns, table.Numbers);
        text.Append("</thead>\n<tbody>\n");
        foreach (var row in table.Rows)
        {
            Row(text, "td", row, table.Numbers);
        }

        text.Append("</tbody>\n</table></div>\n");
    }

    private static void Row(StringBuilder text, string tag, IReadOnlyList<string> cells, int numbers)
    {
        text.Append("<tr>");
        for (var column = 0; column < cells.Count; column++)
        {
            text.Append('<').Append(tag).Append(column >= numbers ? " class=\"n\">" : ">").Append(Plain(cells[column])).Append("</").Append(tag).Append('>');
        }

        text.Append("</tr>\n");
    }

    /// <summary>A person may have typed anything: marks become letters, and what is no character at all goes.</summary>
    private static string Plain(string text) => WebUtility.HtmlEncode(string.Concat(text.Where(letter => letter >= ' ')));
}
