using System.Text.RegularExpressions;
using Panside.Guide.Lines;

namespace Panside.Guide.Hearing;

/// <summary>
/// Boil and coals, on which a fire is left: a pan that boils is never heard as still, and a bed that glows never as spent, whatever the weights say.
/// </summary>
internal static partial class BoilAndCoals
{
    private const string BoilStill = "observed:boil:still";
    private const string CoalsSpent = "observed:coals:spent";

    /// <summary>What a whole line says that tells of a boil and nothing more: it is up. How hard it boils nobody said. Null where it says anything else.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="said">The words, with single spaces.</param>
    public static Understood? Boils(Moment at, string said) => ItBoils().IsMatch(said) ? new MeansLine(new Observed(at, ObservationName.Boil, "steady")) : null;

    /// <summary>What words may mean that were taken for a still boil or spent coals and say that it is not so; null where they do not say that.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="kind">What they were taken for.</param>
    /// <param name="words">The words.</param>
    public static Observed? Instead(Moment at, string kind, string words) => kind switch
    {
        BoilStill when Boiling().IsMatch(words) && !Ended().IsMatch(words) => new(at, ObservationName.Boil, Simmer().IsMatch(words) ? "simmering" : "steady"),
        BoilStill when NotStill().IsMatch(words) && !Boiling().IsMatch(words) => new(at, ObservationName.Boil, "simmering"),
        CoalsSpent when NotSpent().IsMatch(words) => new(at, ObservationName.Coals, "thin"),
        CoalsSpent when Glowing().IsMatch(words) && !Ended().IsMatch(words) => new(at, ObservationName.Coals, "deep"),
        _ => null,
    };

    [GeneratedRegex(
        @"^(?:(?:yes|yep|yeah|ok|okay|now|oh|and|so|well|hey),? )*(?:(?:the |this |that |my |our )?(?:whole |front |back )?(?:pan|sap|syrup|water|batch)(?:'?s| is)?|it(?:'?s| is)?|she(?:'?s| is)?) (?:now )?(?:boiling|bubbling|boils|bubbles)(?: (?:again|now|nicely|well|fine|good|steady|steadily|along|away|already|here|ok|okay|yes))*$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex ItBoils();

    /// <summary>The same in words that sound like a pan that runs dry, or an operator who goes.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="said">The words, with single spaces.</param>
    public static Understood? GoesWell(Moment at, string said) => BoilsAway().IsMatch(said) ? new MeansLine(new Observed(at, ObservationName.Boil, "rolling")) : null;

    [GeneratedRegex(@"^(?:it'?s |she'?s |its )?(?:(?:happily|nicely|just) )?(?:boiling|bubbling) away(?: (?:nicely|now|happily|fine))*$|^(?:it'?s |she'?s |its )?really going now$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex BoilsAway();

    [GeneratedRegex(@"\b(?:boils|boiling|boilin|bubbles|bubbling|rolls|rolling|simmers|simmering|simmer)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Boiling();

    [GeneratedRegex(@"\bsimmer", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Simmer();

    /// <summary>Any word by which what boils or glows does so no more.</summary>
    [GeneratedRegex(
        @"\b(?:no|not|nothing|none|nowt|nae|never|given|neither|nor|without|cannot|sto\w*|quit\w*|ceas\w*|done|over|finish\w*|end\w*|dead|deid|die[sd]?|dying|gone|still|calm|quiet|flat|smooth|hardly|barely|scarcely|off|down|out|past|left|last|asleep|sleep|settled|ash|ashes|cold|less)\b|n['’]t\b|\b(?:is|are|was|were|do|does|did|has|have|ai)nt\b",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Ended();

    [GeneratedRegex(@"(?:\b(?:not|almost|nearly|hardly|never)|n['’]t|\b(?:is|are|was|were|ai)nt) (?:(?:quite|yet|really|all|that|completely|fully|entirely|totally|so) )*(?:still|calm|quiet|flat|dead|settled)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NotStill();

    [GeneratedRegex(@"(?:\b(?:not|almost|nearly|hardly|never)|n['’]t|\b(?:is|are|was|were|ai)nt) (?:(?:quite|yet|really|all|that|completely|fully|entirely|totally|so|even) )*(?:spent|out|gone|dead|done|down|cold|gr[ea]y|black|finished)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NotSpent();

    [GeneratedRegex(@"\b(?:glow|glows|glowing|aglow|red|orange)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Glowing();
}
