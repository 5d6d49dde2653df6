using Panside.Commands;

namespace Panside.Faces;

/// <summary>The end of a practice with a person: what truly was, or that it was left before its end.</summary>
internal static class PracticeEnd
{
    /// <summary>Tells it.</summary>
    /// <returns>The exit status.</returns>
    public static int Tell(PracticeConversation conversation, TextWriter output)
    {
        if (!conversation.State.IsOver)
        {
            output.WriteLine($"{PracticeReport.Mark} Interrupted. A simulated rig is not gone on with."
                + (conversation.RecordPath is { } path ? $" The record is {path}" : ""));
            return ExitStatus.Interrupted;
        }

        var outcome = conversation.Close();
        foreach (var line in conversation.Debriefed.Concat(PracticeReport.Truth(outcome, conversation.Setting.Units)))
        {
            output.WriteLine($"{PracticeReport.Mark} {line}");
        }

        return outcome.IsGood ? ExitStatus.Done : ExitStatus.Wrong;
    }
}
