using System.Runtime.InteropServices;
using Panside.Guide.Asking;
using Panside.Guide.Debriefing;
using Panside.Guide.Lines;
using Panside.Screen.Asking;
using Panside.Screen.Replaying;
using Panside.Screen.Talking;
using Panside.Screen.Waiting;

namespace Panside.Screen;

/// <summary>The conversation on the whole terminal.</summary>
public static class FullScreen
{
    private static readonly TimeSpan LongestFarewell = TimeSpan.FromSeconds(0.3);

    /// <summary>Runs until the session is over or it is left; the terminal is then as it was before.</summary>
    /// <param name="conversation">The door.</param>
    /// <param name="clock">What time it is.</param>
    /// <param name="statusIfHungUp">The exit status where the terminal is gone and nothing more can be said.</param>
    /// <param name="look">How it looks.</param>
    /// <returns>The outcome; null where the session was left before its end.</returns>
    public static OverLine? Run(IConversation conversation, TimeProvider clock, int statusIfHungUp, ScreenLook look = default)
    {
        var talk = new Talk(conversation, clock);
        Show(talk, talk.Start, statusIfHungUp, look);
        return talk.Outcome;
    }

    /// <summary>Plays a past boil until it is left; nothing can be said to it.</summary>
    /// <param name="boil">The boil.</param>
    /// <param name="start">How it begins.</param>
    /// <param name="clock">What time it is; only how it passes counts.</param>
    /// <param name="statusIfHungUp">The exit status where the terminal is gone.</param>
    /// <param name="look">How it looks.</param>
    public static void Replay(PastBoil boil, ReplayStart start, TimeProvider clock, int statusIfHungUp, ScreenLook look = default)
    {
        var talk = new ReplayTalk(boil, start, clock);
        Show(talk, talk.Start, statusIfHungUp, look);
    }

    /// <summary>Asks questions away from the fire, until all is said or it is left in the midst.</summary>
    /// <param name="asking">The conversation.</param>
    /// <param name="statusIfHungUp">The exit status where the terminal is gone.</param>
    /// <param name="look">How it looks.</param>
    public static void Ask(IAsking asking, int statusIfHungUp, ScreenLook look = default) =>
        Show(new AskingTalk(asking), () => { }, statusIfHungUp, look);

    private static void Show(ITalk talk, Action start, int statusIfHungUp, ScreenLook look)
    {
        using var terminal = new PatientTerminal();

        // A dead terminal can keep the library from ever coming back; the record is on disk at every moment.
        void Leave(PosixSignalContext context)
        {
            context.Cancel = true;
            terminal.Do(() => terminal.App.RequestStop());
            _ = Task.Delay(LongestFarewell).ContinueWith(_ => Environment.Exit(statusIfHungUp), TaskScheduler.Default);
        }

        using var term = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Leave);
        using var hangup = PosixSignalRegistration.Create(PosixSignal.SIGHUP, Leave);
        using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Leave);
        using var quit = PosixSignalRegistration.Create(PosixSignal.SIGQUIT, Leave);
        using var watch = TerminalWatch.Start(() => Environment.Exit(statusIfHungUp));
        using var window = new ScreenWindow(talk, new(Palette.Shown(look.Theme)))
        {
            IsAscii = look.IsAscii,
            Ring = look.IsQuiet ? null : terminal.Ring,
            Stop = terminal.Stop,
        };
        start();
        terminal.App.Run(window);
    }
}
