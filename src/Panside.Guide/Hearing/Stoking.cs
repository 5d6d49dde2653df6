using System.Text.RegularExpressions;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>Wood in the words for throwing: <c>threw one in</c>, <c>chucked 2 more in</c>. Nobody throws sap, and it is no depth in inches.</summary>
internal static partial class Stoking
{
    /// <summary>A charge, where a line says so of a fire that burns wood; null for any other line.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig.</param>
    public static MeansLine? Understand(Moment at, string said, Rig rig) => !rig.IsBurner && Threw().IsMatch(said) ? new(new Did(at, DeedName.AddWood, null)) : null;

    /// <summary>Wood that may have gone in, and may be asked for: one last log. Null for any other line.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig.</param>
    public static MeansUnsure? Perhaps(Moment at, string said, Rig rig) => !rig.IsBurner && OneMore().IsMatch(said) ? new(new Did(at, DeedName.AddWood, null)) : null;

    [GeneratedRegex(@"^(?:(?:just|ok|okay|only|and|i|we|put) )*(?:one|1|another|two|2|a couple|a few)(?: (?:more|last|small|little|final))* (?:logs?|sticks?|splits?|chunks?|pieces?|slabs?|armloads?|armfuls?)(?: (?:in|on|more))*$|^(?:i |we |just |ok )*(?:snuck|sneaked|slipped|squeezed) (?:one|another|a|two|some).*\b(?:in|on)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex OneMore();

    [GeneratedRegex(
        @"^(?:(?:i|we|i'?ve|just|ok|okay|yes|yeah|yep|and|now|there|done) )*(?:(?:threw|thrown|chucked|tossed|shoved|lobbed|stoked) (?:in )?(?=.*\b(?:one|two|three|four|[0-9]+|another|couple|few|armload|armful|logs?|sticks?|splits?|pieces?|chunks?|slabs?)\b)|(?:popped|stuck) (?:in )?(?=.*\b(?:armload|armful|logs?|sticks?|splits?|pieces?|chunks?|slabs?)\b))(?:(?:a|an|one|two|three|four|another|some|couple|a couple|few|a few|[0-9]+|more|more of|of|big|small|dry|good|armload|armful|logs?|sticks?|splits?|pieces?|chunks?|slabs?) ?)+(?:in|on|in there|on the fire|in the fire|in the box)?(?: (?:again|now|more))*$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Threw();
}
