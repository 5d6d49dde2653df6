using Panside.Guide.Hearing.Sentences;

namespace Panside.Guide.Hearing.Cries;

/// <summary>Weighs any sentence for dangers. The same text is always heard the same; many may ask at once.</summary>
public sealed class CryEar
{
    private const int Opens = Combination.Likely;

    /// <summary>
    /// A sentence that is likelier than this to be no danger opens nothing. Set by the counts of docs/hearing.md: with 23,000 lines of talk
    /// in the fit it hears at 0.7 the cries that it heard at 0.6 before, and opens falsely for a third of the talk.
    /// </summary>
    private const double PeaceAtMost = 0.7;

    /// <summary>
    /// Words of need among others (<c>I'm afraid there is no lid</c>) open nothing where the weights are so sure of peace: of 215 sentences of
    /// the fit that opened falsely 174 were such, and of 22 cries that name
    /// nothing none lost. Judged by hand; who says nothing but words of need, or several of them, is always heard.
    /// </summary>
    private const double SurelyPeace = 0.995;

    /// <summary>What is less likely is not named: judged by hand, so that a list stays short.</summary>
    private const double NamedFrom = 0.03;

    /// <summary>From this share of all dangers on the first is sure; judged by hand: likelier than all others together, with something to spare.</summary>
    private const double SureFrom = 0.6;

    private readonly WordBook _book;
    private readonly List<string> _hazards;
    private readonly List<Combination> _combinations;
    private readonly List<Combination> _added;
    private readonly FittedWeights? _fitted;

    /// <summary>Makes the ear of a language.</summary>
    /// <param name="words">The words of a file.</param>
    /// <param name="language">The code of one of its languages.</param>
    /// <param name="added">More cries for its hazards, and cries for hazards of one's own, which come last in the order of dangers.</param>
    /// <param name="fitted">The weights of the language; without them the combinations alone decide.</param>
    /// <exception cref="ArgumentException">The language is none of the file's.</exception>
    public CryEar(DangerWords words, string language, IEnumerable<(string Hazard, string Cry)> added, FittedWeights? fitted = null)
    {
        var own = words.LanguageBooks.FirstOrDefault(known => known.Code == language)
            ?? throw new ArgumentException($"The words have no language '{language}'; expected one of {string.Join(", ", words.Languages)}.", nameof(language));
        var cries = added.Select(cry => (cry.Hazard, Cry: Plain(cry.Cry))).Where(cry => cry.Cry.Length > 0).ToList();
        _hazards = [.. words.Hazards.Concat(cries.Select(cry => cry.Hazard)).Distinct()];
        var concepts = words.ConceptsIn(language).ToList();
        var grouped = cries.GroupBy(cry => cry.Hazard)
            .Select(group => (Name: "added " + group.Key, group.Key, Said: (IReadOnlyList<string>)[.. group.Select(cry => cry.Cry)])).ToList();
        concepts.AddRange(grouped.Select(group => (group.Name, false, group.Said)));
        _book = new(own, concepts);
        _combinations = [.. words.Combinations.Select(written => written.Compile(_hazards.IndexOf(written.Hazard), _book.Number))];
        _added = [.. grouped.Select(group => new Combination(_hazards.IndexOf(group.Key), Combination.Sure, [[_book.Number(group.Name)]], []))];
        _fitted = fitted;
    }

    /// <summary>What a text cries out; null where it tells of no danger.</summary>
    public Cry? Hear(string text)
    {
        var sentence = _book.Read(text);
        if (sentence.Tokens.Count == 0)
        {
            return null;
        }

        var weighed = Weighed(sentence, [.. _combinations, .. _added]);
        var own = Weighed(sentence, _added);
        return _fitted is null || own.Max() >= Opens ? Combined(weighed, own) : Fitted(text, sentence, weighed, _fitted);
    }

    /// <summary>What a text has that weights can be fitted to: each a short text.</summary>
    public IReadOnlyCollection<string> TraitsOf(string text)
    {
        var sentence = _book.Read(text);
        return sentence.Tokens.Count == 0 ? [] : Traits.Of(text, sentence, new(sentence, _book), _book, Weighed(sentence, _combinations), _hazards);
    }

    private int[] Weighed(Tagged sentence, IReadOnlyList<Combination> combinations) =>
        new Weighing(sentence, new(sentence, _book), _book).Weigh(combinations, _hazards.Count);

    /// <summary>By the combinations alone. What a flow's author wrote down word for word stands before what its words could mean besides.</summary>
    private Cry? Combined(int[] weighed, int[] own)
    {
        var unsure = _hazards.IndexOf(DangerWords.Unsure);
        var named = Enumerable.Range(0, _hazards.Count).Where(hazard => hazard != unsure && weighed[hazard] > 0)
            .OrderByDescending(hazard => weighed[hazard]).ThenByDescending(hazard => own[hazard]).ToList();
        if (weighed.Max() < Opens)
        {
            return null;
        }

        var isSure = named.Count > 0 && weighed[named[0]] >= Combination.Sure && (named.Count == 1 || weighed[named[1]] < weighed[named[0]] || own[named[1]] < own[named[0]]);
        return new([.. named.Select(hazard => _hazards[hazard])], isSure);
    }

    /// <summary>By the weights. Whoever only cries for help has the list opened, whatever the weights say.</summary>
    private Cry? Fitted(string text, Tagged sentence, int[] weighed, FittedWeights fitted)
    {
        var shares = fitted.Shares(Traits.Of(text, sentence, new(sentence, _book), _book, weighed, _hazards));
        var dangers = fitted.Kinds.Zip(shares, (hazard, share) => (Hazard: hazard, Share: share)).Where(one => one.Hazard != FittedWeights.None)
            .OrderByDescending(one => one.Share).ToList();
        var all = dangers.Sum(one => one.Share);
        var need = weighed[_hazards.IndexOf(DangerWords.Unsure)];
        var namesNothing = need >= Opens && weighed.Count(weight => weight > 0) == 1;
        if (1 - all > PeaceAtMost)
        {
            return namesNothing && (need >= Combination.Sure || 1 - all <= SurelyPeace) ? new([], false) : null;
        }

        return new([.. dangers.Where(one => one.Share >= NamedFrom * all).Select(one => one.Hazard)], !namesNothing && dangers[0].Share >= SureFrom * all);
    }

    /// <summary>A cry of a flow as a phrase: its words without pauses.</summary>
    private static string Plain(string cry) =>
        string.Join(' ', Letters.Plain(cry).Split([' ', ',', '.', '!', '?', ';', ':', '"'], StringSplitOptions.RemoveEmptyEntries)
            .Where(word => PhraseMarks.Wrong(word) is null));
}
