using System.Text;
using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Guide.Words;
using Panside.Journal;
using Panside.Reckon;
using Panside.Screen;

namespace Panside.Faces;

/// <summary>The conversation on the whole terminal: the screen looks at the recorded session through a door of its own.</summary>
internal static class FullScreenFace
{
    /// <summary>Whether there is a terminal that can show it.</summary>
    public static bool IsThere => !Console.IsInputRedirected && !Console.IsOutputRedirected
        && Environment.GetEnvironmentVariable("TERM") is not ("dumb" or null or "");

    /// <summary>Runs until the session is over or it is left, then says on the normal screen what came of it.</summary>
    /// <returns>The exit status.</returns>
    public static int Run(RecordedSession session, IConversation conversation, TimeProvider clock, ScreenLook look)
    {
        var outcome = GuardedConsole.Lifted(() => FullScreen.Run(conversation, clock, ExitStatus.Interrupted, look));
        if (session.Trouble is { } trouble)
        {
            Console.Error.WriteLine(trouble);
        }

        return Tell(session, outcome, Console.Out);
    }

    /// <summary>Says on the normal screen, in lines that fit it, what came of it.</summary>
    internal static int Tell(RecordedSession session, OverLine? outcome, TextWriter output)
    {
        foreach (var line in LinesOfText.Of(outcome is null ? [] : [outcome]))
        {
            output.Write(new StringBuilder().AppendWrapped(line, 0));
        }

        return BoilEnd.Tell(session, output);
    }
}
