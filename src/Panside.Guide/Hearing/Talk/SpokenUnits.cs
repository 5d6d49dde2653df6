using Panside.Guide.Measures;
using Quickenshtein;

namespace Panside.Guide.Hearing.Talk;

/// <summary>Units behind a number, also with a slip of the finger.</summary>
/// <param name="words">The words of the language.</param>
internal sealed class SpokenUnits(TalkWords words)
{
    private const int ShortestSlip = 4;

    /// <summary>The unit at a place, what else tells of its kind, and the place behind it; the same place where there is none.</summary>
    /// <param name="all">The words.</param>
    /// <param name="at">The place.</param>
    /// <param name="isFirst">Whether a pause may stand before it.</param>
    public (Unit? Unit, AmountHint Hint, int Behind) At(List<SpokenWord> all, int at, bool isFirst = false)
    {
        string Text(int place) => place < all.Count ? all[place].Text : "";
        if (at >= all.Count || (all[at].IsPaused && !isFirst) || all[at].IsNumber)
        {
            return (null, AmountHint.None, at);
        }

        if (words.Degrees.Contains(Text(at)))
        {
            return UnitNames.FromWord(Text(at + 1)) is { } degree && degree.Kind() is Dimension.Temperature or Dimension.Sugar
                ? (UnitNames.FromWord(Text(at + 1)), AmountHint.None, at + 2)
                : (null, AmountHint.Degrees, at + 1);
        }

        if (Text(at) is "in" or "inches" or "inch" && Text(at + 1) is "hg" or "of" && (Text(at + 1) == "hg" || Text(at + 2) == "mercury"))
        {
            return (Unit.InchOfMercury, AmountHint.None, Text(at + 1) == "hg" ? at + 2 : at + 3);
        }

        if (UnitOf(Text(at)) is not { } unit || (Text(at) == "in" && (at + 1 >= all.Count ? false : words.NoUnitBefore.Contains(Text(at + 1))))
            || unit is Unit.Meter or Unit.Foot)
        {
            return (null, AmountHint.None, at);
        }

        // "2 percent sugar" is sugar; "7 lb of wood" is a mass, and the wood stays a word.
        return (unit, AmountHint.None, at + 1);
    }

    /// <summary>The unit that a word is, or is a slip of: <c>galons</c>, <c>inchs</c>.</summary>
    private Unit? UnitOf(string word)
    {
        if (words.Pints.Contains(word))
        {
            return Unit.Quart;
        }

        if (UnitNames.FromWord(word) is { } unit)
        {
            return unit;
        }

        return word.Length < ShortestSlip || words.NoUnits.Contains(word) ? null
            : UnitNames.Words.Where(known => known.Length >= ShortestSlip && known[0] == word[0] && int.Abs(known.Length - word.Length) <= 1)
                .Where(known => Levenshtein.GetDistance(word, known) <= 1 || (known.Length == word.Length && known.Order().SequenceEqual(word.Order()) && Levenshtein.GetDistance(word, known) == 2))
                .Select(UnitNames.FromWord).FirstOrDefault();
    }

    /// <summary>Past "of", "of an", "a" where a unit comes then.</summary>
    public int PastArticle(List<SpokenWord> all, int at, bool ifUnit = false)
    {
        var next = at;
        next = next < all.Count && words.Of.Contains(all[next].Text) ? next + 1 : next;
        next = next < all.Count && words.One.Contains(all[next].Text) ? next + 1 : next;
        return ifUnit && At(all, next).Unit is null ? at : next;
    }
}
