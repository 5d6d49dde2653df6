using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Journal;
using Panside.Tests.Stream;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Records;

/// <summary>R3: whatever became of the bytes, the damaged line is told by its number, the rest is kept, and nothing crashes.</summary>
public class DamagedRecordTests
{
    private const int Damaged = 14;

    /// <summary>Few possible rigs: a bit that has flipped is found in what they say as in what a thousand say.</summary>
    private const int Few = 104;

    private static readonly byte[] Whole = Recorded.Boil();

    [Theory]
    [InlineData("{\"at\"")]
    [InlineData("")]
    [InlineData("[1]")]
    [InlineData("\"text\"")]
    [InlineData("hello")]
    [InlineData("{\"at\":\"2031-03-08T17:00:00-05:00\",\"text\":\"\\ud83c\"")]
    public void R3_a_line_that_is_no_object_is_told_by_number_and_the_rest_is_kept(string line)
    {
        var record = Record.Of(RecordBytes.Lines(Whole.WithLine(Damaged, _ => line)));
        Assert.Equal([Damaged], record.Damaged);
        Assert.Equal(Whole.Lines().Length - 1, Count(record));
    }

    [Fact]
    public void R3_a_nul_tail_is_one_damaged_line()
    {
        var record = Record.Of(RecordBytes.Lines([.. Whole, .. new byte[4096]]));
        Assert.Equal([Whole.Lines().Length + 1], record.Damaged);
        Assert.Equal(Whole.Lines().Length, Count(record));
    }

    [Fact]
    public void R3_half_a_character_ends_the_line_where_it_stands_and_damages_that_line_only()
    {
        var at = Whole.AsSpan().IndexOf("🍁"u8);
        var number = Whole.AsSpan(0, at).Count((byte)'\n') + 1;
        byte[] bytes = [.. Whole[..(at + 2)], .. Whole[(at + 4)..]];
        var record = Record.Of(RecordBytes.Lines(bytes));
        Assert.Equal(number, record.Damaged[0]);
        Assert.DoesNotContain(record.Exchanges, exchange => exchange.Raw?.Contains('\uFFFD', StringComparison.Ordinal) ?? false);
        Assert.Contains("½ \0", RecordBytes.Lines(bytes)[number - 1], StringComparison.Ordinal);
    }

    [Fact]
    public void R3_windows_line_breaks_and_a_byte_order_mark_change_nothing()
    {
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. Whole.Text().Replace("\n", "\r\n", StringComparison.Ordinal).Bytes()];
        Assert.Equal(RecordBytes.Lines(Whole), RecordBytes.Lines(bytes));
        Assert.Equal(0, Recorded.Verify(bytes).Exit);
    }

    [Theory]
    [InlineData("x")]
    [InlineData("{\"at\":\"2031-03-08T17:00:00-05:00\",\"text\":\"x\"}")]
    public void R3_a_line_of_ten_megabytes_is_read_without_a_crash_and_the_rest_is_kept(string line)
    {
        var bytes = Whole.WithLine(Damaged, _ => line.Replace("x", new string('x', 10 << 20), StringComparison.Ordinal));
        var record = Record.Of(RecordBytes.Lines(bytes));
        Assert.Equal(Whole.Lines().Length - 1, Count(record) - (record.Damaged.Count > 0 ? 0 : 1));
        Assert.All(Rehearing.Of(new Session(Recorded.Setting(Whole)), record), heard => Assert.NotNull(heard.Answers));
    }

    [Fact]
    public void R3_a_flipped_bit_anywhere_crashes_nothing_and_in_an_answer_it_is_found()
    {
        var random = new Random(20310308);
        var found = 0;
        var whole = Recorded.Boil(members: Few);
        var setting = Recorded.Setting(whole).With(Few);
        for (var round = 0; round < 150; round++)
        {
            var bytes = whole.ToArray();
            var at = random.Next(bytes.Length);
            bytes[at] ^= (byte)(1 << random.Next(8));
            var number = whole.AsSpan(0, at).Count((byte)'\n') + 1;
            var record = Record.Of(RecordBytes.Lines(bytes));
            Assert.All(record.Damaged, damaged => Assert.InRange(damaged, number, number + 1));
            var isAnswer = LineShape.Of(whole.Lines()[number - 1]).Kind != LineKind.In;
            var difference = Rehearing.Of(new Session(setting), record).Select(heard => heard.Difference).FirstOrDefault(one => one is not null);
            Assert.True(!isAnswer || difference is not null || record.Damaged.Count > 0, $"a bit of byte {at}, line {number}, went unseen");
            found += difference is not null || record.Damaged.Count > 0 ? 1 : 0;
        }

        Assert.InRange(found, 100, 150);
    }

    /// <summary>What somebody typed in the form of an answer was heard and refused; it must be heard again.</summary>
    [Theory]
    [InlineData("\"ready\":true")]
    [InlineData("\"seq\":3,\"tick\":true")]
    [InlineData("\"seq\":3,\"phase\":\"over\"")]
    public void A_line_in_that_looks_like_an_answer_stays_a_line_in(string said)
    {
        using var scratch = new Scratch();
        var lines = new[] { StreamRun.Tick(0), StreamRun.At(1, said), StreamRun.Text(2, "yes") };
        StreamRun.Of(lines, scratch["boil.jsonl"]);
        var bytes = File.ReadAllBytes(scratch["boil.jsonl"]);
        Assert.Equal(lines, Record.Of(RecordBytes.Lines(bytes)).Exchanges.Select(exchange => exchange.Raw));
        Assert.Equal(0, Recorded.Verify(bytes).Exit);
    }

    [Fact]
    public void A_line_that_was_not_kept_keeps_its_refusal_and_its_number()
    {
        using var scratch = new Scratch();
        StreamRun.Of([StreamRun.Tick(0), "not json", StreamRun.Text(2, "yes")], scratch["boil.jsonl"]);
        var heard = Rehearing.Of(new Session(Recorded.Setting(Whole)), Record.Of(JournalFile.Read(scratch["boil.jsonl"]))).ToList();
        Assert.Contains("no JSON", Assert.IsType<RefusedLine>(Assert.Single(heard[1].Answers)).Why, StringComparison.Ordinal);
        Assert.Equal(heard[1].Answers[0].Sequence + 1, heard[2].Answers[0].Sequence);
    }

    private static int Count(Record record) =>
        record.Exchanges.Sum(exchange => (exchange.Raw is null ? 0 : 1) + exchange.Answers.Count + (exchange.IsComplete ? 1 : 0));
}
