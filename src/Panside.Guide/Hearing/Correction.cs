using System.Text.RegularExpressions;

namespace Panside.Guide.Hearing;

/// <summary>A figure that is taken back in the same breath: of <c>pan 1.4, no wait 1.2</c> the later one counts.</summary>
internal static partial class Correction
{
    /// <summary>The line with the later figure in the place of the first; null where nothing is taken back.</summary>
    /// <param name="said">The line, with single spaces.</param>
    public static string? Of(string said) => TakenBack().Match(said) is not { Success: true } found ? null
        : found.Groups["name"].Value is { Length: > 0 } name && char.IsAsciiDigit(found.Groups["later"].Value[0]) ? $"{name.Trim()} {found.Groups["later"].Value}"
        : found.Groups["later"].Value;

    [GeneratedRegex(
        @"^(?<name>[a-z][a-z' -]*?)?\s*[0-9][0-9./ ]*[a-z°""%]*\s*[,.;-]*\s+(?:no,? (?:wait|sorry|make (?:that|it))|wait,? no|wait|sorry|oops|i mean|i meant|make that|scratch that|correction|rather),?\s+(?:it'?s |that'?s |it is )?(?<later>(?:[a-z][a-z -]* )?[0-9].*)$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex TakenBack();
}
