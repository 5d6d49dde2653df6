using System.Text;
using CsCheck;
using Panside.Commands;
using Panside.Faces;
using Panside.Journal;
using Panside.Laws;
using Panside.Tests.Stream;

namespace Panside.Tests.Door;

/// <summary>Lines come in as UTF-8, one by one, in memory that does not grow.</summary>
public class BoundedLinesTests
{
    [Theory]
    [InlineData("a\nb\n", "a|b")]
    [InlineData("a\nb", "a|b")]
    [InlineData("a\r\nb\r\n", "a|b")]
    [InlineData("\n\na", "||a")]
    [InlineData("", "")]
    [InlineData("\uFEFFa\n\uFEFFb", "a|\uFEFFb")]
    public void Lines_end_with_a_line_feed_and_a_byte_order_mark_is_none_of_the_first(string text, string lines) =>
        Assert.Equal(lines, string.Join('|', All(new MemoryStream(Encoding.UTF8.GetBytes(text)))));

    [Fact]
    public void Whatever_the_bytes_are_their_lines_are_those_of_the_bytes_between_line_feeds() =>
        Gen.Byte.Array[0, 300].Select(Gen.Int[1, 40], (bytes, chunk) => (bytes, chunk)).Holds(
            (bytes, chunk) =>
            {
                byte[] some = [.. bytes.Select(one => one < 40 ? (byte)'\n' : one), (byte)'\n'];
                var expected = Encoding.UTF8.GetString(some).Split('\n')[..^1].Select(line => line.TrimEnd('\r'));
                Assert.Equal(expected, All(new Chunks(new MemoryStream(some), chunk)));
            },
            cases: 500);

    [Theory]
    [InlineData(new byte[] { 0xFE, 0xFF })]
    [InlineData(new byte[] { 0xFF, 0xFE })]
    [InlineData(new byte[] { 0xFF, 0xFE, 0, 0 })]
    [InlineData(new byte[] { 0, 0, 0xFE, 0xFF })]
    public void First_bytes_that_mark_another_encoding_cost_their_own_line_and_no_more(byte[] mark)
    {
        var answers = Streamed(new MemoryStream([.. mark, .. Encoding.UTF8.GetBytes($"{StreamRun.Tick(0)}\n{StreamRun.Tick(1)}\n")]));
        Assert.Contains("refused", answers[0], StringComparison.Ordinal);
        Assert.Contains(answers, line => line.Contains("\"phase\":\"start-up\"", StringComparison.Ordinal));
    }

    [Fact]
    public void A_line_of_a_gigabyte_is_refused_in_constant_memory_and_the_next_is_heard()
    {
        using var bytes = new Endless(1L << 30, Encoding.UTF8.GetBytes($"\n{StreamRun.Tick(0)}\n"));
        var before = GC.GetAllocatedBytesForCurrentThread();
        var lines = new BoundedLines(bytes);
        var longest = lines.ReadLine()!;
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 64 << 20);
        Assert.Equal(LineReader.LongestLine + 1, longest.Length);
        Assert.Equal(StreamRun.Tick(0), lines.ReadLine());
    }

    [Fact]
    public void A_line_over_the_limit_is_answered_with_refused_up_to_ready_and_the_session_goes_on()
    {
        var answers = Streamed(new MemoryStream(Encoding.UTF8.GetBytes($"{StreamRun.Tick(0)}\n{new string('x', 500_000)}\n{StreamRun.Tick(1)}\n")));
        Assert.Single(answers, line => line.Contains("65536 characters are the most", StringComparison.Ordinal));
        Assert.Equal(3, answers.Count(line => line.Contains("\"ready\":true", StringComparison.Ordinal)));
    }

    private static string[] Streamed(System.IO.Stream input)
    {
        using var scratch = new Scratch();
        using var session = Opening.Open(new(null, null, "beginner", null, scratch.Folder));
        using var output = new MemoryStream();
        StreamFace.Run(session, input, output, TextWriter.Null);
        return Encoding.UTF8.GetString(output.ToArray()).Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static IEnumerable<string> All(System.IO.Stream bytes)
    {
        var lines = new BoundedLines(bytes);
        while (lines.ReadLine() is { } line)
        {
            yield return line;
        }
    }

    /// <summary>A stream that gives a few bytes at a time, as a pipe does.</summary>
    private sealed class Chunks(MemoryStream bytes, int most) : Reading
    {
        public override int Read(byte[] buffer, int offset, int count) => bytes.Read(buffer, offset, int.Min(count, most));

        public override int Read(Span<byte> buffer) => bytes.Read(buffer[..int.Min(buffer.Length, most)]);
    }

    /// <summary>So many letters, and then an end.</summary>
    private sealed class Endless(long letters, byte[] end) : Reading
    {
        private long _left = letters;
        private int _at;

        public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

        public override int Read(Span<byte> buffer)
        {
            if (_left > 0)
            {
                var some = (int)long.Min(_left, buffer.Length);
                buffer[..some].Fill((byte)'x');
                _left -= some;
                return some;
            }

            var rest = int.Min(end.Length - _at, buffer.Length);
            end.AsSpan(_at, rest).CopyTo(buffer);
            _at += rest;
            return rest;
        }
    }

    private abstract class Reading : System.IO.Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
