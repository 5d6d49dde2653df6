using System.Diagnostics;
using Panside.Commands;
using Panside.Journal;
using Panside.Tests.Stream;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Records;

/// <summary>The record on real disks: killed, full, deleted under the program.</summary>
public class RealDiskTests
{
    /// <summary>Each start hears the boil again, which takes its time.</summary>
    private static readonly int KillEvery = Thorough.IsAsked ? 4 : 8;

    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "panside");

    /// <summary>Killed without warning while a line is being heard, at every eighth line of a whole boil, thoroughly at every fourth: what was answered is in the record.</summary>
    [Fact]
    public void R1_killed_at_any_time_nothing_that_was_answered_is_lost_and_the_boil_goes_on()
    {
        using var scratch = new Scratch();
        var lines = WholeBoil.Lines.Where(line => line.StartsWith('{')).ToList();
        var kills = 0;
        var acknowledged = new List<string>();
        var journal = scratch["boil.jsonl"];
        var next = 0;
        while (next < lines.Count - 1)
        {
            using var panside = Start("boil", "--stream", "--journal", journal, "--home", scratch.Folder);
            for (var said = 0; said < KillEvery && next < lines.Count - 1; said++)
            {
                panside.StandardInput.WriteLine(lines[next]);
                panside.StandardInput.Flush();
                acknowledged.Add(lines[next++]);
                while (panside.StandardOutput.ReadLine() is { } answer)
                {
                    acknowledged.Add(answer);
                    if (answer.Contains("\"ready\":true", StringComparison.Ordinal))
                    {
                        break;
                    }
                }
            }

            // One more line, and no waiting for its answer.
            panside.StandardInput.WriteLine(lines[next]);
            panside.StandardInput.Flush();
            Thread.Sleep(kills * 7 % 23);
            panside.Kill();
            panside.WaitForExit();
            kills++;
            var record = JournalFile.Read(journal).ToHashSet(StringComparer.Ordinal);
            Assert.All(acknowledged, line => Assert.Contains(line, record));
            next += record.Contains(lines[next]) ? 1 : 0;
        }

        Assert.InRange(kills, Thorough.IsAsked ? 12 : 6, 30);
        if (next < lines.Count)
        {
            using var end = Opening.Open(new(null, null, "beginner", journal, scratch.Folder));
            end.Hear(LineReader.Read(lines[^1]), lines[^1]);
            Assert.True(end.State.IsOver);
        }

        var (exit, told, _) = Recorded.Verify(File.ReadAllBytes(journal));
        Assert.True(exit == 0, told);
    }

    /// <summary>A file system in memory of 128 kB: nearly full from the start, and given room again in the middle of the boil.</summary>
    [Fact]
    public void R4_a_disk_that_is_really_full_is_told_of_and_is_written_to_again_once_it_has_room()
    {
        using var scratch = new Scratch();
        Directory.CreateDirectory(scratch["disk"]);
        Assert.SkipUnless(Run("mount", "-t", "tmpfs", "-o", "size=128k", "tmpfs", scratch["disk"]) == 0, "This user may not mount a file system.");
        try
        {
            var (journal, filler) = (Path.Combine(scratch["disk"], "boil.jsonl"), Path.Combine(scratch["disk"], "filler"));
            File.WriteAllBytes(filler, new byte[120 * 1024]);
            var lines = WholeBoil.Lines.Take(26).ToList();
            var said = new List<string>();
            var (full, freed) = (0, 0);
            using (var session = Opening.Open(new(null, null, "beginner", journal, scratch.Folder)))
            {
                for (var index = 0; index < lines.Count; index++)
                {
                    said.AddRange(session.Hear(LineReader.Read(lines[index]), lines[index]).Select(LineWriter.Write));
                    full += session.Trouble is null ? 0 : 1;
                    if (full == 3)
                    {
                        Assert.StartsWith("The record cannot be written", session.Trouble, StringComparison.Ordinal);
                        Assert.Equal("\n", File.ReadAllText(Copy(journal))[^1..]);
                        File.Delete(filler);
                        (full, freed) = (4, index);
                    }
                }

                Assert.True(freed > 0, "The disk never was full.");
                Assert.Null(session.Trouble);
            }

            Assert.Equal(StreamRun.Of(lines).All.Count(), said.Count);
            var (exit, told, _) = Recorded.Verify(File.ReadAllBytes(journal));
            Assert.True(exit == 0, told);
            Assert.Equal(lines.Count(line => line.StartsWith('{')), Record.Of(JournalFile.Read(journal)).Exchanges.Count(exchange => exchange.Raw is not null));
        }
        finally
        {
            Run("umount", scratch["disk"]);
        }

        // The record is locked against other writers; a plain copy reads it all the same.
        string Copy(string file)
        {
            Assert.Equal(0, Run("cp", file, scratch["copy"]));
            return scratch["copy"];
        }
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void R5_a_record_deleted_while_it_is_written_is_put_back_with_all_its_lines(bool withFolder)
    {
        using var scratch = new Scratch();
        var journal = scratch["sessions/boil.jsonl"];
        var lines = WholeBoil.Lines.Take(12).ToList();
        using (var session = Opening.Open(new(null, null, "beginner", journal, scratch.Folder)))
        {
            foreach (var (line, index) in lines.Select((line, index) => (line, index)))
            {
                if (index == 6)
                {
                    File.Delete(journal);
                    if (withFolder)
                    {
                        Directory.Delete(scratch["sessions"]);
                    }
                }

                session.Hear(LineReader.Read(line), line);
                Assert.Null(session.Trouble);
            }
        }

        StreamRun.Of(lines, scratch["whole.jsonl"]);
        Assert.Equal(File.ReadAllText(scratch["whole.jsonl"]), File.ReadAllText(journal));
    }

    [Fact]
    public void R5_a_folder_that_became_something_else_is_told_and_the_guidance_goes_on()
    {
        using var scratch = new Scratch();
        var journal = scratch["sessions/boil.jsonl"];
        using var session = Opening.Open(new(null, null, "beginner", journal, scratch.Folder));
        session.Hear(LineReader.Read(WholeBoil.Lines[0]), WholeBoil.Lines[0]);
        File.Delete(journal);
        Directory.Delete(scratch["sessions"]);
        File.WriteAllText(scratch["sessions"], "in the way");
        Assert.NotEmpty(session.Hear(LineReader.Read(WholeBoil.Lines[1]), WholeBoil.Lines[1]));
        Assert.StartsWith("The record cannot be written", session.Trouble, StringComparison.Ordinal);
        File.Delete(scratch["sessions"]);
        session.Hear(LineReader.Read(WholeBoil.Lines[2]), WholeBoil.Lines[2]);
        Assert.Null(session.Trouble);
        session.Dispose();
        Assert.Equal(3, Record.Of(JournalFile.Read(journal)).Exchanges.Count);
    }

    /// <summary>Summer time begins at two in the night, midnight passes, the laptop sleeps: minutes are counted all the same.</summary>
    [Fact]
    public void R6_a_boil_over_midnight_summer_time_and_sleep_counts_every_minute_once()
    {
        string[] lines =
        [
            """{"at":"2031-03-08T23:50:00-05:00","tick":true}""",
            """{"at":"2031-03-08T23:55:00-05:00","text":"lit"}""",
            """{"at":"2031-03-09T01:59:00-05:00","text":"tank 20"}""",
            """{"at":"2031-03-09T03:01:00-04:00","text":"tank 19"}""",
            """{"at":"2031-03-09T02:30:00-05:00","text":"tank 18"}""",
            """{"at":"2031-03-09T02:10:00-05:00","text":"tank 30"}""",
            """{"at":"2031-03-09T09:00:00-04:00","text":"leave"}""",
            """{"at":"2031-03-09T09:00:00-04:00","text":"yes"}""",
        ];
        using var scratch = new Scratch();
        var run = StreamRun.Of(lines, scratch["boil.jsonl"]);
        Assert.Equal([5], run.Answers.Select((answer, index) => (answer, index)).Where(one => one.answer.Any(line => StreamRun.Is(line, "refused"))).Select(one => one.index));
        var over = run.All.Single(line => StreamRun.Is(line, "over")).GetProperty("over");
        Assert.Equal((8 * 60) + 10, over.GetProperty("minutes").GetProperty("value").GetDouble());
        var story = Reporting.Story.Of(scratch["boil.jsonl"]);
        var minutes = story.Facts.Select(fact => story.Minute(fact.At)).ToList();
        Assert.Equal(minutes.Order(), minutes);
    }

    private static int Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
        process.StandardError.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode;
    }

    private static Process Start(params string[] arguments) =>
        Process.Start(new ProcessStartInfo(Program, arguments) { RedirectStandardInput = true, RedirectStandardOutput = true, UseShellExecute = false })!;
}
