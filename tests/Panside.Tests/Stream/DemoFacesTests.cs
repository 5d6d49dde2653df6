using System.Text.Json;
using Panside.Guide.Lines;
using Panside.Guide.Words;
using Panside.Journal;
using Panside.Screen.Painting;
using Panside.Screen.Replaying;
using Panside.Tests.Records;
using Panside.Tests.Screen.Support;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Stream;

/// <summary>Each demo session comes again to the same lines in every face, and a line that was edited is found by its number.</summary>
public class DemoFacesTests
{
    public static TheoryData<string> Names { get; } =
        [.. Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "demo-sessions"), "*.jsonl").Select(path => Path.GetFileNameWithoutExtension(path)!)];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_the_record_holds_is_told_in_its_order_by_every_face(string name)
    {
        var record = Record.Of(JournalFile.Read(Reporting.Story.Demo(name)));
        var texts = record.Exchanges.SelectMany(exchange => Texts(exchange.Answers)).ToList();
        Assert.InRange(texts.Count, 40, 1000);
        InOrder(texts, Demo.Past(name).Told().SelectMany(told => told.Lines));
        InOrder(texts, OnScreen(name).SelectMany(entry => entry.Texts));
        Assert.Equal(
            record.Exchanges.SelectMany(exchange => exchange.Answers).Select(answer => answer.Text),
            Demo.Boil(name).Exchanges.SelectMany(exchange => exchange.Answers).Select(LineWriter.Write));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_is_shown_of_a_record_is_what_hearing_it_again_says(string name) => Assert.Equal(
        Demo.Boil(name).Exchanges.SelectMany(exchange => LinesOfText.Of(exchange.Answers)),
        Demo.Past(name).Told().SelectMany(told => told.Lines.Skip(1)));

    [Theory]
    [MemberData(nameof(Names))]
    public void A_replay_shows_what_the_screen_showed_at_the_boil(string name)
    {
        var boil = Demo.Boil(name);
        var played = new Played(new ForgetfulDoor(boil.Setting), boil.Exchanges[0].At.Time.ToUniversalTime());
        foreach (var exchange in boil.Exchanges.Skip(1))
        {
            played.Clock.SetUtcNow(exchange.At.Time.ToUniversalTime());
            if (exchange.Line is Text text)
            {
                played.Talk.Say(text.Words);
            }
            else
            {
                played.Talk.Check();
            }
        }

        Assert.Equal(Shown(played.Talk.Said), Shown(OnScreen(name)));

        static List<string> Shown(IReadOnlyList<Entry> entries) =>
            [.. entries.SelectMany(entry => entry.Texts.Select(text => $"{entry.Time} {entry.Tone} {entry.Kind} {text}"))];
    }

    [Theory]
    [InlineData("float-stuck")]
    public void Stepped_through_on_the_terminal_every_line_comes_up(string name)
    {
        var played = new Played();
        var talk = new ReplayTalk(Demo.Boil(name), new(1, null, null, null), played.Clock);
        talk.Start();
        using var stage = new Stage(140, 50, played, talk);
        stage.Type("pause");
        var steps = 0;
        while (!talk.Replay.IsAtEnd && talk.Replay.Reply.Length == 0)
        {
            // What stands last in the conversation, or above the input line while it is open.
            var entry = talk.Said[^1].Texts[0];
            Assert.Contains(entry[..int.Min(entry.Length, 60)], stage.Text, StringComparison.Ordinal);
            stage.Press(Terminal.Gui.Input.Key.F5);
            steps++;
        }

        Assert.InRange(steps, 60, 200);
    }

    /// <summary>So many lines after an edited one are enough to see that a replay goes on past it.</summary>
    private const int Beyond = 60;

    [Theory]
    [MemberData(nameof(Names))]
    public void An_edited_line_is_found_by_its_number(string name)
    {
        var bytes = File.ReadAllBytes(Reporting.Story.Demo(name));
        var lines = bytes.Lines();
        foreach (var number in Enumerable.Range(1, lines.Length).Where(number => LineShape.Of(lines[number - 1]).Kind != LineKind.In).Where((_, index) => index % (Thorough.IsAsked ? 193 : 600) == 50))
        {
            var edited = bytes.WithLine(number, line => line.Replace("2031-03-08", "2031-03-09", StringComparison.Ordinal));
            var (exit, said, _) = Recorded.Verify(edited);
            Assert.Equal((1, $"boil.jsonl:{number}: the first difference"), (exit, said.Split('\n')[0]));
            var talk = new ReplayTalk(Recorded.Past(Thorough.IsAsked ? edited : UpTo(edited, number + Beyond)).Boil(), new(1, null, null, null), TimeProvider.System);
            talk.Say("end");
            Assert.Single(talk.Said, entry => entry.Texts[0] == $"- Line {number} of the record says otherwise; shown is what is said now.");
        }
    }

    [Fact]
    public void A_line_in_that_was_edited_is_found_where_its_answer_stands()
    {
        var bytes = File.ReadAllBytes(Reporting.Story.Demo("long-boil"));
        var number = bytes.Lines().Index().First(line => line.Item.Contains("\"text\":\"tank 34\"", StringComparison.Ordinal)).Index + 1;
        var (exit, said, _) = Recorded.Verify(bytes.WithLine(number, line => line.Replace("tank 34", "tank 33", StringComparison.Ordinal)));
        Assert.Equal((1, $"boil.jsonl:{number + 1}: the first difference"), (exit, said.Split('\n')[0]));
    }

    /// <summary>The record up to the first line in after so many lines.</summary>
    private static byte[] UpTo(byte[] record, int number)
    {
        var lines = record.Lines();
        var end = Array.FindIndex(lines, int.Min(number, lines.Length), line => LineShape.Of(line).Kind == LineKind.In);
        return end < 0 ? record : (string.Join('\n', lines[..end]) + "\n").Bytes();
    }

    private static readonly OncePerCollection<string, IReadOnlyList<Entry>> Screens = new();

    private static IReadOnlyList<Entry> OnScreen(string name) => Screens.Of(name, () => Replayed(name));

    private static IReadOnlyList<Entry> Replayed(string name)
    {
        var talk = new ReplayTalk(Demo.Boil(name), new(1, null, null, null), TimeProvider.System);
        talk.Say("end");
        return talk.Said;
    }

    private static void InOrder(IEnumerable<string> texts, IEnumerable<string> lines)
    {
        var all = string.Join('\n', lines);
        var at = 0;
        foreach (var text in texts)
        {
            var found = all.IndexOf(text, at, StringComparison.Ordinal);
            Assert.True(found >= 0, $"Not told after '{all[int.Max(at - 200, 0)..at]}': {text}");
            at = found + text.Length;
        }
    }

    /// <summary>What a person is told of recorded lines, read from their JSON alone; an advice and the prompt that repeats it are told once.</summary>
    private static IEnumerable<string> Texts(IReadOnlyList<RecordedLine> answers)
    {
        var advised = "";
        foreach (var answer in answers)
        {
            var line = JsonDocument.Parse(answer.Text).RootElement;
            string? Of(string key, string text) => line.TryGetProperty(key, out var found) ? found.GetProperty(text).GetString() : null;
            var told = line.TryGetProperty("phase", out var phase) ? $"=== {phase.GetString()} ==="
                : Of("advice", "text") ?? Of("prompt", "text") ?? Of("caution", "text") ?? Of("question", "text") ?? Of("refused", "why") ?? Of("told", "text") ?? Of("over", "text");
            if (told is not null && !(line.TryGetProperty("prompt", out _) && told == advised))
            {
                yield return told;
            }

            advised = Of("advice", "text") ?? advised;
        }
    }
}
