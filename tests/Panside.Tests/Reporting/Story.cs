using Panside.Commands;
using Panside.Journal;
using Panside.Reporting;
using Panside.Tests.Stream;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Reporting;

/// <summary>Boils to tell.</summary>
internal static class Story
{
    public static string Demo(string name) => Path.Combine(RepositoryFiles.Root, "demo-sessions", name + ".jsonl");

    public static BoilStory Of(string path)
    {
        var lines = JournalFile.Read(path);
        return StoryTeller.Of(Opening.SettingOf(path, Record.Of(lines), null), lines)!;
    }

    /// <summary>The story of lines said to a new session.</summary>
    public static BoilStory Said(params IEnumerable<string> lines)
    {
        using var scratch = new Scratch();
        StreamRun.Of(lines, scratch["boil.jsonl"]);
        return Of(scratch["boil.jsonl"]);
    }
}
