using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Guide.Words;
using Panside.Journal;
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
    public static int Run(RecordedSession session, IConversation conversation, TimeProvider clock, bool ascii)
    {
        var outcome = FullScreen.Run(conversation, clock, ExitStatus.Interrupted, ascii);
        foreach (var line in LinesOfText.Of(outcome is null ? [] : [outcome]))
        {
            Console.Out.WriteLine(line);
        }

        if (session.Trouble is { } trouble)
        {
            Console.Error.WriteLine(trouble);
        }

        return BoilEnd.Tell(session, Console.Out);
    }
}
