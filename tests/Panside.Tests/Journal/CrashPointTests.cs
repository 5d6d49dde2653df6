using System.Text;
using Panside.Commands;
using Panside.Guide.Knowledge;
using Panside.Journal;
using Panside.Tests.Stream;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Records;

/// <summary>
/// R1 and R4 at every write and every flush of a scripted boil, from lighting to leaving. What a program that is killed leaves
/// behind is what its disk had been given until then, so each crash is made from the account of one whole run: nothing of the
/// write, half of it, all of it, and, for a power cut, only what was flushed.
/// </summary>
public class CrashPointTests
{
    /// <summary>
    /// Rounds that each way to fail has: writes or flushes, of the even lines or the odd ones. Together the three ways have all four, so that each
    /// write and each flush fails once; thoroughly each way has all four.
    /// </summary>
    private static readonly Dictionary<Failing, int[]> Rounds = new()
    {
        [Failing.Refused] = [0],
        [Failing.Half] = [3],
        [Failing.HalfAndStuck] = [1, 2],
    };

    /// <summary>Gone on with at every write and flush of so many lines, and at one of so many of the rest.</summary>
    private static readonly (int Lines, int Each) GoneOn = Thorough.IsAsked ? (14, 41) : (5, 83);

    private const string Next = """{"at":"2031-03-08T23:00:00-05:00","tick":true}""";

    private static readonly Lazy<Account> Boil = new(() => new([.. WholeBoil.Lines]));

    private static readonly Lazy<Setting> BuiltIn = new(() =>
    {
        using var scratch = new Scratch();
        return Opening.SettingOf(new GuidedArguments(null, null, "beginner", null, scratch.Folder), practice: false);
    });

    [Fact]
    public void R1_killed_at_every_write_and_every_flush_nothing_acknowledged_is_lost_and_the_next_line_stands_alone()
    {
        using var scratch = new Scratch();
        var (crashes, torn) = (0, 0);
        foreach (var crash in Boil.Value.Crashes())
        {
            var path = scratch["boil.jsonl"];
            File.WriteAllBytes(path, crash.Bytes);
            using (var journal = JournalFile.Open(path))
            {
                torn += journal.WasTorn ? 1 : 0;
                journal.Append([Next]);
            }

            var text = File.ReadAllText(path);
            Assert.True(text.StartsWith(crash.Acknowledged, StringComparison.Ordinal), crash.What);
            Assert.True(text.EndsWith("\n" + Next + "\n", StringComparison.Ordinal) || text == Next + "\n", crash.What);
            var record = Record.Of(JournalFile.Read(path));
            Assert.True(record.Exchanges.Count(exchange => exchange.IsComplete) >= crash.AcknowledgedLines, crash.What);
            Assert.True(record.Damaged.Count <= 1, crash.What);
            crashes++;
        }

        TestContext.Current.SendDiagnosticMessage($"R1: {Boil.Value.Lines} lines, {crashes} crashes, {torn} torn");
        Assert.Equal(5 * Boil.Value.Lines, crashes);
        Assert.InRange(torn, Boil.Value.Lines, crashes);
    }

    [Fact]
    public void R1_the_boil_goes_on_from_a_crash_at_the_step_that_was_acknowledged()
    {
        // To hear a boil again takes its time: every write and flush of the start's lines, and some of the rest.
        using var scratch = new Scratch();
        var tries = 0;
        foreach (var (crash, index) in Boil.Value.Crashes().Select((crash, index) => (crash, index)))
        {
            if (crash.AcknowledgedLines < 1 || (crash.AcknowledgedLines > GoneOn.Lines && index % GoneOn.Each != 0))
            {
                continue;
            }

            File.WriteAllBytes(scratch["boil.jsonl"], crash.Bytes);
            using (var session = RecordedSession.On(BuiltIn.Value, JournalFile.Open(scratch["boil.jsonl"])))
            {
                var (step, next) = (Boil.Value.Steps[crash.AcknowledgedLines - 1], Boil.Value.Steps[int.Min(crash.AcknowledgedLines, Boil.Value.Lines - 1)]);
                Assert.True(session.State.Step == step || session.State.Step == next, $"{crash.What}: at {session.State.Step}, not {step}");
                session.Hear(LineReader.Read(Next), Next);
            }

            var (exit, said, _) = Recorded.Verify(File.ReadAllBytes(scratch["boil.jsonl"]));
            Assert.True(exit == 0, $"{crash.What}: {said}");
            tries++;
        }

        TestContext.Current.SendDiagnosticMessage($"R1: gone on with {tries} times");
        Assert.InRange(tries, 5 * GoneOn.Lines, (5 * GoneOn.Lines) + 30);
        Assert.True(tries > (5 * GoneOn.Lines) + 2, "The rest of the boil was not tried.");
    }

    [Fact]
    public void R4_the_ways_to_fail_have_all_rounds_between_them() =>
        Assert.Equal([0, 1, 2, 3], Rounds.Values.SelectMany(rounds => rounds).Order());

    /// <summary>Many faults in one boil, each mended by the next line, until each write and each flush of the rounds has failed once.</summary>
    [Theory]
    [InlineData(Failing.Refused)]
    [InlineData(Failing.Half)]
    [InlineData(Failing.HalfAndStuck)]
    public void R4_every_write_and_every_flush_of_a_whole_boil_fails_once_and_nothing_is_lost(Failing failing)
    {
        string[] lines = [.. WholeBoil.Lines];
        var failed = new HashSet<(int Line, bool IsFlush)>();
        var faults = 0;
        int[] rounds = Thorough.IsAsked ? [0, 1, 2, 3] : Rounds[failing];
        foreach (var round in rounds)
        {
            using var scratch = new Scratch();
            FailingDisk? disk = null;
            var endsInTrouble = false;
            var due = 0;
            using (var session = RecordedSession.New(BuiltIn.Value, _ => JournalFile.Open(scratch["boil.jsonl"], real => disk = new FailingDisk(real, int.MaxValue, failing, operation => operation == due))))
            {
                for (var index = 0; index < lines.Length; index++)
                {
                    // Every second line, that the line between may bring in what was left.
                    var (before, isFlush) = (disk?.Failures ?? 0, round % 2 == 1);
                    due = index % 2 == round / 2 ? (disk?.Operations ?? 0) + (isFlush ? 2 : 1) : 0;
                    session.Hear(LineReader.Read(lines[index]), lines[index]);
                    var fails = disk!.Failures - before;
                    Assert.Equal(fails > 0, session.Trouble is not null);
                    if (fails > 0)
                    {
                        failed.Add((index, isFlush));
                        faults++;
                    }
                }

                endsInTrouble = session.Trouble is not null;
            }

            // The last line may be the one that failed: the next would have brought it in.
            var left = File.ReadAllText(scratch["boil.jsonl"]);
            Assert.True(endsInTrouble ? Boil.Value.Record.StartsWith(left[..(left.LastIndexOf('\n') + 1)], StringComparison.Ordinal) : left == Boil.Value.Record, $"round {round}");
        }

        TestContext.Current.SendDiagnosticMessage($"R4 {failing}: {lines.Length} lines, {faults} faults");
        Assert.Empty(rounds.SelectMany(round => Enumerable.Range(0, lines.Length).Where(line => line % 2 == round / 2).Select(line => (line, round % 2 == 1))).Except(failed));
    }

    /// <summary>What a program that was killed left behind.</summary>
    private sealed record Crash(string What, byte[] Bytes, string Acknowledged, int AcknowledgedLines);

    /// <summary>A whole boil, with what the disk was given and when it was flushed.</summary>
    private sealed class Account
    {
        private readonly List<byte[]> _writes = [];

        public Account(string[] lines)
        {
            using var scratch = new Scratch();
            using (var session = RecordedSession.New(BuiltIn.Value, _ => JournalFile.Open(scratch["boil.jsonl"], real => new Listening(real, _writes))))
            {
                foreach (var line in lines)
                {
                    session.Hear(LineReader.Read(line), line);
                    Steps.Add(session.State.Step);
                }
            }

            Record = File.ReadAllText(scratch["boil.jsonl"]);
            Assert.Equal(lines.Length, _writes.Count);
        }

        public int Lines => _writes.Count;

        public string Record { get; }

        public List<string> Steps { get; } = [];

        public IEnumerable<Crash> Crashes()
        {
            var whole = Array.Empty<byte>();
            for (var line = 0; line < _writes.Count; line++)
            {
                var (write, acknowledged, number) = (_writes[line], Encoding.UTF8.GetString(whole), line);
                Crash Of(string what, int bytes) => new($"{what} of line {number + 1}", [.. whole, .. write[..bytes]], acknowledged, number);
                yield return Of("before the write", 0);
                yield return Of("half way through the write", write.Length / 2);
                yield return Of("one byte before the end of the write", write.Length - 1);
                yield return Of("before the flush, the program killed", write.Length);
                yield return Of("before the flush, the power cut", 0);
                whole = [.. whole, .. write];
            }
        }
    }

    /// <summary>A disk that keeps what it is given; each write is followed by its flush.</summary>
    private sealed class Listening(IDisk disk, List<byte[]> writes) : IDisk
    {
        private int _flushes;

        public long Length => disk.Length;

        public int Read(long at, Span<byte> to) => disk.Read(at, to);

        public void Write(ReadOnlySpan<byte> bytes)
        {
            Assert.Equal(_flushes, writes.Count);
            writes.Add(bytes.ToArray());
            disk.Write(bytes);
        }

        public void FlushThrough()
        {
            disk.FlushThrough();
            _flushes++;
        }

        public void CutTo(long length) => disk.CutTo(length);

        public void Discard() => disk.Discard();

        public void Dispose() => disk.Dispose();
    }
}
