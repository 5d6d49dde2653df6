using Panside.Commands;
using Panside.Tests.Reckon;

namespace Panside.Tests.Checks;

/// <summary>The home screen as lines of text.</summary>
public sealed class HomeCommandTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Without_a_terminal_and_without_plain_the_commands_are_shown() =>
        Assert.Contains("Usage:", Typed.Into(["start"], "--home", _scratch.Folder).Out, StringComparison.Ordinal);

    [Fact]
    public void In_lines_a_rig_is_made_and_a_boil_is_begun_on_it_with_the_next_line()
    {
        var run = Home("rig", "metric", "120", "60", "no", "yes", "rest", "yes", "start", "yes", "tank 60 L");
        Assert.Contains("- Written: ", run.Out, StringComparison.Ordinal);
        Assert.Contains("  1  start        a boil\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("=== start-up ===", run.Out, StringComparison.Ordinal);
        Assert.Contains("Heard: yes.", run.Out, StringComparison.Ordinal);
        Assert.Contains("Heard: tank 60 L.", run.Out, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Interrupted, run.Status);
    }

    private string[] Records() => Directory.GetFiles(_scratch["sessions"], "*.jsonl");

    [Fact]
    public void An_unfinished_boil_is_gone_on_with_by_enter_and_not_asked_about_twice()
    {
        Home("start", "yes");
        var record = Assert.Single(Records());
        var run = Home("", "later");
        Assert.StartsWith("\n    1  go on", run.Out, StringComparison.Ordinal);
        Assert.Equal([record], Records());
        var started = Home("start", "later");
        Assert.DoesNotContain("Go on with it?", started.Out, StringComparison.Ordinal);
        Assert.Equal(2, Records().Length);
    }

    [Fact]
    public void S2_the_emergency_list_comes_at_once_in_the_boil_that_was_left()
    {
        Home("start", "yes");
        var run = Home("emergency");
        Assert.Contains("=== emergency ===", run.Out, StringComparison.Ordinal);
        Assert.Single(Records());
    }

    [Theory]
    [InlineData("rig.yaml")]
    [InlineData("sessions/2031-03-08-1600.jsonl")]
    public void S2_the_emergency_list_comes_also_where_a_file_is_damaged(string damaged)
    {
        Home("start", "yes");
        Directory.CreateDirectory(Path.GetDirectoryName(_scratch[damaged])!);
        File.WriteAllText(_scratch[damaged], """{"at":"2031-03-08T16:00:00-05:00","seq":1,"session":{"program":"p","flow":"f","flow-hash":"h","rig":"r","rig-file":"","guidance":"beginner","practice":false}}""" + "\n");
        var run = Home("emergency");
        Assert.Contains("=== emergency ===", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_boil_without_a_rig_file_says_whose_rig_is_assumed_and_one_with_it_does_not()
    {
        const string Assumed = "No rig file of yours: a rig of 2 ft by 4 ft is assumed. 'panside rig' asks for yours.";
        Assert.Contains(Assumed, Typed.Into([], "boil", "--plain", "--home", _scratch.Folder).Out, StringComparison.Ordinal);
        Home("rig", "us", "30", "20", "no", "yes", "rest", "yes");
        Assert.DoesNotContain(Assumed, Typed.Into([], "boil", "--plain", "--home", _scratch.Folder).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cold_boil_is_told_where_a_boil_is_begun()
    {
        Home("start", "yes");
        var record = Assert.Single(Records());
        File.SetLastWriteTimeUtc(record, DateTime.UtcNow.AddDays(-3));
        var run = Typed.Into([], "boil", "--plain", "--home", _scratch.Folder);
        Assert.Contains($"An unfinished boil was left 3 days ago: {record}. To go on with it: panside boil --journal {record}", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("left 3 days ago", Typed.Into([], "boil", "--plain", "--home", _scratch.Folder).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Practice_and_replay_are_the_commands_of_these_names()
    {
        Assert.Contains("\nPRACTICE === shutdown ===\n", Home("practise", "last-charge").Out, StringComparison.Ordinal);
        Directory.CreateDirectory(_scratch["sessions"]);
        File.Copy(Reporting.Story.Demo("first-shutdown"), _scratch["sessions/first.jsonl"]);
        Assert.Contains("=== shutdown ===", Home("replay", "boil 1").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_seasons_book_is_told_in_lines_and_the_first_page_comes_again()
    {
        Directory.CreateDirectory(_scratch["practice"]);
        File.Copy(Reporting.Story.Demo("first-shutdown"), _scratch["practice/first.jsonl"]);
        Assert.Contains("No boil is in the book yet.", Home("season").Out, StringComparison.Ordinal);
        Directory.CreateDirectory(_scratch["sessions"]);
        foreach (var number in Enumerable.Range(1, 7))
        {
            File.Copy(Reporting.Story.Demo("first-shutdown"), _scratch[$"sessions/{number}.jsonl"]);
        }

        File.WriteAllText(_scratch["sessions/8.jsonl"], "no record");
        var season = Home("season", "leave");
        Assert.Equal(ExitStatus.Done, season.Status);
        Assert.Contains("\n- 7 boils: ", season.Out, StringComparison.Ordinal);
        Assert.Equal(5, season.Out.Split('\n').Count(line => line.StartsWith("- 2031-03-08: ", StringComparison.Ordinal) && line.EndsWith(" h, safe.", StringComparison.Ordinal)));
        Assert.Contains("- Not read: 1. 'panside season' tells why.", season.Out, StringComparison.Ordinal);
        Assert.Contains("- 2 more before these: 'panside season';", season.Out, StringComparison.Ordinal);
        Assert.All(season.Out.Split('\n').Where(line => line.StartsWith("- ", StringComparison.Ordinal) && !line.StartsWith("- 7 boils", StringComparison.Ordinal)), line => Assert.InRange(line.Length, 1, 80));
        Assert.True(season.Out.Split("What now?").Length > 2, season.Out);
    }

    [Fact]
    public void The_end_of_the_input_leaves_with_nothing_done()
    {
        var run = Home();
        Assert.Equal((ExitStatus.Done, ""), (run.Status, run.Errors));
        Assert.Empty(Directory.GetFileSystemEntries(_scratch.Folder));
    }

    private Captured Home(params string[] typed) => Typed.Into(typed, "--plain", "--home", _scratch.Folder);
}
