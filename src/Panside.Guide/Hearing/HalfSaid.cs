using System.Text.RegularExpressions;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>Lines that leave out what they speak of, or how much: they are asked back, and the grave one is taken for the pan.</summary>
internal static partial class HalfSaid
{
    /// <summary>What is plainly no cry, whatever danger it sounds like; null for any other line.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig.</param>
    public static Understood? BeforeCries(string said, Rig rig) =>
        rig.IsBatch && OffTheFire().IsMatch(said) ? new MeansNothing("Off the fire nothing burns. Say 'poured out' with how much, once it is out of the pan.") { IsPlain = true }
        : HouseDoor().IsMatch(said) ? new MeansNothing("Of a door of the house nothing is taken. Of the firebox door say 'firebox door'.") { IsPlain = true }
        : NoBottom().IsMatch(said) ? new MeansNothing("The pan's bottom? Then say its depth, 'depth …'. If smoke or steam hides the room, say 'smoke'.") { IsPlain = true }
        : Door().IsMatch(said) ? new MeansNothing(OpenDoor) { IsPlain = true }
        : null;

    /// <summary>
    /// A pan that fills by itself: its float hangs open, and sap runs over the fire. Where it is being flooded, or no float is there, it is asked back. Null
    /// for any other line.
    /// </summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="setting">What the session runs on.</param>
    /// <param name="open">The open prompt.</param>
    public static Understood? Floods(string said, Setting setting, Prompt? open) => !FillsItself().IsMatch(said) ? null
        : setting.Rig.Feed == Feed.ByFloat && !(open is not null && setting.Flow.DeedOf(open.Step) == DeedName.FloodPan) && setting.Flow.Dangers.Any(danger => danger.Code == "float")
            ? new MeansWord("float", "")
        : new MeansNothing("Is it flooded? Then say its depth. Does it run over by itself? Shut what feeds it, and say 'leaking'.") { IsPlain = true };

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
        : FireDies().IsMatch(said) ? new MeansNothing("If no more wood goes in, say 'shutdown'. Of the coals say 'coals thin' or 'coals spent'.") { IsPlain = true }
        : Quits().IsMatch(said) ? AskedPlainly.Asked("leave", said)
        : LiesDown().IsMatch(said) ? new MeansTalk(new("away", null, 1, said))
        : Slept().IsMatch(said) && !said.Any(char.IsDigit) ? new MeansTalk(new("word:back", null, 1, said))
        : null;

    [GeneratedRegex(@"^(?:(?:i|we|ok|okay|yes|yeah|now|so|just|there|got) )*(?:(?:took|lifted|pulled|moved|slid|set|got) (?:it|the (?:whole )?(?:pan|kettle|batch|syrup|thing))|(?:the )?(?:pan|kettle|batch)(?:'?s| is)?) off(?: of)?(?: the (?:fire|heat|plate|hot plate|arch|burner|stove|coals))?(?: now)?$|^(?:(?:ok|okay|yes|yeah|now|got my neighbor,?) )*(?:it'?s|it is|its) off(?: of)? the (?:fire|plate|hot plate|arch|stove|coals)(?: now)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex OffTheFire();

    [GeneratedRegex(@"^(?:i'?m |im |we'?re |i |gonna |going to |about to |ready to |think i'?ll |time to |so |ok |and |now )*(?:call(?:ing|in)?) it (?:a night|quits|a day)(?: now| soon)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Quits();

    /// <summary>A fire that is let go is no operator who goes.</summary>
    [GeneratedRegex(@"^(?:the |my |and |so |now )*fire(?:'?s)?(?: is)? (?:going|dying|burning|gone|goin|dyin) (?:out|down)(?: (?:for the night|tonight|now|for tonight|slowly))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex FireDies();

    [GeneratedRegex(@"^(?:the |my |our )*(?:front|back|house|shed|barn|sugarhouse|sauna|side|screen|truck|car|garage|cellar|oven|fridge|kitchen) doors?(?:'?s)? (?:(?:is|are|just|it) )*(?:won'?t|will not|doesn'?t|does not|can'?t|not|wont|dont|don'?t) (?:shut|close|latch|open|stay (?:shut|closed))(?: (?:any ?more|now|all the way|right|properly|tight|at all))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex HouseDoor();

    [GeneratedRegex(@"^(?:i'?m |im |i |we'?re |gonna |going to |gotta |need to |have to |just |go |so |ok )+(?:lay|lie|lying|laying|sit) down(?: (?:for|a) .*)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex LiesDown();

    /// <summary>No source; it tells of care and of no way to mend it.</summary>
    private const string OpenDoor = "Door open: flame can roll out, so keep people, sleeves and wood away from it. Put in no wood until it shuts. Keep the pan deep. Nothing is taken.";

    [GeneratedRegex(@"^(?:the |my |now |and )*(?:firebox |fire |arch |stove )?doors?(?:'?s)? (?:(?:is|are|just|it) )*(?:won'?t|will not|doesn'?t|does not|can'?t|not|wont|dont|don'?t) (?:shut|close|latch|stay (?:shut|closed))(?:ing)?(?: (?:any ?more|now|all the way|right|properly|tight|at all))*$|^(?:i |we )?(?:can'?t|cannot|couldn'?t|cant) (?:get |)(?:shut|close|latch)? ?(?:the |my )?(?:firebox |fire |arch )?door(?: to)?(?: shut| closed?| latch)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Door();

    [GeneratedRegex(@"^(?:the |my |oh |shit |hey |now |front |back |rear |syrup |flue )*pan(?:'?s)?(?: is)? (?:(?:flooding|overfilling|filling up by itself|filling by itself|filling itself)(?: (?:by itself|on its own|again|now))*|(?:overflowing|running over) (?:by itself|on its own))$|^(?:the |my |now |and |front |back |rear )*floats? (?:just |is |are )*(?:don'?t|won'?t|doesn'?t|does not|not|ain'?t|can'?t|wont|dont) (?:shut|shutting|clos(?:e|ing)|stop(?:ping)?|drop(?:ping)?|sink(?:ing)?|come up|go down|work(?:ing)?|mov(?:e|ing))(?: (?:off|any ?more|now|at all|the sap|all the way))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex FillsItself();

    [GeneratedRegex(@"^(?:i |we |now |and )*(?:can'?t|cannot|can not|couldn'?t) see (?:the |its |any |no )*(?:bottom|floor)(?: (?:of (?:it|the pan|my pan)|any ?more|now))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NoBottom();

    [GeneratedRegex(@"^(?:oh |hey |shit |god |now |and )*(?:it'?s|it is|it|she'?s|(?:the |my )?(?:pan|level|sap|depth)(?:'?s| is)?) (?:going|dropping|falling|sinking|goes|drops|falls|coming) (?:(?:down|lower|real|really|very|too|so|pretty) )*(?:quick|quickly|fast|rapidly)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex FallsFast();

    [GeneratedRegex(@"^(?:the |my )?(?:head |sap )?tank(?:'?s| is| looks)? (?:nearly|almost|just about|about|near|close to|practically) (?:empty|dry|out|gone|done|finished|used up)(?: now)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NearlyEmpty();

    [GeneratedRegex(@"^(?:uh|um|oh|sorry|oops|shit|damn|i|we|i'd|just|must have|musta|had|think i|so|well|,| )*(?:fell asleep|dozed off|nodded off|was asleep|woke up|been asleep|been (?:gone|away)|was gone|back now|just got back|got back)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Slept();
}
