using System.Threading.Channels;
using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Guide.Words;
using Panside.Journal;

namespace Panside.Faces;

/// <summary>The conversation as lines of text on standard input and output: for screen readers, dumb terminals and ssh.</summary>
internal sealed class PlainFace(RecordedSession session, TextReader input, TextWriter output, TextWriter errors, TimeProvider clock)
{
    private static readonly TimeSpan TickEvery = TimeSpan.FromSeconds(5);

    private string? _trouble;

    /// <summary>Runs until the session is over, the input ends or <paramref name="stop"/> is asked for.</summary>
    /// <returns>The exit status.</returns>
    public int Run(CancellationToken stop)
    {
        var typed = Channel.CreateUnbounded<string>();
        var reading = new Thread(() => ReadAll(typed.Writer)) { IsBackground = true };
        Hear(new Tick(Now()));
        reading.Start();
        while (!session.State.IsOver)
        {
            switch (Next(typed.Reader, stop))
            {
                case Heard.Line when typed.Reader.TryRead(out var line):
                    if (line.Trim().Length > 0)
                    {
                        Hear(new Text(Now(), line));
                    }

                    break;
                case Heard.Nothing:
                    if (session.Session.IsDue(Now()))
                    {
                        Hear(new Tick(Now()));
                    }

                    break;
                case Heard.End:
                    output.WriteLine(session.Path is { } path
                        ? $"Interrupted. The record is whole; go on with: panside boil --journal {path}"
                        : "Interrupted.");
                    output.Flush();
                    return ExitStatus.Interrupted;
            }
        }

        return session.State.IsSafe ? ExitStatus.Done : ExitStatus.Wrong;
    }

    private enum Heard
    {
        Line,
        Nothing,
        End,
    }

    private Moment Now()
    {
        var now = Moment.Of(clock.GetLocalNow());
        return session.State.Now is { } last && now.Time < last.Time ? last : now;
    }

    private void Hear(LineIn line)
    {
        foreach (var answer in LinesOfText.Of(session.Hear(line)))
        {
            output.WriteLine(answer);
        }

        if (session.Trouble is { } trouble && trouble != _trouble)
        {
            _trouble = trouble;
            errors.WriteLine(trouble);
        }

        output.Flush();
    }

    private void ReadAll(ChannelWriter<string> typed)
    {
        while (input.ReadLine() is { } line)
        {
            typed.TryWrite(line);
        }

        typed.Complete();
    }

    private static Heard Next(ChannelReader<string> typed, CancellationToken stop)
    {
        using var wait = CancellationTokenSource.CreateLinkedTokenSource(stop);
        wait.CancelAfter(TickEvery);
        try
        {
            return typed.WaitToReadAsync(wait.Token).AsTask().GetAwaiter().GetResult() ? Heard.Line : Heard.End;
        }
        catch (OperationCanceledException)
        {
            return stop.IsCancellationRequested ? Heard.End : Heard.Nothing;
        }
    }
}
