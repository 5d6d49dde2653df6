using Panside.Commands;

namespace Panside.Tests.Checks;

public sealed class UnfinishedBoilTests : IDisposable
{
    private static readonly DateTimeOffset Now = new(2031, 3, 8, 22, 0, 0, TimeSpan.FromHours(-5));

    private readonly Scratch _scratch = new();

    [Fact]
    public void A_boil_left_an_hour_ago_is_offered()
    {
        var path = Record("2031-03-08-1700.jsonl", hoursAgo: 1);
        Assert.Equal(new(path, TimeSpan.FromHours(1), IsLast: true), Of());
        Assert.True(Of()!.IsOffered);
    }

    [Theory]
    [InlineData(11.9, true)]
    [InlineData(12.1, false)]
    [InlineData(2000, false)]
    public void One_that_is_older_than_half_a_day_is_told_and_not_offered(double hoursAgo, bool offered)
    {
        var path = Record("open.jsonl", hoursAgo);
        Assert.Equal((path, offered), (Of()!.Path, Of()!.IsOffered));
    }

    [Fact]
    public void The_newest_one_is_meant()
    {
        Record("2031-03-06-1700.jsonl", hoursAgo: 53);
        var newest = Record("2031-03-07-1700.jsonl", hoursAgo: 3);
        Assert.Equal(newest, Of()!.Path);
    }

    [Fact]
    public void One_after_which_another_was_boiled_is_told_and_not_offered()
    {
        var path = Record("early.jsonl", hoursAgo: 6);
        Record("late.jsonl", hoursAgo: 1, over: true);
        Assert.Equal(new(path, TimeSpan.FromHours(6), IsLast: false), Of());
        Assert.False(Of()!.IsOffered);
    }

    [Fact]
    public void Neither_what_is_over_nor_practice_nor_another_file_is_one()
    {
        Record("over.jsonl", hoursAgo: 1, over: true);
        Record("practice.jsonl", hoursAgo: 1, practice: true);
        File.WriteAllText(Path.Combine(_scratch.Folder, "other.jsonl"), "no record");
        File.WriteAllText(Path.Combine(_scratch.Folder, "empty.jsonl"), "");
        Assert.Null(Of());
    }

    [Fact]
    public void One_that_another_program_is_writing_is_not_ours()
    {
        var path = Record("open.jsonl", hoursAgo: 1);
        using (new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None))
        {
            Assert.Null(Of());
        }

        Assert.NotNull(Of());
    }

    [Theory]
    [InlineData(0.7, "42 minutes")]
    [InlineData(1, "1 hour")]
    [InlineData(72, "3 days")]
    public void It_is_told_how_long_ago_it_was_left(double hours, string ago)
    {
        var path = Record("open.jsonl", hours);
        Assert.Equal($"An unfinished boil was left {ago} ago: {path}", UnfinishedOffer.Told(Of()!));
    }

    [Theory]
    [InlineData("yes\n", true, 1)]
    [InlineData("\n", true, 1)]
    [InlineData("no\n", false, 1)]
    [InlineData("tank 3\nY\n", true, 2)]
    [InlineData("what\n", false, 2)]
    public void It_is_asked_until_it_is_answered_and_the_end_of_the_input_begins_another(string typed, bool taken, int asked)
    {
        var path = Record("open.jsonl", 1);
        using var output = new StringWriter { NewLine = "\n" };
        using var input = new StringReader(typed);
        Assert.Equal(taken, UnfinishedOffer.IsTaken(Of()!, input, output));
        Assert.StartsWith($"> An unfinished boil was left 1 hour ago: {path}. Go on with it?\n  [yes goes on,", output.ToString(), StringComparison.Ordinal);
        Assert.Equal(asked, output.ToString().Split("[yes goes on").Length - 1);
    }

    [Fact]
    public void No_folder_is_no_fault() => Assert.Null(UnfinishedBoil.Of(Path.Combine(_scratch.Folder, "none"), Now));

    public void Dispose() => _scratch.Dispose();

    private UnfinishedBoil? Of() => UnfinishedBoil.Of(_scratch.Folder, Now);

    private string Record(string name, double hoursAgo, bool over = false, bool practice = false)
    {
        var path = Path.Combine(_scratch.Folder, name);
        File.WriteAllText(path,
            """{"at":"2031-03-08T17:00:00-05:00","seq":1,"session":{"program":"p","flow":"f","flow-hash":"h","rig":"r","rig-file":"","guidance":"beginner","practice":PRACTICE}}""".Replace("PRACTICE", practice ? "true" : "false", StringComparison.Ordinal)
            + "\n{\"at\":\"2031-03-08T17:00:00-05:00\",\"tick\":true}\n"
            + (over ? "{\"at\":\"2031-03-08T17:00:00-05:00\",\"seq\":9,\"over\":{\"safe\":true}}\n" : ""));
        File.SetLastWriteTimeUtc(path, Now.UtcDateTime.AddHours(-hoursAgo));
        return path;
    }
}
