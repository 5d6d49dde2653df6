using System.Text;

namespace Panside.Screen.Painting;

/// <summary>Text for a terminal that knows ASCII only: as many columns as before, so that nothing moves.</summary>
internal static class Ascii
{
    /// <summary>What the screen is drawn with: signs, lines, shades, heights, marks.</summary>
    private const string Drawn = "°↑↓…" + "│─┌┐└┘├┤┬┴┼╞═" + "░▒▓█" + "▁▂▃▄▅▆▇" + "●◆▲►╵·━≥";

    /// <summary>What stands for each, in the same order.</summary>
    private const string Plain = " ^v." + "|-++++++++++=" + ".:%#" + "__--===" + "*+^>'.=>";

    /// <summary>The text with its nearest sign for what is drawn, and question marks for what cannot be shown.</summary>
    public static string Of(string text) => System.Text.Ascii.IsValid(text) ? text : string.Concat(text.EnumerateRunes().Select(Of));

    private static string Of(Rune rune) => rune.IsAscii ? rune.ToString()
        : rune.IsBmp && Drawn.IndexOf((char)rune.Value, StringComparison.Ordinal) is >= 0 and var index ? Plain[index].ToString()
        : new('?', Columns.Of(rune));
}
