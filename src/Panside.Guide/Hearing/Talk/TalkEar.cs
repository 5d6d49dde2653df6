using Panside.Guide.Hearing.Cries;
using Panside.Guide.Hearing.Sentences;

namespace Panside.Guide.Hearing.Talk;

/// <summary>
/// Hears facts, deeds and questions in what people say. A line is cut into words and amounts, the words into pieces of one meaning
/// each, so that all together are likeliest, and each piece has the meaning that the fitted weights give it.
/// </summary>
/// <param name="words">The words of the language.</param>
/// <param name="fitted">The weights of its meanings.</param>
/// <param name="stemsOf">The kind of the language's endings.</param>
internal sealed class TalkEar(TalkWords words, FittedWeights? fitted, string stemsOf)
{
    /// <summary>What each further piece costs, as a share: a line is one thing unless two are clearly likelier.</summary>
    private const double PieceCost = 0.8;

    /// <summary>The same where nothing but a word's end tells that another piece begins.</summary>
    private const double WordCost = 0.08;

    /// <summary>A line so short may be cut anywhere: <c>steady boil deep coals</c>.</summary>
    private const int ShortLine = 14;
    private const double Least = 1e-4;

    /// <summary>Cries are weighed by an ear of their own; here they only take from what is likely.</summary>
    private const double CriesCount = 0.15;

    private const int MostCuts = 14;

    /// <summary>An amount that means nothing among others that do is so much the less likely.</summary>
    private const double LostAmount = 0.4;

    /// <summary>A number of such a size without a word is the thermometer at the draw-off: that is what is watched.</summary>
    private const string DrawOff = "reading:draw-temperature";

    private readonly AmountReader _reader = new(words);

    /// <summary>The words and amounts of a line.</summary>
    public IReadOnlyList<Piece> Pieces(string text) => _reader.Read(text);

    /// <summary>The traits of a line that is one piece, for fitting.</summary>
    public IReadOnlyCollection<string> TraitsOf(IReadOnlyList<Piece> pieces, bool isAsked) => TalkTraits.Of(pieces, isAsked, Stems.Of(stemsOf));

    /// <summary>Where a line may be cut: at pauses, before words that join, beside amounts.</summary>
    public IReadOnlyList<int> Cuts(IReadOnlyList<Piece> pieces) =>
    [
        .. Enumerable.Range(1, int.Max(pieces.Count - 1, 0)).Where(at =>
            pieces[at].IsPaused || words.Breaks.Contains(pieces[at].Text) || pieces[at].Amount is not null || pieces[at - 1].Amount is not null),
    ];

    /// <summary>What is asked of a term in a line that begins so and says nothing more than the term: its kind and the term; null where it does not.</summary>
    public (string Kind, string Of)? AskedOf(string text)
    {
        var said = Letters.Plain(text).Trim().TrimEnd('?', '.', '!', ' ');
        foreach (var (kind, leads) in new[] { ("define", words.Defines), ("measure", words.Measures) })
        {
            if (leads.FirstOrDefault(lead => said.StartsWith(lead + " ", StringComparison.Ordinal)) is { } lead)
            {
                return (kind, said[lead.Length..].Trim());
            }
        }

        return null;
    }

    /// <summary>Whether a piece holds a word by which it may be denied, supposed or still to come: then it is asked and not taken.</summary>
    public bool IsUnreal(string piece) => piece.Split(' ').Any(words.Unreal.Contains);

    /// <summary>Whether a piece says that what it names is not so.</summary>
    public bool IsDenied(string piece) => piece.Split(' ').Any(words.Denied.Contains);

    /// <summary>Whether a piece tells of a time before now.</summary>
    /// <param name="piece">Its words.</param>
    /// <param name="hasBackPan">Whether the word for coming back names a pan here.</param>
    public bool IsOfBefore(string piece, bool hasBackPan) => piece.Split(' ').Any(word => words.Ago.Contains(word) && !(hasBackPan && word == "back"));

    /// <summary>Whether a piece says that something goes on, and denies nothing: still boiling is not still.</summary>
    public bool SaysGoesOn(string piece) =>
        piece.Split(' ') is var said && said.Any(words.Still.Contains) && said.Any(words.GoesOn.Contains) && !said.Any(word => words.Denied.Contains(word) || words.Ended.Contains(word));

    /// <summary>Whether a piece names the coals, or what they lie in.</summary>
    public bool NamesCoals(string piece) => piece.Split(' ').Any(words.CoalsNames.Contains);

    /// <summary>Whether a piece names the boil.</summary>
    public bool NamesBoil(string piece) => piece.Split(' ').Any(words.BoilNames.Contains);

    /// <summary>Whether a piece names another thing that is opened and shut, or sounds like a valve and speaks of none.</summary>
    public bool NamesOtherValve(string piece) => piece.Split(' ').Any(words.OtherValves.Contains) || words.NoValve.Any(said => piece == said || piece.EndsWith(" " + said, StringComparison.Ordinal));

    /// <summary>Whether a piece speaks of something else than syrup that runs out.</summary>
    public bool SpeaksOfNoDraw(string piece) => piece.Split(' ').Any(words.NoDraw.Contains);

    /// <summary>Whether a piece says that what it tells of went out of the pan.</summary>
    public bool SaysOut(string piece) => piece.Split(' ').Any(words.Outward.Contains) || words.IntoAnother.Any(place => $" {piece} ".Contains($" {place} ", StringComparison.Ordinal));

    /// <summary>Whether a piece says that somebody goes.</summary>
    public bool SaysGoes(string piece) => piece.Split(' ').Any(words.Goes.Contains);

    /// <summary>Whether a piece says that somebody stays.</summary>
    public bool SaysStays(string piece) => piece.Split(' ').Any(words.Stays.Contains);

    /// <summary>Whether a piece says that there is no more of something that is neither wood nor fire, no more smoke, or that somebody is to be silent.</summary>
    public bool SaysNoMoreOfElse(string piece) =>
        piece.Split(' ') is var all && !all.Any(words.WoodNames.Contains) && (all.Any(words.Speaking.Contains)
            || (!all.Any(words.NoMoreThen.Contains) && Array.IndexOf(all, "no") is >= 0 and var no && no + 2 < all.Length && all[no + 1] == "more"));

    /// <summary>Whether a line asks, with a mark behind it or by how it begins.</summary>
    public bool IsQuestion(string text) => text.TrimEnd().EndsWith('?') || BeginsAsQuestion(text);

    /// <summary>Whether a line asks by how it begins.</summary>
    public bool BeginsAsQuestion(string text)
    {
        var said = Letters.Plain(text).Trim();
        return Begins(words.AsksFirst) && !Begins(words.Reports);

        bool Begins(IReadOnlyList<string> with) => with.Any(first => said.StartsWith(first + " ", StringComparison.Ordinal));
    }

    /// <summary>Whether a line supposes by how it begins what is not so.</summary>
    public bool BeginsAsSupposed(string text) => Letters.Plain(text).TrimStart() is var said && words.Supposes.Any(first => said.StartsWith(first + " ", StringComparison.Ordinal));

    /// <summary>
    /// Whether a number without a unit stands in a line that names nothing of the reading that it was guessed to be: in <c>then I let her down at
    /// six</c> no tank is spoken of.
    /// </summary>
    /// <param name="meaning">What was guessed.</param>
    /// <param name="text">The line.</param>
    public bool IsUnnamed(Meaning meaning, string text) => meaning is { Root: "reading", Amount.Unit: null } && words.NamedBy.TryGetValue(meaning.Rest, out var names)
        && $" {Letters.Plain(text).Trim()}" is var said && said.Count(letter => letter == ' ') > ShortestSentence
        && !names.Any(name => said.Contains(" " + name, StringComparison.Ordinal));

    /// <summary>Longer ones have room for a name; <c>tk 37</c> is how some write.</summary>
    private const int ShortestSentence = 3;

    /// <summary>Whether a piece has nothing but words that say nothing: about, just.</summary>
    public bool SaysNothing(string piece) => piece.Split(' ').All(words.Light.Contains);

    /// <summary>Whether a line says that the tank is empty, and nothing else.</summary>
    public bool IsTankEmpty(string text)
    {
        var said = Letters.Plain(text).Trim().TrimEnd('.', '!', ' ');
        return words.TankEmpty.Contains(said.StartsWith("the ", StringComparison.Ordinal) ? said[4..] : said);
    }

    /// <summary>Whether a line says that something is on again, and denies, asks and supposes nothing.</summary>
    public bool SaysOnAgain(string text)
    {
        var said = $" {Letters.Plain(text).Trim()} ";
        return words.OnAgain.Any(again => said.Contains($" {again} ", StringComparison.Ordinal)) && !said.Split(' ').Any(words.Unreal.Contains) && !IsQuestion(text);
    }

    /// <summary>Whether a line may say that wood went in, in words that the weights do not know, and denies, asks and supposes nothing.</summary>
    public bool MaySayWood(string text)
    {
        var said = Letters.Plain(text).Trim().Split(' ');
        return said.Any(words.WoodPieces.Contains) && said.Any(words.PutIn.Contains) && !said.Any(word => words.Unreal.Contains(word) || words.NotHere.Contains(word)) && !IsQuestion(text);
    }

    /// <summary>Whether a piece says that there is no more of what it names, or that it was the last.</summary>
    public bool SaysNoMore(string piece) => piece.Split(' ').Any(words.NoMore.Contains);

    /// <summary>Whether a piece has a word of a smell that is not sweet alone.</summary>
    public bool IsNotSweet(string piece) => piece.Split(' ').Any(words.NotSweet.Contains);

    /// <summary>Whether a piece speaks of one thing more, and denies nothing.</summary>
    public bool SaysOneMore(string piece) => words.Another.Any(more => $" {piece} ".Contains($" {more} ", StringComparison.Ordinal)) && !piece.Split(' ').Any(words.Denied.Contains);

    /// <summary>Whether a piece says that half of what it names is so.</summary>
    public bool IsHalf(string piece) => piece.Split(' ').Any(words.Half.Contains);

    /// <summary>Whether a line names what heats a pan without wood.</summary>
    public bool NamesFire(string text) => _reader.Read(text).Any(piece => words.FireNames.Contains(piece.Text));

    /// <summary>Whether a line is one amount with its unit.</summary>
    public bool IsAmount(string text) => _reader.Read(text) is [{ Amount.Unit: not null }];

    /// <summary>The one amount of a line that says nothing else; null where it says more, or less.</summary>
    public SpokenAmount? AloneIn(string text)
    {
        var pieces = _reader.Read(text);
        var amounts = pieces.Where(piece => piece.Amount is not null).ToList();
        return amounts.Count == 1 && pieces.All(piece => piece.Amount is not null || words.Light.Contains(piece.Text)) ? amounts[0].Amount : null;
    }

    /// <summary>What a line means, in the order in which it was said; empty where it has no words.</summary>
    /// <param name="text">The line.</param>
    /// <param name="prior">How much likelier a kind is made by what is asked just now: 1 where nothing tells.</param>
    public IReadOnlyList<Meaning> Hear(string text, Func<string, double> prior)
    {
        var pieces = _reader.Read(text);
        if (fitted is null || pieces.Count == 0)
        {
            return [];
        }

        var isAsked = text.Contains('?', StringComparison.Ordinal);
        var stems = Stems.Of(stemsOf);
        var natural = Cuts(pieces);
        List<int> cuts = [0, .. (pieces.Count <= ShortLine ? Enumerable.Range(1, pieces.Count - 1) : natural.Take(MostCuts)), pieces.Count];
        var best = new (double Log, int From, Meaning? Meaning)[cuts.Count];
        Array.Fill(best, (double.NegativeInfinity, 0, null));
        best[0] = (0, 0, null);
        for (var end = 1; end < cuts.Count; end++)
        {
            for (var start = 0; start < end; start++)
            {
                var part = pieces.Skip(cuts[start]).Take(cuts[end] - cuts[start]).ToList();
                while (part.Count > 1 && part[0].Amount is null && words.Breaks.Contains(part[0].Text))
                {
                    part.RemoveAt(0);
                }

                if (part.Count(piece => piece.Amount is not null) > 2)
                {
                    continue;
                }

                var meaning = Likeliest(part, start == 0 && end == cuts.Count - 1, isAsked && end == cuts.Count - 1, stems, prior);
                var log = best[start].Log + double.Log(double.Max(meaning.Share, Least)) + (start == 0 ? 0 : double.Log(natural.Contains(cuts[start]) ? PieceCost : WordCost));
                if (log > best[end].Log)
                {
                    best[end] = (log, start, meaning);
                }
            }
        }

        var meanings = new List<Meaning>();
        for (var end = cuts.Count - 1; end > 0 && best[end].Meaning is { } meaning; end = best[end].From)
        {
            meanings.Insert(0, meaning);
        }

        return meanings;
    }

    /// <summary>The likeliest kinds of a whole line, whatever their amounts.</summary>
    public IEnumerable<(string Kind, double Share)> Nearest(string text)
    {
        var pieces = _reader.Read(text);
        return fitted is null || !pieces.Any(piece => Knows(piece.Text)) ? []
            : fitted.Kinds.Zip(fitted.Shares(TalkTraits.Of(pieces, text.Contains('?', StringComparison.Ordinal), Stems.Of(stemsOf)))).OrderByDescending(row => row.Second).Take(4);
    }

    /// <summary>A count in words or digits: half a, two, 3; null where it is none.</summary>
    public double? CountIn(string text) => words.One.Contains(text.ToLowerInvariant()) ? 1
        : _reader.Read($"{text} gal") is [{ Amount: { } amount }] ? amount.Value : null;

    /// <summary>Whether the weights know a word.</summary>
    public bool Knows(string word) => Knows(word, Stems.Of(stemsOf));

    private bool Knows(string word, Stems stems) => fitted?.Has("word " + stems.Stem(word)) == true;

    private Meaning Likeliest(List<Piece> part, bool isWhole, bool isAsked, Stems stems, Func<string, double> prior)
    {
        var shares = fitted!.Shares(TalkTraits.Of(part, isAsked, stems));
        var amounts = part.Where(piece => piece.Amount is not null).Select(piece => piece.Amount!).ToList();
        var isKnown = part.Exists(piece => piece.Amount is not null || Knows(piece.Text, stems));
        var isBare = part.TrueForAll(piece => piece.Amount is { Unit: null, Hint: AmountHint.None });
        var (best, all) = ((Kind: Meaning.None, Share: 0.0), 0.0);
        for (var place = 0; place < shares.Length; place++)
        {
            var kind = fitted.Kinds[place];
            var weighed = shares[place] * (kind == Meaning.Cry ? CriesCount : prior(kind));
            all += weighed;
            if (weighed > best.Share && kind != Meaning.Several && Slots.Take(kind, amounts) && (!isBare || kind == Meaning.None || (kind == DrawOff && part is [{ Amount.Value: > 203 and < 224 }]))
                && (isKnown || kind == Meaning.None || (prior(kind) > 1 && !kind.StartsWith("answer", StringComparison.Ordinal))))
            {
                best = (kind, weighed);
            }
        }

        var lost = best.Kind == Meaning.None && amounts.Count > 0 && !isWhole ? LostAmount : 1;
        return new(best.Kind, Slots.Amount(best.Kind, amounts), lost * best.Share / all, string.Join(' ', part.Select(piece => piece.Text)));
    }
}
