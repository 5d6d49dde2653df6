using System.Globalization;
using System.Text.RegularExpressions;

namespace Panside.Guide.Measures;

/// <summary>Reads a number with or without a unit as a person writes it: <c>217.4F</c>, <c>1 1/2 in</c>, <c>1.5"</c>, <c>½</c>.</summary>
public static partial class MeasureText
{
    private const string Fractions = "¼½¾⅛⅜⅝⅞⅓⅔";
    private static readonly double[] FractionValues = [0.25, 0.5, 0.75, 0.125, 0.375, 0.625, 0.875, 1.0 / 3, 2.0 / 3];

    /// <summary>The number and the word behind it; false where the text does not start with a number.</summary>
    /// <param name="text">The text.</param>
    /// <param name="value">The number; a comma is a decimal point, unless three digits follow it: then it could mean thousands, and is refused.</param>
    /// <param name="rest">What stands behind the number, trimmed; may be empty.</param>
    public static bool TryNumber(string text, out double value, out string rest)
    {
        value = 0;
        rest = "";
        if (Pattern().Match(text.Trim()) is not { Success: true } match)
        {
            return false;
        }

        rest = match.Groups["rest"].Value.Trim();
        var written = match.Groups["whole"].Value;
        var comma = written.IndexOf(',', StringComparison.Ordinal);
        if (comma >= 0 && written.Length - comma == 4)
        {
            return false;
        }

        var whole = written.Replace(',', '.');
        if (whole.Length > 0 && !double.TryParse(whole, NumberStyles.Float, CultureInfo.InvariantCulture, out value))
        {
            return false;
        }

        var minus = match.Groups["sign"].Value is "-" or "−";
        if (match.Groups["above"].Success)
        {
            var below = double.Parse(match.Groups["below"].Value, CultureInfo.InvariantCulture);
            if (below == 0)
            {
                return false;
            }

            value += double.Parse(match.Groups["above"].Value, CultureInfo.InvariantCulture) / below;
        }
        else if (match.Groups["glyph"].Success)
        {
            value += FractionValues[Fractions.IndexOf(match.Groups["glyph"].Value, StringComparison.Ordinal)];
        }
        else if (whole.Length == 0)
        {
            return false;
        }

        value = minus ? -value : value;
        return double.IsFinite(value);
    }

    /// <summary>A number with a unit that is one of a dimension; the unit may be left out where one is assumed.</summary>
    /// <param name="text">The text.</param>
    /// <param name="dimension">What is measured.</param>
    /// <param name="assumed">The unit where none is written; null where one must be.</param>
    /// <returns>The measure, or a sentence that says what is wrong.</returns>
    public static (Measure? Measure, string? Fault) Read(string text, Dimension dimension, Unit? assumed) =>
        Said(text, dimension, assumed) switch
        {
            ({ } written, _) => (Measure.Of(written.Value, written.Unit), Measure.Fault(written.Value, written.Unit)),
            var (_, fault) => (null, fault),
        };

    /// <summary>The same before it is asked whether the quantity can hold it, for a door that tells more of a slip.</summary>
    /// <param name="text">The text.</param>
    /// <param name="dimension">What is measured.</param>
    /// <param name="assumed">The unit where none is written; null where one must be.</param>
    public static (Written? Written, string? Fault) Said(string text, Dimension dimension, Unit? assumed)
    {
        if (!TryNumber(text, out var value, out var word))
        {
            return (null, $"'{text}' is no number with a unit");
        }

        if (word.Length == 0)
        {
            return assumed is { } unit ? (new Written(value, unit), null) : (null, $"'{text}' has no unit");
        }

        if (dimension == Dimension.Length && FeetAndInches(value, word) is { } inches)
        {
            return (new Written(inches, Unit.Inch), null);
        }

        return UnitNames.FromWord(word) is { } written && written.Kind() == dimension
            ? (new Written(value, written), null)
            : (null, $"'{word}' is no unit of {dimension.ToString().ToLowerInvariant()}");
    }

    /// <summary><c>4 ft 2 1/2 in</c> in inches; null where it is not written so.</summary>
    /// <param name="feet">The number before the first unit.</param>
    /// <param name="behind">The first unit and what follows it.</param>
    private static double? FeetAndInches(double feet, string behind) =>
        FootThenMore().Match(behind) is { Success: true } match && TryNumber(match.Groups["more"].Value, out var inches, out var word)
        && (word.Length == 0 || UnitNames.FromWord(word) == Unit.Inch) && feet >= 0 && inches is >= 0 and < 12
            ? (12 * feet) + inches
            : null;

    [GeneratedRegex(@"^(?:ft|foot|feet|['′])\s*(?<more>[0-9.¼½¾⅛⅜⅝⅞⅓⅔].*)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex FootThenMore();

    [GeneratedRegex(
        @"^(?<sign>[-−+])?(?:(?<above>[0-9]{1,4})/(?<below>[0-9]{1,3})(?![0-9/])|(?<whole>[0-9]{1,7}(?:[.,][0-9]{1,6})?|\.[0-9]{1,6})(?:(?:\s+|-)(?<above>[0-9]{1,2})/(?<below>[0-9]{1,3})(?![0-9/])|\s?(?<glyph>[¼½¾⅛⅜⅝⅞⅓⅔]))?|(?<glyph>[¼½¾⅛⅜⅝⅞⅓⅔]))(?<rest>(?![0-9.,/]).*)$",
        RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();
}
