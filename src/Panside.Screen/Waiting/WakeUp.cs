namespace Panside.Screen.Waiting;

/// <summary>Lets the loop sleep until something is to be done: a key, a signal, a timer that is due.</summary>
internal sealed class WakeUp(TimeProvider clock) : IDisposable
{
    /// <summary>Longest sleep: half of what the timers of the screen are apart.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromSeconds(0.5);

    /// <summary>Sleep while keys come: the library lets a lone Esc stand for 50 ms in case more of it comes.</summary>
    public static readonly TimeSpan WhileTyping = TimeSpan.FromSeconds(0.025);

    private static readonly TimeSpan Settling = TimeSpan.FromSeconds(0.1);

    private readonly AutoResetEvent _rung = new(initialState: true);
    private long _last = clock.GetTimestamp();

    /// <summary>Wakes the loop, now or before it next sleeps.</summary>
    public void Ring()
    {
        Interlocked.Exchange(ref _last, clock.GetTimestamp());
        _rung.Set();
    }

    /// <summary>Sleeps until it is rung, but not for ever.</summary>
    public void Sleep() => _rung.WaitOne(HowLong());

    /// <summary>How long it would sleep now where nothing rings.</summary>
    public TimeSpan HowLong() =>
        clock.GetElapsedTime(Interlocked.Read(ref _last)) < Settling ? WhileTyping : Longest;

    /// <inheritdoc/>
    public void Dispose() => _rung.Dispose();
}
