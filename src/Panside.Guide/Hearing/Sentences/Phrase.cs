namespace Panside.Guide.Hearing.Sentences;

/// <summary>One word of a phrase as the book writes it.</summary>
/// <param name="Keys">The numbers of the entries that it may be; empty for a gap.</param>
/// <param name="Concepts">The concepts that may stand here instead.</param>
/// <param name="IsNext">Whether not even a light word may stand before it.</param>
internal sealed record PhrasePart(int[] Keys, int[] Concepts, bool IsNext = false)
{
    /// <summary>Whether up to three words may stand here.</summary>
    public bool IsGap => Keys.Length == 0 && Concepts.Length == 0;
}

/// <summary>Words that follow one another, light words apart.</summary>
/// <param name="Parts">Its words; neither the first nor the last is a gap.</param>
internal sealed record Phrase(PhrasePart[] Parts)
{
    private const int WidestGap = 3;

    /// <summary>Whether its first word stands in a sentence at all.</summary>
    public bool MayStandIn(Tagged sentence)
    {
        foreach (var key in Parts[0].Keys)
        {
            if (sentence.Has(key))
            {
                return true;
            }
        }

        foreach (var concept in Parts[0].Concepts)
        {
            if (sentence.Of(concept).Count > 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Adds every place of a sentence where it stands.</summary>
    public void Find(Tagged sentence, List<Span> found)
    {
        var first = Parts[0];
        foreach (var span in first.Concepts.SelectMany(sentence.Of))
        {
            Add(sentence, span.Start, span.End, found);
        }

        foreach (var key in first.Keys)
        {
            foreach (var place in sentence.Places(key))
            {
                Add(sentence, place, place, found);
            }
        }
    }

    private void Add(Tagged sentence, int start, int firstEnd, List<Span> found)
    {
        var end = End(sentence, 1, firstEnd);
        if (end >= 0 && !found.Contains(new(start, end)))
        {
            found.Add(new(start, end));
        }
    }

    /// <summary>Where the rest ends when its part before ends at a place; -1 where it does not stand there.</summary>
    private int End(Tagged sentence, int part, int last)
    {
        if (part == Parts.Length)
        {
            return last;
        }

        var (wanted, free) = Parts[part].IsGap ? (part + 1, WidestGap) : (part, 0);
        for (var at = last + 1; at < sentence.Tokens.Count && sentence.Tokens[at].Before == Pause.None; at++)
        {
            foreach (var stop in Ends(sentence, Parts[wanted], at))
            {
                if (End(sentence, wanted + 1, stop) is >= 0 and var end)
                {
                    return end;
                }
            }

            if (Parts[wanted].IsNext || (!sentence.Tokens[at].IsLight && --free < 0))
            {
                return -1;
            }
        }

        return -1;
    }

    private static IEnumerable<int> Ends(Tagged sentence, PhrasePart part, int at)
    {
        if (part.Keys.Any(sentence.Tokens[at].Is))
        {
            yield return at;
        }

        foreach (var concept in part.Concepts)
        {
            foreach (var span in sentence.Of(concept))
            {
                if (span.Start == at)
                {
                    yield return span.End;
                }
            }
        }
    }
}
