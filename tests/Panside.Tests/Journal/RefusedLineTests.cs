using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Journal;
using Panside.Tests.Stream;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Records;

/// <summary>What was refused when it was said is refused for the same reason when the record is heard again.</summary>
public class RefusedLineTests
{
    [Theory]
    [InlineData("\"resume\":true")]
    [InlineData("\"resume\":false")]
    [InlineData("\"seq\":4,\"refused\":{\"why\":\"so\"}")]
    [InlineData("\"seq\":5,\"refused\":{\"why\":\"so\"}")]
    [InlineData("\"ready\":true")]
    [InlineData("\"ready\":true,\"seq\":1")]
    [InlineData("\"seq\":4,\"mood\":{}")]
    [InlineData("\"seq\":4,\"told\":{\"text\":\"so\"},\"phase\":\"over\"")]
    [InlineData("\"unread\":\"x\",\"why\":\"y\"")]
    [InlineData("\"unread\":\"\\ud83c\",\"why\":\"y\",\"field\":\"z\"")]
    [InlineData("\"reading\":\"tank-volume\",\"value\":12,\"unit\":\"gal\",\"mood\":1")]
    [InlineData("\"reading\":\"tank-volume\",\"value\":1e99,\"unit\":\"gal\"")]
    [InlineData("\"did\":\"dance\"")]
    [InlineData("\"tick\":true,\"text\":\"x\"")]
    public void A_refused_line_replays_as_it_was(string said)
    {
        using var scratch = new Scratch();
        var lines = new[] { StreamRun.Tick(0), StreamRun.At(1, said), StreamRun.Text(2, "yes"), StreamRun.At(2, said), StreamRun.Tick(3) };
        var run = StreamRun.Of(lines, scratch["boil.jsonl"]);
        StreamRun.Refusal(run.Answers[1]);
        var bytes = File.ReadAllBytes(scratch["boil.jsonl"]);
        var (exit, told, _) = Recorded.Verify(bytes);
        Assert.True(exit == 0, told);
        Assert.Equal(lines, Record.Of(RecordBytes.Lines(bytes)).Exchanges.Select(exchange => exchange.Raw));
        RecordCheck.Demand("boil.jsonl", new MemoryStream(bytes));

        using var session = Opening.Open(new(null, null, "beginner", scratch["boil.jsonl"], scratch.Folder));
        Assert.Null(session.Trouble);
    }

    [Fact]
    public void A_line_that_was_not_said_by_a_program_cannot_be_made_the_records_own()
    {
        // The record keeps a refused 'resume' in a form of its own; said again from outside, that form is refused as well.
        using var scratch = new Scratch();
        StreamRun.Of([StreamRun.Tick(0), StreamRun.At(1, "\"resume\":true")], scratch["one.jsonl"]);
        var kept = File.ReadAllLines(scratch["one.jsonl"]).Single(line => line.Contains("\"unread\"", StringComparison.Ordinal));
        StreamRun.Of([StreamRun.Tick(0), kept, StreamRun.Tick(2)], scratch["two.jsonl"]);
        Assert.Equal(0, Recorded.Verify(File.ReadAllBytes(scratch["two.jsonl"])).Exit);
        Assert.IsType<Unreadable>(LineReader.Read(kept));
    }
}
