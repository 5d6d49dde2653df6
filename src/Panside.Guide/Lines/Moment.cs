using System.Globalization;
using System.Text.RegularExpressions;

namespace Panside.Guide.Lines;

/// <summary>A point in time as a line wrote it, so that an answer carries the very same text.</summary>
/// <param name="Time">The time with its offset.</param>
/// <param name="Written">The text: RFC 3339 with offset.</param>
public readonly partial record struct Moment(DateTimeOffset Time, string Written)
{
    private static readonly string[] Forms =
    [
        "yyyy-MM-dd'T'HH:mm:sszzz", "yyyy-MM-dd'T'HH:mm:ss.fffzzz", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz",
    ];

    /// <summary>Fractions of a second beyond the seven digits that this program tells apart.</summary>
    [GeneratedRegex(@"(\.[0-9]{7})[0-9]+", RegexOptions.CultureInvariant)]
    private static partial Regex TooFine();

    /// <summary>
    /// A moment of a face's clock, to the thousandth of a second: it is no finer than its text, so that a record which is read again
    /// tells the same, and what is said one after the other keeps its order.
    /// </summary>
    public static Moment Of(DateTimeOffset time)
    {
        var cut = time.AddTicks(-(time.Ticks % TimeSpan.TicksPerMillisecond));
        return new(cut, cut.ToString(Forms[cut.Millisecond == 0 ? 0 : 1], CultureInfo.InvariantCulture));
    }

    /// <summary>Reads RFC 3339 with an offset (<c>Z</c> or <c>±hh:mm</c>), years 1900 to 2999; null where it is none.</summary>
    public static Moment? Read(string text)
    {
        var plain = text.EndsWith('Z') || text.EndsWith('z') ? text[..^1] + "+00:00" : text;
        plain = plain.Length > 10 && plain[10] is 't' or ' ' ? plain[..10] + "T" + plain[11..] : plain;
        plain = TooFine().Replace(plain, "$1");
        return DateTimeOffset.TryParseExact(plain, Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)
            && time.Year is >= 1900 and <= 2999
            ? new(time, text)
            : null;
    }
}
