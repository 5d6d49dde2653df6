using System.Collections.Frozen;
using System.Text.RegularExpressions;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>
/// Hears that a batch was poured out, in whatever order it is said: <c>we poured it out into the pot, 2 gal</c>. Every word must be one of
/// these; and only of a pan that is emptied whole, for elsewhere what is poured goes in.
/// </summary>
internal static partial class Emptying
{
    private static readonly FrozenSet<string> Verbs = FrozenSet.ToFrozenSet(["poured", "emptied", "tipped", "drained"], StringComparer.Ordinal);

    /// <summary>What is still to be done, or is told so by who has done it. A pan that tips or is empty is a cry in whatever form, so those verbs are not here.</summary>
    private const string ToDo = "pour";

    private const string IsItOut = "Is it out? Then say 'poured out', with the volume if you know it. 'is it syrup yet' tells whether it is due.";

    /// <summary>Who took the pan off the fire did it, whatever it is called by then.</summary>
    private static readonly string[] Lifted = ["took", "lifted"];

    private static readonly FrozenSet<string> Outward = FrozenSet.ToFrozenSet(["out", "off", "pot", "jar", "jars"], StringComparer.Ordinal);

    private static readonly FrozenSet<string> Others = FrozenSet.ToFrozenSet(
        ["i", "we", "i've", "we've", "have", "just", "now", "it", "is", "was", "the", "whole", "all", "of", "batch", "pan", "syrup", "into", "in", "to", "finishing", "pail", "can", "cans", "jar", "jars", "filter", "through", "about", "bout", "around", "too", "took", "lifted", "empty", "fire", "heat", "and", "together", "us", "two", "both"],
        StringComparer.Ordinal);

    /// <summary>What it means; null where it says nothing of a batch that is out.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="isAsked">Whether just that is asked: then what was dumped is the batch.</param>
    public static Understood? Understand(Moment at, string said, Rig rig, bool isAsked = false)
    {
        said = isAsked ? Dumped().Replace(said, "poured") : said;
        if (!rig.IsBatch || IntoThePan().IsMatch(said))
        {
            return null;
        }

        var words = Pouring.InDigits(said.ToLowerInvariant().Replace(",", " ", StringComparison.Ordinal));
        var amount = Amount().Match(words);
        Measure? told = amount.Success && MeasureText.Read(amount.Value, Dimension.Volume, rig.Units.Preferred(Dimension.Volume)).Measure is { } measure ? measure : null;
        var rest = (amount.Success ? words.Remove(amount.Index, amount.Length) : words).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (rest.Length == 0)
        {
            return null;
        }

        // A pan that tipped or emptied is a cry; who poured it out says so with the verb first.
        if (Array.IndexOf(rest, "pan") is >= 0 and var pan && !rest[..pan].Any(Lifted.Contains) && pan < Array.FindIndex(rest, Verbs.Contains))
        {
            return null;
        }

        if (rest[0] == ToDo && rest.Skip(1).All(word => Outward.Contains(word) || Others.Contains(word)) && (rest.Any(Outward.Contains) || rest.Contains("pan")))
        {
            return new MeansNothing(IsItOut);
        }

        return (amount.Success && told is null) || !rest.Any(Verbs.Contains) || !(rest.Any(Outward.Contains) || IsEmptied(rest)) || !rest.All(word => Verbs.Contains(word) || Outward.Contains(word) || Others.Contains(word))
            ? null
            : new MeansLine(new Did(at, DeedName.EmptyPan, told));
    }

    /// <summary>That a batch stands off the fire, which is neither a dry pan nor poured out yet; null where a line says anything else, or a draw-off stays on the fire.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig.</param>
    public static MeansNothing? OffTheFire(string said, Rig rig) =>
        rig.IsBatch && Off().IsMatch(said) ? new("Off the fire nothing burns. Say 'poured out' with how much, once it is out of the pan.") { IsPlain = true } : null;

    [GeneratedRegex(@"^(?:(?:i|we|ok|okay|yes|yeah|now|so|just|there|got) )*(?:(?:took|lifted|pulled|moved|slid|set|got) (?:it|the (?:whole )?(?:pan|kettle|batch|syrup|thing))|(?:the )?(?:pan|kettle|batch)(?:'?s| is)?) off(?: of)?(?: the (?:fire|heat|plate|hot plate|arch|burner|stove|coals))?(?: now)?$|^(?:(?:ok|okay|yes|yeah|now|got my neighbor,?) )*(?:it'?s|it is|its) off(?: of)? the (?:fire|plate|hot plate|arch|stove|coals)(?: now)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Off();

    /// <summary>Whether somebody emptied the pan; a pan that emptied is a cry.</summary>
    private static bool IsEmptied(string[] words) => Array.FindIndex(words, word => word is "emptied" or "drained") is >= 0 and var verb && Array.IndexOf(words, "pan") > verb;

    /// <summary>What goes into the pan, and what comes out of a pail or is a pail: no batch.</summary>
    [GeneratedRegex(@"\b(?:in|into|to) (?:the )?pan\b|\b(?:of|from) (?:the |a )?(?:pail|tank)\b|\b(?:poured|emptied|tipped)(?: out)? (?:the|a) pail\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex IntoThePan();

    [GeneratedRegex(@"\b(?:dumped|strained|tipped)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Dumped();

    [GeneratedRegex(@"[0-9¼½¾][0-9./ ¼½¾]*\s*(?:gallons?|gal|quarts?|qt|qts|liters?|litres?|l|ml)?\b", RegexOptions.CultureInvariant)]
    private static partial Regex Amount();
}
