using System.Globalization;
using System.Text.RegularExpressions;

namespace Panside.Guide.Hearing.Talk;

/// <summary>Times of day as they are spoken: half past ten, 22:30, ten thirty pm, midnight.</summary>
/// <param name="words">The words of the language.</param>
/// <param name="units">The units that may stand behind a number: then it is no time.</param>
internal sealed partial class SpokenClock(TalkWords words, SpokenUnits units)
{
    /// <summary>The time of day at a place, and the place behind it; null where none stands there.</summary>
    public (SpokenAmount Amount, int Behind)? Read(List<SpokenWord> all, int at)
    {
        string At(int place) => place < all.Count ? all[place].Text : "";
        if (words.Times.TryGetValue(At(at), out var named))
        {
            return (new(named, null, AmountHint.Clock), at + 1);
        }

        if (all[at].IsNumber && Colon().Match(At(at)) is { Success: true } written)
        {
            return OfDay(Minutes(written), at + 1);
        }

        if (words.Half.Contains(At(at)) && words.Past.Contains(At(at + 1)))
        {
            return words.Times.TryGetValue(At(at + 2), out var noon) ? OfDay((noon % 1440) + 30, at + 3)
                : Hour(at + 2) is { } half ? OfDay((half * 60) + 30, at + 3) : null;
        }

        // By half ten: half an hour after it.
        if (words.Half.Contains(At(at)) && IsTimeNext(at) && Hour(at + 1) is { } begun && IsNoAmount(at + 2))
        {
            return OfDay((begun * 60) + 30, at + 2);
        }

        if (all[at].IsNumber && Dotted().Match(At(at)) is { Success: true } dotted && (words.Morning.Contains(At(at + 1)) || words.Evening.Contains(At(at + 1))))
        {
            return OfDay(Minutes(dotted), at + 1);
        }

        // Ten past eight; at twenty to nine.
        if (MinutesBeside(at) is var (beside, sign) && (words.Past.Contains(At(sign)) || (words.To.Contains(At(sign)) && IsTimeNext(at))) && Hour(sign + 1) is { } near and <= 12 && IsNoAmount(sign + 2))
        {
            return OfDay((near * 60) + (words.Past.Contains(At(sign)) ? beside : -beside), sign + 2);
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

        bool IsTimeNext(int place) => place > 0 && words.When.Contains(At(place - 1));

        bool IsNoAmount(int place) => place >= all.Count || all[place].IsPaused || (units.At(all, place).Unit is null && !words.Counted.Contains(At(place)));

        (double Minutes, int Behind)? MinutesBeside(int place) =>
            all[place].IsNumber || !words.Numbers.TryGetValue(At(place), out var minutes) ? null
            : minutes == 20 && words.Numbers.TryGetValue(At(place + 1), out var more) && more == 5 ? (25, place + 2)
            : minutes is 5 or 10 or 20 or 25 ? (minutes, place + 1) : null;

        double? Hour(int place) => place >= all.Count ? null
            : all[place].IsNumber ? WrittenNumbers.Digits(all[place].Text) is { } digits and >= 1 and <= 24 && digits == double.Truncate(digits) ? digits : null
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

    private static int Minutes(Match clock) =>
        (int.Parse(clock.Groups["hour"].Value, CultureInfo.InvariantCulture) * 60) + int.Parse(clock.Groups["minute"].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<hour>[0-9]{1,2})\.(?<minute>[0-5][0-9])$", RegexOptions.CultureInvariant)]
    private static partial Regex Dotted();

    [GeneratedRegex(@"^(?<hour>[0-9]{1,2}):(?<minute>[0-5][0-9])$", RegexOptions.CultureInvariant)]
    private static partial Regex Colon();
}
