using Panside.Commands;
using Panside.Guide.Yaml;
using Panside.Journal;

namespace Panside.Tests.Records;

/// <summary>A record that is far too long is read as a stream, and whoever waits is told how far it has come.</summary>
[Collection(ProcessAlone.Name)]
public class LongRecordTests
{
    [Fact]
    public void R9_a_long_record_is_checked_in_level_memory()
    {
        using var stream = new RepeatedStream("{\"at\":\"2031-03-08T23:00:00-05:00\",\"tick\":true}\n{\"at\":null,\"ready\":true}\n"u8.ToArray(), 40 << 20);
        var (least, most) = (long.MaxValue, 0L);
        var exchanges = new Exchanges();
        var count = 0;
        foreach (var exchange in exchanges.Of(RecordBytes.Lines(stream).Select(line => line.Text)))
        {
            if (++count % 100_000 == 0)
            {
                var now = GC.GetTotalMemory(forceFullCollection: true);
                (least, most) = (long.Min(least, now), long.Max(most, now));
            }
        }

        Assert.InRange(count, 500_000, 600_000);
        Assert.InRange(most - least, 0, 4_000_000);
    }

    [Fact]
    public void A_record_of_nothing_but_faults_is_told_by_the_first_thousand()
    {
        using var stream = new RepeatedStream("{\"at\":1}\n"u8.ToArray(), 1 << 20);
        var fault = Assert.Throws<FaultyFileException>(() => RecordCheck.Demand("boil.jsonl", stream));
        Assert.InRange(fault.Faults.Count, 1000, 1100);
        Assert.Contains(fault.Faults, one => one.Wrong.Contains("were not looked at", StringComparison.Ordinal));
    }

    [Fact]
    public void A_line_without_an_end_is_one_damaged_line_and_not_kept()
    {
        using var stream = new RepeatedStream("xxxxxxxx"u8.ToArray(), 20 << 20);
        var line = Assert.Single(RecordBytes.Lines(stream));
        Assert.InRange(line.Bytes.Length, 1 << 20, 5 << 20);
    }

    [Fact]
    public void Whoever_waits_for_a_long_reading_is_told_how_far_it_has_come()
    {
        var clock = new Microsoft.Extensions.Time.Testing.FakeTimeProvider();
        using var output = new StringWriter { NewLine = "\n" };
        using (var progress = new Progress("Reading the record", output, clock))
        {
            progress.Tell(1, 200_000_000);
            clock.Advance(TimeSpan.FromSeconds(3));
            progress.Tell(50_000_000, 200_000_000);
            progress.Tell(51_000_000, 200_000_000);
        }

        Assert.Equal("Reading the record: 25 % of 200.0 MB after 3 s. Ctrl-C leaves it; nothing is lost.\nReading the record: done after 3 s.\n", output.ToString());
    }

    /// <summary>The same bytes again and again.</summary>
    private sealed class RepeatedStream(byte[] part, long length) : System.IO.Stream
    {
        private long _at;

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => length;

        public override long Position { get => _at; set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var many = (int)long.Min(count, length - _at);
            for (var index = 0; index < many; index++)
            {
                buffer[offset + index] = part[(_at + index) % part.Length];
            }

            _at += many;
            return many;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
