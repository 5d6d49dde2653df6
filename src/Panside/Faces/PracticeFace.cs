using System.Threading.Channels;
using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Guide.Words;
using Panside.Journal;
using Panside.Practice;

namespace Panside.Faces;

/// <summary>
/// The plain conversation with a simulated rig beside it. Two words are answered here and never reach the assistant: look,
/// and pour. Everything else is the same conversation as at a real rig.
/// </summary>
internal sealed class PracticeFace(
    RecordedSession session, Attended practice, Instruments instruments, TextReader input, TextWriter output, TextWriter errors,
    TimeProvider clock)
{
    private static readonly TimeSpan LookEvery = TimeSpan.FromSeconds(1);

    private string? _trouble;

    /// <summary>Runs until the session is over, the input ends or <paramref name="stop"/> is asked for.</summary>
    /// <returns>The exit status.</returns>
    public int Run(CancellationToken stop)
    {
        var typed = Channel.CreateUnbounded<string>();
        var reading = new Thread(() => ReadAll(typed.Writer)) { IsBackground = true };
        Say("Simulated rig. 'look' shows what one sees and what the instruments show; 'pour' pours a pail of sap into the pan.");
        Hear(new Text(Now(), $"note practice: scenario {practice.Rig.Scenario.Name}, seed {practice.Rig.Seed}"));
        reading.Start();
        while (!session.State.IsOver)
        {
            if (!Wait(typed.Reader, stop))
            {
                Say(session.Path is { } path ? $"Interrupted. A simulated rig is not gone on with; the record is {path}." : "Interrupted.");
                return ExitStatus.Interrupted;
            }

            if (typed.Reader.TryRead(out var line))
            {
                Typed(line.Trim());
            }
            else if (session.Session.IsDue(Now()))
            {
                Hear(new Tick(Now()));
            }
        }

        var outcome = practice.Close();
        foreach (var line in PracticeReport.Truth(outcome, session.Setting.Units))
        {
            Say(line);
        }

        return outcome.IsGood ? ExitStatus.Done : ExitStatus.Wrong;
    }

    private void Typed(string line)
    {
        switch (line.ToLowerInvariant())
        {
            case "":
                break;
            case "look":
                practice.ComeTo(Now().Time);
                foreach (var seen in Look.At(practice.Rig, instruments))
                {
                    Say(seen);
                }

                break;
            case "pour":
                practice.ComeTo(Now().Time);
                Say($"Poured {Amount.Shown(session.Setting.Units.From(practice.Pour()))} into the pan.");
                break;
            default:
                Hear(new Text(Now(), line));
                break;
        }
    }

    private Moment Now()
    {
        var now = Moment.Of(clock.GetLocalNow());
        return session.State.Now is { } last && now.Time < last.Time ? last : now;
    }

    private void Say(string text)
    {
        output.WriteLine($"{PracticeReport.Mark} {text}");
        output.Flush();
    }

    private void Hear(LineIn line)
    {
        foreach (var answer in LinesOfText.Of(practice.Hear(line)))
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

    /// <summary>Waits for a line, or for a look at the clock; false where there is nothing to come any more.</summary>
    private static bool Wait(ChannelReader<string> typed, CancellationToken stop)
    {
        using var wait = CancellationTokenSource.CreateLinkedTokenSource(stop);
        wait.CancelAfter(LookEvery);
        try
        {
            return typed.WaitToReadAsync(wait.Token).AsTask().GetAwaiter().GetResult();
        }
        catch (OperationCanceledException)
        {
            return !stop.IsCancellationRequested;
        }
    }
}
