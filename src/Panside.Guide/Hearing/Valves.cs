using System.Text.RegularExpressions;
using Panside.Guide.Knowledge;

namespace Panside.Guide.Hearing;

/// <summary>Valves that are told to be stuck or shut, each of its own: a draw-off that stays open lets the pan run out, one that stays shut lets it thicken, and behind a tank's valve that is shut it runs dry.</summary>
internal static partial class Valves
{
    /// <summary>What it means; null where a line says anything else.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="setting">What the session runs on.</param>
    public static Understood? Understand(string said, Setting setting) =>
        said.Contains('?', StringComparison.Ordinal) || Asks().IsMatch(said) ? null
        : DrawStaysOpen().IsMatch(said) ? Danger("leak", setting)
        : DrawStaysShut().IsMatch(said) ? Danger("stuck", setting)
        : setting.Rig.HasFloat && TankShut().IsMatch(said) && !Again().IsMatch(said) && setting.Flow.Words.TryGetValue("tank valve shut", out var shut) ? new MeansWord(shut, "")
        : null;

    private static MeansCry? Danger(string code, Setting setting) => setting.Flow.Dangers.Any(known => known.Code == code) ? new([code], IsSure: true) : null;

    private const string Draw = "(?:draw(?:[ -]?off)?(?: valve| tap)?|syrup (?:valve|tap)|spigot|faucet)";

    private const string Not = "(?:won'?t|will not|can'?t|cannot|doesn'?t|does not|couldn'?t|wont|cant|doesnt)";

    [GeneratedRegex(@"^\W*(?:how|what|when|where|why|should|can i|do i|is|are|does|did)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Asks();

    [GeneratedRegex(@"\b" + Draw + @"(?:'?s)?(?: is| has| got| just| all)* (?:stuck|jammed|hung|frozen|seized) (?:wide )?open\b|\b" + Draw + " " + Not + @" (?:shut|close|turn off|stop)\b|\b" + Not + @" (?:shut|close|stop) (?:the |my )?" + Draw + @"\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex DrawStaysOpen();

    [GeneratedRegex(@"\b" + Draw + @"(?:'?s)?(?: is| has| got| just| all)* (?:stuck|jammed|frozen|seized|plugged|clogged)(?: (?:shut|closed|solid|up|tight))*$|\b" + Draw + " " + Not + @" (?:open|budge|turn|move)\b|\b" + Not + @" (?:open|budge|turn|get) (?:the |my )?" + Draw + @"(?: open| to open)?\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex DrawStaysShut();

    [GeneratedRegex(@"^(?:(?:i|we|the|my|oh|shit|damn|hey|well|so|and|somebody|someone|he|she|they|kid|who|looks like|turns out) )*(?:(?:tank|feed|supply|sap|head tank) (?:valve|tap)(?:'?s)?(?: is| was| has been| were| got| just| still)* (?:shut|closed|off)|(?:shut|closed|turned off) (?:off )?(?:the |my )?(?:tank|feed|supply|sap|head tank) (?:valve|tap))(?: (?:the whole time|all along|off|on me|all this time|again|all the time|a while ago|an hour ago|ago|just noticed|i just noticed|before),?)*$|^(?:i |we |oh |shit |damn )*(?:forgot|never|didn'?t) (?:to )?(?:open|opened|turn on|turned on) (?:the |my )?(?:tank|feed|supply|sap|head tank) (?:valve|tap)\b.*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex TankShut();

    /// <summary>Who opened it again has no shut valve.</summary>
    [GeneratedRegex(@"\b(?:open|opened|on) (?:now|again|it)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Again();
}
