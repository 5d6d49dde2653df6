using Panside.Commands;
using Panside.Journal;

namespace Panside.Faces;

/// <summary>The end of a boil with a person: over, or left to be gone on with.</summary>
internal static class BoilEnd
{
    /// <summary>Tells how to go on where it was left.</summary>
    /// <returns>The exit status.</returns>
    public static int Tell(RecordedSession session, TextWriter output)
    {
        if (session.State.IsOver)
        {
            foreach (var line in session.Debriefed)
            {
                output.WriteLine(line);
            }

            return session.State.IsSafe ? ExitStatus.Done : ExitStatus.Wrong;
        }

        session.Settle();
        output.WriteLine(session.Path is { } path
            ? $"Interrupted. The record is whole; go on with: panside boil --journal {path}"
            : "Interrupted.");
        output.Flush();
        return ExitStatus.Interrupted;
    }
}
