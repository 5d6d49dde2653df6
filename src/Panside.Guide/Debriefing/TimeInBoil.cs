using System.Globalization;
using Panside.Guide.Lines;

namespace Panside.Guide.Debriefing;

/// <summary>A time in a past boil as a person names it.</summary>
public static class TimeInBoil
{
    private static readonly string[] Forms = ["H:mm", "HH:mm"];

    /// <summary>A whole time, or a time of day: then the end of its first minute after the boil's start, on the boil's own clock.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="start">The boil's first line; null where it has none.</param>
    /// <returns>The time; null where the text is none.</returns>
    public static DateTimeOffset? Read(string text, Moment? start)
    {
        if (Moment.Read(text) is { } moment)
        {
            return moment.Time;
        }

        if (start is not { } first || !TimeOnly.TryParseExact(text, Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            return null;
        }

        var minute = first.Time.AddTicks(-(first.Time.TimeOfDay.Ticks % TimeSpan.TicksPerMinute));
        var wait = time - TimeOnly.FromTimeSpan(minute.TimeOfDay);
        return minute + wait + TimeSpan.FromSeconds(59.999);
    }
}
