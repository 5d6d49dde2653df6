namespace Panside.Commands;

/// <summary>Keeps what is known of a fault of ours where it can be reported from.</summary>
internal static class CrashFile
{
    /// <summary>Writes the fault and tells where; where no file can be written, says so.</summary>
    public static string Write(Exception fault)
    {
        try
        {
            var path = Path.Combine(Path.GetTempPath(), $"panside-crash-{Environment.ProcessId}.txt");
            File.WriteAllText(path, $"panside {Product.Version}\n{fault}\n");
            return path;
        }
        catch (Exception writing) when (writing is IOException or UnauthorizedAccessException)
        {
            return $"this name: {fault.GetType().Name}";
        }
    }
}
