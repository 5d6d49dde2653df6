using Panside.Journal;

namespace Panside.Arguments;

/// <summary>Keeps what is known of a fault of ours where it can be reported from, and where only its owner reads it.</summary>
public static class CrashFile
{
    /// <summary>Writes the fault and tells where; where no file can be written, says so.</summary>
    /// <param name="program">The program's name.</param>
    /// <param name="version">Its version.</param>
    /// <param name="fault">The fault.</param>
    public static string Write(string program, string version, Exception fault)
    {
        foreach (var folder in new[] { Home.State, Path.GetTempPath() })
        {
            try
            {
                // In a folder that others write to as well, a name that can be guessed may be there before us, as a link.
                PrivateFile.Folder(folder);
                var path = Path.Combine(folder, $"{program}-crash-{Path.GetRandomFileName()}.txt");
                PrivateFile.New(path, $"{program} {version}\n{fault}\n");
                return path;
            }
            catch (Exception writing) when (writing is IOException or UnauthorizedAccessException or ArgumentException)
            {
                // The next folder may do.
            }
        }

        return $"this name: {fault.GetType().Name}";
    }
}
