using Panside.Guide.Yaml;
using Panside.Journal;

namespace Panside.Commands;

/// <summary><c>panside</c> alone: offers to go on with an unfinished boil, else starts one; without a terminal it shows the help.</summary>
internal static class HomeCommand
{
    /// <summary>Runs it.</summary>
    public static int Run()
    {
        if (Console.IsInputRedirected || Console.IsOutputRedirected)
        {
            return CommandLine.Run(["--help"]);
        }

        var (home, now) = (Home.Of(null), TimeProvider.System.GetUtcNow());
        var unfinished = Unfinished(home.Sessions);
        if (unfinished is not null && !UnfinishedOffer.IsTaken(unfinished, now, Console.In, Console.Out))
        {
            unfinished = null;
        }

        var learning = Learning.Open(null, home);
        using var session = Open(unfinished);
        return BoilCommand.Talk(session, learning, plain: false, before: unfinished is null ? BoilCommand.Before(home, session, now) : null, look: LookOptions.OfEnvironment);
    }

    /// <summary>The newest record of a boil that is not over; null where there is none.</summary>
    internal static string? Unfinished(string folder) => Directory.Exists(folder)
        ? Directory.EnumerateFiles(folder, "*.jsonl").OrderDescending(StringComparer.Ordinal).FirstOrDefault(IsUnfinished)
        : null;

    private static RecordedSession Open(string? unfinished)
    {
        try
        {
            return Opening.Open(new(null, null, "beginner", unfinished, null));
        }
        catch (Exception fault) when (unfinished is not null && fault is UnusableException or FaultyFileException)
        {
            throw new UnusableException($"{fault.Message} Or start a new boil: 'panside boil'.");
        }
    }

    private static bool IsUnfinished(string path)
    {
        try
        {
            var record = Record.Of(JournalFile.Read(path));
            return record.Header is not null
                && !record.Exchanges.SelectMany(exchange => exchange.Answers).Any(answer => answer.Text.Contains("\"over\":", StringComparison.Ordinal));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // What another program holds is not ours to go on with.
            return false;
        }
    }
}
