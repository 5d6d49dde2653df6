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
        (_clock, Speed, Usual) = (clock, speed, speed);
        (_start, _stamp) = (clock.GetUtcNow(), clock.GetTimestamp());
    }

    /// <summary>Times real time; 0 while it is stopped.</summary>
    public double Speed { get; private set; }

    /// <summary>The speed that was last chosen, to which it comes back from a stop or from real time.</summary>
    public double Usual { get; private set; }

    /// <inheritdoc/>
    public override TimeZoneInfo LocalTimeZone => _clock.LocalTimeZone;

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => _start + (_clock.GetElapsedTime(_stamp) * Speed);

    /// <summary>Runs on at another speed, from now on the usual one.</summary>
    public void Run(double speed) => (Speed, Usual) = (Held(speed), speed);

    /// <summary>Time stands still.</summary>
    public void Stop() => Speed = Held(0);

    /// <summary>Runs as fast as the real one for a while.</summary>
    public void Slow() => Speed = Held(1);

    /// <summary>Comes back to the usual speed.</summary>
    public void Go() => Speed = Held(Usual);

    /// <summary>Goes on from another time.</summary>
    public void Set(DateTimeOffset time) => (_start, _stamp) = (time, _clock.GetTimestamp());

    /// <summary>The time so far went by at the speed before.</summary>
    private double Held(double next)
    {
        Set(GetUtcNow());
        return next;
    }
}
