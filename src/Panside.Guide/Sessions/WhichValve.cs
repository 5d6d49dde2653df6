using System.Text.RegularExpressions;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;

namespace Panside.Guide.Sessions;

/// <summary>What is opened and shut without its name: the draw-off, or another valve, the draft or a door that is asked for just now.</summary>
internal static partial class WhichValve
{
    /// <summary>Whether who shut something speaks of syrup that was drawn.</summary>
    public static bool TellsOfADraw(string said) => Drawn().IsMatch(said);

    /// <summary>Whether what was opened may be another thing than the draw-off: nothing names it, nothing burns yet, there is an emergency or another valve is asked for, and no draw is at hand.</summary>
    public static bool MayBeAnother(Turn turn, string said) => !Draw().IsMatch(said) && !turn.Holds("draw-due") && !turn.Holds("draw-near")
        && (!turn.Holds("fire-lit") || turn.Holds("emergency-on") || Running().IsMatch(said) || (turn.State.Open is { Ask: Prompt.Confirm } open && Another().IsMatch(open.Text)));

    /// <summary>How the draw-off stands, by what was told.</summary>
    public static string Stands(Rig rig) => rig.HasDrawOff ? "The draw-off stands as shut" : "No ladling was told";

    [GeneratedRegex(@"\b(?:drew|drawn|ladled)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Drawn();

    [GeneratedRegex(@"\b(?:draw|drawing|syrup|spigot|faucet|tap|spout|ladling)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Draw();

    /// <summary>What runs again, or is open as was asked about something else, is no draw.</summary>
    [GeneratedRegex(@"\b(?:running|runs|again|going|flowing|loose|free|all along|whole time)\b|^(?:(?:i|just|ok|yes|we) )*opened it(?: (?:up|again|now))*$|^open (?:now|again)$|^(?:yes|yeah|yep|ok|done|it|its|all),? ?(?:it'?s|is|its)? ?(?:all )?(?:open|opened)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Running();

    [GeneratedRegex(@"\b(?:valve|draft|door|float|floats|stack|blower|vents|tank|feed(?! side))\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Another();
}
