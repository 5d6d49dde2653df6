using System.Text.RegularExpressions;
using Panside.Guide.Hearing.Sentences;

namespace Panside.Guide.Hearing;

/// <summary>
/// Hears that somebody goes from the pan for a meal, to the house, for wood: <c>gonna grab some supper</c>. Who goes to bed, or home, does not come back and
/// is not meant; and a sentence with another word in it says something else.
/// </summary>
internal static partial class Errand
{
    /// <summary>Whether a line says so, and what it says of coming back, empty where nothing: <c>going for supper, back in 20</c>.</summary>
    public static (bool IsOne, string Back) In(string text) =>
        Gone().Match(Letters.Plain(text).Trim(' ', '.', '!', ',')) is { Success: true } match ? (true, match.Groups["back"].Value) : (false, "");

    private const string Who = "(?:(?:ok|okay|well|alright|hey|so|now|and|i'?m|im|i am|i'?ll|i will|i|we'?re|we|gonna|going to|gotta|got to|have to|need to|about to|just|quick|quickly|will) )*";
    private const string Go = "(?:going|goin|heading|headed|running|runnin|popping|stepping|walking|nipping|dashing|ducking|off|go|head|run|pop|step|walk|nip|dash|duck|away)";
    private const string Way = "(?:(?:back|in|inside|out|outside|over|up|down|off|quick|real quick|quickly|a minute|a sec) )*";
    private const string Meal = "(?:supper|dinner|lunch|breakfast|food|a bite|a bite to eat|something to eat|a snack|a sandwich|a coffee|coffee|a drink|a beer|tea|my supper|my dinner|my lunch)";
    private const string Place = "(?:house|kitchen|store|truck|car|barn|shed|woodshed|wood ?pile|garage|bathroom|toilet|outhouse|john|cabin|camp|phone|basement|porch)";
    private const string Fetch = "(?:grab|get|have|eat|fetch|make|fix|bring|find|check on|feed)(?:b?ing|ting)?";
    private const string Thing = "(?:" + Meal + "|some " + Meal + "|(?:some |a |more |another load of |an armload of )?(?:wood|firewood|sap|water|a light|flashlight|a flashlight|batteries|filters|a filter|pails|jars)|a? ?(?:flashlight|jacket|coat|shower)|the (?:kids?|dogs?|phone|door|jars|filter|filters|hydrometer|thermometer|wood|flashlight)|my (?:coat|jacket|phone|gloves|hat|boots))";

    [GeneratedRegex(
        "^" + Who + "(?:"
        + Go + " " + Way + "(?:for|to have|to eat|to grab|to get|to fetch|and eat|eat) ?(?:(?:some|my|a quick) )?(?:" + Meal + ")?"
        + "|" + Go + " " + Way + "(?:to|into|over to|up to|down to|back to|out to) (?:the |my )?" + Place + "(?: (?:for|to get|to grab|to fetch) (?:" + Thing + "))?"
        + "|" + Go + " " + Way + "(?:to|for|and) (?:" + Fetch + " )?(?:" + Thing + ")"
        + "|" + Go + " " + Way + "(?:for a (?:smoke|pee|leak|minute|bit|sec|second|while)|to pee|to the john|to eat)"
        + "|(?:gonna|going to|gotta|go|going|have to|need to|i'?ll|off to|heading to|about to) (?:go )?(?:and )?(?:quick )?(?:" + Fetch + ") (?:" + Thing + ")"
        + "|(?:grabbing|getting|having|eating|fetching|making) (?:" + Meal + "|some " + Meal + ")"
        + "|(?:supper|dinner|lunch|food)(?:'s| is) (?:ready|on|on the table)"
        + "|brb|(?:be )?right back|(?:be )?back (?:soon|in a (?:bit|sec|second|few|jiffy|moment|while))"
        + "|(?:supper|dinner|lunch|coffee|bathroom|food|meal|smoke|pee) (?:break|time|run)"
        + ")(?: (?:now|quick|real quick|for a bit|for a minute|for a sec|first|then|inside|with the family|with the kids|up at the house|at the house|in the house|brb))*(?:[,;.]* (?:and |then )?(?<back>(?:i'?ll |will |should )?(?:be )?(?:right )?back(?: .*)?|brb|[0-9].*min.*))?$",
        RegexOptions.CultureInvariant)]
    private static partial Regex Gone();
}
