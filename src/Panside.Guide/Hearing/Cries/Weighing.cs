using Panside.Guide.Hearing.Sentences;

namespace Panside.Guide.Hearing.Cries;

/// <summary>Finds combinations in a sentence and takes out what is denied, asked, supposed, past, elsewhere or ordinary.</summary>
internal sealed class Weighing(Tagged sentence, Mood mood, WordBook book)
{
    private const int WidestReach = 9;
    private const int MostPlaces = 8;

    private readonly List<(Combination Combination, List<Span> Spans)> _hits = [];
    private readonly List<Span> _harmless = sentence.Of(book.Number(Speech.Harmless));
    private readonly HashSet<int> _thingsIn = [.. book.Things.SelectMany(sentence.Of).Select(span => mood.PartOf[span.Start])];

    /// <summary>The weight of each hazard.</summary>
    public int[] Weigh(IReadOnlyList<Combination> combinations, int hazards)
    {
        // A denial that is a piece of one danger denies no other: can not see, can not breathe, smoke everywhere.
        FindAll(combinations);
        if (mood.Spend([.. _hits.SelectMany(hit => hit.Spans)]))
        {
            FindAll(combinations);
        }

        TakeOutWhatHasEnded();
        var weights = new int[hazards];
        foreach (var group in _hits.GroupBy(hit => hit.Combination.Hazard))
        {
            weights[group.Key] = Weight([.. group]);
        }

        return weights;
    }

    private void FindAll(IReadOnlyList<Combination> combinations)
    {
        _hits.Clear();
        foreach (var combination in combinations)
        {
            Find(combination);
        }
    }

    /// <summary>Relief ends what was said before it; but what has come down is no relief where it was the stack.</summary>
    private void TakeOutWhatHasEnded()
    {
        var ended = mood.Ended.Where(end => !_hits.Any(hit => hit.Combination.Elements
            .Any(element => element.Any(concept => sentence.Of(concept).Any(span => span.Holds(end)))))).ToList();
        _hits.RemoveAll(hit => ended.Any(end => mood.PartOf[end.Start] >= hit.Spans.Max(span => mood.PartOf[span.End])));
    }

    /// <summary>The heaviest counts; another that stands elsewhere, and words of need, add to it; peace takes from what is not sure.</summary>
    private int Weight(List<(Combination Combination, List<Span> Spans)> hits)
    {
        var heaviest = hits.MaxBy(hit => hit.Combination.Weight);
        var weight = heaviest.Combination.Weight;
        if (hits.Any(hit => !hit.Spans.Any(span => heaviest.Spans.Any(other => other.Holds(span) || span.Holds(other)))))
        {
            weight++;
        }

        if (weight < Combination.Sure)
        {
            weight += sentence.Of(book.Number(Speech.Urgent)).Count > 0 ? 1 : 0;
            weight -= sentence.Of(book.Number(Speech.Calm)).Count > 0 ? Combination.Hint : 0;
        }

        return int.Max(weight, 0);
    }

    private void Find(Combination combination)
    {
        foreach (var element in combination.Elements)
        {
            if (!Array.Exists(element, concept => sentence.Of(concept).Count > 0))
            {
                return;
            }
        }

        for (var part = 0; part < mood.Parts.Count; part++)
        {
            if (Chosen(combination, part, 0, []) is { } spans && (!combination.IsAlone || IsAll(spans)))
            {
                _hits.Add((combination, spans));
            }
        }
    }

    /// <summary>Whether nothing is said but these words, light ones and words of need.</summary>
    private bool IsAll(List<Span> spans)
    {
        var others = sentence.Of(book.Number(Speech.Urgent));
        return !sentence.Tokens.Where((token, at) => !token.IsLight && !spans.Concat(others).Any(span => span.Holds(at))
            && !spans.Any(span => sentence.Tokens[span.Start].Text == token.Text)).Any();
    }

    /// <summary>One span for each element, in or about a part, that is real, not denied and no ordinary talk; null where there is none.</summary>
    private List<Span>? Chosen(Combination combination, int part, int element, List<Span> chosen)
    {
        if (element == combination.Elements.Count)
        {
            return IsMeant(part, chosen) && !HasAnother(combination, part, chosen) ? [.. chosen] : null;
        }

        foreach (var span in combination.Elements[element].SelectMany(concept => Within(concept, part)).Take(MostPlaces))
        {
            if (IsOrdinary(span) || (mood.PartOf[span.Start] == part && !mood.IsReal(span.Start)) || chosen.Any(other => other.Holds(span) && other != span))
            {
                continue;
            }

            chosen.Add(span);
            if (Chosen(combination, part, element + 1, chosen) is { } spans)
            {
                return spans;
            }

            chosen.RemoveAt(chosen.Count - 1);
        }

        return null;
    }

    /// <summary>Whether what may not stand there does: a thing only before the last of the words, where it is what is spoken of.</summary>
    private bool HasAnother(Combination combination, int part, List<Span> chosen)
    {
        var last = chosen.Where(span => mood.PartOf[span.Start] == part).Max(span => span.End);
        return combination.Absent.Any(concept => Within(concept, part)
            .Any(other => (other.Start < last || !book.Concepts[concept].IsThing) && !chosen.Any(span => span.Holds(other))));
    }

    /// <summary>Where a concept stands in a part; a thing also where the nearest part before or after speaks of it, if this one names none.</summary>
    private IEnumerable<Span> Within(int concept, int part)
    {
        var spans = sentence.Of(concept);
        if (spans.Count == 0)
        {
            return spans;
        }

        var place = part;
        if (book.Concepts[concept].IsThing && !NamesAThing(part))
        {
            place = Nearest(part);
        }

        return spans.Where(span => mood.PartOf[span.Start] == place);
    }

    /// <summary>The nearest part that names a thing, first of those before; the part itself where none does.</summary>
    private int Nearest(int part)
    {
        for (var before = part - 1; before >= 0; before--)
        {
            if (NamesAThing(before))
            {
                return before;
            }
        }

        for (var after = part + 1; after < mood.Parts.Count; after++)
        {
            if (NamesAThing(after))
            {
                return after;
            }
        }

        return part;
    }

    private bool NamesAThing(int part) => _thingsIn.Contains(part);

    private bool IsMeant(int part, List<Span> spans)
    {
        var here = spans.Where(span => mood.PartOf[span.Start] == part).ToList();
        if (here.Count == 0)
        {
            return false;
        }

        return here.Max(span => span.Start) - here.Min(span => span.End) <= WidestReach && !here.Any(span => mood.IsDenied(span, spans));
    }

    private bool IsOrdinary(Span span)
    {
        foreach (var harmless in _harmless)
        {
            if (harmless.Holds(span))
            {
                return true;
            }
        }

        return false;
    }
}
