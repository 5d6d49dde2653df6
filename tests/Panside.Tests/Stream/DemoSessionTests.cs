using System.Text.Json;
using Panside.Guide.Words;
using Panside.Journal;

namespace Panside.Tests.Stream;

/// <summary>Each demo session is made again from its own lines in, to the byte; and README's transcript is cut from one.</summary>
public class DemoSessionTests
{
    public static TheoryData<string> Records { get; } =
        [.. Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "demo-sessions"), "*.jsonl").Select(path => Path.GetFileName(path)!)];

    [Fact]
    public void There_are_nine_of_them() => Assert.Equal(9, Records.Count);

    [Theory]
    [MemberData(nameof(Records))]
    public void A_demo_session_is_made_again_to_the_byte(string name)
    {
        using var scratch = new Scratch();
        var path = Path.Combine(RepositoryFiles.Root, "demo-sessions", name);
        var lines = File.ReadAllLines(path);
        var header = Journal.Record.Of(JournalFile.Read(path)).Header!;
        File.WriteAllText(scratch["rig.yaml"], header.RigText);
        var said = lines.Where(line => !line.Contains("\"seq\":", StringComparison.Ordinal) && !line.Contains("\"ready\":", StringComparison.Ordinal));

        var run = StreamRun.Of(said, scratch["again.jsonl"], header.Guidance, scratch["rig.yaml"]);

        Assert.Equal(0, run.Exit);
        Assert.Equal(lines, File.ReadAllLines(scratch["again.jsonl"]));
    }

    [Theory]
    [MemberData(nameof(Records))]
    public void A_demo_session_ends_safe_and_refuses_nothing(string name)
    {
        var lines = File.ReadAllLines(Path.Combine(RepositoryFiles.Root, "demo-sessions", name)).Select(line => JsonDocument.Parse(line).RootElement).ToList();
        Assert.True(lines.Last(line => StreamRun.Is(line, "over")).GetProperty("over").GetProperty("safe").GetBoolean());
        Assert.DoesNotContain(lines, line => StreamRun.Is(line, "refused"));
    }

    [Fact]
    public void The_transcript_in_README_is_what_the_program_told()
    {
        var readme = RepositoryFiles.Read("README.md").ReplaceLineEndings("\n");
        var begin = readme.IndexOf("```\n", StringComparison.Ordinal) + 4;
        var transcript = readme[begin..readme.IndexOf("```", begin, StringComparison.Ordinal)];
        Assert.InRange(transcript.Split('\n').Length, 10, 30);

        using var scratch = new Scratch();
        var path = Path.Combine(RepositoryFiles.Root, "demo-sessions", "first-shutdown.jsonl");
        var record = Journal.Record.Of(JournalFile.Read(path));
        using var session = RecordedSession.New(Commands.Opening.SettingOf(path, record, null), _ => null);
        var told = new List<string>();
        foreach (var exchange in record.Exchanges)
        {
            var line = exchange.Line!;
            var answers = LinesOfText.Of(session.Hear(line, exchange.Raw)).ToList();
            if (answers.Count > 0)
            {
                told.Add($"[{line.At.Time:HH:mm}] {(line is Guide.Lines.Text text ? text.Words : "")}".TrimEnd());
                told.AddRange(answers);
            }
        }

        Assert.Contains(transcript.TrimEnd(), string.Join('\n', told), StringComparison.Ordinal);
    }
}
