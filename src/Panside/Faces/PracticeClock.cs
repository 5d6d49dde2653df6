namespace Panside.Faces;

/// <summary>A clock that runs some times as fast as another, from its present time on.</summary>
internal sealed class PracticeClock : TimeProvider
{
    private readonly TimeProvider _clock;
    private readonly double _speed;
    private readonly DateTimeOffset _start;
    private readonly long _stamp;

    /// <summary>A clock that begins now.</summary>
    public PracticeClock(TimeProvider clock, double speed)
    {
        (_clock, _speed) = (clock, speed);
        (_start, _stamp) = (clock.GetUtcNow(), clock.GetTimestamp());
    }

    /// <inheritdoc/>
    public override TimeZoneInfo LocalTimeZone => _clock.LocalTimeZone;

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => _start + (_clock.GetElapsedTime(_stamp) * _speed);
}
