using System.Diagnostics;
using Panside.Commands;
using Panside.Journal;
using Panside.Tests.Stream;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Records;

public class WriterTests
{
    [Fact]
    public void R7_a_second_writer_is_refused_and_the_lock_ends_with_the_first()
    {
        using var scratch = new Scratch();
        using (JournalFile.Open(scratch["boil.jsonl"]))
        {
            Assert.Throws<IOException>(() => JournalFile.Open(scratch["boil.jsonl"]));
        }

        JournalFile.Open(scratch["boil.jsonl"]).Dispose();
    }

    [Fact]
    public void R7_a_record_that_another_program_began_meanwhile_is_not_mixed_with()
    {
        using var scratch = new Scratch();
        using var session = Opening.Open(new(null, null, "beginner", scratch["boil.jsonl"], scratch.Folder));
        StreamRun.Of(WholeBoil.Lines.Take(3), scratch["boil.jsonl"]);
        var before = File.ReadAllText(scratch["boil.jsonl"]);
        session.Hear(LineReader.Read(WholeBoil.Lines[0]));
        Assert.Equal($"{scratch["boil.jsonl"]} is another session's record. This one is kept in {scratch["boil-2.jsonl"]}.", session.Trouble);
        Assert.Equal(before, File.ReadAllText(scratch["boil.jsonl"]));
    }

    [Fact]
    public void R4_what_a_disk_refused_is_written_once_it_has_room()
    {
        using var scratch = new Scratch();
        var path = scratch["full/boil.jsonl"];
        File.WriteAllText(scratch["full"], "a file where the folder should be");
        using var session = RecordedSession.New(
            Opening.Open(new(null, null, "beginner", null, scratch.Folder)).Setting, _ => JournalFile.Open(path));
        var lines = WholeBoil.Lines.Take(3).ToList();
        session.Hear(LineReader.Read(lines[0]), lines[0]);
        Assert.NotNull(session.Trouble);
        File.Delete(scratch["full"]);
        session.Hear(LineReader.Read(lines[1]), lines[1]);
        Assert.Null(session.Trouble);
        session.Dispose();
        Assert.Equal(2, Record.Of(JournalFile.Read(path)).Exchanges.Count);
    }

    [Fact]
    public void R7_another_program_says_that_the_record_is_in_use()
    {
        using var scratch = new Scratch();
        StreamRun.Of(WholeBoil.Lines.Take(3), scratch["boil.jsonl"]);
        using var first = JournalFile.Open(scratch["boil.jsonl"]);
        using var second = Start("panside", "boil", "--stream", "--journal", scratch["boil.jsonl"], "--home", scratch.Folder);
        second.StandardInput.Close();
        Assert.Contains("Is another panside going on with it?", second.StandardError.ReadToEnd(), StringComparison.Ordinal);
        second.WaitForExit();
        Assert.Equal(2, second.ExitCode);
    }

    /// <summary>A limit on the size of files stands for a full disk: the write that crosses it is refused half way.</summary>
    [Fact]
    public async Task R4_a_full_disk_leaves_no_half_line_and_the_guidance_goes_on()
    {
        Assert.SkipUnless(File.Exists("/bin/sh"), "No shell that can limit the size of files.");
        using var scratch = new Scratch();
        const string limited = "trap '' XFSZ; ulimit -f 24; exec \"$0\" boil --stream --journal \"$1\" --home \"$2\"";
        using var panside = Start("/bin/sh", "-c", limited, Path.Combine(AppContext.BaseDirectory, "panside"), scratch["boil.jsonl"], scratch.Folder);
        var errors = panside.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var output = panside.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        foreach (var line in WholeBoil.Lines)
        {
            panside.StandardInput.WriteLine(line);
        }

        panside.StandardInput.Close();
        await panside.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Contains("The record cannot be written", await errors, StringComparison.Ordinal);
        Assert.Equal(0, panside.ExitCode);
        Assert.Equal(StreamRun.Of(WholeBoil.Lines).Output, await output);

        var bytes = File.ReadAllBytes(scratch["boil.jsonl"]);
        Assert.InRange(bytes.Length, 4096, 24 * 1024);
        Assert.Equal((byte)'\n', bytes[^1]);
        Assert.All(Record.Of(RecordBytes.Lines(bytes)).Exchanges, exchange => Assert.True(exchange.IsComplete));
        Assert.Equal(0, Recorded.Verify(bytes).Exit);
    }

    [Fact]
    public void R5_a_record_in_a_folder_that_cannot_be_keeps_the_record_elsewhere()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["file"], "");
        MustGoOnElsewhere(Path.Combine(scratch["file"], "boil.jsonl"));
    }

    [Fact]
    public void R5_a_record_in_a_read_only_folder_keeps_the_record_elsewhere()
    {
        Assert.SkipWhen(Environment.IsPrivilegedProcess || OperatingSystem.IsWindows(), "This user may write everywhere.");
        using var scratch = new Scratch();
        Directory.CreateDirectory(scratch["shut"]);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(scratch["shut"], UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }

        MustGoOnElsewhere(Path.Combine(scratch["shut"], "boil.jsonl"));
    }

    private static void MustGoOnElsewhere(string journal)
    {
        using var scratch = new Scratch();
        using var session = Opening.Open(new(null, null, "beginner", journal, scratch.Folder));
        var answers = WholeBoil.Lines.Take(4).Select(line => session.Hear(LineReader.Read(line), line)).ToList();
        Assert.All(answers, Assert.NotEmpty);
        Assert.StartsWith("The record cannot be written", session.Trouble, StringComparison.Ordinal);
        Assert.Equal(scratch["sessions/boil-2.jsonl"], session.Path);
        Assert.Contains($"All of it is kept in {session.Path}", session.Trouble, StringComparison.Ordinal);
    }

    private static Process Start(string file, params string[] arguments)
    {
        var start = new ProcessStartInfo(file == "panside" ? Path.Combine(AppContext.BaseDirectory, file) : file, arguments)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };

        // The runtime's own double mapping of code is a large file in memory, which a limit on files would refuse too.
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        return Process.Start(start)!;
    }
}
