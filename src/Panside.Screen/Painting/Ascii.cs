using System.Text;

namespace Panside.Screen.Painting;

/// <summary>Text for a terminal that knows ASCII only: as many columns as before, so that nothing moves.</summary>
internal static class Ascii
{
    private const char Degrees = '°';

    /// <summary>The text with a blank for the sign of degrees and question marks for what cannot be shown.</summary>
    public static string Of(string text) => System.Text.Ascii.IsValid(text) ? text : string.Concat(text.EnumerateRunes().Select(Of));

    private static string Of(Rune rune) => rune switch
    {
        { IsAscii: true } => rune.ToString(),
        { Value: Degrees } => " ",
        _ => new('?', Columns.Of(rune)),
    };
}
