using Terminal.Gui.Time;
using ITimer = Terminal.Gui.Time.ITimer;

namespace Panside.Screen.Waiting;

/// <summary>The terminal library's time, from a clock that no one sets back.</summary>
internal sealed class MonotonicTime(TimeProvider clock) : ITimeProvider
{
    private readonly long _start = clock.GetTimestamp();

    /// <inheritdoc/>
    public DateTime Now => new DateTime(2000, 1, 1, 0, 0, 0, DateTimeKind.Unspecified) + clock.GetElapsedTime(_start);

    /// <inheritdoc/>
    public Task Delay(TimeSpan duration, CancellationToken cancellationToken = default) => Task.Delay(duration, clock, cancellationToken);

    /// <inheritdoc/>
    public ITimer CreateTimer(TimeSpan interval, Action callback) => new Repeating(clock, interval, callback);

    private sealed class Repeating(TimeProvider clock, TimeSpan interval, Action callback) : ITimer
    {
        private readonly System.Threading.ITimer _timer =
            clock.CreateTimer(_ => callback(), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);

        public bool IsRunning { get; private set; }

        public void Start() => Run(true, interval);

        public void Stop() => Run(false, Timeout.InfiniteTimeSpan);

        public void Dispose() => _timer.Dispose();

        private void Run(bool running, TimeSpan every)
        {
            IsRunning = running;
            _timer.Change(every, every);
        }
    }
}
