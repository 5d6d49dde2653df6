using System.Text.RegularExpressions;
using Microsoft.Extensions.Time.Testing;
using Panside.Faces;
using Panside.Journal;
using Panside.Tests.Screen.Support;
using Terminal.Gui.Input;

namespace Panside.Tests.Screen;

public sealed partial class SameLinesTests : IDisposable
{
    private static readonly string[] Script =
    [
        "yes", "  ", "yes", "nonsense", "no", "depth 1 1/2", "why", "yes", "undo", "yes", "yes", "tank 99", "tank 30", "help", "?", "sap 2.1", "yes",
        "yes", "lit", "@5", "rolling", "water 211.5", "status", "note sap is cloudy", "emergency", "dry", "depth 1.4", "yes", "leave", "yes",
    ];

    private readonly string _folder = Directory.CreateTempSubdirectory("panside-screen-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_boil_typed_on_the_screen_and_one_in_plain_lines_leave_the_same_record()
    {
        Assert.Equal(Plain(), OnScreen(word => null));
    }

    [Fact]
    public void A_function_key_leaves_the_same_record_as_its_word()
    {
        Assert.Equal(OnScreen(word => null), OnScreen(word => word switch
        {
            "emergency" => Key.F9,
            "help" => Key.F1,
            "status" => Key.F2,
            "why" => Key.F3,
            "undo" => Key.F8,
            _ => null,
        }));
    }

    private string[] OnScreen(Func<string, Key?> keyOf)
    {
        using var session = NewSession("screen");
        using var stage = new Stage(played: new(new RecordedConversation(session)));
        foreach (var line in Script)
        {
            if (keyOf(line) is { } key)
            {
                stage.Press(key);
            }
            else
            {
                stage.Play([line]);
            }
        }

        return Kept(session);
    }

    private string[] Plain()
    {
        using var session = NewSession("plain");
        var clock = Evening.Clock();
        using var input = new PacedReader(Script, clock);
        using var output = new PacedWriter(input);
        new PlainFace(new RecordedConversation(session), input, output, TextWriter.Null, clock).Run(CancellationToken.None);
        return Kept(session);
    }

    private RecordedSession NewSession(string name) =>
        RecordedSession.New(SessionDoor.BuiltIn(), _ => JournalFile.Open(Path.Combine(_folder, $"{name}-{Guid.NewGuid():N}.jsonl")));

    private static string[] Kept(RecordedSession session)
    {
        var path = session.Path!;
        session.Dispose();
        return [.. File.ReadAllLines(path).Select(line => Time().Replace(line, "\"at\":…"))];
    }

    [GeneratedRegex("\"at\":\"[^\"]*\"")]
    private static partial Regex Time();

    /// <summary>Hands out the next line when the one before was answered; a wait is answered by the tick that it makes due.</summary>
    private sealed class PacedReader(string[] script, FakeTimeProvider clock) : TextReader
    {
        private readonly SemaphoreSlim _answered = new(0);
        private int _next;

        public void Answered() => _answered.Release();

        public override string? ReadLine()
        {
            while (_next < script.Length)
            {
                _answered.Wait();
                var line = script[_next++];
                if (line[0] == '@')
                {
                    clock.Advance(TimeSpan.FromMinutes(int.Parse(line[1..], System.Globalization.CultureInfo.InvariantCulture)));
                    continue;
                }

                if (line.Trim().Length == 0)
                {
                    // Nothing is answered to an empty line.
                    Answered();
                }

                return line;
            }

            _answered.Wait();
            return null;
        }

        protected override void Dispose(bool disposing)
        {
            _answered.Dispose();
            base.Dispose(disposing);
        }
    }

    private sealed class PacedWriter(PacedReader reader) : StringWriter
    {
        public override void Flush() => reader.Answered();
    }
}
