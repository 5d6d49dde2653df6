using System.Text;
using Terminal.Gui.Text;

namespace Panside.Screen.Painting;

/// <summary>Text measured in columns of the terminal.</summary>
internal static class Columns
{
    private const string More = "...";

    /// <summary>Columns that a text takes.</summary>
    public static int Of(string text)
    {
        var columns = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            columns += Of(rune);
        }

        return columns;
    }

    /// <summary>Columns that a character takes.</summary>
    public static int Of(Rune rune) => rune.Value is >= ' ' and < 0x7f ? 1 : int.Max(rune.GetColumns(), 0);

    /// <summary>As much of the beginning as fits.</summary>
    public static string Cut(string text, int width)
    {
        var (columns, length) = (0, 0);
        foreach (var rune in text.EnumerateRunes())
        {
            columns += Of(rune);
            if (columns > width)
            {
                return text[..length];
            }

            length += rune.Utf16SequenceLength;
        }

        return text;
    }

    /// <summary>The text, or its beginning with dots where it does not fit.</summary>
    public static string Shorten(string text, int width) =>
        Of(text) <= width || width <= More.Length ? Cut(text, width) : Cut(text, width - More.Length) + More;

    /// <summary>The text filled with spaces up to a width.</summary>
    public static string Pad(string text, int width) => text + new string(' ', int.Max(width - Of(text), 0));

    /// <summary>The text without characters that would move the cursor.</summary>
    public static string Clean(string text)
    {
        if (!text.AsSpan().ContainsAnyInRange('\0', '\u001f') && !text.AsSpan().ContainsAnyInRange('\u007f', '\u009f'))
        {
            return text;
        }

        return string.Concat(text.Select(letter => char.IsControl(letter) ? ' ' : letter));
    }
}
