using Panside.Guide.Debriefing;
using Panside.Guide.Lines;

namespace Panside.Commands;

/// <summary>Plays a past session as lines of text, with pauses or without.</summary>
internal sealed class Player(TextWriter output, TextWriter errors, TimeProvider clock)
{
    /// <summary>Plays it.</summary>
    /// <param name="session">The session.</param>
    /// <param name="speed">How many times faster than it was; null to print it at once.</param>
    /// <param name="from">Where to begin: a time of day, or a whole time; null for the beginning.</param>
    /// <param name="to">Where to stop; null for the end.</param>
    /// <param name="stop">Ends it early.</param>
    /// <returns>The exit status.</returns>
    /// <exception cref="UnusableException"><paramref name="from"/> or <paramref name="to"/> is no time.</exception>
    public int Play(PastSession session, double? speed, string? from, string? to, CancellationToken stop)
    {
        var (begin, end) = (TimeOf("--from", from, session.Start), TimeOf("--to", to, session.Start));
        Moment? last = null;
        foreach (var (at, lines) in session.Told().SkipWhile(told => told.At.Time < Minute(begin)).TakeWhile(told => !(told.At.Time > end)))
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
            last = at;
        }

        if (last is null)
        {
            errors.WriteLine(session.Start is { } start ? $"Nothing was said then; the session begins at {start.Written}." : "The record holds no line with a time.");
        }

        if (session.Notice is { } notice)
        {
            errors.WriteLine(notice);
        }

        return ExitStatus.Done;
    }

    /// <summary>A time in a session as an option names it; null where it names none.</summary>
    /// <exception cref="UnusableException">It is no time.</exception>
    public static DateTimeOffset? TimeOf(string option, string? text, Moment? start) => text is null
        ? null
        : TimeInBoil.Read(text, start)
            ?? throw new UnusableException($"{option} is '{text}'. Expected a time of day like 17:05, or a whole one like 2031-03-08T17:05:00-05:00.");

    /// <summary>The beginning of a minute that was named as its end.</summary>
    public static DateTimeOffset? Minute(DateTimeOffset? time) =>
        time is { } named ? named.AddTicks(-(named.Ticks % TimeSpan.TicksPerMinute)) : null;

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
