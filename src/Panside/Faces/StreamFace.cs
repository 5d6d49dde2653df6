using System.Text;
using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Journal;

namespace Panside.Faces;

/// <summary>The conversation as JSON Lines: for programs.</summary>
internal static class StreamFace
{
    /// <summary>Runs until the session is over or the input ends.</summary>
    /// <returns>The exit status.</returns>
    public static int Run(RecordedSession session, Stream input, Stream output, TextWriter errors)
    {
        using var reader = new StreamReader(input, new UTF8Encoding(false));
        using var writer = new StreamWriter(output, new UTF8Encoding(false), bufferSize: 16 * 1024) { NewLine = "\n" };
        var trouble = Report(null, session.Trouble, errors);
        while (reader.ReadLine() is { } raw)
        {
            foreach (var answer in session.Hear(Read(raw), raw))
            {
                writer.WriteLine(LineWriter.Write(answer));
            }

            writer.WriteLine(LineWriter.Ready(session.State.Now));
            writer.Flush();
            trouble = Report(trouble, session.Trouble, errors);
            if (session.State.IsOver)
            {
                return session.State.IsSafe ? ExitStatus.Done : ExitStatus.Wrong;
            }
        }

        return ExitStatus.Interrupted;
    }

    /// <summary>Going on is a line of the record's own, and none that a program says.</summary>
    private static LineIn Read(string raw) => LineReader.Read(raw) is Resumed resumed
        ? new Unreadable(resumed.At, "Unknown key 'resume'. Expected one of reading, observed, did, answer, text, tick.", "resume")
        : LineReader.Read(raw);

    private static string? Report(string? before, string? trouble, TextWriter errors)
    {
        if (trouble is not null && trouble != before)
        {
            errors.WriteLine(trouble);
        }

        return trouble;
    }
}
