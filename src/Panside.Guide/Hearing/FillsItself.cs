using System.Text.RegularExpressions;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>A pan that floods though nobody floods it, and a float that does not shut.</summary>
internal static partial class FillsItself
{
    /// <summary>
    /// A pan that fills by itself: its float hangs open, and sap runs over the fire. Where it is being flooded, or no float is there, it is asked back. Null
    /// for any other line.
    /// </summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="setting">What the session runs on.</param>
    /// <param name="open">The open prompt.</param>
    public static Understood? Understand(string said, Setting setting, Prompt? open) => !Says().IsMatch(said) ? null
        : setting.Rig.Feed == Feed.ByFloat && !(open is not null && setting.Flow.DeedOf(open.Step) == DeedName.FloodPan) && setting.Flow.Dangers.Any(danger => danger.Code == "float")
            ? new MeansWord("float", "")
        : new MeansNothing("Is it flooded? Then say its depth. Does it run over by itself? Shut what feeds it, and say 'leaking'.") { IsPlain = true };

    [GeneratedRegex(@"^(?:the |my |oh |shit |hey |now |front |back |rear |syrup |flue )*pan(?:'?s)?(?: is)? (?:(?:flooding|overfilling|filling up by itself|filling by itself|filling itself)(?: (?:by itself|on its own|again|now))*|(?:overflowing|running over) (?:by itself|on its own))$|^(?:the |my |now |and |front |back |rear )*floats? (?:just |is |are )*(?:don'?t|won'?t|doesn'?t|does not|not|ain'?t|can'?t|wont|dont) (?:shut|shutting|clos(?:e|ing)|stop(?:ping)?|drop(?:ping)?|sink(?:ing)?|come up|go down|work(?:ing)?|mov(?:e|ing))(?: (?:off|any ?more|now|at all|the sap|all the way))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Says();
}
