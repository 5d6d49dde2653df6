namespace Panside.Faces;

/// <summary>A clock that runs some times as fast as another, from its present time on; it can be stopped, and set.</summary>
internal sealed class PracticeClock : TimeProvider
{
    /// <summary>The fastest that it runs.</summary>
    public const double Fastest = 60;

    private readonly TimeProvider _clock;
    private DateTimeOffset _start;
    private long _stamp;

    /// <summary>A clock that begins now.</summary>
    public PracticeClock(TimeProvider clock, double speed)
    {
        (_clock, Speed) = (clock, speed);
        (_start, _stamp) = (clock.GetUtcNow(), clock.GetTimestamp());
    }

    /// <summary>Times real time; 0 while it is stopped.</summary>
    public double Speed { get; private set; }

    /// <inheritdoc/>
    public override TimeZoneInfo LocalTimeZone => _clock.LocalTimeZone;

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => _start + (_clock.GetElapsedTime(_stamp) * Speed);

    /// <summary>Runs on at another speed; 0 stops it.</summary>
    public void Run(double speed)
    {
        Set(GetUtcNow());
        Speed = speed;
    }

    /// <summary>Goes on from another time.</summary>
    public void Set(DateTimeOffset time) => (_start, _stamp) = (time, _clock.GetTimestamp());
}
