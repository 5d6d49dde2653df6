using System.Text;
using Panside.Commands;
using Panside.Reckon;

namespace Panside.Faces;

/// <summary>The end of a practice with a person: what truly was, or that it was left before its end.</summary>
internal static class PracticeEnd
{
    private const int Width = 70;

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
        string[] truth = [.. PracticeReport.Truth(outcome, conversation.Setting), .. conversation.Tried is { } tried ? [tried] : Array.Empty<string>()];
        foreach (var line in conversation.Debriefed.Concat(truth.SelectMany(Lines)))
        {
            output.WriteLine($"{PracticeReport.Mark} {line}");
        }

        return outcome.IsGood ? ExitStatus.Done : ExitStatus.Wrong;
    }

    /// <summary>A sentence in lines that fit a terminal of 80 columns beside the mark.</summary>
    private static string[] Lines(string sentence) =>
        new StringBuilder().AppendWrapped(sentence, 0, Width).ToString().TrimEnd('\n').Split('\n');
}
