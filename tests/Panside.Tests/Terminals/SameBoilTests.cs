using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Panside.Tests.Terminals;

/// <summary>The full screen and the plain face are two faces of one thing: the same boil typed gives the same record.</summary>
public partial class SameBoilTests
{
    private static readonly string[] Typed =
    [
        "no", "yes", "no", "1 1/2", "yes", "later", "tank 19", "sap 2.1", "status", "lit", "rolling", "210.5F", "wood", "draw 103", "no",
        "draw 103 C", "22", "tank 18 1/2", "undo", "note sap is cloudy", "why", "foam rising", "defoamer", "emergency", "yes", "drew 2 qt",
        "185", "60.4", "yes", "shutdown", "yes", "yes", "yes", "spread", "yes", "flooded", "depth 2 1/2", "still", "spent", "gone",
        "covered", "yes", "2 1/2", "yes", "no", "leave",
    ];

    [Fact]
    public void A_boil_typed_on_the_full_screen_and_in_plain_gives_the_same_record()
    {
        Assert.SkipUnless(Tmux.IsThere, "tmux is not installed");
        using var scratch = new Scratch();
        var full = TypeBoil(scratch, "full", "");
        var plain = TypeBoil(scratch, "plain", "--plain");
        Assert.Contains(plain, line => line.Contains("\"over\"", StringComparison.Ordinal));
        Assert.Equal(plain, full);
    }

    private static List<string> TypeBoil(Scratch scratch, string name, string options)
    {
        var journal = scratch[name + ".jsonl"];
        var panside = Path.Combine(AppContext.BaseDirectory, "panside");
        using var terminal = new Tmux(80, 24, $"'{panside}' boil {options} --journal '{journal}' --home '{scratch.Folder}'; sleep 60");
        terminal.Wait(() => Answers(journal) == 1, "the first answer");
        var answers = 1;
        foreach (var text in Typed)
        {
            terminal.Type(text);
            answers++;
            terminal.Wait(() => Answers(journal) == answers, $"the answer to '{text}'");
        }

        return [.. Read(journal).Split('\n').Select(line => Time().Replace(line, "\"at\":…"))];
    }

    private static int Answers(string journal) => Read(journal).Split("\"ready\":true").Length - 1;

    /// <summary>The writer holds the record alone among programs of this runtime; any other program may read it.</summary>
    private static string Read(string journal)
    {
        using var cat = Process.Start(
            new ProcessStartInfo("cat", [journal]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        return cat.StandardOutput.ReadToEnd();
    }

    [GeneratedRegex("\"at\":\"[^\"]*\"")]
    private static partial Regex Time();
}
