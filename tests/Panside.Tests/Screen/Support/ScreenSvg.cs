using System.Globalization;
using System.Text;
using System.Xml;
using Panside.Screen;
using Panside.Screen.Painting;
using Terminal.Gui.Drawing;

namespace Panside.Tests.Screen.Support;

/// <summary>A painted screen as SVG, in the colors of the dark theme, sign by sign on a grid: what the README opens with.</summary>
internal static class ScreenSvg
{
    private const double Cell = 8.4;
    private const double Line = 17;
    private const double Margin = 12;
    private const double Baseline = 13;

    /// <summary>The picture's text.</summary>
    public static string Of(Frame frame, string title)
    {
        var palette = new Palette(Theme.Dark);
        var width = (frame.Rows.Max(row => row.Width) * Cell) + (2 * Margin);
        var height = (frame.Rows.Count * Line) + (2 * Margin);
        var text = new StringBuilder();
        using (var xml = XmlWriter.Create(text, new() { OmitXmlDeclaration = true, Indent = true, NewLineChars = "\n" }))
        {
            xml.WriteStartElement("svg", "http://www.w3.org/2000/svg");
            Say(xml, ("viewBox", $"0 0 {Number(width)} {Number(height)}"), ("width", Number(width)), ("height", Number(height)), ("role", "img"), ("aria-label", title));
            Say(xml, ("font-family", "DejaVu Sans Mono, Menlo, Consolas, monospace"), ("font-size", "14"));
            Rectangle(xml, 0, 0, width, height, Hex(palette.Of(Tone.Plain).Background), radius: 8);
            for (var row = 0; row < frame.Rows.Count; row++)
            {
                var column = 0;
                foreach (var piece in frame.Rows[row].Pieces)
                {
                    Draw(xml, piece, palette, Margin + (column * Cell), Margin + (row * Line));
                    column += Columns.Of(piece.Text);
                }
            }

            xml.WriteEndElement();
        }

        return text.Append('\n').ToString();
    }

    private static void Draw(XmlWriter xml, Piece piece, Palette palette, double x, double y)
    {
        var attribute = palette.Of(piece.Tone);
        var wide = Columns.Of(piece.Text) * Cell;
        if (piece.Tone > Tone.Strong && wide > 0)
        {
            Rectangle(xml, x, y, wide, Line, Hex(attribute.Background));
        }

        // Word by word, each at its own column: fonts differ in how wide a blank is.
        for (var at = 0; at < piece.Text.Length;)
        {
            var end = piece.Text.IndexOf(' ', at) is >= 0 and var blank ? blank : piece.Text.Length;
            if (end > at)
            {
                var word = piece.Text[at..end];
                xml.WriteStartElement("text");
                Say(xml, ("x", Number(x + (Columns.Of(piece.Text[..at]) * Cell))), ("y", Number(y + Baseline)), ("fill", Hex(attribute.Foreground)));
                Say(xml, ("textLength", Number(Columns.Of(word) * Cell)), ("lengthAdjust", "spacingAndGlyphs"));
                xml.WriteString(word);
                xml.WriteEndElement();
            }

            at = end + 1;
        }
    }

    private static void Rectangle(XmlWriter xml, double x, double y, double width, double height, string color, double radius = 0)
    {
        xml.WriteStartElement("rect");
        Say(xml, ("x", Number(x)), ("y", Number(y)), ("width", Number(width)), ("height", Number(height)), ("fill", color), ("rx", Number(radius)));
        xml.WriteEndElement();
    }

    /// <summary>A terminal gives its 16 colors as it likes; those that most of the picture is in, and the red, are given as a calm one has them.</summary>
    internal static string Hex(Color color) => color.GetClosestNamedColor16() switch
    {
        ColorName16.Black => "#0d1115",
        ColorName16.Gray => "#b9c0c7",

        // The library's own red is too bright for white words; a terminal's is darker.
        ColorName16.Red or ColorName16.BrightRed => "#b3261e",
        _ => string.Create(CultureInfo.InvariantCulture, $"#{color.R:x2}{color.G:x2}{color.B:x2}"),
    };

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    private static void Say(XmlWriter xml, params (string Name, string Value)[] attributes)
    {
        foreach (var (name, value) in attributes)
        {
            xml.WriteAttributeString(name, value);
        }
    }
}
