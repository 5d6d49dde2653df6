using System.Collections.Frozen;
using System.Text.RegularExpressions;
using Panside.Guide.Hearing.Sentences;
using Panside.Guide.Lines;

namespace Panside.Guide.Hearing;

/// <summary>
/// The short words for what is seen, where just that is asked: <c>down</c> is the foam there, <c>gone</c> the coals, <c>still</c> a smell that is still
/// there. By itself each could be of another thing.
/// </summary>
internal static partial class SeenWhereAsked
{
    private static readonly FrozenDictionary<string, string> States = new (string Seen, string[] Words)[]
    {
        ("boil:rolling", ["hard", "strong", "full", "boiling hard", "going strong", "cooking", "cookin", "roaring", "big bubbles", "wild"]),
        ("boil:steady", ["good", "fine", "going", "going good", "nice", "normal", "same", "even", "same as before"]),
        ("boil:simmering", ["weak", "barely", "barely boiling", "barely bubbling", "bubbles", "few bubbles", "a few bubbles", "slow", "steaming", "steam", "small bubbles", "lazy", "dying down"]),
        ("boil:still", ["nothing", "none", "calm", "cold", "quiet", "dead"]),
        ("coals:deep", ["glowing", "still glowing", "red", "red hot", "bright", "hot", "lots", "plenty", "a lot", "thick", "full", "still red", "big bed"]),
        ("coals:thin", ["few", "a few", "some", "a bit", "a little", "dim", "dying", "almost gone", "nearly gone", "almost out", "nearly out", "small", "not much", "not many"]),
        ("coals:spent", ["gone", "none", "nothing", "out", "dead", "black", "gray", "grey", "cold", "none left", "done", "dark"]),
        ("foam:low", ["down", "none", "no foam", "settled", "fine", "normal", "calm", "nothing", "a little", "little bit", "a little bit", "a bit", "not much", "lowish", "good", "flat", "gone down", "going down", "went down"]),
        ("foam:rising", ["up", "high", "climbing", "growing", "coming up", "going up", "a lot", "lots", "big", "more", "bad", "thick"]),
        ("smell:scorched", ["still", "bad", "burning", "smoky", "smokey", "worse", "strong", "a little", "a bit", "same", "still there", "sharp", "a little burnt", "burnt a little"]),
        ("smell:sweet", ["nothing", "none", "no smell", "gone", "clear", "all clear", "fine", "good", "normal", "better"]),
        ("gradient:clear", ["still", "different", "differ", "they differ", "they do", "still differ", "still different", "dark and light"]),
        ("gradient:gone", ["same", "all the same", "the same", "even", "one color", "no difference", "mixed"]),
    }.SelectMany(row => row.Words.Select(word => ($"{row.Seen[..row.Seen.IndexOf(':', StringComparison.Ordinal)]}:{word}", row.Seen)))
        .ToFrozenDictionary(row => row.Item1, row => row.Seen[(row.Seen.IndexOf(':', StringComparison.Ordinal) + 1)..], StringComparer.Ordinal);

    /// <summary>A fire or a draw-off is left by these: who says so in words that are short is asked.</summary>
    private static readonly FrozenSet<string> AskedBack = FrozenSet.ToFrozenSet(["spent", "gone", "still"], StringComparer.Ordinal);

    /// <summary>What it means; null where nothing that is seen is asked, or it is none of these words.</summary>
    public static Understood? Read(Moment at, string said, Prompt? open)
    {
        if (open?.Ask == ObservationName.Boil.Code && NoBoil().IsMatch(Letters.Plain(said)))
        {
            // Looked at as it was asked, and said in as many words.
            return new MeansLine(new Observed(at, ObservationName.Boil, "still"));
        }

        if (open is null || ObservationName.FromCode(open.Ask) is not { } asked || IsOfItsOwn(asked, said)
            || !States.TryGetValue($"{asked.Code}:{Around().Replace(Letters.Plain(said), "").Trim()}", out var state))
        {
            return null;
        }

        if (state == "sweet")
        {
            return new MeansNothing(TalkListener.WhichSmell) { IsNoCry = true };
        }

        var seen = new Observed(at, asked, state);
        return AskedBack.Contains(state) ? new MeansUnsure(seen) : new MeansLine(seen);
    }

    /// <summary>
    /// The word that a state has in the lists is of that state, whatever is asked: who knows the words says them unasked. But a smell that is still there is
    /// no still boil, and coals that are gone no channels.
    /// </summary>
    private static bool IsOfItsOwn(ObservationName asked, string said) =>
        ObservationName.Said.ContainsKey(said) && asked != ObservationName.Smell && !(asked == ObservationName.Coals && said.Equals("gone", StringComparison.OrdinalIgnoreCase));

    [GeneratedRegex(@"^(?:(?:no|it'?s|it is|its|the pan is|pan'?s|pan is|the boil is|boil is|now|yes|all) )*(?:still now|still|not boiling|not bubbling|no boil|no bubbles|stopped boiling|no longer boiling|dead still|quit boiling)(?: (?:now|any ?more|at all|yet))*$", RegexOptions.CultureInvariant)]
    private static partial Regex NoBoil();

    [GeneratedRegex(@"^(?:(?:it'?s|it is|they'?re|they are|is|are|all|pretty|really|real|very|so|just|kinda|quite|looks|look|smells|the (?:boil|foam|coals|smell)(?:'s| is| are)?|the fire'?s|there'?s) )+|(?: (?:now|again|though))+$", RegexOptions.CultureInvariant)]
    private static partial Regex Around();
}
