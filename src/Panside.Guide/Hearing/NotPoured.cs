using System.Text.RegularExpressions;

namespace Panside.Guide.Hearing;

/// <summary>Sap or water that somebody only has, or is about to pour: none of it is in the pan, and a forecast that counts it lets the pan run dry.</summary>
internal static partial class NotPoured
{
    /// <summary>What is told back.</summary>
    public const string PourIt = "Nothing is taken as poured. Pour it in, then say 'poured' with how much; of the tank say 'refill'.";

    /// <summary>Whether a line says of a pour that it is still to come, and tells nothing else.</summary>
    /// <param name="said">The words, with single spaces.</param>
    public static bool IsToCome(string said) => ToCome().IsMatch(said) && OfLiquid().IsMatch(said) && !Asks().IsMatch(said) && !said.Contains(',', StringComparison.Ordinal) && !said.Contains(" and ", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether words that were taken for a pour say that it is to come, or that somebody has it, and not that it went anywhere.</summary>
    /// <param name="words">The words.</param>
    public static bool Says(string words) => ToCome().IsMatch(words) || (Has().IsMatch(words) && !Went().IsMatch(words));

    [GeneratedRegex(
        @"\b(?:(?<!\b(?:had|managed|went|took .*) )to|will|shall|should|would|could|can|may|might|must|gonna|gunna|i'?ll|we'?ll|lemme|let me) (?:(?:just|now|also|soon|then|try to) )*(?:pour|add|put|fill|top|refill|dump|tip)\b(?! (?:it |them |this )?(?:out|off)\b)",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex ToCome();

    [GeneratedRegex(
        @"\b(?:have|has|having|i've|ive|we've|weve|i|we)(?: (?:only|just|about|still|maybe|some|got|like|roughly|around|another|also))* (?:[0-9<¼½¾]|an?\b|half\b|one\b|two\b|three\b|four\b|five\b|six\b|seven\b|eight\b|nine\b|ten\b|no\b|enough\b|plenty\b|water\b|sap\b|pails?\b|buckets?\b)|\b(?:left|ready|standing|spare|aside|waiting|on hand|at hand|only|there'?s|there is|there are|here)\b",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Has();

    [GeneratedRegex(@"\bpour\b|\b(?:gals?|gallons?|qts?|quarts?|l|liters?|litres?|pails?|buckets?)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex OfLiquid();

    [GeneratedRegex(@"\?|^(?:how|when|what|is|are|am|ready|should|do|does|can|may|which|where|why|too)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Asks();

    /// <summary>That it went somewhere; where it stands in a pail, it did not.</summary>
    [GeneratedRegex(
        @"\b(?:poured|pouring|pour|put|putting|added|adding|filled|filling|topped|tipped|tippled|emptied|dumped|dropped|threw|thrown|tossed|gave|given|went|goes|gone|splashed|sloshed|slopped|ladled|bailed|chucked|fed|used|refilled|replenished|flooded|brought up|up that|into|onto|pan got|pan has got)\b|\bin(?! (?:a |an |the |my |our |that |this |one |two )?(?:pails?|buckets?|cans?|jugs?|barrels?|truck|house|sink|kegs?|drums?|tubs?|kettle|pot|jars?|bottles?|hand|reserve|stock|store|all|total|here|there)\b)\b",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Went();
}
