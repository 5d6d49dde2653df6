namespace Panside.Faces;

/// <summary>Standard output and standard error behind <see cref="GuardedWriter"/> while a command runs.</summary>
internal sealed class GuardedConsole : IDisposable
{
    private static readonly Lock Gate = new();

    private static (TextWriter Out, TextWriter Error)? _bare;

    private static int _guards;

    /// <summary>Puts the guards before them; a command within or beside a command keeps the ones that are there.</summary>
    public GuardedConsole()
    {
        lock (Gate)
        {
            if (_guards++ == 0)
            {
                _bare = (Console.Out, Console.Error);
                Console.SetOut(new GuardedWriter(Console.Out, isQuiet: false));
                Console.SetError(new GuardedWriter(Console.Error, isQuiet: true));
            }
        }
    }

    /// <summary>Runs the full screen, which writes the terminal's own controls.</summary>
    public static T Lifted<T>(Func<T> screen)
    {
        if (_bare is not var (output, error))
        {
            return screen();
        }

        var guarded = (Console.Out, Console.Error);
        Console.SetOut(output);
        Console.SetError(error);
        try
        {
            return screen();
        }
        finally
        {
            Console.SetOut(guarded.Out);
            Console.SetError(guarded.Error);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (Gate)
        {
            if (--_guards == 0 && _bare is var (output, error))
            {
                Console.SetOut(output);
                Console.SetError(error);
                _bare = null;
            }
        }
    }
}
