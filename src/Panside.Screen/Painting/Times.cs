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

    /// <summary>What is likely and how far it may come otherwise, in one unit: <c>85, least 65 min</c>, <c>3.9 h, least 2.2 h</c>.</summary>
    public static string Forecast(double minutes, string word, double bound) => minutes switch
    {
        < 1 when bound < 1 => "now",
        < 120 when Number(minutes) == Number(bound) => $"{Number(minutes)} min",
        < 120 => $"{Number(minutes)}, {word} {Number(bound)} min",
        _ => $"{Number(minutes / 60)} h, {word} {Number(bound / 60)} h",
    };

    /// <summary>One decimal at the most.</summary>
    public static string Number(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
