using System.Text.RegularExpressions;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>
/// Lines that the book of answers answers and the weights do not know: by what they name they can hardly mean anything else. Told or asked, nothing
/// is taken of them.
/// </summary>
internal static partial class AskedPlainly
{
    private const string Leave = "leave";

    /// <summary>Told of the blower: what the flow says of one that is out.</summary>
    private const string NoBlower = "With no blower put in no wood: it only smolders. The pan boils less and the coals last longer: keep the pan deep, and stay. Nothing is taken.";

    private const string Spoon = "By the spoon it is syrup, and nothing is taken. Read the thermometer, and say 'draw' with what it shows.";

    private static readonly (string Ask, Func<Rig, bool> IsThere, Func<string, bool> Says)[] Rows =
    [
        (Leave, _ => true, IsHowLong),
        ("bare", _ => true, said => HowLongToBurn().IsMatch(said)),
        ("pour", _ => true, said => HowMuchToPour().IsMatch(said)),
        ("snow", _ => true, said => OnlySnow().IsMatch(said)),
        ("draft", _ => true, said => IsOne(said) && Chokes().IsMatch(said) && !Fails().IsMatch(said)),
        ("shovel", rig => !rig.IsBurner, said => IsOne(said) && IsShovelled(said)),
        ("burner", rig => rig.IsBurner, said => IsItOff().IsMatch(said)),
        ("lid", _ => true, said => LidOff().IsMatch(said)),
        ("drained", rig => !rig.IsBatch, said => Drained().IsMatch(said)),
        ("sheets", rig => !rig.Has("thermometer"), said => IsOne(said) && !said.Contains('?', StringComparison.Ordinal) && Sheets().IsMatch(said)),
        ("ready", _ => true, said => LikeSyrup().IsMatch(said)),
    ];

    /// <summary>The question of the book; null where a line asks none of these.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig.</param>
    public static Understood? Understand(string said, Rig rig)
    {
        var words = said.TrimEnd('?', '.', '!', ' ');
        return Rows.FirstOrDefault(row => row.IsThere(rig) && row.Says(words)) is { Ask: { } ask } ? Asked(ask, said)
            : !rig.IsBurner && WhenFired().IsMatch(words) ? new MeansTalk(new("seen:did:" + DeedName.AddWood.Code, null, 1, said))
            : IsUnseen(words) ? new MeansTalk(new("unknown", null, 1, said))
            : RigFacts.Holds(rig, "forced-draft") && IsOne(words) && BlowerOff().IsMatch(words) ? new MeansNothing(NoBlower) { IsPlain = true }
            : rig.Has("thermometer") && IsOne(said) && !said.Contains('?', StringComparison.Ordinal) && Sheets().IsMatch(words) ? new MeansNothing(Spoon) { IsPlain = true }
            : null;
    }

    [GeneratedRegex(@"^(?:so |and )?(?:when|how long ago|what time|how long)(?: is it| has it been)? (?:did|was|is|have|has|since)(?:n't)? (?:i|we|it|the)?(?: last| since)? ?(?:i |we )?(?:last )?(?:put (?:any |more |the |some )?(?:wood|logs?) (?:in|on)|fire(?:d)?|stoke(?:d)?|charge(?:d)?|fed it|feed it|fed the fire|feed the fire|add(?:ed)? wood|load(?:ed)?(?: it| the fire)?|(?:wood|charge|stoking|load) (?:go in|went in|in))(?: (?:last|it|the fire|up))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex WhenFired();

    /// <summary>Whether words that were taken for raked coals say that coals went out of the firebox.</summary>
    /// <param name="words">The words.</param>
    public static bool IsShovelled(string words) => Shovels().IsMatch(words) && !Level().IsMatch(words);

    /// <summary>Whether somebody asks how much time there is, and not of what.</summary>
    /// <param name="words">The words.</param>
    public static bool IsHowLong(string words) => HowLongHaveI().IsMatch(words.TrimEnd('?', ' '));

    /// <summary>Whether steam hides what is to be looked at.</summary>
    /// <param name="words">The words.</param>
    public static bool IsUnseen(string words) => Unseen().IsMatch(words.TrimEnd('.', '!', ' '));

    /// <summary>A question of the book.</summary>
    /// <param name="ask">Its code.</param>
    /// <param name="said">The words.</param>
    public static MeansTalk Asked(string ask, string said) => new(new("ask:" + ask, null, 1, said));

    /// <summary>Whether a line tells one thing; what stands beside another is left to the ear that cuts.</summary>
    private static bool IsOne(string said) => !said.Contains(',', StringComparison.Ordinal) && !said.Contains(" and ", StringComparison.OrdinalIgnoreCase) && !said.Any(char.IsDigit);

    [GeneratedRegex(@"^(?:so |and )?how (?:long|much time|many minutes) (?:have|do|did) (?:i|we) (?:got|get|have)(?: (?:left|now|here))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex HowLongHaveI();

    [GeneratedRegex(@"^(?:so |and )?how (?:long|much time|many minutes)(?: (?:have|do|did) (?:i|we) (?:got|get|have))?(?: left)? (?:before|until|till) (?:it|she|the pan|the floor|my pan|this) (?:burns?|is dry|runs dry|goes dry|scorch\w*|is gone|is bare|shows|boils dry)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex HowLongToBurn();

    [GeneratedRegex(@"^(?:so |and )?how much (?:(?:more |cold |clean )*(?:water|snow) (?:do|should|must|shall|will|would|does|has) (?:i|we|it|the pan) (?:need|want|have to|pour|put|add|bring|take|get|use)(?: .*)?|(?:(?:more )?sap )?(?:do|should|must|shall) (?:i|we) (?:pour|dump)(?: .*)?)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex HowMuchToPour();

    [GeneratedRegex(@"^(?:(?:i|we|i've|ive|we've|only|just|have|got|has|a|an|lots|plenty|of|some|nothing|but|can|could|may|should|use|put|pour|dump|throw|in|is|will|does|do|ok|okay|work|buckets?|pails?|handfuls?|there|there's|theres|it|all|the|outside|here|clean|what|about|instead|no|not|any|water|tank|brook|frozen|full|with|and|to|pan|melt|melted),? ?)*\bsnow\b(?: (?:outside|here|ok|okay|do|work|count|help|in|into|the|pan|instead|of|water|left|is|there|around|everywhere|too|as|well|fine|good|only|and|no))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex OnlySnow();

    [GeneratedRegex(@"^(?:the |my )?(?:draft|draught|damper)s?(?:'?s)? (?:is |are |all )*(?:shut|closed)(?: (?:now|down|all the way))*$|\b(?:shut|shutting|close[ds]?|closing|block(?:ed|ing)?|plug(?:ged)?|turn(?:ed)? down|choked?|choking) (?:off |down |up |in )*(?:the |all |my |its |both )*(?:ash )?(?:draft|drafts|draught|damper|dampers|air|air intake|intake|vents?)\b|\b(?:choke[ds]?|choking|starve[ds]?|starving|smother(?:ed|ing)?|damp(?:ed|en|ened|ing)? down) (?:off |down |up )*(?:the |my )*(?:fire|coals|firebox)\b|\bbank(?:ed|ing)? (?:up |down )*(?:the|my) (?:fire|coals)\b|\bdamp(?:ed|ing)? (?:it|the fire|the coals) down\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Chokes();

    /// <summary>What did not come about is nothing done, and a touch less draft or another stove's is no choked fire.</summary>
    [GeneratedRegex(@"\b(?:stove|house|a touch|a bit|a little|a hair|half|halfway|partway|some|slightly|can'?t|cannot|won'?t|doesn'?t|didn'?t|haven'?t|never|stuck)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Fails();

    [GeneratedRegex(@"\b(?:shovel\w*|scoop\w*|haul\w*|dig(?:ging)?|dug|remov\w+|carry|carried|carrying|dump\w*|throw(?:ing)?|threw|take|took|taking|get|got) (?:(?:out|away) )?(?:of )?(?:the |some |all |my |of |those |hot |red |burning |most )*(?:coals?|embers)(?: .*)?\b(?:out|away|outside|ground|snow|bucket|pail|yard)\b|\b(?:shovel\w*|scoop\w*|haul\w*|dig|dug|carry|carried|dump\w*|throw|threw|take|took) (?:out|away) (?:the |some |all |my |of |those |hot |red |burning |most )*(?:coals?|embers)\b|\bshovel\w* (?:the |my )?(?:coals?|embers)$|\b(?:rake[d]?|raking|pull\w*|drag\w*) (?:the |some |all |my |hot |half |most |of )*(?:coals?|embers) out$|\b(?:rake[d]?|pull\w*|drag\w*) (?:out )?(?:the |some |all |my |hot )*(?:coals?|embers) (?:out )?(?:onto|on|into|out of|outside|in a|in the) ?(?:the |a |of )*(?:ground|snow|floor|bucket|pail|yard|firebox|arch|fire|door|outside)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Shovels();

    /// <summary>Coals that were raked level, and ashes of another day.</summary>
    [GeneratedRegex(@"\b(?:level|levell?ed|flat|even|evenly|even-like|across|tomorrow|morning|cold|will)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Level();

    [GeneratedRegex(@"\b(?:blower|fan)(?:'?s| is)? (?:turned |switched |shut )?off\b|\b(?:turn|turned|turning|shut|shutting|switch|switched|kill|killed|unplug|unplugged|stop|leave) (?:off )?(?:the |my )?(?:blower|fan)(?: off)?\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex BlowerOff();

    [GeneratedRegex(@"^(?:is|are) (?:the |my |it |our )*(?:burners?|gas|propane|oil|heat|heater|flames?|coil|element|power)? ?(?:really |still |all |turned |shut )*(?:off|on|out|shut|lit)(?: now| yet)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex IsItOff();

    [GeneratedRegex(@"^(?:i |we |there'?s |there is |it'?s )*(?:(?:can'?t|cannot|can not|couldn'?t) (?:really |even )?see (?:the |any |my |into the |a )*(?:coals?|embers|firebox|fire|pan|boil|bubbles|foam|channels|surface|thing|anything)(?: (?:for|through|in|because of) (?:all )?(?:the |this |that )?steam)?|(?:can'?t|cannot|can not) see (?:for|through|in|because of) (?:all )?(?:the |this )?steam|(?:way )?(?:too much|all) steam(?:,? (?:to see|to look|in the way|(?:i )?(?:can'?t|cannot) see)(?: .*)?)?)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Unseen();

    [GeneratedRegex(@"^(?:i |we |just |i've |have )*(?:(?:the )?(?:lid|cover)(?:'?s| is)? (?:back )?(?:off|open)(?: again| now)?|(?:took|taken|pulled|lifted|removed) (?:the |its )?(?:lid|cover)(?: off| away| up)?(?: again| now)?|(?:took|taken|pulled|lifted) off (?:the )?(?:lid|cover)|uncovered(?: it| the pan)?)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex LidOff();

    [GeneratedRegex(@"^(?:i |we |just |i've |have )*(?:drained|bailed out|emptied out) (?:the |my )?(?:whole )?pan(?: out)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Drained();

    [GeneratedRegex(@"^(?!.*\b(?:not|isn'?t|no|never|doesn'?t|won'?t|when|if|until|almost|nearly|is (?:it|that)|am i|can i|should i|would you|does that)\b)(?:.*\b(?:sheet(?:s|ing|ed)|apron(?:s|ing|ed)) .*\b(?:spoon|ladle|scoop|edge)\b.*|(?:it'?s |it |the syrup |syrup |now |is |the spoon |spoon )*(?:sheet(?:s|ing)|apron(?:s|ing|ed))(?: off| now| nicely| well)*)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Sheets();

    [GeneratedRegex(@"\b(?:tastes?|tasting|looks?) (?:just |already |a lot )?(?:like|of) syrup\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex LikeSyrup();
}
