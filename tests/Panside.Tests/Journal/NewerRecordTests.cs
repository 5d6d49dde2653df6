using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Journal;
using Panside.Reporting;
using Panside.Tests.Stream;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Records;

/// <summary>R3: a damaged session line, or what a newer version wrote: going on, report and replay use what can be read, and say what cannot.</summary>
public class NewerRecordTests
{
    private static readonly byte[] Whole = Recorded.Boil(8);

    private static readonly int Header = Array.FindIndex(Whole.Lines(), line => line.Contains("\"session\":", StringComparison.Ordinal)) + 1;

    [Fact]
    public void R3_one_flipped_bit_anywhere_in_the_first_lines_and_all_three_go_on()
    {
        var random = new Random(20310308);
        var end = Whole.Text().Split('\n').Take(Header).Sum(line => line.Bytes().Length + 1);
        var told = 0;
        for (var round = 0; round < 60; round++)
        {
            var bytes = Whole.ToArray();
            var at = random.Next(end);
            bytes[at] ^= (byte)(1 << random.Next(8));
            told += GoesOn(bytes, $"bit of byte {at}") is not null ? 1 : 0;
        }

        Assert.InRange(told, 20, 60);
    }

    [Theory]
    [InlineData("\"flow-hash\":\"", "\"flow-hash\":\"x")]
    [InlineData("\"rig-file\":", "\"rig-fime\":")]
    [InlineData("\"guidance\":\"beginner\"", "\"guidance\":\"expert\"")]
    [InlineData("\"practice\":false", "\"practice\":null")]
    [InlineData("\"session\":{", "\"sessiop\":{")]
    [InlineData("\"session\":{", "\"session\":[")]
    [InlineData("\"seq\":1,", "\"sfq\":1,")]
    public void R3_a_damaged_session_line_is_told_by_its_number_and_what_can_be_read_is_used(string from, string to)
    {
        var warning = GoesOn(Whole.WithLine(Header, line => line.Replace(from, to, StringComparison.Ordinal)), to);
        Assert.Contains($":{Header}: the session line is ", warning, StringComparison.Ordinal);
    }

    [Fact]
    public void R3_a_session_line_that_is_gone_is_told_and_the_options_are_taken()
    {
        Assert.Contains("the session line is missing", GoesOn(Whole.WithLine(Header, _ => new string('\0', 300)), "gone"), StringComparison.Ordinal);
    }

    [Fact]
    public void R3_the_rig_of_a_damaged_session_line_is_the_records_own()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["rig.yaml"], "rig: a small one\nunits: metric\npan: { length: 90 cm, width: 40 cm }\nfire: { draft: natural }\n");
        StreamRun.Of(WholeBoil.Lines.Take(4), scratch["boil.jsonl"], rig: scratch["rig.yaml"]);
        var bytes = File.ReadAllBytes(scratch["boil.jsonl"]);
        var at = bytes.AsSpan().IndexOf("\"program\""u8);
        bytes[at + 12] = 0xFF;
        File.WriteAllBytes(scratch["boil.jsonl"], bytes);
        using var session = Opening.Open(new(null, null, "beginner", scratch["boil.jsonl"], scratch.Folder));
        Assert.Equal("a small one", session.Setting.Rig.Name);
        Assert.Contains("damaged; what the session ran on can still be read", session.Trouble, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(",\"mood\":\"fine\"}")]
    [InlineData(",\"more\":{\"a\":[1,2]}}")]
    public void Keys_that_a_newer_version_wrote_are_kept_and_passed_over(string more)
    {
        for (var number = 1; number <= Whole.Lines().Length; number++)
        {
            var bytes = Whole.WithLine(number, line => line[..^1] + more);
            var heard = Recorded.Past(bytes).Boil();
            Assert.DoesNotContain(heard.Exchanges, exchange => exchange.Line is Unreadable { Stated: not null });
            Assert.Empty(Record.Of(RecordBytes.Lines(bytes)).Damaged);
            if (number % 5 == 0)
            {
                GoesOn(bytes, $"line {number}");
            }
        }
    }

    [Fact]
    public void A_key_of_a_newer_rig_file_is_passed_over_and_told()
    {
        var warning = GoesOn(Whole.WithLine(Header, line => line.Replace("\"rig-file\":\"", "\"rig-file\":\"chimney: 12 ft\\n", StringComparison.Ordinal)), "rig");
        Assert.Contains("without the keys that are not", warning, StringComparison.Ordinal);
    }

    [Fact]
    public void A_saying_of_a_newer_version_is_passed_over()
    {
        var bytes = Whole.WithLine(Header, line => line + "\n" + line.Replace("\"session\":", "\"mood\":", StringComparison.Ordinal));
        Assert.All(Record.Of(RecordBytes.Lines(bytes)).Exchanges, exchange => Assert.True(exchange.IsComplete));
    }

    /// <summary>Goes on with a record, tells it as a report and as a replay; what is warned of.</summary>
    private static string? GoesOn(byte[] bytes, string what)
    {
        using var scratch = new Scratch();
        File.WriteAllBytes(scratch["boil.jsonl"], bytes);
        string? warning;
        try
        {
            using (var session = Opening.Open(new(null, null, "beginner", scratch["boil.jsonl"], scratch.Folder)))
            {
                Assert.NotEmpty(session.Hear(new Tick(Moment.Read("2031-03-08T23:00:00-05:00")!.Value)));
                warning = session.Trouble;
            }

            var lines = RecordBytes.Lines(bytes);
            var setting = Opening.SettingOf("boil.jsonl", Record.Of(lines), null);
            Assert.NotNull(StoryTeller.Of(setting, lines));
            Assert.NotEmpty(new PastSession("boil.jsonl", () => lines, setting).Told());
        }
        catch (Exception fault) when (fault is not Xunit.Sdk.XunitException)
        {
            throw new InvalidOperationException($"{what}: {fault.Message}", fault);
        }

        return warning;
    }
}
