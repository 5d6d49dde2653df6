using System.Text.RegularExpressions;
using Panside.Guide.Hearing.Sentences;

namespace Panside.Guide.Hearing;

/// <summary>
/// Hears that no sap is left, or nothing that could be poured, in the forms in which it is said: <c>we've run out of sap</c>, <c>the tank is dry
/// now</c>, <c>I've got nothing</c>. A sentence with another word in it says something else: of last Tuesday, of soon, of if.
/// </summary>
internal static partial class NothingLeft
{
    /// <summary>No sap is left: what the tank holds is nothing, whatever it was read at before.</summary>
    public const string Sap = "no sap left";

    /// <summary>Nothing at all can be poured.</summary>
    public const string ToPour = "nothing to pour";

    /// <summary>Which of the two a line says; null where it says anything else.</summary>
    public static string? In(string text)
    {
        var said = Begun().Replace(Ended().Replace(Letters.Plain(text).Trim(' ', '.', '!', ','), ""), "");
        return OfSap().IsMatch(said) || OfTank().IsMatch(said) ? Sap : AtAll().IsMatch(said) ? ToPour : null;
    }

    /// <summary>Whether one part of a line says that no sap is left: <c>out of sap, what now</c>. Who asks or supposes says nothing.</summary>
    public static bool IsSapIn(string text) => !text.TrimEnd().EndsWith('?') && Clause().Split(Letters.Plain(text)).Any(part => In(part) == Sap);

    /// <summary>Whether a line says none, where an amount is asked: <c>it's empty</c>, <c>nothing left</c>.</summary>
    public static bool IsNone(string text) => None().IsMatch(Letters.Plain(text).Trim(' ', '.', '!', ',')) || In(text) is not null;

    private const string Have = "(?:there'?s|there is|there are|i have|i've got|i've|i got|i|we have|we've got|we've|we got|we|have got|have|got)";

    /// <summary>What stands before it and changes nothing.</summary>
    [GeneratedRegex(
        @"^(?:(?:i |we )?(?:can'?t|cannot|couldn'?t) (?:pour|flood|fill)(?: it| the pan| any| anything| in)*,? (?=no\b|out\b|the\b|tank\b|there|we|i\b|nothing\b|sap\b))?(?:(?:ok|okay|oh|so|well|damn|shit|crap|and|now|uh|um|hey|yes|yeah|yep|no|nope|sorry|i think|i guess|looks like|it looks like|seems like|i'm afraid|turns out|um)\b,? +(?!sap\b|more\b|water\b))*",
        RegexOptions.CultureInvariant)]
    private static partial Regex Begun();

    /// <summary>What stands behind it and changes nothing.</summary>
    [GeneratedRegex(
        @"(?: (?:now|already|anymore|any more|at all|tonight|for tonight|completely|over here|here|on hand|at hand|right now|again|i think|i guess|either|sorry|left over|whatsoever))+$",
        RegexOptions.CultureInvariant)]
    private static partial Regex Ended();

    [GeneratedRegex(
        @"^(?:"
        + @"(?:(?:i'?m|i am|we'?re|we are) )?(?:(?:now|all|clean|completely|totally|just) )*out of (?:(?:the|my|our|all) )?sap"
        + @"|(?:(?:i|we|i'?ve|we'?ve|i have|we have) )?(?:just )?(?:ran|run|runned) (?:(?:clean|completely|all) )?out of (?:(?:the|my|our) )?sap"
        + @"|(?:" + Have + @" )?(?:(?:absolutely|just|basically) )?(?:no|zero|not any) (?:more )?sap(?: left)?(?: over)?"
        + @"|(?:(?:i|we) (?:don'?t have|do not have|haven'?t got|have not got|ain'?t got)|there (?:isn'?t|is not|ain'?t)) (?:any|no) (?:more )?sap(?: left)?"
        + @"|(?:(?:the|my|our|all the|all my) )?sap(?:'?s| is| has| just)? (?:(?:all|just|now|completely) )*(?:gone|out|finished|done|used up|run out|ran out|run dry|ran dry)"
        + @"|(?:(?:i|we|i'?ve|we'?ve) )?(?:just )?used (?:up )?(?:all|the last of) (?:(?:the|my|our) )?sap(?: up)?"
        + @"|(?:that'?s|thats|that was|this is|this was|it was) (?:(?:all|the last|the last bit) )?of (?:the |my |our )?sap"
        + @"|(?:that'?s|thats|that was) (?:all|all of) (?:the |my |our )?sap(?: (?:there is|i have|we have|i'?ve got|we'?ve got|i got|there was|left))?"
        + @"|(?:i'?m |im |we'?re |ran |run )?outta (?:the |my )?sap"
        + @"|(?:the )?last (?:pail|bucket|of it|of the sap)(?:'?s)? (?:is |just |just now )?(?:went|gone|poured) in"
        + @")(?: (?:in|from) (?:the |my |our )?(?:head |sap )?tank)?$",
        RegexOptions.CultureInvariant)]
    private static partial Regex OfSap();

    [GeneratedRegex(
        @"^(?:"
        + @"(?:(?:the|my|our|that) )?(?:(?:sap|head|feed|main) )?tank(?:'?s| is| has| just| ran| run|'?s run| has run| just ran)? (?:(?:now|just|all|completely|totally|bone|run|ran|gone|pretty much) )*(?:empty|dry|out|gone|emptied|zip|nada|zero|zilch)"
        + @"|(?:(?:the|my|our) )?barrels?(?:'?s| is| are| ran)? (?:(?:now|all|bone|run|gone) )*(?:empty|dry)"
        + @"|empty tank"
        + @"|(?:" + Have + @" )?(?:nothing|none|nothin) (?:left |more )?in (?:the |my |our )?(?:head |sap )?tank"
        + @")$",
        RegexOptions.CultureInvariant)]
    private static partial Regex OfTank();

    [GeneratedRegex(
        @"^(?:(?:" + Have + @" )?(?:absolutely )?(?:nothing|nothin|nuthin|nada|zip|zilch)(?: (?:left|more|else|handy|ready))*(?: to (?:pour|put|add|throw)(?: (?:in|on|with|it|to it|on it|in it))*)?"
        + @"|(?:i|we) (?:don'?t have|do not have|haven'?t got|ain'?t got) (?:anything|any|nothing)(?: (?:left|more|else))*(?: to (?:pour|put|add)(?: in| on it| in it)?)?"
        + @"|(?:" + Have + @" )?(?:no|no more|zero) sap,?(?: left)?,?(?: (?:and|or|nor))? no water(?: left)?|(?:" + Have + @" )?no (?:sap or water|water or sap|liquid)(?: left)?"
        + @"|(?:i |we )?(?:can'?t|cannot|cant) pour(?: (?:it|any|anything|sap|in|water|or))*"
        + @"|(?:(?:the|my|all|all the|all my|both) )?(?:pails?|buckets?)(?:'re| are|'?s| is)? (?:all )?(?:empty|dry))$",
        RegexOptions.CultureInvariant)]
    private static partial Regex AtAll();

    [GeneratedRegex(@"^(?:(?:it'?s|it is|she'?s|they'?re|all|there'?s|there is) )*(?:empty|none|zero|nothing|nothing left|none left|gone|all gone|bone dry|nil|zilch|nada|used up)$", RegexOptions.CultureInvariant)]
    private static partial Regex None();

    [GeneratedRegex(@"[,.;:!]+ *| (?:and|but|so|with|cause|because|then|while|as) ", RegexOptions.CultureInvariant)]
    private static partial Regex Clause();
}
