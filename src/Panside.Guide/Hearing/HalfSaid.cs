using System.Text.RegularExpressions;
using Panside.Guide.Lines;

namespace Panside.Guide.Hearing;

/// <summary>Lines that leave out what they speak of, or how much: they are asked back, and the grave one is taken for the pan.</summary>
internal static partial class HalfSaid
{
    /// <summary>What is plainly no cry, whatever danger it sounds like; null for any other line.</summary>
    /// <param name="said">The words, with single spaces.</param>
    public static Understood? BeforeCries(string said) =>
        WaterOnFire().IsMatch(said) ? new MeansNothing(NoWater) { IsPlain = true }
        : CoolsABurn().IsMatch(said) ? new MeansNothing(Cool) { IsPlain = true }
        : PastTheScale().IsMatch(said) ? new MeansNothing("Past its scale it is past syrup: pour sap in now. Then read it again.") { IsPlain = true }
        : Sinks().IsMatch(said) ? new MeansNothing("It sinks in what is far too thin. Boil on, and try again later.") { IsPlain = true }
        : Rains().IsMatch(said) ? new MeansNothing("Rain or snow in the pan only thins it. If anything leaks or smokes, say which.") { IsPlain = true }
        : NoBottom().IsMatch(said) ? new MeansNothing("The pan's bottom? Then say its depth, 'depth …'. If smoke or steam hides the room, say 'smoke'.") { IsPlain = true } : null;

    /// <summary>Common practice, no source.</summary>
    private const string NoWater = "No: steam and hot ash burst out of the door, and hot iron cracks. Let it burn down, door shut, and keep the pan deep.";

    [GeneratedRegex(@"^(?:so |and |ok |hey )*(?:can|could|should|may|shall|do|is it ok (?:to|if)|would it help to)(?: i| we| you)? ?(?:just )?(?:throw|pour|put|dump|spray|shovel|chuck)(?: some| a bit of| a pail of| a bucket of| cold)* (?:water|snow) (?:on|in|into|onto|over) (?:the |my |it |those |these )*(?:fire|coals|embers|firebox|logs|wood)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex WaterOnFire();

    /// <summary>A level that falls fast, of nothing that is named: the pan, unless foam is looked at. Null for any other line.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="open">The open prompt.</param>
    /// <param name="pan">The flow's word for a pan that runs dry; null where it has none.</param>
    public static Understood? Falls(string said, Prompt? open, string? pan) =>
        pan is not null && open?.Ask != ObservationName.Foam.Code && FallsFast().IsMatch(said) ? new MeansWord(pan, "") : null;

    /// <summary>What else is asked back, or looked at now; null for any other line.</summary>
    /// <param name="said">The words, with single spaces.</param>
    public static Understood? Understand(string said) =>
        NearlyEmpty().IsMatch(said) ? new MeansNothing("Nearly empty is how much? Read it: type 'tank' and the figure, like 'tank 2'.") { IsPlain = true }
        : SmellsOdd().IsMatch(said) ? new MeansNothing(TalkListener.WhichSmell) { IsPlain = true }
        : WentElsewhere().IsMatch(said) ? new MeansNothing("Nothing is taken of that. What is left shows in the tank: say 'tank …'.") { IsPlain = true }
        : FireDies().IsMatch(said) ? new MeansNothing("If no more wood goes in, say 'shutdown'. Of the coals say 'coals thin' or 'coals spent'.") { IsPlain = true }
        : null;

    private const string Cool = "Cool it all the same, twenty minutes under water. Answer what stands asked here.";

    [GeneratedRegex(@"^(?:oh |no |nah |well |it'?s |its |that'?s )*(?:just|only) (?:a |an |one )?(?:small |little |tiny |wee |bit of a )*(?:blister|scratch|scald|burn|red spot)s?(?: (?:though|on (?:my|his|her) \w+))?$|^(?:it'?s |its |i'?m |im |he'?s |she'?s |my \w+(?:'s| is)? |hand |finger |arm )*(?:running |holding |got )*(?:it )?under (?:the |a )?(?:cold |cool |running )*(?:tap|water|faucet|hose)(?: now)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex CoolsABurn();

    /// <summary>A thermometer that shows no more shows too much.</summary>
    [GeneratedRegex(@"^(?:the |my |oh |shit |thermometer )*(?:needle|thermometer|thermo|dial|pointer)(?:'?s)?(?: (?:is|has|gone|went|all|way|just|clean))* (?:off (?:the |its )?(?:scale|top|end|dial)|pegged|maxed|maxed out|pinned|buried)(?: (?:now|out|right|already))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex PastTheScale();

    [GeneratedRegex(@"^(?:the |my )?hydro(?:meter)?(?:'?s)? (?:just )?(?:sinks|sank|sinking|goes down|drops)(?: (?:to the bottom|right down|to the floor|like a stone|in it|out of sight|all the way))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Sinks();

    /// <summary>What falls from the sky thins the pan and is no leak of it.</summary>
    [GeneratedRegex(@"^(?:its |it'?s |it is |now )*(?:raining|snowing|pouring rain|sleeting)(?: (?:in|into|on|onto|right|here|hard|the|a bit|my|our|pan|pans|tank|everything|now|again|down|through|roof|hole|vent|cupola|snow|rain))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Rains();

    /// <summary>A fire that is let go is no operator who goes.</summary>
    [GeneratedRegex(@"^(?:the |my |and |so |now )*fire(?:'?s)?(?: is)? (?:going|dying|burning|gone|goin|dyin) (?:out|down)(?: (?:for the night|tonight|now|for tonight|slowly))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex FireDies();

    [GeneratedRegex(@"^(?:it |something |the pan |that |this |i |we |now |steam |the steam )*(?:smell(?:s|ed|ing|in)?)(?: like)?(?: (?:kind of|kinda|a bit|a little|something|sort of|really|rather))* (?:off|funny|weird|odd|strange|different|wrong|bad|not right|fishy)(?: (?:to me|now|here|in here))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex SmellsOdd();

    /// <summary>Sap that somebody has now, or the floor.</summary>
    [GeneratedRegex(@"^(?:(?:i|we|just|the|my|a|kid|kids|dog|cat|wife|somebody|someone|he|she|they|accidentally|had|have|also|oops|damn|shit)[ ,]+)*(?:gave|given|lost|spilled|spilt|knocked over|kicked over|tipped over|sold|wasted|borrowed) (?!.*\b(?:pan|draw\w*|valve)\b).*\b(?:gal\w*|quarts?|qts?|liters?|litres?|pails?|buckets?|sap)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex WentElsewhere();

    [GeneratedRegex(@"^(?:i |we |now |and )*(?:can'?t|cannot|can not|couldn'?t) see (?:the |its |any |no )*(?:bottom|floor)(?: (?:of (?:it|the pan|my pan)|any ?more|now))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NoBottom();

    [GeneratedRegex(@"^(?:oh |hey |shit |god |now |and )*(?:it'?s|it is|it|she'?s|(?:the |my )?(?:pan|level|sap|depth)(?:'?s| is)?) (?:going|dropping|falling|sinking|goes|drops|falls|coming) (?:(?:down|lower|real|really|very|too|so|pretty) )*(?:quick|quickly|fast|rapidly)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex FallsFast();

    [GeneratedRegex(@"^(?:the |my )?(?:head |sap )?tank(?:'?s| is| looks)? (?:nearly|almost|just about|about|near|close to|practically) (?:empty|dry|out|gone|done|finished|used up)(?: now)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NearlyEmpty();
}
