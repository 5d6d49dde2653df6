using System.Globalization;

namespace Panside.Screen.Painting;

/// <summary>Times as they are read at a glance.</summary>
internal static class Times
{
    /// <summary><c>5 min</c>, <c>2 h 10</c>, <c>3 days</c>.</summary>
    public static string Span(double minutes)
    {
        var whole = (long)double.Clamp(double.Round(minutes), 0, 1e9);
        return whole switch
        {
            < 100 => Number(whole) + " min",
            < 24 * 60 => $"{Number(whole / 60)} h {(whole % 60).ToString("00", CultureInfo.InvariantCulture)}",
            _ => Number(whole / (24 * 60)) + (whole < 48 * 60 ? " day" : " days"),
        };
    }

    /// <summary><c>5 min</c>, or <c>now</c> when it has come.</summary>
    public static string To(DateTimeOffset now, DateTimeOffset then) =>
        then <= now ? "now" : Span(double.Ceiling((then - now).TotalMinutes));

    /// <summary><c>in 5 min</c>, or <c>now</c> when it has come.</summary>
    public static string Until(DateTimeOffset now, DateTimeOffset then) => then <= now ? "now" : "in " + To(now, then);

    /// <summary>How long ago something was: <c>just now</c>, <c>5 min ago</c>; <c>34 min old</c> where it is too old to go by.</summary>
    public static string Age(double minutes, bool isOld = false) => isOld ? Span(minutes) + " old" : minutes < 1 ? "just now" : Span(minutes) + " ago";

    /// <summary>One decimal at the most.</summary>
    public static string Number(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
