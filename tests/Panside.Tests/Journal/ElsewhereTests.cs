using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Journal;
using Panside.Tests.Stream;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Records;

/// <summary>S7: what was answered and cannot be kept where it should be is kept under another name, which is told.</summary>
public class ElsewhereTests
{
    private static readonly IReadOnlyList<string> Lines = [.. WholeBoil.Lines.Take(24).Where(line => line.StartsWith('{'))];

    [Fact]
    public void S7_a_record_that_another_session_has_begun_is_left_alone_and_this_one_is_kept_beside_it()
    {
        using var scratch = new Scratch();
        using (var second = Opening.Open(new(null, null, "beginner", scratch["boil.jsonl"], scratch.Folder)))
        {
            using (var first = Opening.Open(new(null, null, "beginner", scratch["boil.jsonl"], scratch.Folder)))
            {
                Hear(first, Lines.Take(2));
                Hear(second, Lines.Take(20));
                Assert.Equal(scratch["boil-2.jsonl"], second.Path);
            }

            Hear(second, Lines.Skip(20));
            Assert.Contains($"This one is kept in {scratch["boil-2.jsonl"]}", second.Trouble, StringComparison.Ordinal);
        }

        Holds(scratch["boil.jsonl"], Lines.Take(2));
        Holds(scratch["boil-2.jsonl"], Lines);
    }

    [Fact]
    public void S7_a_file_that_takes_the_records_place_is_left_alone_and_the_whole_record_is_kept_beside_it()
    {
        using var scratch = new Scratch();
        var path = scratch["boil.jsonl"];
        using (var session = Opening.Open(new(null, null, "beginner", path, scratch.Folder)))
        {
            Hear(session, Lines.Take(9));
            File.WriteAllText(scratch["other"], "somebody else's\n");
            File.Move(scratch["other"], path, overwrite: true);
            Hear(session, Lines.Skip(9));
            Assert.Contains($"Another file has taken the place of {path}. The record is kept in {session.Path}", session.Trouble, StringComparison.Ordinal);
        }

        Assert.Equal("somebody else's\n", File.ReadAllText(path));
        Holds(scratch["boil-2.jsonl"], Lines);
    }

    [Fact]
    public void S7_a_copy_of_the_record_that_takes_its_place_is_noticed_with_the_first_line()
    {
        using var scratch = new Scratch();
        var path = scratch["boil.jsonl"];
        using (var session = Opening.Open(new(null, null, "beginner", path, scratch.Folder)))
        {
            Hear(session, Lines.Take(9));
            Copy(path, scratch["copy"]);
            File.Move(scratch["copy"], path, overwrite: true);
            Hear(session, Lines.Skip(9).Take(1));
            Holds(session.Path!, Lines.Take(10));
        }

        Holds(path, Lines.Take(9));
    }

    [Fact]
    public void S7_a_folder_that_is_none_any_more_sends_the_record_to_the_sessions_and_back()
    {
        using var scratch = new Scratch();
        var path = scratch["there/boil.jsonl"];
        using (var session = Opening.Open(new(null, null, "beginner", path, scratch.Folder)))
        {
            Hear(session, Lines.Take(5));
            File.Delete(path);
            Directory.Delete(scratch["there"], recursive: true);
            File.WriteAllText(scratch["there"], "in the way");
            Hear(session, Lines.Skip(5).Take(4));
            var kept = scratch["sessions/boil-2.jsonl"];
            Assert.Equal(kept, session.Path);
            Assert.Contains($"All of it is kept in {kept} until it can", session.Trouble, StringComparison.Ordinal);
            Holds(kept, Lines.Take(9));

            File.Delete(scratch["there"]);
            Hear(session, Lines.Skip(9));
            Assert.Equal(path, session.Path);
            Assert.Null(session.Trouble);
            Assert.False(File.Exists(kept));
        }

        Holds(path, Lines);
    }

    [Fact]
    public void S7_a_record_that_may_not_be_written_is_gone_on_with_in_a_copy()
    {
        Assert.SkipWhen(Environment.IsPrivilegedProcess || OperatingSystem.IsWindows(), "This user may write everywhere.");
        using var scratch = new Scratch();
        var path = scratch["boil.jsonl"];
        StreamRun.Of(Lines.Take(6), path);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, UnixFileMode.UserRead);
        }

        using (var session = Opening.Open(new(null, null, "beginner", path, scratch.Folder)))
        {
            Hear(session, Lines.Skip(6));
            Assert.Contains($"goes on in a copy: {scratch["boil-2.jsonl"]}", session.Trouble, StringComparison.Ordinal);
        }

        Holds(path, Lines.Take(6));
        Assert.Equal(0, Recorded.Verify(File.ReadAllBytes(scratch["boil-2.jsonl"])).Exit);
    }

    [Fact]
    public void R4_a_disk_that_stays_full_is_asked_seldom_and_is_given_only_what_it_lacks()
    {
        using var scratch = new Scratch();
        CountingDisk? disk = null;
        using var session = RecordedSession.New(
            Screen.Support.SessionDoor.BuiltIn(), _ => JournalFile.Open(scratch["boil.jsonl"], real => disk = new CountingDisk(real)), snapshots: false);
        Hear(session, [StreamRun.Tick(0)]);
        disk!.IsFull = true;
        for (var line = 1; line <= 300; line++)
        {
            Hear(session, [StreamRun.Tick(line)]);
            Assert.NotNull(session.Trouble);
        }

        Assert.InRange(disk.Refused, 6, 16);
        disk.IsFull = false;
        for (var line = 301; line <= 365; line++)
        {
            Hear(session, [StreamRun.Tick(line)]);
        }

        Assert.Null(session.Trouble);
        session.Dispose();
        Assert.Equal(366, Record.Of(JournalFile.Read(scratch["boil.jsonl"])).Exchanges.Count);
        Assert.Equal(new FileInfo(scratch["boil.jsonl"]).Length, disk.Taken);
    }

    /// <summary>Night 150006653 of `SimulatedNightTests`: a copy that a stranger had deleted took another program's record of its name with it.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void R5_a_copy_that_is_let_go_takes_no_other_record_of_its_name_with_it(bool isOpen)
    {
        using var scratch = new Scratch();
        using var copy = JournalFile.Open(scratch["boil-2.jsonl"]);
        copy.Append(["ours"]);
        File.Delete(scratch["boil-2.jsonl"]);
        using var other = JournalFile.Open(scratch["boil-2.jsonl"]);
        other.Append(["else"]);
        if (!isOpen)
        {
            other.Dispose();
        }

        copy.Discard();
        other.Dispose();
        Assert.Equal("else\n", File.ReadAllText(scratch["boil-2.jsonl"]));
    }

    [Fact]
    public void A_copy_that_is_let_go_is_deleted()
    {
        using var scratch = new Scratch();
        using var copy = JournalFile.Open(scratch["boil-2.jsonl"]);
        copy.Append(["ours"]);
        copy.Discard();
        Assert.False(File.Exists(scratch["boil-2.jsonl"]));
    }

    private static void Hear(RecordedSession session, IEnumerable<string> lines)
    {
        foreach (var line in lines)
        {
            session.Hear(LineReader.Read(line), line);
        }
    }

    private static void Holds(string path, IEnumerable<string> lines)
    {
        Copy(path, path + ".looked-at");
        var bytes = File.ReadAllBytes(path + ".looked-at");
        File.Delete(path + ".looked-at");
        Assert.Equal(lines, Record.Of(RecordBytes.Lines(bytes)).Exchanges.Select(exchange => exchange.Raw));
        Assert.Equal(0, Recorded.Verify(bytes).Exit);
    }

    /// <summary>The record is locked against other writers; a plain copy reads it all the same.</summary>
    private static void Copy(string from, string to)
    {
        using var copying = System.Diagnostics.Process.Start("cp", [from, to]);
        copying.WaitForExit();
        Assert.Equal(0, copying.ExitCode);
    }

    /// <summary>A disk that counts what it takes and what it refuses.</summary>
    private sealed class CountingDisk(IDisk disk) : IDisk
    {
        public bool IsFull { get; set; }

        public int Refused { get; private set; }

        public long Taken { get; private set; }

        public long Length => disk.Length;

        public int Read(long at, Span<byte> to) => disk.Read(at, to);

        public void Write(ReadOnlySpan<byte> bytes)
        {
            if (IsFull)
            {
                Refused++;
                throw new IOException("No space left on device");
            }

            Taken += bytes.Length;
            disk.Write(bytes);
        }

        public void FlushThrough() => disk.FlushThrough();

        public void CutTo(long length) => disk.CutTo(length);

        public void Discard() => disk.Discard();

        public void Dispose() => disk.Dispose();
    }
}
