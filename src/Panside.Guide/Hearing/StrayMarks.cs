using System.Text.RegularExpressions;

namespace Panside.Guide.Hearing;

/// <summary>What no person types: a terminal's control sequences, whose figures are no readings, and numbers with an exponent.</summary>
internal static partial class StrayMarks
{
    /// <summary>What is wrong with a line and what to type instead; null for nothing.</summary>
    /// <param name="text">The line.</param>
    public static string? Fault(string text) =>
        text.Any(letter => char.IsControl(letter) && !char.IsWhiteSpace(letter)) ? "Marks that are no letters came with it, so nothing is taken. Type it again, like 'depth 1.5'."
        : Exponent().Match(text) is { Success: true } match ? $"'{match.Value}' is no number as it is read off. Write it out, like '0.1'."
        : null;

    /// <summary>The line without them, for a cry.</summary>
    /// <param name="text">The line.</param>
    public static string Without(string text) => Control().Replace(text, " ").Trim();

    [GeneratedRegex(@"(?<![\w.])[0-9]+(?:[.,][0-9]+)?e[-+−]?[0-9]+\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Exponent();

    [GeneratedRegex(@"\x1b\[[0-9;?]*[ -/]*[@-~]|[\x00-\x08\x0e-\x1f\x7f-\x9f]", RegexOptions.CultureInvariant)]
    private static partial Regex Control();
}
