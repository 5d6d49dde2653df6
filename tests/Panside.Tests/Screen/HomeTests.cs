using Panside.Commands;

namespace Panside.Tests.Screen;

public sealed class HomeTests : IDisposable
{
    private const string Begun = """{"at":"2031-03-08T17:00:00-05:00","seq":1,"session":{"program":"p","flow":"f","flow-hash":"h","rig":"r","rig-file":"","guidance":"beginner","practice":false}}""";
    private const string Over = """{"at":"2031-03-08T21:00:00-05:00","seq":2,"over":{"safe":true}}""";

    private readonly string _folder = Directory.CreateTempSubdirectory("panside-home-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_newest_boil_that_is_not_over_is_the_one_to_go_on_with()
    {
        Write("2031-03-06-1700.jsonl", Begun);
        var open = Write("2031-03-07-1700.jsonl", Begun);
        Write("2031-03-08-1700.jsonl", Begun, Over);
        Write("2031-03-09-1700.jsonl", "no record");
        Assert.Equal(open, HomeCommand.Unfinished(_folder));
    }

    [Fact]
    public void Without_an_open_boil_there_is_none_to_go_on_with()
    {
        Assert.Null(HomeCommand.Unfinished(Path.Combine(_folder, "missing")));
        Write("2031-03-08-1700.jsonl", Begun, Over);
        Assert.Null(HomeCommand.Unfinished(_folder));
    }

    private string Write(string name, params string[] lines)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllLines(path, lines);
        return path;
    }
}
