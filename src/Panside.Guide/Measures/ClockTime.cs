using System.Collections.Frozen;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Panside.Guide.Measures;

/// <summary>A time of day as a person says it.</summary>
/// <param name="Minutes">Minutes since midnight; since the last twelve where it is either.</param>
/// <param name="IsEither">Whether it can be in the morning or in the evening: <c>eight</c>.</param>
public readonly partial record struct ClockTime(int Minutes, bool IsEither)
{
    private static readonly FrozenDictionary<string, int> Hours = new[]
    {
        "twelve", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven",
    }.Select((word, hour) => (word, hour)).ToFrozenDictionary(pair => pair.word, pair => pair.hour, StringComparer.OrdinalIgnoreCase);

    /// <summary>
    /// Reads <c>20:00</c>, <c>08:30</c>, <c>8:30 pm</c>, <c>8</c>, <c>eight</c>, <c>half past eight</c>, <c>noon</c> and
    /// <c>midnight</c>; null where it is none.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="ofDay">Whether hours with minutes are those of the whole day, as where no present moment tells which of two is meant.</param>
    public static ClockTime? Read(string text, bool ofDay = false)
    {
        if (Written().Match(text.Trim()) is not { Success: true } match)
        {
            return null;
        }

        if (match.Groups["name"].Value is { Length: > 0 } name)
        {
            return new(name.StartsWith('n') || name.StartsWith('N') ? 12 * 60 : 0, false);
        }

        var digits = match.Groups["hour"].Value;
        var hour = digits.Length > 0 ? int.Parse(digits, CultureInfo.InvariantCulture) : Hours[match.Groups["word"].Value];
        var minute = match.Groups["past"].Success ? 30
            : match.Groups["minute"].Success ? int.Parse(match.Groups["minute"].Value, CultureInfo.InvariantCulture) : 0;
        var ofTwelve = (hour % 12 * 60) + minute;
        var isOfTwelve = digits.Length == 0 || hour is >= 1 and <= 12;
        if (hour > 24 || minute > 59 || (hour == 24 && minute > 0))
        {
            return null;
        }

        if (match.Groups["morning"].Success || match.Groups["evening"].Success)
        {
            return isOfTwelve ? new(ofTwelve + (match.Groups["evening"].Success ? 12 * 60 : 0), false) : null;
        }

        var isEither = isOfTwelve && !digits.StartsWith('0') && !(ofDay && match.Groups["minute"].Success);
        return isEither ? new(ofTwelve, true) : new((hour % 24 * 60) + minute, false);
    }

    /// <summary>The next such time after a moment, in that moment's own offset.</summary>
    public DateTimeOffset NextAfter(DateTimeOffset now)
    {
        var next = new DateTimeOffset(now.Date, now.Offset).AddMinutes(Minutes);
        while (next <= now)
        {
            next = next.AddHours(IsEither ? 12 : 24);
        }

        return next;
    }

    /// <summary><c>08:30</c>.</summary>
    public override string ToString() => $"{Minutes / 60:00}:{Minutes % 60:00}";

    [GeneratedRegex(
        @"^(?:(?<name>noon|midnight)|(?<past>half past )?(?:(?<hour>[0-9]{1,2})(?:[:.](?<minute>[0-9][0-9]))?|(?<word>one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve))(?: ?o.?clock)?(?: ?(?:(?<morning>am|a\.m\.?|in the morning)|(?<evening>pm|p\.m\.?|in the (?:afternoon|evening))))?)$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Written();
}
