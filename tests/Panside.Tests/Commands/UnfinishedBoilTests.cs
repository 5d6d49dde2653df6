using Panside.Commands;

namespace Panside.Tests.Checks;

public sealed class UnfinishedBoilTests : IDisposable
{
    private static readonly DateTimeOffset Now = new(2031, 3, 8, 22, 0, 0, TimeSpan.FromHours(-5));

    private readonly Scratch _scratch = new();

    [Fact]
    public void A_boil_left_an_hour_ago_is_pointed_at()
    {
        var path = Record("2031-03-08-1700.jsonl", hoursAgo: 1, over: false);
        Assert.Equal(path, UnfinishedBoil.In(_scratch.Folder, Now));
    }

    [Fact]
    public void One_that_is_over_or_cold_or_not_the_newest_is_not()
    {
        Record("over.jsonl", hoursAgo: 1, over: true);
        Assert.Null(UnfinishedBoil.In(_scratch.Folder, Now));
        Record("older.jsonl", hoursAgo: 2, over: false);
        Assert.Null(UnfinishedBoil.In(_scratch.Folder, Now));
        File.Delete(Path.Combine(_scratch.Folder, "over.jsonl"));
        File.SetLastWriteTimeUtc(Path.Combine(_scratch.Folder, "older.jsonl"), Now.UtcDateTime.AddHours(-30));
        Assert.Null(UnfinishedBoil.In(_scratch.Folder, Now));
    }

    [Theory]
    [InlineData(0.7, "42 minutes")]
    [InlineData(1, "1 hour")]
    [InlineData(72, "3 days")]
    public void It_is_told_how_long_ago_it_was_left(double hours, string ago)
    {
        var path = Record("open.jsonl", hours, over: false);
        Assert.Equal($"An unfinished boil was left {ago} ago: {path}", UnfinishedOffer.Told(path, Now));
    }

    [Theory]
    [InlineData("yes\n", true, 1)]
    [InlineData("\n", true, 1)]
    [InlineData("no\n", false, 1)]
    [InlineData("tank 3\nY\n", true, 2)]
    [InlineData("what\n", false, 2)]
    public void It_is_asked_until_it_is_answered_and_the_end_of_the_input_begins_another(string typed, bool taken, int asked)
    {
        var path = Record("open.jsonl", 1, over: false);
        using var output = new StringWriter { NewLine = "\n" };
        using var input = new StringReader(typed);
        Assert.Equal(taken, UnfinishedOffer.IsTaken(path, Now, input, output));
        Assert.StartsWith($"> An unfinished boil was left 1 hour ago: {path}. Go on with it?\n  [yes goes on,", output.ToString(), StringComparison.Ordinal);
        Assert.Equal(asked, output.ToString().Split("[yes goes on").Length - 1);
    }

    [Fact]
    public void No_folder_is_no_fault() => Assert.Null(UnfinishedBoil.In(Path.Combine(_scratch.Folder, "none"), Now));

    public void Dispose() => _scratch.Dispose();

    private string Record(string name, double hoursAgo, bool over)
    {
        var path = Path.Combine(_scratch.Folder, name);
        File.WriteAllText(path, "{\"at\":\"2031-03-08T17:00:00-05:00\",\"tick\":true}\n"
            + (over ? "{\"at\":\"2031-03-08T17:00:00-05:00\",\"seq\":9,\"over\":{\"safe\":true}}\n" : ""));
        File.SetLastWriteTimeUtc(path, Now.UtcDateTime.AddHours(-hoursAgo));
        return path;
    }
}
