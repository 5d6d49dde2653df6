using System.Text.RegularExpressions;

namespace Panside.Guide.Hearing;

/// <summary>Who says on the page of a danger that there is none: what was cried is taken back, and nothing else.</summary>
internal static partial class FalseAlarm
{
    /// <summary>
    /// Whether words say that and nothing else. That there is no smoke, or no fire, is none of them: an alarm for carbon monoxide sounds without either.
    /// </summary>
    /// <param name="said">The words.</param>
    public static bool IsSaid(string said) => Says().IsMatch(said.Trim());

    /// <summary>Whether words say that somebody stays, which takes back no danger but that of having to go.</summary>
    /// <param name="said">The words.</param>
    public static bool SaysStays(string said) => Stays().IsMatch(said.Trim());

    private const string Before = @"^(?:(?:no|nah|nope|oh|sorry|wait|ok|okay|it'?s|its|it was|that was|that's|just a|a|all|my|fine|ok now)[ ,]+)*";

    [GeneratedRegex(Before + @"(?:false alarm|nothing(?:'?s| is)? wrong(?: here)?|never ?mind|mistake|my mistake|(?:only|just) (?:the |some )?steam|wrong page|no (?:danger|emergency|problem)(?: here| at all)?|not (?:an emergency|a danger|a problem|that|dry|leaking)|(?:was |were )?never (?:dry|leaking|stuck|burning)|i didn'?t (?:mean|say) that|(?:i )?meant nothing)[ .!]*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Says();

    [GeneratedRegex(Before + @"(?:i'?m |we'?re |i am )?(?:not (?:leaving|going)(?: anywhere)?|staying|right here|still here)[ .!]*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Stays();
}
