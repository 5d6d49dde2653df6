using Panside.Journal;

namespace Panside.Commands;

/// <summary>A boil whose record has no end, so that a laptop that was closed in the middle of it does not begin another by mistake.</summary>
/// <param name="Path">Its record.</param>
/// <param name="Ago">How long ago it was left.</param>
/// <param name="IsLast">Whether no boil was begun after it.</param>
internal sealed record UnfinishedBoil(string Path, TimeSpan Ago, bool IsLast)
{
    /// <summary>A boil left longer ago than this is cold.</summary>
    private static readonly TimeSpan Recent = TimeSpan.FromHours(12);

    /// <summary>So many of the newest records are looked at: what was left before them is nobody's to go on with.</summary>
    private const int Newest = 20;

    /// <summary>Whether to offer it before everything else: the fire may still burn. Else it is told, and another boil is begun.</summary>
    public bool IsOffered => IsLast && Ago < Recent;

    /// <summary>The newest record of a folder that is not over; null where there is none.</summary>
    /// <param name="folder">The folder; it may be missing.</param>
    /// <param name="now">What time it is.</param>
    public static UnfinishedBoil? Of(string folder, DateTimeOffset now)
    {
        try
        {
            var isLast = true;
            foreach (var file in new DirectoryInfo(folder).EnumerateFiles("*.jsonl").OrderByDescending(file => file.LastWriteTimeUtc).Take(Newest))
            {
                if (Ends(file.FullName) is not { Header.Practice: false } ends)
                {
                    continue;
                }

                if (ends.Outcome is null)
                {
                    return new(file.FullName, now - file.LastWriteTimeUtc, isLast);
                }

                isLast = false;
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // A hint is not worth an error: what matters is told when the record is opened.
        }

        return null;
    }

    /// <summary>What another program holds is not ours to go on with.</summary>
    private static RecordEnds? Ends(string path)
    {
        try
        {
            return RecordEnds.Read(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
