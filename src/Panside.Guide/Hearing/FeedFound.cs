using System.Text.RegularExpressions;
using Panside.Guide.Hearing.Sentences;

namespace Panside.Guide.Hearing;

/// <summary>
/// Hears that the valve of the tank was found shut, or is open again: <c>found the valve closed, opened it</c>. It is no draw-off, and no leak. A sentence
/// with another word in it says something else.
/// </summary>
internal static partial class FeedFound
{
    /// <summary>What stands for all of them, among the words of a step's yes.</summary>
    public const string Open = "tank valve open";

    /// <summary>Whether a line says so.</summary>
    public static bool Is(string text) => Found().IsMatch(Comma().Replace(Letters.Plain(text).Trim(' ', '.', '!', ','), " "));

    private const string Valve = "(?:(?:the|my|our) )?(?:sap )?(?:tank|head tank|feed|sap)(?: line|'s)? valve";
    private const string Shut = "(?:(?:half|partly|still|almost|nearly|all|only|left|mostly|a bit|been|halfway) )*(?:shut|closed|off|half open|turned off|half way)";
    private const string Opened = "(?:(?:so|and|but|now) )*(?:(?:i|we|i'?ve|it'?s|its|just|have|all|it is|is|back) )*(?:(?:re)?opened|open|turned)(?: (?:it|'?er|her|up|again|now|back|on|all|the|way|full|fully|wide))*";

    [GeneratedRegex(
        "^(?:"
        + Valve + "(?:'s)? (?:was|had been|got|has been|'d been) " + Shut + "(?: all (?:the|this) time)?(?: " + Opened + ")?"
        + "|(?:(?:the|my) )?valve was " + Shut + " " + Opened
        + "|(?:(?:i|we|just|i'?ve|oh|so) )*found (?:that )?(?:" + Valve + "|(?:the )?valve) (?:was )?" + Shut + "(?: " + Opened + ")?"
        + "|(?:somebody|someone|the kids?|he|she|they|i)(?: had)? (?:shut|closed|bumped|turned off) " + Valve + " " + Opened
        + "|(?:(?:i|we|just|i'?ve|we'?ve) )*(?:re)?opened (?:up )?" + Valve + "(?: (?:again|now|up|all the way|back up|fully|wide))*"
        + "|" + Valve + "(?:'s| is)? (?:(?:now|back|all the way|fully|wide) )*open(?: (?:again|now|all the way))*"
        + ")$",
        RegexOptions.CultureInvariant)]
    private static partial Regex Found();

    [GeneratedRegex(" *[,;.] *| - ", RegexOptions.CultureInvariant)]
    private static partial Regex Comma();
}
