using System.Runtime.InteropServices;

namespace Panside.Screen.Waiting;

/// <summary>
/// Ends the program when its terminal is gone. Where the hangup is kept from us, the terminal library would read from what is
/// no longer there for ever; the record is on disk at every moment, so nothing is lost.
/// </summary>
internal static class TerminalWatch
{
    private static readonly TimeSpan LookEvery = TimeSpan.FromSeconds(0.5);

    /// <summary>Watches until it is disposed of; where there is no terminal to begin with, nothing is watched.</summary>
    public static IDisposable? Start(Action gone) =>
        !OperatingSystem.IsWindows() && IsTerminal(0) ? new Timer(_ => Look(gone), null, LookEvery, LookEvery) : null;

    private static void Look(Action gone)
    {
        if (!IsTerminal(0))
        {
            gone();
        }
    }

    /// <summary>Whether a descriptor is a terminal, now.</summary>
    public static bool IsTerminal(int descriptor) => isatty(descriptor) == 1;

    [DllImport("libc", ExactSpelling = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int isatty(int descriptor);
}
