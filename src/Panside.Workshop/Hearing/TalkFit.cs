using Panside.Guide.Hearing.Talk;

namespace Panside.Workshop.Hearing;

/// <summary>Fits the weights of an ear for talk.</summary>
internal static class TalkFit
{
    /// <summary>How dear the squares of the weights are: by writers left out in turn.</summary>
    private const float Dearness = 0.6f;

    /// <summary>What says so little is left out: the file is a third then, and hears the same.</summary>
    private const double Least = 0.06;

    private const int MostCuts = 12;

    private static readonly string[] Joints = [", ", " and ", " ", ", and ", ". ", " then "];

    /// <summary>The text of a file of weights.</summary>
    /// <param name="ear">The ear whose traits are weighed.</param>
    /// <param name="sentences">What it is fitted to.</param>
    /// <param name="cries">Cries of dangers, which are none of its meanings.</param>
    public static string Of(TalkEar ear, IReadOnlyList<TalkSentence> sentences, IEnumerable<SaidSentence> cries) => EarFit.Of(
        [
            .. sentences.SelectMany(sentence => Parts(ear, sentence)),
            .. sentences.Where(sentence => sentence.Meant.Count > 1).Select(sentence => new Heard(Meaning.Several, Traits(ear, sentence.Text))),
            .. Joined(sentences).Select(text => new Heard(Meaning.Several, Traits(ear, text))),
            .. cries.Select(cry => new Heard(Meaning.Cry, Traits(ear, cry.Text))),
        ], Dearness, Least);

    /// <summary>Two lines in one breath: so it is learned what is more than one thing, and must be cut.</summary>
    private static IEnumerable<string> Joined(IReadOnlyList<TalkSentence> sentences)
    {
        var single = sentences.Where(sentence => sentence.Meant is [{ Kind: not Meaning.None }] && sentence.Text.Length < 60).Select(sentence => sentence.Text.TrimEnd('.', '!', '?')).ToList();
        for (var at = 0; at + 1 < single.Count; at += 2)
        {
            // Far apart in the files, so that their habits mix.
            var other = single[(at + (single.Count / 3) + (at * 7)) % single.Count];
            yield return $"{single[at]}{Joints[at / 2 % Joints.Length]}{other}";
        }
    }

    /// <summary>The pieces of a line, each with its meaning; none where it cannot be told which piece means what.</summary>
    private static IEnumerable<Heard> Parts(TalkEar ear, TalkSentence sentence)
    {
        var pieces = ear.Pieces(sentence.Text);
        if (pieces.Count == 0)
        {
            return [];
        }

        var isAsked = sentence.Text.Contains('?', StringComparison.Ordinal);
        if (sentence.Meant.Count == 1)
        {
            return [new(sentence.Meant[0].Kind, ear.TraitsOf(pieces, isAsked))];
        }

        return Choices([.. ear.Cuts(pieces).Take(MostCuts)], sentence.Meant.Count - 1)
            .Select(cuts => Cut(pieces, cuts))
            .Where(parts => parts.Zip(sentence.Meant).All(pair => Fits(pair.First, pair.Second)))
            .OrderByDescending(parts => parts.Skip(1).Count(part => part[0].Amount is null) + parts.Skip(1).Count(part => part[0].IsPaused))
            .FirstOrDefault()?
            .Zip(sentence.Meant, (part, meant) => new Heard(meant.Kind, ear.TraitsOf(part, isAsked && meant.Kind.StartsWith("ask", StringComparison.Ordinal)))) ?? [];
    }

    private static bool Fits(IReadOnlyList<Piece> part, TalkMeant meant)
    {
        List<SpokenAmount> amounts = [.. part.Where(piece => piece.Amount is not null).Select(piece => piece.Amount!)];
        return Slots.Take(meant.Kind, amounts) && meant.Is(new Meaning(meant.Kind, Slots.Amount(meant.Kind, amounts), 1, ""));
    }

    private static List<List<Piece>> Cut(IReadOnlyList<Piece> pieces, IReadOnlyList<int> cuts)
    {
        int[] bounds = [0, .. cuts, pieces.Count];
        return [.. bounds.Zip(bounds.Skip(1), (from, to) => pieces.Skip(from).Take(to - from).ToList())];
    }

    private static IEnumerable<IReadOnlyList<int>> Choices(IReadOnlyList<int> among, int count) =>
        count == 0 ? [[]]
        : among.Index().SelectMany(first => Choices([.. among.Skip(first.Index + 1)], count - 1).Select(rest => (IReadOnlyList<int>)[first.Item, .. rest]));

    private static IReadOnlyCollection<string> Traits(TalkEar ear, string text) =>
        ear.TraitsOf(ear.Pieces(text), text.Contains('?', StringComparison.Ordinal));
}
