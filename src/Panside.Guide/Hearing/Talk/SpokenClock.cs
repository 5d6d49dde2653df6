using System.Globalization;
using System.Text.RegularExpressions;

namespace Panside.Guide.Hearing.Talk;

/// <summary>Times of day as they are spoken: half past ten, 22:30, ten thirty pm, midnight.</summary>
/// <param name="words">The words of the language.</param>
internal sealed partial class SpokenClock(TalkWords words)
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

    [GeneratedRegex(@"^(?<hour>[0-9]{1,2}):(?<minute>[0-5][0-9])$", RegexOptions.CultureInvariant)]
    private static partial Regex Colon();
}
