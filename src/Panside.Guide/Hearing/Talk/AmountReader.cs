using System.Text.RegularExpressions;
using Panside.Guide.Hearing.Sentences;
using Panside.Guide.Measures;

namespace Panside.Guide.Hearing.Talk;

/// <summary>
/// Cuts a line into words and amounts: <c>twenty two and a half gallons</c>, <c>an inch and a half</c>, <c>1 1/2"</c>, <c>two
/// seventeen point four</c>, <c>half past ten</c>.
/// </summary>
internal sealed partial class AmountReader(TalkWords words)
{
    private const int MostPieces = 80;
    private const double OuncesInAPound = 16;
    private const double PintsInAQuart = 2;

    private readonly SpokenUnits _units = new(words);
    private readonly SpokenNumbers _numbers = new(words, new(words));
    private readonly SpokenClock _clock = new(words, new(words));

    /// <summary>The words and amounts of a line.</summary>
    public IReadOnlyList<Piece> Read(string text)
    {
        var all = Words(text);
        var pieces = new List<Piece>();
        for (var at = 0; at < all.Count && pieces.Count < MostPieces;)
        {
            if (Amount(all, at) is var (amount, behind) && !IsCount(all, at, amount, behind))
            {
                (amount, behind) = ShortOf(all, amount, behind);
                if (amount.Unit?.Kind() == Dimension.Time && behind < all.Count && words.Ago.Contains(all[behind].Text))
                {
                    // Ten minutes ago: when it was, and no amount of anything.
                    pieces.Add(new(all[behind].Text, null, all[at].IsPaused));
                    at = behind + 1;
                    continue;
                }

                if ((at > 0 && words.Per.Contains(all[at - 1].Text) ? behind : PastRate(all, behind)) is { } past)
                {
                    // Twenty five gallons an hour, a cord per six hours: no amount of anything that is here.
                    pieces.Add(new("<rate>", null, all[at].IsPaused));
                    at = past;
                    continue;
                }

                pieces.Add(new(NameOf(amount), amount, all[at].IsPaused));
                at = PastInstead(all, amount, behind);
            }
            else
            {
                pieces.Add(new(all[at].Text, null, all[at].IsPaused));
                at++;
            }
        }

        return pieces;
    }

    /// <summary>The place past what makes a rate of the amount before it; null where nothing does: a minute ago is no rate.</summary>
    private int? PastRate(List<SpokenWord> all, int at)
    {
        string Text(int place) => place < all.Count && !all[place].IsPaused ? all[place].Text : "";
        return words.Per.Contains(Text(at)) ? int.Min(at + 2, all.Count)
            : words.One.Contains(Text(at)) && words.Rates.Contains(Text(at + 1)) && !words.Ago.Contains(Text(at + 2)) ? at + 2
            : null;
    }

    /// <summary>Three splits, two channels, the last one: a number that measures nothing.</summary>
    private bool IsCount(List<SpokenWord> all, int at, SpokenAmount amount, int behind) =>
        amount is { Unit: null, Hint: AmountHint.None }
        && ((behind < all.Count && !all[behind].IsPaused && words.Counted.Contains(all[behind].Text))
            || (amount.Value == 1 && !all[at].IsNumber && behind == at + 1 && all.Count > 2));

    /// <summary>A quarter inch under two, an eighth shy of two inches.</summary>
    private (SpokenAmount Amount, int Behind) ShortOf(List<SpokenWord> all, SpokenAmount amount, int behind)
    {
        if (amount.Value is > 0 and < 1 && behind < all.Count && words.Short.Contains(all[behind].Text))
        {
            var next = behind + 1 < all.Count && words.Of.Contains(all[behind + 1].Text) ? behind + 2 : behind + 1;
            if (next < all.Count && Amount(all, next) is var (whole, after) && whole.Hint != AmountHint.Clock && whole.Value > amount.Value)
            {
                return (whole with { Value = whole.Value - amount.Value, Unit = whole.Unit ?? amount.Unit }, after);
            }
        }

        return (amount, behind);
    }

    /// <summary>216.2 not 216.8: what is taken back in the same breath was never said.</summary>
    private int PastInstead(List<SpokenWord> all, SpokenAmount said, int behind) =>
        behind + 1 < all.Count && words.Instead.Contains(all[behind].Text) && Amount(all, behind + 1) is var (other, after)
            && (other.Unit is null ? !all[behind].IsPaused : other.Unit.Value.Kind() == said.Unit?.Kind())
            ? after
            : behind;

    private static string NameOf(SpokenAmount amount) => amount.Hint switch
    {
        AmountHint.Clock => "<clock>",
        AmountHint.Degrees => "<temperature>",
        _ => amount.Unit is { } unit ? $"<{unit.Kind().ToString().ToLowerInvariant()}>" : "<number>",
    };

    private List<SpokenWord> Words(string text)
    {
        var found = new List<SpokenWord>();
        var isPaused = false;
        foreach (Match match in Pieces().Matches(More().Replace(Letters.Plain(text), words.More)))
        {
            if (match.Groups["pause"].Success)
            {
                isPaused = true;
                continue;
            }

            var word = match.Value.Length > 1 ? match.Value.Trim('\'') : match.Value;
            if (word.Length > 0 && !words.Dropped.Contains(word))
            {
                found.Add(new(word, isPaused, match.Groups["number"].Success));
                isPaused = false;
            }
        }

        return found;
    }

    private (SpokenAmount Amount, int Behind)? Amount(List<SpokenWord> all, int at) =>
        InUnits(all, at) is not var (amount, behind) ? null
        : amount.Unit == Unit.Quart && all[at..behind].Exists(word => words.Pints.Contains(word.Text)) ? (amount with { Value = amount.Value / PintsInAQuart }, behind)
        : (amount, behind);

    private (SpokenAmount Amount, int Behind)? InUnits(List<SpokenWord> all, int at)
    {
        string At(int place) => place < all.Count ? all[place].Text : "";
        if (_clock.Read(all, at) is { } clock)
        {
            return clock;
        }

        var sign = 1;
        var here = at;
        if (words.Minus.Contains(At(here)) || At(here) == "-")
        {
            (sign, here) = (-1, here + 1);
        }

        if (_numbers.Number(all, here) is var (whole, afterWhole))
        {
            var (value, next) = words.Some.TryGetValue(At(afterWhole), out var dozens) && dozens > 2 ? (whole * dozens, afterWhole + 1) : _numbers.WithPart(all, whole, afterWhole);
            var (unit, hint, behind) = _units.At(all, next);
            if (unit == Unit.Pound && _numbers.Number(all, behind) is var (ounces, afterOunces) && !all[behind].IsPaused && words.Ounces.Contains(At(afterOunces)))
            {
                (value, behind) = (value + (ounces / OuncesInAPound), afterOunces + 1);
            }
            else if (unit is not null && _numbers.PartBehind(all, behind) is var (part, afterPart))
            {
                (value, behind) = (value + part, afterPart);
            }

            if (behind < all.Count && words.Below.Contains(all[behind].Text) && !all[behind].IsPaused && (hint == AmountHint.Degrees || unit is null or Unit.DegreeFahrenheit or Unit.DegreeCelsius)
                && (behind + 1 >= all.Count || !all[behind + 1].IsNumber))
            {
                (sign, behind) = (-1, behind + 1);
                if (behind < all.Count && words.Numbers.GetValueOrDefault(all[behind].Text, 1) == 0)
                {
                    behind++;
                }

                if (unit is null && hint == AmountHint.None)
                {
                    (unit, hint, behind) = _units.At(all, behind);
                }
            }

            return (new(sign * value, unit, hint), behind);
        }

        // Half a gallon, three quarters of an inch, a quarter inch; a gallon and a half, an inch.
        if (_numbers.PartAt(all, here) is var (fraction, afterFraction) && _units.At(all, _units.PastArticle(all, afterFraction)) is ({ } its, _, var afterIts))
        {
            return (new(sign * fraction, its), afterIts);
        }

        if (_numbers.PartAt(all, here) is var (ofMany, behindPart) && (words.One.Contains(At(behindPart)) ? behindPart + 1 : behindPart) is var manyAt
            && words.Some.TryGetValue(At(manyAt), out var many) && _units.At(all, manyAt + 1) is ({ } each, _, var afterEach))
        {
            return (new(ofMany * many, each), afterEach);
        }

        // An eighth shy of two inches: a part counts without its unit where it is taken off.
        if (_numbers.PartAt(all, here) is var (little, afterLittle) && words.Short.Contains(At(afterLittle)))
        {
            return (new(little, null), afterLittle);
        }

        var article = words.One.Contains(At(here)) ? here + 1 : here;
        if (words.Some.TryGetValue(At(article), out var some))
        {
            var next = words.Of.Contains(At(article + 1)) ? article + 2 : article + 1;
            var (unit, hint, behind) = _units.At(all, next);
            return unit is null ? null : (new(some, unit, hint), behind);
        }

        if (_units.At(all, article, isFirst: article == here) is ({ } one, _, var afterOne) && _numbers.PartBehind(all, afterOne) is var parted && (parted is not null || (article > here && At(article).Length > 2)))
        {
            var (part, behind) = parted ?? (0, afterOne);
            return (new(1 + part, one), behind);
        }

        return null;
    }

    /// <summary>A plus right before a number, but not between two.</summary>
    [GeneratedRegex(@"(?<![0-9] ?)\+ ?(?=[0-9.])", RegexOptions.CultureInvariant)]
    private static partial Regex More();

    [GeneratedRegex(
        @"(?<number>[0-9]{1,2}:[0-5][0-9](?![0-9])|[0-9]{1,3}/[0-9]{1,2}(?![0-9/])|[0-9]{1,7}(?:[.,][0-9]{1,5})?|(?<![0-9])\.[0-9]{1,5}|[¼½¾⅛⅜⅝⅞⅓⅔])|(?<word>[a-z']+|°|""|”|″|%|&|(?<![a-z0-9])-(?=[0-9]))|(?<pause>[.!?;,:()\n\r–—…=+]+|\s[-/]+\s|--+)",
        RegexOptions.CultureInvariant)]
    private static partial Regex Pieces();
}
