using Panside.Guide.Lines;
using Panside.Guide.Words;
using Panside.Screen;

namespace Panside.Faces;

/// <summary>The conversation as lines of text on standard input and output: for screen readers, dumb terminals and ssh.</summary>
internal sealed class PlainFace(
    IConversation conversation, TextReader input, TextWriter output, TextWriter errors, TimeProvider clock)
{
    private readonly ForwardClock _clock = new(clock);
    private string? _trouble;

    /// <summary>How often the face looks whether time has brought something.</summary>
    public TimeSpan LookEvery { get; init; } = TimeSpan.FromSeconds(5);

    /// <summary>Runs until the session is over, the input ends or <paramref name="stop"/> is asked for.</summary>
    public void Run(CancellationToken stop)
    {
        var typed = new TypedLines(input);
        if (conversation.Notice is { } notice)
        {
            Write($"- {notice}");
        }

        Hear(new Tick(Now()));
        if (conversation.First is { } first)
        {
            Hear(new Text(Now(), first));
        }

        while (!conversation.State.IsOver && typed.Wait(LookEvery, stop))
        {
            if (typed.Next() is { } line)
            {
                if (line.Trim().Length > 0)
                {
                    Hear(new Text(Now(), line));
                }
            }
            else if (conversation.IsDue(Now()))
            {
                Hear(new Tick(Now()));
            }
        }
    }

    private Moment Now() => _clock.Now(conversation.State.Now);

    private void Hear(LineIn line)
    {
        foreach (var answer in LinesOfText.Of(conversation.Hear(line)))
        {
            Write(answer);
        }

        if (conversation.Trouble is { } trouble && trouble != _trouble)
        {
            _trouble = trouble;
            errors.WriteLine(trouble);
        }

        output.Flush();
    }

    /// <summary>No line of a practice is without its word.</summary>
    private void Write(string line) => output.WriteLine(
        conversation.Setting.Header.Practice ? $"{PracticeReport.Mark} {line.Replace($"- {PracticeReport.Mark} ", "- ", StringComparison.Ordinal)}" : line);
}
