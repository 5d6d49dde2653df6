using System.Globalization;
using Panside.Guide.Lines;

namespace Panside.Commands;

/// <summary>Plays a past session as lines of text, with pauses or without.</summary>
internal sealed class Player(TextWriter output, TextWriter errors, TimeProvider clock)
{
    /// <summary>Plays it.</summary>
    /// <param name="session">The session.</param>
    /// <param name="speed">How many times faster than it was; null to print it at once.</param>
    /// <param name="to">Where to stop: a time of day, or a whole time; null for the end.</param>
    /// <param name="stop">Ends it early.</param>
    /// <returns>The exit status.</returns>
    /// <exception cref="UnusableException"><paramref name="to"/> is no time.</exception>
    public int Play(PastSession session, double? speed, string? to, CancellationToken stop)
    {
        var end = to is null ? (DateTimeOffset?)null : End(to, session.Start);
        Moment? last = null;
        var isAnother = false;
        foreach (var (at, lines, difference) in session.Told().TakeWhile(told => !(told.At.Time > end)))
        {
            if (speed is { } times && last is { } before && !Wait((at.Time - before.Time) / times, stop))
            {
                return ExitStatus.Interrupted;
            }

            if (last is { } previous && previous.Time.Date != at.Time.Date)
            {
                output.WriteLine($"--- {at.Time:yyyy-MM-dd} ---");
            }

            foreach (var line in lines)
            {
                output.WriteLine(line);
            }

            output.Flush();
            isAnother |= difference is not null;
            last = at;
        }

        if (last is null)
        {
            errors.WriteLine(session.Start is { } start ? $"Nothing was said until then; the session begins at {start.Written}." : "The record holds no line with a time.");
        }

        if (isAnother)
        {
            errors.WriteLine("Some answers were others when this was recorded; shown is what the assistant says now. '--verify' names the first.");
        }

        if (session.Damaged.Count > 0)
        {
            errors.WriteLine($"Damaged lines, left out: {string.Join(", ", session.Damaged.Take(10))}. 'panside check' tells more.");
        }

        return ExitStatus.Done;
    }

    /// <summary>A time of day is the first one after the session's start, on its own clock.</summary>
    private static DateTimeOffset End(string to, Moment? start)
    {
        if (Moment.Read(to) is { } moment)
        {
            return moment.Time;
        }

        if (start is not { } first || !TimeOnly.TryParseExact(to, ["H:mm", "HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            throw new UnusableException($"--to is '{to}'. Expected a time of day like 17:05, or a whole one like 2031-03-08T17:05:00-05:00.");
        }

        var minute = first.Time.AddTicks(-(first.Time.TimeOfDay.Ticks % TimeSpan.TicksPerMinute));
        var wait = time - TimeOnly.FromTimeSpan(minute.TimeOfDay);
        return minute + wait + TimeSpan.FromSeconds(59.999);
    }

    private bool Wait(TimeSpan pause, CancellationToken stop)
    {
        try
        {
            Task.Delay(pause > TimeSpan.Zero ? pause : TimeSpan.Zero, clock, stop).GetAwaiter().GetResult();
            return true;
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }
}
