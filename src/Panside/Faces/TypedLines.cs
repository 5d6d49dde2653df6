namespace Panside.Faces;

/// <summary>
/// What is typed line by line, read on a thread of its own: the clock or a signal can come between two lines. No line is read
/// before it is waited for, so that whoever comes after finds the next one.
/// </summary>
/// <param name="input">Where it is typed.</param>
internal sealed class TypedLines(TextReader input)
{
    private Task<string?>? _next;

    /// <summary>Waits for a line, or for so long; false where there is nothing to come any more.</summary>
    /// <param name="atMost">How long.</param>
    /// <param name="stop">Ends the waiting for good.</param>
    public bool Wait(TimeSpan atMost, CancellationToken stop)
    {
        _next ??= Task.Factory.StartNew(input.ReadLine, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        try
        {
            return !_next.Wait((int)atMost.TotalMilliseconds, stop) || _next.GetAwaiter().GetResult() is not null;
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }

    /// <summary>The next line; null where none has come yet.</summary>
    public string? Next()
    {
        if (_next is not { IsCompletedSuccessfully: true, Result: { } line })
        {
            return null;
        }

        _next = null;
        return line;
    }
}
