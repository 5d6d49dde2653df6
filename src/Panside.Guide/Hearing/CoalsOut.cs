using System.Text.RegularExpressions;
using Panside.Guide.Knowledge;

namespace Panside.Guide.Hearing;

/// <summary>Coals or a log that fell out of the firebox: they burn what they lie on, and nobody raked them.</summary>
internal static partial class CoalsOut
{
    /// <summary>The cry of a fire; null where a line says anything else.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="setting">What the session runs on.</param>
    public static MeansCry? Understand(string said, Setting setting) =>
        !said.Contains('?', StringComparison.Ordinal) && Lies().IsMatch(said) && !NotSo().IsMatch(said) && setting.Flow.Dangers.Any(danger => danger.Code == "fire") ? new(["fire"], IsSure: true) : null;

    [GeneratedRegex(@"\b(?:coals?|embers?|burning logs?|burning wood)\b.*\b(?:on|all over|across|onto) (?:the |my )?(?:floor|ground|deck|boards|mat|rug)\b|\b(?:coals?|embers?|logs?|burning wood) (?:just |has |have )*(?:fell|fallen|rolled|tumbled|spilled|came rolling) out\b|\b(?:spilled|spilt|dropped) (?:the |some |hot |all the )*(?:coals|embers)\b|^(?:hot )?(?:coals|embers) everywhere$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Lies();

    [GeneratedRegex(@"\b(?:no|not|if|never|would|could|might|cold|dead|yesterday|last)\b|n'?t\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NotSo();
}
