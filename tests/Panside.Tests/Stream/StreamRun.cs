using System.Text;
using System.Text.Json;
using Panside.Commands;
using Panside.Faces;
using Panside.Journal;

namespace Panside.Tests.Stream;

/// <summary>A stream session run inside the test: lines in, answers out, one list for each line in.</summary>
internal sealed class StreamRun
{
    private StreamRun(int exit, string output, string errors)
    {
        (Exit, Output, Errors) = (exit, output, errors);
        var answer = new List<JsonElement>();
        foreach (var line in output.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var element = JsonDocument.Parse(line).RootElement;
            if (element.TryGetProperty("ready", out _))
            {
                Ready.Add(element);
                Answers.Add(answer);
                answer = [];
            }
            else
            {
                answer.Add(element);
            }
        }

        Assert.Empty(answer);
    }

    public int Exit { get; }

    public string Output { get; }

    public string Errors { get; }

    public List<IReadOnlyList<JsonElement>> Answers { get; } = [];

    public List<JsonElement> Ready { get; } = [];

    public IEnumerable<JsonElement> All => Answers.SelectMany(answer => answer);

    public static StreamRun Of(IEnumerable<string> lines, string? journal = null, string guidance = "beginner", string? rig = null)
    {
        using var scratch = new Scratch();
        using var session = Opening.Open(new(rig, null, guidance, journal, scratch.Folder));
        return Of(session, lines);
    }

    /// <summary>A new record of a session with few possible rigs.</summary>
    public static StreamRun Of(IEnumerable<string> lines, string journal, int members)
    {
        using var scratch = new Scratch();
        var setting = Opening.SettingOf(new GuidedArguments(null, null, "beginner", journal, scratch.Folder), practice: false).With(members);
        using var session = RecordedSession.New(setting, _ => JournalFile.Open(journal), snapshots: false);
        return Of(session, lines);
    }

    private static StreamRun Of(RecordedSession session, IEnumerable<string> lines)
    {
        using var input = new MemoryStream(Encoding.UTF8.GetBytes(string.Concat(lines.Select(line => line + "\n"))));
        using var output = new MemoryStream();
        using var errors = new StringWriter();
        var exit = StreamFace.Run(session, input, output, errors);
        return new(exit, Encoding.UTF8.GetString(output.ToArray()), errors.ToString());
    }

    public static string At(int minute, string rest) => $$"""{"at":"2031-03-08T{{17 + (minute / 60):00}}:{{minute % 60:00}}:00-05:00",{{rest}}}""";

    public static string Tick(int minute) => At(minute, "\"tick\":true");

    public static string Text(int minute, string words) => At(minute, $"\"text\":{JsonSerializer.Serialize(words)}");

    public static bool Is(JsonElement line, string key) => line.TryGetProperty(key, out _);

    /// <summary>The one refusal of an answer, and that nothing else was said but what opens a session.</summary>
    public static JsonElement Refusal(IReadOnlyList<JsonElement> answer) => Assert.Single(answer, line => Is(line, "refused")).GetProperty("refused");
}
