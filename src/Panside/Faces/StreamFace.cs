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
    /// <exception cref="OutputGoneException">Nobody takes the answers any more.</exception>
    public static int Run(RecordedSession session, Stream input, Stream output, TextWriter errors)
    {
        var lines = new BoundedLines(input);
        var trouble = Report(null, session.Trouble, errors);
        while (lines.ReadLine() is { } raw)
        {
            var said = new StringBuilder();
            foreach (var answer in session.Hear(Read(raw), raw))
            {
                said.Append(LineWriter.Write(answer)).Append('\n');
            }

            Write(output, said.Append(LineWriter.Ready(session.State.Now)).Append('\n'));
            trouble = Report(trouble, session.Trouble, errors);
            if (session.State.IsOver)
            {
                return session.State.IsSafe ? ExitStatus.Done : ExitStatus.Wrong;
            }
        }

        session.Settle();
        Report(trouble, session.Trouble, errors);
        return ExitStatus.Interrupted;
    }

    private static void Write(Stream output, StringBuilder said)
    {
        try
        {
            output.Write(Encoding.UTF8.GetBytes(said.ToString()));
            output.Flush();
        }
        catch (IOException fault)
        {
            throw new OutputGoneException(fault);
        }
    }

    /// <summary>Going on is a line of the record's own, and none that a program says.</summary>
    internal static LineIn Read(string raw) => LineReader.Read(raw) switch
    {
        Resumed resumed => new Unreadable(resumed.At, "Unknown key 'resume'. Expected one of reading, observed, did, answer, text, tick.", "resume"),
        var line => line,
    };

    private static string? Report(string? before, string? trouble, TextWriter errors)
    {
        if (trouble is not null && trouble != before)
        {
            errors.WriteLine(trouble);
        }

        return trouble;
    }
}
