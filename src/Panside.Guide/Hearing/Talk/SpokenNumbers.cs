namespace Panside.Guide.Hearing.Talk;

/// <summary>Numbers in digits and words, with their parts: where one stands, its value and the place behind it.</summary>
/// <param name="words">The words of the language.</param>
/// <param name="units">The units that may stand behind one.</param>
internal sealed class SpokenNumbers(TalkWords words, SpokenUnits units)
{
    /// <summary>A whole number in digits or words, with its decimals.</summary>
    public (double Value, int Behind)? Number(List<SpokenWord> all, int at)
    {
        string At(int place) => place < all.Count ? all[place].Text : "";
        if (at >= all.Count)
        {
            return null;
        }

        double value;
        var next = at + 1;
        if (all[at].IsNumber)
        {
            if (WrittenNumbers.Digits(all[at].Text) is not { } digits)
            {
                return null;
            }

            value = digits;
        }
        else if (InWords(all, at) is var (said, behind))
        {
            (value, next) = (said, behind);
        }
        else
        {
            return null;
        }

        if (words.Point.Contains(At(next)) && next + 1 < all.Count)
        {
            var (scale, place) = (0.1, next + 1);
            while (place < all.Count && !all[place].IsPaused && Digit(all[place]) is { } digit && scale > 1e-4)
            {
                (value, scale, place) = (value + (digit * scale), scale / 10, place + 1);
            }

            next = place > next + 1 ? place : next;
        }
        else if (!all[at].IsNumber && value >= 20 && value == double.Truncate(value) && next < all.Count && !all[next].IsNumber && !all[next].IsPaused
            && words.Numbers.TryGetValue(all[next].Text, out var tenths) && tenths is >= 1 and < 10 && units.At(all, next + 1).Unit is null && !words.Counted.Contains(At(next + 1)))
        {
            // Twenty nine six, two eleven three: the tenths of a dial read out.
            (value, next) = (value + (tenths / 10), next + 1);
        }

        return (value, next);
    }

    private double? Digit(SpokenWord word) =>
        word.IsNumber ? WrittenNumbers.Digits(word.Text) is { } digits and < 10 ? digits : null
        : words.Numbers.TryGetValue(word.Text, out var number) && number < 10 ? number : null;

    /// <summary>Twenty two, a hundred and three, two hundred ten, two seventeen, two oh nine.</summary>
    private (double Value, int Behind)? InWords(List<SpokenWord> all, int at)
    {
        double? One(int place) => place < all.Count && !all[place].IsNumber && words.Numbers.TryGetValue(all[place].Text, out var number) ? number : null;
        bool IsHundred(int place) => place < all.Count && words.Hundred.Contains(all[place].Text);
        (double Value, int Behind)? Below(int place) => One(place) is not { } first ? null
            : first >= 20 && One(place + 1) is { } ones and >= 1 and < 10 && !all[place + 1].IsPaused ? (first + ones, place + 2)
            : (first, place + 1);

        if (words.One.Contains(all[at].Text) && IsHundred(at + 1))
        {
            return Hundreds(1, at + 2);
        }

        if (Below(at) is not var (value, behind) || all[at].Text == "oh")
        {
            return null;
        }

        if (behind < all.Count && words.Thousand.Contains(all[behind].Text))
        {
            return behind + 1 < all.Count && InWords(all, behind + 1) is ( < 1000 and var rest, var after) ? ((1000 * value) + rest, after) : (1000 * value, behind + 1);
        }

        if (IsHundred(behind))
        {
            return Hundreds(value, behind + 1);
        }

        // Two seventeen is 217, two oh nine 209: only where a temperature can be meant.
        if (value is 1 or 2 && behind == at + 1 && behind < all.Count && !all[behind].IsPaused)
        {
            if (all[behind].Text is "oh" or "o" or "zero" && One(behind + 1) is { } last and < 10)
            {
                return ((100 * value) + last, behind + 2);
            }

            if (Below(behind) is ( >= 10 and < 100 and var rest, var after))
            {
                return ((100 * value) + rest, after);
            }
        }

        return (value, behind);

        (double Value, int Behind) Hundreds(double hundreds, int place)
        {
            var next = place < all.Count && words.And.Contains(all[place].Text) && One(place + 1) is not null ? place + 1 : place;
            return Below(next) is var (rest, after) ? ((100 * hundreds) + rest, after) : (100 * hundreds, place);
        }
    }

    /// <summary>A part behind a whole number: 1 1/2, one and a half, 2 and three quarters.</summary>
    public (double Value, int Behind) WithPart(List<SpokenWord> all, double value, int at)
    {
        if (at < all.Count && all[at].IsNumber && !all[at].IsPaused && WrittenNumbers.Fraction(all[at].Text) is { } fraction)
        {
            return (value + fraction, at + 1);
        }

        return PartBehind(all, at) is var (part, behind) ? (value + part, behind)
            // A part right behind makes a share: three quarters.
            : at < all.Count && words.Parts.TryGetValue(all[at].Text, out var share) && share < 0.5 ? (value * share, units.PastArticle(all, at + 1, ifUnit: true))
            : (value, at);
    }

    /// <summary>And a half, and three quarters, and 1/2.</summary>
    public (double Value, int Behind)? PartBehind(List<SpokenWord> all, int at) =>
        at + 1 < all.Count && words.And.Contains(all[at].Text) && !all[at].IsPaused ? PartAt(all, at + 1)
        : at < all.Count && all[at].IsNumber && !all[at].IsPaused && WrittenNumbers.Fraction(all[at].Text) is { } written ? (written, at + 1) : null;

    /// <summary>A half, half, one half, three quarters, 3/4.</summary>
    public (double Value, int Behind)? PartAt(List<SpokenWord> all, int at)
    {
        string At(int place) => place < all.Count ? all[place].Text : "";
        if (at < all.Count && all[at].IsNumber)
        {
            return WrittenNumbers.Fraction(At(at)) is { } written ? (written, at + 1)
                : WrittenNumbers.Digits(At(at)) is { } many and < 16 && words.Parts.TryGetValue(At(at + 1), out var each) ? (many * each, at + 2) : null;
        }

        if (words.One.Contains(At(at)) && words.Parts.TryGetValue(At(at + 1), out var one))
        {
            return (one, at + 2);
        }

        if (words.Numbers.TryGetValue(At(at), out var count) && count is >= 1 and < 16 && words.Parts.TryGetValue(At(at + 1), out var part))
        {
            return (count * part, at + 2);
        }

        return words.Parts.TryGetValue(At(at), out var bare) ? (bare, at + 1) : null;
    }
}
