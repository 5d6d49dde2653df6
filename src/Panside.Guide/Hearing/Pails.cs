using System.Globalization;
using System.Text.RegularExpressions;
using Panside.Guide.Hearing.Talk;
using Panside.Guide.Knowledge;
using Panside.Guide.Measures;

namespace Panside.Guide.Hearing;

/// <summary>Pails as volumes, where the rig file says how large the pail is: <c>poured a pail</c>, <c>two buckets in</c>, <c>half a pail</c>.</summary>
internal static partial class Pails
{
    /// <summary>The text with each counted pail as a volume of this rig's; the same where the rig file names no pail.</summary>
    public static string InVolume(string text, Setting setting)
    {
        if (!setting.Rig.PailIsStated || KnownTalk.Ear(setting.Flow.Language) is not { } ear)
        {
            return text;
        }

        var pail = setting.Units.From(setting.Rig.Pail);
        return Counted().Replace(text, match => ear.CountIn(match.Groups["count"].Value) is { } count
            ? string.Create(CultureInfo.InvariantCulture, $"{double.Round(pail.Value * count, 2)} {pail.Unit.Shown()}")
            : match.Value);
    }

    [GeneratedRegex(@"\b(?<count>half an?|an?|another|one|two|three|four|five|six|[0-9]+(?: 1/2)?|1/2) (?:more )?(?:pails?|buckets?|pailfuls?)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Counted();
}
