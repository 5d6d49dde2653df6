using System.Globalization;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;
using Panside.Journal;

namespace Panside.Commands;

/// <summary>What the home screen looks at.</summary>
/// <param name="Unfinished">The newest boil that is not over; null where there is none.</param>
/// <param name="RigName">The name of the person's own rig; null where there is no such file.</param>
/// <param name="HasPast">Whether there is a boil to replay.</param>
/// <param name="Past">The newest boils and practices, each with its record's path and a line about it.</param>
internal sealed record HomeSight(UnfinishedBoil? Unfinished, string? RigName, bool HasPast, Func<IReadOnlyList<(string Path, string Told)>> Past)
{
    /// <summary>As many past boils as there are keys to choose by.</summary>
    private const int Most = 9;

    /// <summary>Looks.</summary>
    public static HomeSight Of(Home home, DateTimeOffset now) => new(
        UnfinishedBoil.Of(home.Sessions, now), RigOf(home.RigFile),
        new[] { home.Sessions, home.Practice }.Any(folder => Files(folder).Any()), () => PastOf(home));

    private static string? RigOf(string path)
    {
        try
        {
            return File.Exists(path) ? RigFile.Read(path, File.ReadAllText(path)).Name : null;
        }
        catch (Exception fault) when (fault is FaultyFileException or IOException or UnauthorizedAccessException)
        {
            return $"a file with faults: 'panside check {path}' tells them";
        }
    }

    private static IEnumerable<FileInfo> Files(string folder) =>
        Directory.Exists(folder) ? new DirectoryInfo(folder).EnumerateFiles("*.jsonl") : [];

    private static IReadOnlyList<(string Path, string Told)> PastOf(Home home) =>
    [
        .. Files(home.Sessions).Concat(Files(home.Practice)).OrderByDescending(file => file.LastWriteTimeUtc)
            .Select(file => (file.FullName, Ends: Ends(file.FullName))).Where(past => past.Ends is not null).Take(Most)
            .Select(past => (past.FullName, Told(past.Ends!))),
    ];

    private static string Told(RecordEnds ends)
    {
        var begun = ends.Begin.Time.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
        var came = ends.Outcome is not { } outcome ? "no end"
            : outcome.SyrupMade is { } syrup ? $"{Amount.Shown(syrup)} of syrup" : "over";
        return $"{begun}  {(ends.Header.Practice ? "PRACTICE, " : "")}{ends.Header.Rig}, {came}";
    }

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
