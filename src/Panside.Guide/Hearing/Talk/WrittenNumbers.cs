using System.Globalization;
using Panside.Guide.Measures;

namespace Panside.Guide.Hearing.Talk;

/// <summary>Numbers that are written in digits.</summary>
internal static class WrittenNumbers
{
    private const string Glyphs = "¼½¾⅛⅜⅝⅞⅓⅔";
    private static readonly double[] GlyphValues = [0.25, 0.5, 0.75, 0.125, 0.375, 0.625, 0.875, 1.0 / 3, 2.0 / 3];

    /// <summary>What digits stand for, with a point, a comma or a stroke; null where they could be thousands.</summary>
    public static double? Digits(string text)
    {
        if (text.Contains('/', StringComparison.Ordinal) || Glyphs.Contains(text[^1], StringComparison.Ordinal))
        {
            return MeasureText.TryNumber(text, out var parts, out var rest) && rest.Length == 0 ? parts : null;
        }

        // 1,234 may be thousands: then it is no number that anybody should guess.
        return text.Length <= 10 && text.IndexOf(',', StringComparison.Ordinal) is var comma && (comma < 0 || text.Length - comma != 4) && double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) ? value : null;
    }

    /// <summary>A part of one: 1/2, ½; null where it is none.</summary>
    public static double? Fraction(string text) =>
        text.Length == 1 && Glyphs.IndexOf(text[0], StringComparison.Ordinal) is >= 0 and var glyph ? GlyphValues[glyph]
        : text.Contains('/', StringComparison.Ordinal) && Digits(text) is { } value and < 1 ? value : null;
}
