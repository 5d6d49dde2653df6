using System.Text.RegularExpressions;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>A pan that is drawn by ladle: who ladles draws, and who has ladled has drawn.</summary>
internal static partial class Ladles
{
    /// <summary>The words of a draw for those of a ladle; the same words where they say anything else, or where the rig has a draw-off.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig.</param>
    public static string AsDraw(string said, Rig rig) => rig.DrawnBy != DrawnBy.Ladle ? said
        : Begun().IsMatch(said) ? "drawing"
        : Ended().Match(said) is { Success: true } match ? $"drew {match.Groups["amount"].Value}".Trim()
        : said;

    [GeneratedRegex(@"^(?:i'?m |we'?re |i am |we are |now |ok |okay )*ladling(?: (?:it|syrup|out|off|now))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Begun();

    [GeneratedRegex(@"^(?:i |we |i'?ve |we'?ve |have |just )*(?:ladled|done ladling|stopped ladling)(?: (?:it|some|syrup|out|off|about))*(?: (?<amount>[0-9¼½¾].*?)(?: (?:of syrup|out|off|syrup))*)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Ended();
}
