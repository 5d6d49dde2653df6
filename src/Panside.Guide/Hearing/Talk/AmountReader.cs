using System.Globalization;
using System.Text.RegularExpressions;
using Panside.Guide.Hearing.Sentences;
using Panside.Guide.Measures;
using Quickenshtein;

namespace Panside.Guide.Hearing.Talk;

/// <summary>
/// Cuts a line into words and amounts: <c>twenty two and a half gallons</c>, <c>an inch and a half</c>, <c>1 1/2"</c>, <c>two
/// seventeen point four</c>, <c>half past ten</c>.
/// </summary>
internal sealed partial class AmountReader(TalkWords words)
{
    private const int MostPieces = 80;
    private const double OuncesInAPound = 16;
    private const int ShortestSlip = 4;
    private const string Glyphs = "¼½¾⅛⅜⅝⅞⅓⅔";
    private static readonly double[] GlyphValues = [0.25, 0.5, 0.75, 0.125, 0.375, 0.625, 0.875, 1.0 / 3, 2.0 / 3];

    private readonly record struct Word(string Text, bool IsPaused, bool IsNumber);

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
                pieces.Add(new(NameOf(amount), amount, all[at].IsPaused));
                at = behind;
            }
            else
            {
                pieces.Add(new(all[at].Text, null, all[at].IsPaused));
                at++;
            }
        }

        return pieces;
    }

    /// <summary>Three splits, two channels, the last one: a number that measures nothing.</summary>
    private bool IsCount(List<Word> all, int at, SpokenAmount amount, int behind) =>
        amount is { Unit: null, Hint: AmountHint.None }
        && ((behind < all.Count && !all[behind].IsPaused && words.Counted.Contains(all[behind].Text))
            || (amount.Value == 1 && !all[at].IsNumber && behind == at + 1 && all.Count > 2));

    /// <summary>A quarter inch under two, an eighth shy of two inches.</summary>
    private (SpokenAmount Amount, int Behind) ShortOf(List<Word> all, SpokenAmount amount, int behind)
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

    private static string NameOf(SpokenAmount amount) => amount.Hint switch
    {
        AmountHint.Clock => "<clock>",
        AmountHint.Degrees => "<temperature>",
        _ => amount.Unit is { } unit ? $"<{unit.Kind().ToString().ToLowerInvariant()}>" : "<number>",
    };

    private List<Word> Words(string text)
    {
        var found = new List<Word>();
        var isPaused = false;
        foreach (Match match in Pieces().Matches(Letters.Plain(text)))
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

    private (SpokenAmount Amount, int Behind)? Amount(List<Word> all, int at)
    {
        string At(int place) => place < all.Count ? all[place].Text : "";
        if (Clock(all, at) is { } clock)
        {
            return clock;
        }

        var sign = 1;
        var here = at;
        if (words.Minus.Contains(At(here)) || At(here) == "-")
        {
            (sign, here) = (-1, here + 1);
        }

        if (Number(all, here) is var (whole, afterWhole))
        {
            var (value, next) = words.Some.TryGetValue(At(afterWhole), out var dozens) && dozens > 2 ? (whole * dozens, afterWhole + 1) : WithPart(all, whole, afterWhole);
            var (unit, hint, behind) = UnitAt(all, next);
            if (unit == Unit.Pound && Number(all, behind) is var (ounces, afterOunces) && !all[behind].IsPaused && words.Ounces.Contains(At(afterOunces)))
            {
                (value, behind) = (value + (ounces / OuncesInAPound), afterOunces + 1);
            }
            else if (unit is not null && PartBehind(all, behind) is var (part, afterPart))
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
                    (unit, hint, behind) = UnitAt(all, behind);
                }
            }

            return (new(sign * value, unit, hint), behind);
        }

        // Half a gallon, three quarters of an inch, a quarter inch; a gallon and a half, an inch.
        if (PartAt(all, here) is var (fraction, afterFraction) && UnitAt(all, PastArticle(all, afterFraction)) is ({ } its, _, var afterIts))
        {
            return (new(sign * fraction, its), afterIts);
        }

        if (PartAt(all, here) is var (ofMany, behindPart) && (words.One.Contains(At(behindPart)) ? behindPart + 1 : behindPart) is var manyAt
            && words.Some.TryGetValue(At(manyAt), out var many) && UnitAt(all, manyAt + 1) is ({ } each, _, var afterEach))
        {
            return (new(ofMany * many, each), afterEach);
        }

        // An eighth shy of two inches: a part counts without its unit where it is taken off.
        if (PartAt(all, here) is var (little, afterLittle) && words.Short.Contains(At(afterLittle)))
        {
            return (new(little, null), afterLittle);
        }

        var article = words.One.Contains(At(here)) ? here + 1 : here;
        if (words.Some.TryGetValue(At(article), out var some))
        {
            var next = words.Of.Contains(At(article + 1)) ? article + 2 : article + 1;
            var (unit, hint, behind) = UnitAt(all, next);
            return unit is null ? null : (new(some, unit, hint), behind);
        }

        if (UnitAt(all, article, isFirst: article == here) is ({ } one, _, var afterOne) && (article > here || PartBehind(all, afterOne) is not null) && At(article).Length > 2)
        {
            var (part, behind) = PartBehind(all, afterOne) ?? (0, afterOne);
            return (new(1 + part, one), behind);
        }

        return null;
    }

    /// <summary>A whole number in digits or words, with its decimals.</summary>
    private (double Value, int Behind)? Number(List<Word> all, int at)
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
            if (Digits(all[at].Text) is not { } digits)
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
            && words.Numbers.TryGetValue(all[next].Text, out var tenths) && tenths is >= 1 and < 10 && UnitAt(all, next + 1).Unit is null && !words.Counted.Contains(At(next + 1)))
        {
            // Twenty nine six, two eleven three: the tenths of a dial read out.
            (value, next) = (value + (tenths / 10), next + 1);
        }

        return (value, next);
    }

    private double? Digit(Word word) =>
        word.IsNumber ? Digits(word.Text) is { } digits and < 10 ? digits : null
        : words.Numbers.TryGetValue(word.Text, out var number) && number < 10 ? number : null;

    /// <summary>Twenty two, a hundred and three, two hundred ten, two seventeen, two oh nine.</summary>
    private (double Value, int Behind)? InWords(List<Word> all, int at)
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
    private (double Value, int Behind) WithPart(List<Word> all, double value, int at)
    {
        if (at < all.Count && all[at].IsNumber && !all[at].IsPaused && Fraction(all[at].Text) is { } fraction)
        {
            return (value + fraction, at + 1);
        }

        return PartBehind(all, at) is var (part, behind) ? (value + part, behind)
            // A part right behind makes a share: three quarters.
            : at < all.Count && words.Parts.TryGetValue(all[at].Text, out var share) && share < 0.5 ? (value * share, PastArticle(all, at + 1, ifUnit: true))
            : (value, at);
    }

    /// <summary>And a half, and three quarters, and 1/2.</summary>
    private (double Value, int Behind)? PartBehind(List<Word> all, int at) =>
        at + 1 < all.Count && words.And.Contains(all[at].Text) && !all[at].IsPaused ? PartAt(all, at + 1)
        : at < all.Count && all[at].IsNumber && !all[at].IsPaused && Fraction(all[at].Text) is { } written ? (written, at + 1) : null;

    /// <summary>A half, half, one half, three quarters, 3/4.</summary>
    private (double Value, int Behind)? PartAt(List<Word> all, int at)
    {
        string At(int place) => place < all.Count ? all[place].Text : "";
        if (at < all.Count && all[at].IsNumber)
        {
            return Fraction(At(at)) is { } written ? (written, at + 1)
                : Digits(At(at)) is { } many and < 16 && words.Parts.TryGetValue(At(at + 1), out var each) ? (many * each, at + 2) : null;
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

    /// <summary>Past "of", "of an", "a" where a unit comes then.</summary>
    private int PastArticle(List<Word> all, int at, bool ifUnit = false)
    {
        var next = at;
        next = next < all.Count && words.Of.Contains(all[next].Text) ? next + 1 : next;
        next = next < all.Count && words.One.Contains(all[next].Text) ? next + 1 : next;
        return ifUnit && UnitAt(all, next).Unit is null ? at : next;
    }

    private (Unit? Unit, AmountHint Hint, int Behind) UnitAt(List<Word> all, int at, bool isFirst = false)
    {
        string At(int place) => place < all.Count ? all[place].Text : "";
        if (at >= all.Count || (all[at].IsPaused && !isFirst) || all[at].IsNumber)
        {
            return (null, AmountHint.None, at);
        }

        if (words.Degrees.Contains(At(at)))
        {
            return UnitNames.FromWord(At(at + 1)) is { } degree && degree.Kind() is Dimension.Temperature or Dimension.Sugar
                ? (UnitNames.FromWord(At(at + 1)), AmountHint.None, at + 2)
                : (null, AmountHint.Degrees, at + 1);
        }

        if (At(at) is "in" or "inches" or "inch" && At(at + 1) is "hg" or "of" && (At(at + 1) == "hg" || At(at + 2) == "mercury"))
        {
            return (Unit.InchOfMercury, AmountHint.None, At(at + 1) == "hg" ? at + 2 : at + 3);
        }

        if (UnitOf(At(at)) is not { } unit || (At(at) == "in" && (at + 1 >= all.Count ? false : words.NoUnitBefore.Contains(At(at + 1))))
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
        if (UnitNames.FromWord(word) is { } unit)
        {
            return unit;
        }

        return word.Length < ShortestSlip || words.NoUnits.Contains(word) ? null
            : UnitNames.Words.Where(known => known.Length >= ShortestSlip && known[0] == word[0] && int.Abs(known.Length - word.Length) <= 1)
                .Where(known => Levenshtein.GetDistance(word, known) <= 1 || (known.Length == word.Length && known.Order().SequenceEqual(word.Order()) && Levenshtein.GetDistance(word, known) == 2))
                .Select(UnitNames.FromWord).FirstOrDefault();
    }

    private (SpokenAmount Amount, int Behind)? Clock(List<Word> all, int at)
    {
        string At(int place) => place < all.Count ? all[place].Text : "";
        if (words.Times.TryGetValue(At(at), out var named))
        {
            return (new(named, null, AmountHint.Clock), at + 1);
        }

        if (all[at].IsNumber && Written().Match(At(at)) is { Success: true } written)
        {
            var minutes = (int.Parse(written.Groups["hour"].Value, CultureInfo.InvariantCulture) * 60) + int.Parse(written.Groups["minute"].Value, CultureInfo.InvariantCulture);
            return OfDay(minutes, at + 1);
        }

        if (words.Half.Contains(At(at)) && words.Past.Contains(At(at + 1)) && Hour(at + 2) is { } half)
        {
            return OfDay((half * 60) + 30, at + 3);
        }

        var part = words.One.Contains(At(at)) ? at + 1 : at;
        if (words.Parts.TryGetValue(At(part), out var quarter) && quarter == 0.25 && Hour(part + 2) is { } hour)
        {
            return words.Past.Contains(At(part + 1)) ? OfDay((hour * 60) + 15, part + 3)
                : words.To.Contains(At(part + 1)) ? OfDay((hour * 60) - 15, part + 3) : null;
        }

        // Ten thirty pm, 10 pm, ten o'clock.
        if (Hour(at) is { } plain)
        {
            var minute = at + 1 < all.Count && words.Numbers.TryGetValue(At(at + 1), out var tens) && tens is 15 or 20 or 30 or 40 or 45 or 50 ? tens : (double?)null;
            var next = minute is null ? at + 1 : at + 2;
            if (words.Clock.Contains(At(next)) || words.Morning.Contains(At(next)) || words.Evening.Contains(At(next)))
            {
                return OfDay((plain * 60) + (minute ?? 0), next);
            }
        }

        return null;

        double? Hour(int place) => place >= all.Count ? null
            : all[place].IsNumber ? Digits(all[place].Text) is { } digits and >= 1 and <= 24 && digits == double.Truncate(digits) ? digits : null
            : words.Numbers.TryGetValue(all[place].Text, out var number) && number is >= 1 and <= 12 ? number : null;

        (SpokenAmount Amount, int Behind)? OfDay(double minutes, int behind)
        {
            var next = words.Clock.Contains(At(behind)) ? behind + 1 : behind;
            var evening = words.Evening.Contains(At(next));
            var morning = words.Morning.Contains(At(next));
            var twelve = minutes % 720;
            var value = evening ? twelve + 720 : morning ? twelve : minutes;
            return value is < 0 or > 1440 ? null
                : (new(value, null, AmountHint.Clock) { IsEither = !evening && !morning && minutes is >= 45 and < 780 }, evening || morning ? next + 1 : next);
        }
    }

    private static double? Digits(string text)
    {
        if (text.Contains('/', StringComparison.Ordinal) || Glyphs.Contains(text[^1], StringComparison.Ordinal))
        {
            return MeasureText.TryNumber(text, out var parts, out var rest) && rest.Length == 0 ? parts : null;
        }

        // 1,234 may be thousands: then it is no number that anybody should guess.
        return text.Length <= 10 && text.IndexOf(',', StringComparison.Ordinal) is var comma && (comma < 0 || text.Length - comma != 4) && double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) ? value : null;
    }

    private static double? Fraction(string text) =>
        text.Length == 1 && Glyphs.IndexOf(text[0], StringComparison.Ordinal) is >= 0 and var glyph ? GlyphValues[glyph]
        : text.Contains('/', StringComparison.Ordinal) && Digits(text) is { } value and < 1 ? value : null;

    [GeneratedRegex(@"^(?<hour>[0-9]{1,2}):(?<minute>[0-5][0-9])$", RegexOptions.CultureInvariant)]
    private static partial Regex Written();

    [GeneratedRegex(
        @"(?<number>[0-9]{1,2}:[0-5][0-9](?![0-9])|[0-9]{1,3}/[0-9]{1,2}(?![0-9/])|[0-9]{1,7}(?:[.,][0-9]{1,5})?|(?<![0-9])\.[0-9]{1,5}|[¼½¾⅛⅜⅝⅞⅓⅔])|(?<word>[a-z']+|°|""|”|″|%|&|(?<![a-z0-9])-(?=[0-9]))|(?<pause>[.!?;,:()\n\r–—…=+]+|\s[-/]+\s|--+)",
        RegexOptions.CultureInvariant)]
    private static partial Regex Pieces();
}
