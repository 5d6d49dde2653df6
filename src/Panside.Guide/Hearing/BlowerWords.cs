using System.Text.RegularExpressions;
using Panside.Guide.Knowledge;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>That a blower stopped, or runs again, in the words for any machine: <c>fan quit</c>, <c>the blower tripped the breaker</c>, <c>power's back</c>.</summary>
internal static partial class BlowerWords
{
    private const string Thing = "(?:blowers?|fans?|power|electricity|breaker|generator)";

    /// <summary>What it means on a rig with a blower; null where it says nothing of it.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="setting">What the session runs on: its flow's words for a blower that stopped, and for one that runs.</param>
    public static MeansWord? Understand(string said, Setting setting)
    {
        if (!RigFacts.Holds(setting.Rig, "forced-draft") || said.Contains('?', StringComparison.Ordinal))
        {
            return null;
        }

        if (Runs().IsMatch(said) && setting.Flow.Words.GetValueOrDefault("blower runs") is { } runs)
        {
            return new MeansWord(runs, "");
        }

        return Stopped().IsMatch(said) && setting.Flow.Words.GetValueOrDefault("blower died") is { } stopped ? new MeansWord(stopped, "") : null;
    }

    [GeneratedRegex(
        @"^(?:(?:the|my|our|hey|shit|damn|oh|ok|okay|well|so|and|now|uh|still|i think|i guess|looks like|god|crap) )*(?:" + Thing + @"(?:'?s)?(?: (?:is|has|are|have|just|went|and|gone|the|motor|again|been|all))* (?:(?:ran |run )?out of (?:gas|fuel)|quit|quits|died|dies|dead|stopped|stops|stopping|out|went off|down|gone|tripped|trips|failed|fried|broke|broken|busted|kaput|cut|burned out|burnt out|burned up|blown|blew|won'?t (?:run|start|spin|turn on|come on|go)|(?:not|isn'?t|ain'?t|aren'?t|never) (?:runn?ing?|runnin|spinn?ing?|spinnin|turning|turnin|working|workin|blowing|blowin|on|going|coming on))|no (?:more )?(?:blower|fan|power|electricity))(?: (?:on me|again|now|yet|out|off|here|out here|in here|just now|working|running|the breaker|a fuse|a breaker|in the (?:whole )?(?:shed|sugarhouse|house|barn)|on the blower|at all|completely|too))*$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Stopped();

    [GeneratedRegex(
        @"^(?:(?:the|my|our|ok|okay|yes|yeah|yep|and|now|so|got|all right|alright) )*" + Thing + @"(?:'?s)?(?: (?:is|are|has|came|come|just|now|up))* (?:back|back on|back up|on again|runs|running|runs again|running again|going again|working|working again|works|works again|on|spinning|spinning again|fixed)(?: (?:again|now|on))*$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Runs();
}
