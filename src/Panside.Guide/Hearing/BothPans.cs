using System.Text.RegularExpressions;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>The depths of two pans in one breath: <c>front 1.5 back 2</c>, <c>back pan two inches, front inch and a half</c>; and what else stands behind a comma.</summary>
internal static partial class BothPans
{
    /// <summary>What it means; null on a rig of one pan, where only one is named, or where a part is no depth and no reading.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="hear">Hears a reading with its name: <c>depth 1.5</c>.</param>
    public static MeansSeveral? Read(string said, Rig rig, Func<string, Understood?> hear)
    {
        if (rig.Back is null || said.Contains('?', StringComparison.Ordinal))
        {
            return null;
        }

        if (Behind().Match(said) is { Success: true } both && both.Groups["first"].Value[0] != both.Groups["second"].Value[0]
            && Depth(both, "first", "one") is { } one && Depth(both, "second", "two") is { } two)
        {
            return new([one, two]);
        }

        if (Begin().Count(said) == 1 && Named().Match(said) is { Success: true } alone && !alone.Groups["pan"].Value.StartsWith("f", StringComparison.OrdinalIgnoreCase))
        {
            // The pan behind, and not somebody who is back.
            return Read(hear($"back pan {LastWord().Replace(alone.Groups["rest"].Value, "")}")) is { } of ? new([of]) : null;
        }

        if (Begin().Count(said) != 2)
        {
            return null;
        }

        var parts = Begin().Split(said).Select(part => part.Trim(' ', ',', '.', ';')).ToList();
        var facts = new List<Understood>();
        foreach (var part in parts.SelectMany(part => Comma().Split(part)).Select(part => Ended().Replace(part.Trim(), "").Trim()).Where(part => part.Length > 0 && !Filler().IsMatch(part)))
        {
            var named = Named().Match(part);
            var heard = named.Success ? hear($"{(named.Groups["pan"].Value.StartsWith("f", StringComparison.OrdinalIgnoreCase) ? "depth" : "back pan")} {named.Groups["rest"].Value}") : hear(part);
            if (Read(heard) is not { } read)
            {
                return null;
            }

            facts.Add(read);
        }

        return facts.Count > 1 ? new(facts) : null;

        Understood? Depth(Match both, string pan, string amount) =>
            Read(hear($"{(both.Groups[pan].Value.StartsWith("f", StringComparison.OrdinalIgnoreCase) ? "depth" : "back pan")} {both.Groups[amount].Value}"));
    }

    /// <summary>Whether a line says of the front pan alone that nothing boils in it.</summary>
    /// <param name="said">The words, with single spaces.</param>
    public static bool IsFrontStill(string said) => FrontStill().IsMatch(said) && !Other().IsMatch(said);

    [GeneratedRegex(@"\bfront(?: pan| one)?(?:'?s| is| has| just| gone| went)* (?:still|quit\w*|stopped|calm|dead|quiet|not boiling|done boiling)\b|\b(?:still|calm|quiet)\b.*\bfront\b|\bonly the front\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex FrontStill();

    [GeneratedRegex(@"\b(?:back|both|rear|flue|boiling|rolling|simmering)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Other();

    /// <summary>The reading: beside the name of its pan it is no guess.</summary>
    private static MeansLine? Read(Understood? heard) => heard switch
    {
        MeansLine { Line: Reading } sure => sure,
        MeansUnsure(Reading unsure) => new(unsure),
        _ => null,
    };

    /// <summary>The pan named behind its depth: 2 inches in back and one and a half front.</summary>
    [GeneratedRegex(@"^(?!front|back|rear)(?:(?:i |we |it'?s |got |have |about |there'?s )*)(?<one>.+?) (?:in |on |at |up )?(?:the )?(?<first>front|back|rear)(?: pan| one)?(?:,| and|;)+ (?:about )?(?<two>.+?) (?:in |on |at |up )?(?:the )?(?<second>front|back|rear)(?: pan| one)?(?: now)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Behind();

    /// <summary>Where a pan's name begins.</summary>
    [GeneratedRegex(@"(?=\b(?:front|back|rear)\b)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Begin();

    [GeneratedRegex(@"(?: (?:now|deep|or so|again))+$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex LastWord();

    [GeneratedRegex(@", ", RegexOptions.CultureInvariant)]
    private static partial Regex Comma();

    [GeneratedRegex(@"(?: and| but|,|;)+$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Ended();

    [GeneratedRegex(@"^(?:(?:ok|okay|the|so|and|uh|um|whoops|oops|sorry|now|it'?s|reads?|pans?|yes|yeah|no)[ .,]*)+$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Filler();

    [GeneratedRegex(@"^(?<pan>front|back|rear)(?:'?s)?(?: pan)?(?:'?s| is| at| reads| depth| about| like|:| =)* (?<rest>.+)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Named();
}
