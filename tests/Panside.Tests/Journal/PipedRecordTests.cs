using Microsoft.Extensions.Time.Testing;
using Panside.Commands;
using Panside.Faces;
using Panside.Guide.Lines;
using Panside.Journal;
using Panside.Tests.Reporting;

namespace Panside.Tests.Records;

/// <summary>
/// Several lines in one second, as a pipe or a quick hand says them, and interruptions between them: every record that the program
/// writes is heard again as it was heard.
/// </summary>
public class PipedRecordTests
{
    private static readonly DateTimeOffset Evening = new(2031, 3, 8, 17, 0, 0, 950, TimeSpan.FromHours(-5));

    [Theory]
    [InlineData(0)]
    [InlineData(137)]
    [InlineData(10_370)]
    public void Every_line_of_a_piped_boil_is_heard_again_as_it_was_heard(int millisecondsBetween)
    {
        using var scratch = new Scratch();
        Pipe(scratch, Said("first-shutdown"), millisecondsBetween, Evening);
        Verified(scratch);
    }

    [Fact]
    public void A_yes_and_a_lit_in_one_second_are_one_fire_then_and_later()
    {
        using var scratch = new Scratch();
        Pipe(scratch, ["no", "yes", "yes", "yes", "12", "1 1/2", "yes", "yes", "16", "2.1", "yes", "yes", "yes", "lit", "lit"], 90, Evening);
        Verified(scratch);
    }

    [Fact]
    public void A_minute_is_the_same_minute_then_and_later()
    {
        // 0.95 s after the full minute and 0.05 s after another: whole minutes are counted by what the record says.
        using var scratch = new Scratch();
        Pipe(scratch, ["no", "lit", "status"], 59_100, Evening);
        Verified(scratch);
    }

    [Fact]
    public void An_interruption_after_every_line_leaves_a_record_that_is_heard_again_as_it_was_heard()
    {
        using var scratch = new Scratch();
        var now = Evening;
        foreach (var said in Said("first-shutdown").Take(70))
        {
            now = Pipe(scratch, [said], 370, now);
        }

        Verified(scratch);
        Assert.DoesNotContain("answered otherwise", Trouble(scratch), StringComparison.Ordinal);
    }

    [Fact]
    public void A_clock_that_shows_parts_of_a_second_is_heard_as_it_is_written()
    {
        using var scratch = new Scratch();
        using (var session = Opening.Open(new(null, null, "beginner", scratch["boil.jsonl"], scratch.Folder)))
        {
            for (var line = 0; line < 30; line++)
            {
                var at = Evening.AddMilliseconds(line * 410);
                session.Hear(new Text(new(at, Moment.Of(at).Written), line % 3 == 0 ? "yes" : "lit"));
            }
        }

        Verified(scratch);
    }

    [Fact]
    public void A_text_that_is_too_long_to_be_read_again_is_refused_and_the_rest_replays()
    {
        using var scratch = new Scratch();
        Pipe(scratch, ["no", new string('x', 70_000), "yes", "half a sign \ud83c alone"], 1000, Evening);
        Verified(scratch);
    }

    private static IReadOnlyList<string> Said(string demo) =>
        [.. File.ReadLines(Path.ChangeExtension(Story.Demo(demo), ".said")).Where(line => line.Length > 6 && char.IsDigit(line[0])).Select(line => line[6..])];

    /// <summary>Says lines through the plain face, and closes the input as a pipe does.</summary>
    private static DateTimeOffset Pipe(Scratch scratch, IReadOnlyList<string> said, int milliseconds, DateTimeOffset from)
    {
        var clock = new FakeTimeProvider(from.ToUniversalTime());
        clock.SetLocalTimeZone(TimeZoneInfo.CreateCustomTimeZone("there", from.Offset, null, null));
        using var session = Opening.Open(new(null, null, "beginner", scratch["boil.jsonl"], scratch.Folder));
        var face = new PlainFace(new RecordedConversation(session), new PacedLines(said, () => clock.Advance(TimeSpan.FromMilliseconds(milliseconds))), TextWriter.Null, TextWriter.Null, clock)
        {
            LookEvery = TimeSpan.FromMinutes(5),
        };
        face.Run(TestContext.Current.CancellationToken);
        return clock.GetUtcNow().ToOffset(from.Offset).AddMilliseconds(milliseconds);
    }

    private static void Verified(Scratch scratch)
    {
        var (exit, told, _) = Recorded.Verify(File.ReadAllBytes(scratch["boil.jsonl"]));
        Assert.True(exit == 0, told);
    }

    private static string Trouble(Scratch scratch)
    {
        using var session = Opening.Open(new(null, null, "beginner", scratch["boil.jsonl"], scratch.Folder));
        return session.Trouble ?? "";
    }

    /// <summary>Lines with time between them.</summary>
    private sealed class PacedLines(IReadOnlyList<string> lines, Action pass) : TextReader
    {
        private int _next;

        public override string? ReadLine()
        {
            pass();
            return _next < lines.Count ? lines[_next++] : null;
        }
    }
}
