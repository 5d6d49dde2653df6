using System.ComponentModel;
using System.Diagnostics;
using System.Threading.Channels;

namespace Panside.Faces;

/// <summary>
/// Hands texts to a command of the operator's, one after the other, each on its standard input. No shell is between: a text can
/// do no more than be read. The guidance never waits for it; what comes faster than it is spoken pushes the oldest out.
/// </summary>
internal sealed class Speaker : IDisposable
{
    private const int WaitingAtMost = 4;

    private readonly string _program;
    private readonly string[] _arguments;
    private readonly TimeSpan _patience;
    private readonly CancellationTokenSource _end = new();
    private readonly Channel<string> _texts = Channel.CreateBounded<string>(
        new BoundedChannelOptions(WaitingAtMost) { FullMode = BoundedChannelFullMode.DropOldest, });

    private readonly Task _speaking;

    /// <summary>A speaker that uses a command.</summary>
    /// <param name="command">The program and its arguments, with blanks between; a part with blanks stands in double quotes.</param>
    /// <param name="patience">How long one text may take before it is broken off; null for half a minute.</param>
    public Speaker(string command, TimeSpan? patience = null)
    {
        var parts = Parts(command);
        (_program, _arguments) = (parts.Count > 0 ? parts[0] : "", [.. parts.Skip(1)]);
        _patience = patience ?? TimeSpan.FromSeconds(30);
        _speaking = Task.Run(SpeakAll);
    }

    /// <summary>What went wrong first; null where nothing did.</summary>
    public string? Fault { get; private set; }

    /// <summary>The parts of a command. Nothing in it is expanded.</summary>
    public static IReadOnlyList<string> Parts(string command)
    {
        var parts = new List<string>();
        var (part, isQuoted, isBegun) = ("", false, false);
        foreach (var sign in command)
        {
            if (sign == '"')
            {
                (isQuoted, isBegun) = (!isQuoted, true);
            }
            else if (sign == ' ' && !isQuoted)
            {
                if (isBegun)
                {
                    parts.Add(part);
                }

                (part, isBegun) = ("", false);
            }
            else
            {
                (part, isBegun) = (part + sign, true);
            }
        }

        if (isBegun)
        {
            parts.Add(part);
        }

        return parts;
    }

    /// <summary>Speaks a text when those before it are spoken; comes back at once.</summary>
    /// <param name="text">The text.</param>
    /// <param name="isDanger">Whether it goes before all that still waits, which is then left out.</param>
    public void Say(string text, bool isDanger = false)
    {
        while (isDanger && _texts.Reader.TryRead(out _))
        {
            // Danger waits for nothing that is less.
        }

        _texts.Writer.TryWrite(text);
    }

    /// <summary>Speaks no more.</summary>
    public void Dispose()
    {
        _texts.Writer.TryComplete();
        _end.Cancel();
        _speaking.Wait(TimeSpan.FromSeconds(0.2));
    }

    private async Task SpeakAll()
    {
        try
        {
            await foreach (var text in _texts.Reader.ReadAllAsync(_end.Token))
            {
                await Speak(text);
            }
        }
        catch (OperationCanceledException)
        {
            // The boil is left; what was still to be said is on the screen.
        }
    }

    private async Task Speak(string text)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(_end.Token);
        patience.CancelAfter(_patience);
        Process? process = null;
        try
        {
            process = Process.Start(new ProcessStartInfo(_program, _arguments)
            {
                RedirectStandardInput = true,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            });

            // What it prints would spoil the screen.
            process!.OutputDataReceived += (_, _) => { };
            process.ErrorDataReceived += (_, _) => { };
            process.BeginOutputReadLine();
            process.BeginErrorReadLine();
            await process.StandardInput.WriteLineAsync(text.AsMemory(), patience.Token);
            process.StandardInput.Close();
            await process.WaitForExitAsync(patience.Token);
        }
        catch (Exception fault) when (fault is Win32Exception or InvalidOperationException or IOException)
        {
            Fault ??= $"--say {_program}: {fault.Message}";
        }
        catch (OperationCanceledException)
        {
            Fault ??= _end.IsCancellationRequested ? null : $"--say {_program}: took more than {_patience.TotalSeconds:0} s, and was broken off.";
            process?.Kill(entireProcessTree: true);
        }
        finally
        {
            process?.Dispose();
        }
    }
}
