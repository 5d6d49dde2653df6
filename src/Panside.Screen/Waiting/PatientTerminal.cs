using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Time;

namespace Panside.Screen.Waiting;

/// <summary>
/// The terminal with a loop that sleeps until there is something to do. The library's own goes round 25 times a second: a key
/// waits for the next round, and a screen at rest wears a battery down.
/// </summary>
internal sealed class PatientTerminal : IDisposable
{
    private const string Bell = "\a";

    private const string MouseReportsOff = "\e[?1003l\e[?1015l\e[?1006l";

    /// <summary>Rounds a second where nothing holds the loop back; the sleep before each round does that.</summary>
    private const ushort Unhurried = 1000;

    private readonly WakeUp _wakeUp = new(TimeProvider.System);
    private readonly PatientInput _input;
    private readonly PosixSignalRegistration? _resized;

    /// <summary>Takes the terminal.</summary>
    public PatientTerminal()
    {
        _input = new(_wakeUp);
        var time = new MonotonicTime(TimeProvider.System);
        App = PatientInput.CanWait ? (IApplication)With(new AnsiComponentFactory(_input, new FrameOutput()), time) : Application.Create(time);
        if (PatientInput.CanWait && !OperatingSystem.IsWindows())
        {
            Application.MaximumIterationsPerSecond = Unhurried;
            App.Iteration += (_, _) => Pause();
            _resized = PosixSignalRegistration.Create(PosixSignal.SIGWINCH, _ => _wakeUp.Ring());
        }

        App.Init();
        App.Driver!.Force16Colors = true;
        App.Driver.WriteRaw(MouseReportsOff);
    }

    /// <summary>The library's application.</summary>
    public IApplication App { get; }

    /// <summary>Does something on the loop's own thread, at once.</summary>
    public void Do(Action action)
    {
        App.Invoke(action);
        _wakeUp.Ring();
    }

    /// <summary>Rings the bell once.</summary>
    public void Ring() => App.Driver!.WriteRaw(Bell);

    /// <summary>
    /// Stops the program as Ctrl-Z does everywhere, the terminal given back to the shell; comes back when it is gone on with,
    /// the screen painted anew.
    /// </summary>
    public void Stop()
    {
        App.Driver!.Suspend();
        App.Driver.WriteRaw(MouseReportsOff);
        App.ClearScreenNextIteration = true;
        App.LayoutAndDraw(true);
        _wakeUp.Ring();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _input.End();
        _resized?.Dispose();
        App.Dispose();
        _wakeUp.Dispose();
    }

    /// <summary>The library's application on an input of ours: it has the way, but keeps it to its own tests.</summary>
    [UnsafeAccessor(UnsafeAccessorKind.Constructor)]
    [return: UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")]
    private static extern object With(IComponentFactory factory, ITimeProvider time);

    private void Pause()
    {
        if (App.Driver?.AnsiStartupGate is { IsReady: false })
        {
            Thread.Sleep(1);
            return;
        }

        _wakeUp.Sleep();
    }
}
