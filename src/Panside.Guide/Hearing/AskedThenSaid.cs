using System.Text.RegularExpressions;

namespace Panside.Guide.Hearing;

/// <summary>
/// What is told behind a question, or a supposition, in the same breath: how do I cool it, the stack is red. Who asks so tells what is so now, and the mark
/// at the end is the question's.
/// </summary>
internal static partial class AskedThenSaid
{
    /// <summary>What is told; null where a line asks and tells nothing behind it.</summary>
    /// <param name="text">The line.</param>
    public static string? Behind(string text) => Asked().Match(text) is { Success: true } asked && asked.Groups["said"].Value.TrimEnd('?', '!', '.', ' ') is var said
        && Tells().IsMatch(said) && !Goes().IsMatch(said) ? said : null;

    [GeneratedRegex(@"^\W*(?:(?:so|and|oh|ok|okay|god|quick|help|hey|please|excuse me|sorry|um|uh)\W+)*(?:what if|how|what|what's|whats|where|who|when|which|why|can|could|should|shall|do|does|did|is|are|may|will|would)\b[^,;?!–—]*(?:[,;?!–—]+|\s-+\s)\s*(?:'?cause |because |for |since )?(?<said>.+)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Asked();

    /// <summary>A sentence of what is so now: it's boiling dry, the liner is on fire, I've got to run.</summary>
    [GeneratedRegex(@"^(?:(?:the|my|our|this|that|his|her|a|an|all|one|some|both)\s)?(?:[\w-]+\s){0,3}?(?:[\w-]+(?:'s|’s|'m|’m|'re|’re|'ve|’ve)|is|are|am|has|have|keeps|won'?t|can'?t|isn'?t)\s", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Tells();

    /// <summary>What goes on with the question: or, if, then.</summary>
    [GeneratedRegex(@"^(?:or|and|then|if|when|once|unless|until|after|before|what|how|do|does|is|are|should|would|could|can|will|say|like|for instance)\b|\b(?:if|would|might|could|should)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Goes();
}
