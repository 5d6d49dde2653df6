using System.Text.RegularExpressions;

namespace Panside.Guide.Hearing;

/// <summary>A figure that is taken back in the same breath: of <c>pan 1.4, no wait 1.2</c> the later one counts. Another thing behind it takes nothing back.</summary>
internal static partial class Correction
{
    /// <summary>The line with the later figure in the place of the first; null where nothing is taken back.</summary>
    /// <param name="said">The line, with single spaces.</param>
    public static string? Of(string said) => Denied().Match(said) is { Success: true } denied ? $"{denied.Groups["name"].Value} {denied.Groups["later"].Value}"
        : TakenBack().Match(said) is not { Success: true } found ? null
        : (found.Groups["name"].Value.Trim(), found.Groups["later"].Value) is var (name, later) && char.IsAsciiDigit(later[0]) ? $"{name} {later}".Trim()
        : name.Length > 0 && later.StartsWith(name + " ", StringComparison.OrdinalIgnoreCase) ? later
        : null;

    /// <summary>The depth is not 1.5, it's 0.8.</summary>
    [GeneratedRegex(
        @"^(?:the )?(?<name>[a-z][a-z -]*?) (?:is |was |reads )?not [0-9][0-9./ ]*[a-z°""%]*\s*[,;-]*\s+(?:it'?s|it is|that'?s|but|rather) (?<later>[0-9].*)$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Denied();

    [GeneratedRegex(
        @"^(?<name>[a-z][a-z' -]*?)?\s*[0-9][0-9./ ]*[a-z°""%]*\s*[,.;-]*\s+(?:no,? (?:wait|sorry|i mean|i meant|make (?:that|it))|wait,? no|wait|sorry|oops|i mean|i meant|make that|scratch that|correction|no),?\s+(?:it'?s |that'?s |it is )?(?<later>(?:[a-z][a-z -]* )?[0-9].*)$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex TakenBack();
}
