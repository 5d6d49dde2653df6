namespace Panside.Guide.Hearing.Sentences;

/// <summary>How a sentence is said: its parts, and which words are asked, supposed, past, heard of or joking.</summary>
internal sealed class Mood
{
    private const int ReachOfDenial = 5;

    private readonly Tagged _sentence;
    private readonly WordBook _book;
    private readonly bool[] _isUnreal;
    private readonly List<Span> _denials;

    /// <summary>Reads how a sentence is said.</summary>
    public Mood(Tagged sentence, WordBook book)
    {
        (_sentence, _book) = (sentence, book);
        PartOf = new int[sentence.Tokens.Count];
        _isUnreal = new bool[sentence.Tokens.Count];
        Parts = Cut();
        MarkAsked();
        MarkSupposed();
        MarkOtherTimes();
        _denials = [.. Of(Speech.Not).Where(not => !Of(Speech.NotDenial).Concat(Of(Speech.Harmless)).Any(idiom => idiom.Holds(not)))];
    }

    /// <summary>The parts of the sentence.</summary>
    public IReadOnlyList<Span> Parts { get; }

    /// <summary>The part that each word is in.</summary>
    public int[] PartOf { get; }

    /// <summary>Whether nothing is said of a place but that it is so.</summary>
    public bool IsReal(int place) => !_isUnreal[place];

    /// <summary>Whether a word of denial stands before words in their part, or right behind them. What denies by itself is not denied once more: <c>can not see, can not breathe</c>.</summary>
    public bool IsDenied(Span words, IReadOnlyList<Span> but) =>
        (_denials.Any(not => IsBefore(not, words)) && !Of(Speech.Not).Any(not => but.Any(span => span.Holds(not))))
        || Of(Speech.NotAfter).Any(not => not.Start == words.End + 1 && !but.Any(span => span.Holds(not)));

    /// <summary>Takes out the denials that are a piece of what is said: <c>can not breathe</c> denies no smoke.</summary>
    /// <returns>Whether any was.</returns>
    public bool Spend(IReadOnlyList<Span> said) => _denials.RemoveAll(not => said.Any(span => span.Holds(not))) > 0;

    /// <summary>Where it is said that something has ended.</summary>
    public IEnumerable<Span> Ended => Of(Speech.Ended).Where(span => IsReal(span.Start)
        && !Of(Speech.Not).Any(not => IsBefore(not, span)));

    private bool IsBefore(Span not, Span words) =>
        not.End < words.Start && PartOf[not.End] == PartOf[words.Start] && Weight(not.End + 1, words.Start - 1) < ReachOfDenial;

    private List<Span> Of(string concept) => _sentence.Of(_book.Number(concept));

    /// <summary>Where a concept stands by itself and not as a piece of what is spoken of: <c>black before the eyes</c>, <c>can not breathe</c>.</summary>
    private IEnumerable<Span> Free(string concept) => Of(concept).Where(span => !IsOfAThing(span));

    private bool IsOfAThing(Span word) => _book.OfThings.Any(concept => _sentence.Of(concept).Any(span => span != word && span.Holds(word)));

    private int Weight(int from, int to)
    {
        var weight = 0;
        for (var at = from; at <= to; at++)
        {
            weight += _sentence.Tokens[at].IsLight ? 0 : 1;
        }

        return weight;
    }

    private List<Span> Cut()
    {
        var tokens = _sentence.Tokens;
        var breaks = Of(Speech.Break).Select(span => span.Start).ToHashSet();
        var subjects = Of(Speech.Subject).Select(span => span.Start).ToHashSet();
        var afterwards = Of(Speech.NewSubject).Select(span => span.End).ToHashSet();
        var leading = Of(Speech.LeadsOn).Select(span => span.End).ToHashSet();
        var (parts, start) = (new List<Span>(), 0);
        for (var at = 1; at <= tokens.Count; at++)
        {
            var isNew = at == tokens.Count || tokens[at].Before != Pause.None || breaks.Contains(at) || afterwards.Contains(at)
                || (subjects.Contains(at) && !leading.Contains(at - 1) && !breaks.Contains(at - 1));
            if (!isNew)
            {
                continue;
            }

            Array.Fill(PartOf, parts.Count, start, at - start);
            parts.Add(new(start, at - 1));
            start = at;
        }

        return parts;
    }

    private void MarkAsked()
    {
        foreach (var part in Parts)
        {
            var asks = Of(Speech.Ask).Any(ask => part.Holds(ask) && IsOnlyLight(part.Start, ask.Start - 1)) || _sentence.Tokens[part.End].AskedAfter;
            if (asks && !Of(Speech.Presume).Any(part.Holds))
            {
                Mark(part.Start, part.End);
            }
        }
    }

    private bool IsOnlyLight(int from, int to)
    {
        for (var at = from; at <= to; at++)
        {
            if (!_sentence.Tokens[at].IsLight && !Of(Speech.Break).Any(span => span.Holds(at)))
            {
                return false;
            }
        }

        return true;
    }

    private void MarkSupposed()
    {
        foreach (var supposed in Free(Speech.If))
        {
            // What is asked about what is supposed is asked of no danger: what do I do if.
            var part = Parts[PartOf[supposed.Start]];
            Mark(Of(Speech.Ask).Any(part.Holds) ? part.Start : supposed.Start, EndOfSentence(supposed.Start));
        }

        foreach (var supposed in Free(Speech.Would))
        {
            var part = Parts[PartOf[supposed.Start]];
            Mark(part.Start, part.End);
        }
    }

    private void MarkOtherTimes()
    {
        foreach (var past in Free(Speech.Past))
        {
            foreach (var part in Parts.Where(part => part.Start >= StartOfSentence(past.Start) && part.End <= EndOfSentence(past.Start)))
            {
                if (part.Holds(past) || !Of(Speech.Now).Any(part.Holds))
                {
                    Mark(part.Start, part.End);
                }
            }
        }

        foreach (var heard in Of(Speech.Hearsay))
        {
            Mark(StartOfSentence(heard.Start), EndOfSentence(heard.Start));
        }

        if (Of(Speech.Joke).Count > 0 && Of(Speech.Serious).Count == 0)
        {
            Mark(0, _sentence.Tokens.Count - 1);
        }
    }

    private void Mark(int from, int to) => Array.Fill(_isUnreal, true, from, to - from + 1);

    private int StartOfSentence(int place)
    {
        while (place > 0 && _sentence.Tokens[place].Before != Pause.Long)
        {
            place--;
        }

        return place;
    }

    private int EndOfSentence(int place)
    {
        while (place + 1 < _sentence.Tokens.Count && _sentence.Tokens[place + 1].Before != Pause.Long)
        {
            place++;
        }

        return place;
    }
}
