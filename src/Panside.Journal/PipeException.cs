namespace Panside.Journal;

/// <summary>What was named is a pipe: nobody knows whether anything will ever come out of it, so nothing is waited for.</summary>
public sealed class PipeException() : IOException("it is a pipe, and only files are read here")
{
    /// <summary>Throws where a path is a pipe's; a path where nothing is, or nothing may be looked at, is left to whoever opens it.</summary>
    /// <param name="path">The path.</param>
    /// <exception cref="PipeException">It is one.</exception>
    public static void Demand(string path)
    {
        // What shows bytes is a file. A pipe shows none, and opened to read alone it waits for a writer, perhaps for ever; opened both ways it does not.
        if (!File.Exists(path) || new FileInfo(path).Length > 0)
        {
            return;
        }

        try
        {
            using var both = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite, bufferSize: 0);
            if (!both.CanSeek)
            {
                throw new PipeException();
            }
        }
        catch (UnauthorizedAccessException)
        {
            // It may not be written, and shows nothing to read: whatever it is, nothing can be read from it without waiting.
            throw new PipeException();
        }
        catch (Exception fault) when (fault is IOException and not PipeException)
        {
            // Another program holds it, as it holds files.
        }
    }
}
