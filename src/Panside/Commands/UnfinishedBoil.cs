namespace Panside.Commands;

/// <summary>A boil whose record has no end, so that a laptop that was closed in the middle of it does not begin another by mistake.</summary>
internal static class UnfinishedBoil
{
    /// <summary>A boil left longer ago than this is cold.</summary>
    private static readonly TimeSpan Recent = TimeSpan.FromHours(12);

    /// <summary>The end of a record is looked for in so many of its last lines.</summary>
    private const int LastLines = 8;

    /// <summary>The newest record of a folder where it was written to lately and is not over; null where there is none.</summary>
    /// <param name="folder">The folder; it may be missing.</param>
    /// <param name="now">What time it is.</param>
    public static string? In(string folder, DateTimeOffset now)
    {
        try
        {
            var newest = new DirectoryInfo(folder).EnumerateFiles("*.jsonl").MaxBy(file => file.LastWriteTimeUtc);
            return newest is { Length: > 0 } && now - newest.LastWriteTimeUtc < Recent && !IsOver(newest.FullName) ? newest.FullName : null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // A hint is not worth an error: what matters is told when the record is opened.
            return null;
        }
    }

    private static bool IsOver(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using var reader = new StreamReader(file);
        var lines = new Queue<string>();
        while (reader.ReadLine() is { } line)
        {
            lines.Enqueue(line);
            if (lines.Count > LastLines)
            {
                lines.Dequeue();
            }
        }

        return lines.Any(line => line.Contains("\"over\":{", StringComparison.Ordinal));
    }
}
