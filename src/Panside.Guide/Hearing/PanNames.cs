using System.Text.RegularExpressions;

namespace Panside.Guide.Hearing;

/// <summary>The names by which one of two pans is meant.</summary>
internal static partial class PanNames
{
    /// <summary>Whether words name the pan behind, or what it alone has.</summary>
    public static bool OfBack(string words) => Back().IsMatch(words);

    /// <summary>Whether a name is that of the pan with the draw-off.</summary>
    public static bool IsFront(string name) => Front().IsMatch(name);

    [GeneratedRegex(@"\b(?:back|rear|flues?|behind)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Back();

    [GeneratedRegex(@"^(?:the )?(?:front|syrup pan)(?: pan)?(?:'s)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Front();
}
