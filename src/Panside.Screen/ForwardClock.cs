using Panside.Guide.Lines;

namespace Panside.Screen;

/// <summary>
/// What time it is for a conversation: the machine's clock, which only goes forward. Where it is set back in the middle of a
/// boil, time goes on from where it stood, as fast as it passes.
/// </summary>
/// <param name="clock">The machine's clock.</param>
public sealed class ForwardClock(TimeProvider clock)
{
    private DateTimeOffset _last = DateTimeOffset.MinValue;
    private DateTimeOffset _line = DateTimeOffset.MinValue;
    private long? _stamp;

    /// <summary>The time now, no earlier than the last line.</summary>
    /// <param name="lastLine">When the last line was said; null before the first.</param>
    public Moment Now(Moment? lastLine)
    {
        var (shown, stamp) = (clock.GetLocalNow(), clock.GetTimestamp());
        if (lastLine is { } said && said.Time < _line)
        {
            // Only a practice steps back: then its time does.
            _last = said.Time;
        }

        _line = lastLine?.Time ?? _line;
        var floor = lastLine is { } line && line.Time > _last ? line.Time : _last;
        if (shown < floor)
        {
            var passed = _stamp is { } before ? clock.GetElapsedTime(before, stamp) : TimeSpan.Zero;
            shown = floor + (passed > TimeSpan.Zero ? passed : TimeSpan.Zero);
        }

        (_last, _stamp) = (shown, stamp);
        var now = Moment.Of(shown);

        // Another program may have written a part of a second, which this clock does not show.
        return now.Time < lastLine?.Time ? Moment.Of(lastLine.Value.Time.AddSeconds(1)) : now;
    }
}
