using CsCheck;
using Panside.Commands;
using Panside.Guide.Words;
using Panside.Journal;
using Panside.Laws;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Records;

/// <summary>A record is shown as what was said, read from its own lines.</summary>
public class AnswerReaderTests
{
    public static TheoryData<string> Names => Stream.DemoFacesTests.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_answer_of_a_record_is_read_and_written_to_the_same_bytes(string name)
    {
        var answers = Record.Of(JournalFile.Read(Reporting.Story.Demo(name))).Exchanges.SelectMany(exchange => exchange.Answers).Select(answer => answer.Text).ToList();
        Assert.Equal(answers, answers.Select(text => AnswerReader.Read(text) is { } line ? LineWriter.Write(line) : null));
    }

    [Fact]
    public void Showing_a_record_reckons_nothing()
    {
        // An answer that the assistant would never give is shown as it stands.
        var lines = JournalFile.Read(Reporting.Story.Demo("first-shutdown")).ToList();
        var at = lines.FindIndex(line => line.Contains("\"told\":{\"text\":\"", StringComparison.Ordinal));
        lines[at] = lines[at].Replace("\"told\":{\"text\":\"", "\"told\":{\"text\":\"Once upon a time. ", StringComparison.Ordinal);
        var setting = Opening.SettingOf("boil.jsonl", Record.Of(lines), null);
        Assert.Contains(new PastSession("boil.jsonl", () => lines, setting).Told().SelectMany(told => told.Lines), line => line.StartsWith("- Once upon a time. ", StringComparison.Ordinal));
    }

    [Fact]
    public void Whatever_an_answer_was_changed_to_it_is_read_or_left_out()
    {
        var answers = Record.Of(JournalFile.Read(Reporting.Story.Demo("first-shutdown"))).Exchanges.SelectMany(exchange => exchange.Answers).Select(answer => answer.Text).ToArray();
        string[] pieces = ["null", "1", "\"\\ud800\"", "[]", "{}", "true", "1e999", "\"x\"", "", "\0"];
        Gen.Select(Gen.OneOf(answers), Gen.Int[0, 1000], Gen.Int[0, 12], Gen.OneOf(pieces)).Holds(
            changed =>
            {
                var (text, place, length, piece) = changed;
                var from = place % text.Length;
                var other = text[..from] + piece + text[int.Min(from + length, text.Length)..];
                if (AnswerReader.Read(other) is { } line)
                {
                    Assert.NotNull(LinesOfText.Of([line]).ToList());
                }
            },
            cases: 2000);
    }
}
