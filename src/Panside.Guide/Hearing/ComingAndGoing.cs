using System.Text.RegularExpressions;

namespace Panside.Guide.Hearing;

/// <summary>Who calls it a night, lies down or wakes up over a pan: asked whether it is clear, told what to do before, or to look at the pan first.</summary>
internal static partial class ComingAndGoing
{
    /// <summary>What it means; null where a line says anything else.</summary>
    /// <param name="said">The words, with single spaces.</param>
    public static MeansTalk? Understand(string said) => Quits().IsMatch(said) ? AskedPlainly.Asked("leave", said)
        : LiesDown().IsMatch(said) ? new(new("away", null, 1, said))
        : Slept().IsMatch(said) && !said.Any(char.IsDigit) ? new(new("word:back", null, 1, said))
        : null;

    [GeneratedRegex(@"^(?:i'?m |im |we'?re |i |gonna |going to |about to |ready to |think i'?ll |time to |so |ok |and |now )*(?:call(?:ing|in)?) it (?:a night|quits|a day)(?: now| soon)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Quits();

    [GeneratedRegex(@"^(?:i'?m |im |i |we'?re |gonna |going to |gotta |need to |have to |just |go |so |ok )+(?:lay|lie|lying|laying|sit) down(?: (?:for|a) .*)?$|^(?:please |hey |can you )*wake me(?: up)? (?:in|at|when|if)\b.*$|^(?:i'?m |im |gonna |going to |about to |need to |gotta |have to |taking |take |get |catch )+(?:a )?(?:(?:quick |little |short )*nap|some sleep|sleep|to bed)(?: (?:now|for|a|in) ?.*)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex LiesDown();

    [GeneratedRegex(@"^(?:uh|um|oh|sorry|oops|shit|damn|i|we|i'd|just|must have|musta|had|think i|so|well|,| )*(?:fell asleep|dozed off|nodded off|was asleep|woke up|been asleep|been (?:gone|away)|was gone|back now|just got back|got back|went in (?:the house |inside )?to|went inside to|went to bed|was in bed)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Slept();
}
