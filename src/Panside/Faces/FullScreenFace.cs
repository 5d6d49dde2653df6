using System.Runtime.CompilerServices;
using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Guide.Words;
using Panside.Journal;
using Panside.Screen;

[assembly: InternalsVisibleTo("Panside.Tests")]

namespace Panside.Faces;

/// <summary>The conversation on the whole terminal: the screen looks at the recorded session through a door of its own.</summary>
internal static class FullScreenFace
{
    /// <summary>Runs until the session is over or it is left, then says on the normal screen what came of it.</summary>
    /// <returns>The exit status.</returns>
    public static int Run(RecordedSession session, TimeProvider clock)
    {
        var outcome = FullScreen.Run(new Door(session), clock, ExitStatus.Interrupted);
        foreach (var line in LinesOfText.Of(outcome is null ? [] : [outcome]))
        {
            Console.Out.WriteLine(line);
        }

        if (session.Trouble is { } trouble)
        {
            Console.Error.WriteLine(trouble);
        }

        if (outcome is not null)
        {
            return session.State.IsSafe ? ExitStatus.Done : ExitStatus.Wrong;
        }

        Console.Out.WriteLine(session.Path is { } path
            ? $"Interrupted. The record is whole; go on with: panside boil --journal {path}"
            : "Interrupted.");
        return ExitStatus.Interrupted;
    }

    /// <summary>A recorded session as the screen sees it.</summary>
    internal sealed class Door(RecordedSession session) : IConversation
    {
        /// <inheritdoc/>
        public SessionState State => session.State;

        /// <inheritdoc/>
        public Setting Setting => session.Setting;

        /// <inheritdoc/>
        public string? Trouble => session.Trouble;

        /// <inheritdoc/>
        public string? RecordPath => session.Path;

        /// <inheritdoc/>
        public IReadOnlyList<LineOut> Hear(LineIn line) => session.Hear(line);

        /// <inheritdoc/>
        public bool IsDue(Moment at) => session.Session.IsDue(at);

        /// <inheritdoc/>
        public SessionState At(Moment moment) => session.Session.At(moment);
    }
}
