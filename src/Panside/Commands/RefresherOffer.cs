using Panside.Journal;

namespace Panside.Commands;

/// <summary>A word before the season's first boil: the short practice, where the last session is long ago.</summary>
internal static class RefresherOffer
{
    /// <summary>The newest records that are looked at: a copied file may be newer than what it tells of.</summary>
    private const int Newest = 5;

    private const int Months = 6;

    /// <summary>The sentence; null where a boil or a practice was within half a year.</summary>
    /// <param name="home">Where the records are.</param>
    /// <param name="now">What time it is.</param>
    public static string? Of(Home home, DateTimeOffset now)
    {
        var last = new[] { home.Sessions, home.Practice }.SelectMany(Begun).Where(begun => begun <= now).Cast<DateTimeOffset?>().Max();
        return last > now.AddMonths(-Months)
            ? null
            : $"{(last is null ? "No boil is on record yet" : $"The last session was over {Months} months ago")}: 'panside practice {RefresherOption}' practises a shutdown in ten minutes.";
    }

    /// <summary>The option that begins it.</summary>
    public const string RefresherOption = "--refresher";

    private static IEnumerable<DateTimeOffset> Begun(string folder)
    {
        try
        {
            return [.. new DirectoryInfo(folder).EnumerateFiles("*.jsonl").OrderByDescending(file => file.LastWriteTimeUtc).Take(Newest)
                .Select(file => RecordEnds.Read(file.FullName)?.Begin.Time).OfType<DateTimeOffset>()];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // A word before the start is not worth an error.
            return [];
        }
    }
}
