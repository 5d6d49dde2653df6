using System.Text.RegularExpressions;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>What is said of what heats a pan without wood: off, not off, turned down, burnt out, and that it does not shut.</summary>
internal static partial class BurnerWords
{
    private const string Heat = "(?:burners?|gas|propane|oil|heat|heater|flames?|coil|element|power|(?:hot ?)?plate|stove|range)";

    /// <summary>What it means on a rig with a burner; null where it says nothing of it.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="isAsked">Whether the step that is open asks to shut it off: then "it" is the burner.</param>
    public static Understood? Understand(Moment at, string said, Rig rig, bool isAsked) =>
        !rig.IsBurner ? null
        : (isAsked && StillOn().IsMatch(said)) || (Named().IsMatch(said) && StillOn().IsMatch(said)) ? AskedPlainly.Asked("burner-on", said)
        : Off().IsMatch(said) && (isAsked || Named().IsMatch(said)) ? new MeansLine(new Did(at, DeedName.ShutOff, null))
        : null;

    /// <summary>That what heats the pan went out, or has nothing to burn: said so, it is no fire and no dry pan. Null where a line does not say that.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="failed">The flow's word for it; null where it has none.</param>
    public static MeansWord? Fails(string said, Rig rig, string? failed) =>
        rig.IsBurner && failed is not null && (RanOut().IsMatch(said) || WentOut().IsMatch(said)) ? new(failed, "") : null;

    /// <summary>What burns is nearly used up, or stands there anew: neither puts it out nor lights it. Null where a line does not say that.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig.</param>
    public static MeansNothing? Fuel(string said, Rig rig) => !rig.IsBurner ? null
        : RunsLow().IsMatch(said) ? new($"Set the next one ready; nothing is taken. If it goes out, say '{rig.Heater} out'.") { IsPlain = true }
        : NewBottle().IsMatch(said) ? new("Smells nothing? Then light it, and say 'lit' once it burns.") { IsPlain = true }
        : null;

    /// <summary>That it was turned down and burns on, which shuts nothing off; null where a line does not say that.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig.</param>
    public static MeansTalk? TurnsDown(string said, Rig rig) => rig.IsBurner && TurnedDown().IsMatch(said) ? AskedPlainly.Asked("burner-on", said) : null;

    /// <summary>That gas comes out where none should, whose page is that of smoke; null where a line does not say that.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="setting">What the session runs on.</param>
    public static MeansCry? Leaks(string said, Setting setting) => setting.Rig.IsBurner && setting.Rig.Fuel == Rigs.Fuel.Gas && !said.Contains('?', StringComparison.Ordinal)
        && GasLeaks().IsMatch(said) && !Pan().IsMatch(said) && setting.Flow.Dangers.Any(danger => danger.Code == "smoke") ? new(["smoke"], IsSure: true) : null;

    [GeneratedRegex(@"^(?!.*\b(?:not?|isn'?t|never|stopped|fixed|if|last|yesterday|check\w*|test\w*)\b)(?:.*\b(?:hose|fitting|regulator|coupling|gas line|gas pipe|gas valve|bottle|cylinder)\b.*\b(?:leak\w*|hiss\w*)|.*\b(?:leak\w*|hiss\w*)\b.*\b(?:hose|fitting|regulator|coupling|gas line|gas pipe|gas valve|bottle|cylinder)\b)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex GasLeaks();

    /// <summary>That it cannot be shut off, which is no leak of the pan; null where a line does not say that.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="isAsked">Whether the step that is open asks to shut it off.</param>
    public static Understood? DoesNotShut(string said, Rig rig, bool isAsked) =>
        rig.IsBurner && WillNotShut().IsMatch(said) && (Named().IsMatch(said) || (isAsked && !Pan().IsMatch(said))) && !Smells().IsMatch(said) ? AskedPlainly.Asked("burner-stuck", said) : null;

    [GeneratedRegex(@"\b" + Heat + @"\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Named();

    [GeneratedRegex(
        @"^(?:(?:yes|yep|yeah|ok|okay|now|there|done),? )*(?:(?:i|we|i've|we've|have|just|also|had) )*(?:(?:turned|shut|switched|cut|closed) (?:(?:the|it|my|our|that|both|all|main|whole|burners?|gas|propane|oil|heat|heater|flames?|coil|element|power|valve|supply|bottle|cylinder|right|completely|all the way) ?)*off|(?:turned|shut|switched|cut) off (?:the |my )?" + Heat + @"|(?:killed|cut|shut) (?:the |my )?(?:burners?|gas|propane|oil|heat|heater|flames?)|(?:it|(?:the )?" + Heat + @"(?: valve)?)(?:'?s| is| are|s been| has been| was)? (?:now |all |completely |turned |shut |switched )*(?:off|shut))(?: (?:now|all the way|completely|already|at the (?:tank|bottle|valve|cylinder)|yes|too))*$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Off();

    [GeneratedRegex(
        @"^(?:i |we |i've |just |have )*(?:turned|put|set) (?:it|(?:the )?(?:burners?|gas|propane|heat|heater|flames?)) (?:way |right |all the way |a bit |a little )*(?:down|(?:on|to|on to) low)(?: (?:low|to low|a bit|a little|some|now|as far as it goes))*$|^turned down (?:the )?(?:burners?|gas|propane|heat|heater|flames?)(?: .*low)?$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex TurnedDown();

    [GeneratedRegex(
        @"^(?:no,? )?(?:it|she|(?:the )?(?:burners?|gas|propane|oil|heat|heater|flames?|pilot))(?:'?s| is| are)? (?:still (?:on|going|burning|lit|running|hot)|(?:just |only )?on low|not (?:off|out)|(?:still )?low)(?: (?:yet|on low|low|a bit|a little|now))*$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex StillOn();

    [GeneratedRegex(
        @"^(?:i |we |i'm |we're |i am |we are |have |just |all |it )*(?:ran|run|is|are)? ?out(?: of|ta) (?:gas|propane|oil|fuel)(?: now)?$|^(?:i'?m |we'?re |gotta |have to |need to |going to |just )*(?:swapp?ing?|swap|swappin|chang(?:e|ing)|changin|switch(?:ing)?) (?:the |my |out )*(?:gas |propane )?(?:bottles?|cylinders?|tanks?)(?: now| over)?$|^(?:the |my )?(?:gas|propane|oil|fuel)(?:'?s| is| has| just)* (?:ran out|run out|all gone|gone|used up|finished|empty)$|^(?:the |my |gas |propane |oil )*(?:bottle|cylinder|propane tank|gas tank|oil tank|fuel tank)(?:'?s| is| ran| has run| just ran)* (?:empty|out|dry|run out|done)$|^(?:the |my )?(?:gas |propane )?regulator(?:'?s| is| has| just)? (?:froze|frozen|iced|icing|freezing)(?: (?:up|over|solid|shut))*$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex RanOut();

    [GeneratedRegex(
        @"^(?:(?:oh|hey|shit|damn|uh|and|now|so|i think|looks like|the|my|both|one|wind|a gust|gust) )*(?:(?:burners?|flame|pilot|heater|heat|coil|element|(?:hot ?)?plate|stove)(?:'?s)?(?: (?:is|are|has|have|just|went|all|gone|all gone))* (?:out|gone out|went out|blew out|blown out|cut out|kicked out|gone cold|cold|gone|died|dead|quit|failed)|it(?:'?s)?(?: (?:has|just|is))* (?:gone out|went out|blew out|blown out|cut out|flamed out)|blew (?:it|the (?:flame|burner|fire)) out|(?:it |(?:the |my )?(?:burner|flame|pilot) |she )?(?:won'?t|will not|doesn'?t|can'?t get it to|not|wont|doesnt) (?:(?:re)?light(?:ing)?|stay (?:lit|on))|(?:keeps? |kept )?(?:going|blowing (?:it |the (?:flame|burner) )?) ?out|breaker (?:has )?(?:tripped|blew|popped|blown)|(?:tripped|popped|blew) (?:the |a )?(?:breaker|fuse))(?:(?: (?:on me|again|now|just now|for some reason|by itself))| and (?:it |i )?(?:won'?t|wont|can'?t|cant) (?:re)?light(?: it)?)*$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex WentOut();

    /// <summary>What is nearly used up burns still.</summary>
    [GeneratedRegex(@"^(?:the |my |our )?(?:gas|propane|oil|fuel|(?:gas |propane )?(?:bottle|cylinder))(?:'?s| is| are)? (?:getting |gettin |running |runnin |kind of |pretty |a bit )*(?:low|light|short|down)(?: (?:on me|now|again))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex RunsLow();

    [GeneratedRegex(@"^(?:ok |okay |yes |done |i |we |i've |got |have |just |there'?s |on )*(?:(?:(?:changed|swapped|switched|replaced|hooked up|connected) (?:out |over )?(?:to )?(?:the |a |my )?(?:new |fresh |full |other |next |second |gas |propane )*(?:bottle|cylinder|tank)s?)|(?:the |a )?(?:new|fresh|full|other|next|second) (?:gas |propane )?(?:bottle|cylinder|tank)(?: (?:is|on|in|hooked|connected))*)(?: (?:up|now|over|on))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NewBottle();

    [GeneratedRegex(
        @"\b(?:can'?t|cannot|can not|couldn'?t|unable to) (?:shut|turn|switch|close|get) .*\b(?:off|shut)\b|\b(?:can'?t|cannot|couldn'?t) (?:shut|close) (?:the )?(?:burner|gas|propane)|\b(?:won'?t|will not|does ?n'?t|wouldn'?t|not) (?:shut|turn|switch|go|close)(?:ting|ing)?(?: off| out| down)?$|\bstuck on$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex WillNotShut();

    [GeneratedRegex(@"\b(?:draw|drain|tap|spigot|faucet|pan|float|feed|sap|syrup|water)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Pan();

    /// <summary>Gas that is smelled or burns where it should not is another thing.</summary>
    [GeneratedRegex(@"\b(?:smell\w*|hiss\w*|leak\w*|fire|smoke|dizzy)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Smells();
}
