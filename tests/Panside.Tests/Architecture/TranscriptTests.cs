using System.Text.RegularExpressions;
using Panside.Tests.Reckon;

namespace Panside.Tests.Architecture;

/// <summary>What a guide shows of a demo session stands in it, row by row: a guide that quotes what nobody says any more is found here.</summary>
public partial class TranscriptTests
{
    public static TheoryData<string> Guides { get; } = ["README.md", "docs/operators-guide.md"];

    [Theory]
    [MemberData(nameof(Guides))]
    public void What_is_shown_of_a_demo_session_is_what_its_replay_says(string guide)
    {
        var shown = Block().Matches(RepositoryFiles.Read(guide).ReplaceLineEndings("\n"));
        Assert.NotEmpty(shown);
        foreach (var session in shown.GroupBy(block => block.Groups["record"].Value))
        {
            var replay = Captured.Run("replay", Path.Combine(RepositoryFiles.Root, session.Key), "--plain");
            Assert.Equal(ExitStatus.Done, replay.Status);
            Assert.All(session, block => Assert.Contains("\n" + block.Groups["rows"].Value, replay.Out.ReplaceLineEndings("\n"), StringComparison.Ordinal));
        }
    }

    /// <summary>The lines of a record, in the makers' guide, are whole lines of it and in its order.</summary>
    [Fact]
    public void Lines_of_a_record_that_a_guide_shows_stand_in_it_in_a_row()
    {
        var shown = Lines().Matches(RepositoryFiles.Read("docs", "makers-guide.md").ReplaceLineEndings("\n"));
        Assert.NotEmpty(shown);
        Assert.All(shown, block => Assert.Contains(
            "\n" + block.Groups["rows"].Value, RepositoryFiles.Read(block.Groups["record"].Value).ReplaceLineEndings("\n"), StringComparison.Ordinal));
    }

    /// <summary>The small rig of the authors' guide is faultless, and the faulty one is told as the guide shows it.</summary>
    [Fact]
    public void The_small_rig_files_of_the_authors_guide_are_checked_as_it_says()
    {
        var guide = RepositoryFiles.Read("docs", "authors-guide.md").ReplaceLineEndings("\n");
        var rigs = Rigs().Matches(guide).Select(block => block.Groups["rows"].Value).ToList();
        Assert.Equal(2, rigs.Count);
        using var scratch = new Scratch();
        File.WriteAllText(scratch["hill.yaml"], rigs[0]);
        File.WriteAllText(scratch["slip.yaml"], rigs[1]);
        foreach (var (name, status) in new[] { ("hill.yaml", ExitStatus.Done), ("slip.yaml", ExitStatus.Wrong) })
        {
            var told = Captured.Run("check", scratch[name]);
            Assert.Equal(status, told.Status);

            // On a terminal both streams stand together, each fault above its place; so does the page show them.
            var shown = guide.Split($"$ panside check {name}\n")[1].Split("```")[0].TrimEnd('\n').Split('\n');
            var said = (told.Out + told.Errors).Replace(scratch[name], name, StringComparison.Ordinal).TrimEnd('\n').Split('\n');
            Assert.Equal(said.Order(StringComparer.Ordinal), shown.Order(StringComparer.Ordinal));
        }
    }

    [GeneratedRegex("^<!-- lines of (?<record>[\\w./-]+) -->\n```json\n(?<rows>(?:(?!```).*\n)*)```$", RegexOptions.Multiline)]
    private static partial Regex Lines();

    [GeneratedRegex("^```yaml\n(?<rows>rig: (?:(?!```).*\n)*)```$", RegexOptions.Multiline)]
    private static partial Regex Rigs();

    [GeneratedRegex("^<!-- transcript of (?<record>[\\w./-]+) -->\n```\n(?<rows>(?:(?!```).*\n)*)```$", RegexOptions.Multiline)]
    private static partial Regex Block();
}
