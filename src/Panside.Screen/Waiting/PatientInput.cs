using System.Runtime.InteropServices;
using Terminal.Gui.Drivers;

namespace Panside.Screen.Waiting;

/// <summary>
/// The terminal's input, waited for. The library's own looks fifty times a second whether something was typed: that costs a
/// battery, and a key up to 20 ms. This one sleeps in the kernel until a key comes, and then wakes the loop.
/// </summary>
/// <param name="alarm">What wakes the loop.</param>
internal sealed class PatientInput(WakeUp alarm) : AnsiInput
{
    private const int Terminal = 0;
    private const short Readable = 1;

    /// <summary>How soon the end of waiting is noticed; nothing else depends on it.</summary>
    private const int LookEveryMilliseconds = 50;

    private readonly bool _waits = CanWait;
    private volatile bool _isEnded;
    private bool _gave;

    /// <summary>Whether there is something to wait on.</summary>
    public static bool CanWait { get; } = !OperatingSystem.IsWindows() && TerminalWatch.IsTerminal(Terminal);

    /// <summary>Waits no longer: the terminal is being given back.</summary>
    public void End() => _isEnded = true;

    /// <inheritdoc/>
    public override bool Peek()
    {
        if (_gave)
        {
            // What was read stands in the library's queue by now.
            alarm.Ring();
        }

        var look = new Pollfd { Descriptor = Terminal, Wanted = Readable };
        while (_waits && !_isEnded && poll(ref look, 1, LookEveryMilliseconds) == 0)
        {
            // Silence: a fire is watched, not a keyboard.
        }

        return _gave = base.Peek();
    }

    [DllImport("libc", ExactSpelling = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int poll(ref Pollfd descriptors, nuint count, int milliseconds);

    [StructLayout(LayoutKind.Sequential)]
    private struct Pollfd
    {
        public int Descriptor;
        public short Wanted;
        public short Seen;
    }
}
