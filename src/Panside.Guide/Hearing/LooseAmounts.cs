using System.Text.RegularExpressions;

namespace Panside.Guide.Hearing;

/// <summary>Numbers as they are spoken, and not written: 1.5ish, three eights, no i meant 1.25, 225 and climbing.</summary>
internal static partial class LooseAmounts
{
    /// <summary>The line with its number alone; as it is where it holds none of these.</summary>
    /// <param name="said">The line.</param>
    public static string Plain(string said) =>
        AndClimbing().Replace(Meant().Replace(Eighths().Replace(Ish().Replace(said, "${number}"), "eighths"), ""), "${number}");

    [GeneratedRegex(@"(?<number>[0-9])-?ish\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Ish();

    [GeneratedRegex(@"(?<=\b(?:one|three|five|seven|1|3|5|7) )eights\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Eighths();

    [GeneratedRegex(@"^(?:no,? |sorry,? |oops,? |wait,? )*(?:i )?meant (?:to say )?(?=[0-9])", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Meant();

    /// <summary>225 and climbing: the number is what was read.</summary>
    [GeneratedRegex(@"^(?<number>[0-9][0-9.]*)(?: (?:°?[fF]|degrees))?,?(?: and| but)?(?: still| slowly| fast)? (?:climbing|rising|going up|coming up|creeping up)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex AndClimbing();
}
