using System.Globalization;
using System.Text;

namespace Panside.Guide.Words;

/// <summary>
/// Text as a terminal may show it. A name or a note can hold what moves the cursor, turns the reading direction, hides a letter or
/// begins a new line; shown as <c>\u001B</c> it does none of that, and stays right inside a JSON string.
/// </summary>
public static class Visible
{
    /// <summary>One line of text: line feeds are shown too, so that no name makes a line of its own.</summary>
    public static string Line(string text) => Of(text, keepsLines: false);

    /// <summary>Text of several lines.</summary>
    public static string Lines(string text) => Of(text, keepsLines: true);

    private static string Of(string text, bool keepsLines)
    {
        var first = 0;
        while (first < text.Length && char.IsAscii(text[first]) && !char.IsControl(text[first]))
        {
            first++;
        }

        if (first == text.Length)
        {
            return text;
        }

        var shown = new StringBuilder(text.Length + 16).Append(text, 0, first);
        for (var at = first; at < text.Length;)
        {
            var length = Rune.TryGetRuneAt(text, at, out var rune) ? rune.Utf16SequenceLength : 1;
            if (length == 1 && (text[at] == '\t' || (keepsLines && text[at] == '\n')))
            {
                shown.Append(text[at]);
            }
            else if (IsHidden(CharUnicodeInfo.GetUnicodeCategory(text, at)))
            {
                foreach (var unit in text.AsSpan(at, length))
                {
                    shown.Append(CultureInfo.InvariantCulture, $"\\u{(int)unit:X4}");
                }
            }
            else
            {
                shown.Append(text, at, length);
            }

            at += length;
        }

        return shown.ToString();
    }

    /// <summary>Controls, what formats without a sign of its own (reading direction, zero width), separators of lines, half a character.</summary>
    private static bool IsHidden(UnicodeCategory category) => category is UnicodeCategory.Control or UnicodeCategory.Format
        or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate;
}
