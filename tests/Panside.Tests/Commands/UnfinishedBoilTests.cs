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
