using System.Diagnostics;
using Panside.Commands;
using Panside.Journal;
using Panside.Tests.Reckon;

namespace Panside.Tests.Door;

/// <summary>What would be waited for is refused at once: a pipe that perhaps nobody writes, a record that would be heard again for hours.</summary>
public class PipeAndLengthTests
{
    [Theory]
    [InlineData("check FILE")]
    [InlineData("check --graph FILE")]
    [InlineData("replay FILE")]
    [InlineData("replay --verify FILE")]
    [InlineData("report FILE")]
    [InlineData("import FILE")]
    [InlineData("plan --rig FILE")]
    [InlineData("boil --plain --rig FILE")]
    [InlineData("boil --plain --flow FILE")]
    [InlineData("boil --plain --journal FILE")]
    public void A_pipe_in_the_place_of_a_file_is_refused_and_not_waited_for(string words)
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Pipes have no names among files here.");
        }

        using var scratch = new Scratch();
        Pipe(scratch["pipe"]);
        var ran = Captured.Run(words.Replace("FILE", scratch["pipe"], StringComparison.Ordinal).Split(' '));
        Assert.Equal(ExitStatus.Unusable, ran.Status);
        Assert.Contains("is a pipe", ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pipe_among_the_records_of_a_season_is_passed_over()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Pipes have no names among files here.");
        }

        using var scratch = new Scratch();
        Pipe(scratch["boil.jsonl"]);
        Assert.Equal(ExitStatus.Done, Captured.Run("season", scratch.Folder).Status);
    }

    [Fact]
    public void An_empty_file_is_no_pipe()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["empty"], "");
        PipeException.Demand(scratch["empty"]);
        Assert.Empty(new RecordFile(scratch["empty"]).Lines());
    }

    [Theory]
    [InlineData("report FILE", "hearing it again")]
    [InlineData("replay --moments FILE", "hearing it again")]
    [InlineData("boil --plain --journal FILE", "Name a new file with --journal")]
    public void A_record_longer_than_any_boil_makes_is_not_heard_again_and_that_is_said(string words, string said)
    {
        using var scratch = new Scratch();
        File.Copy(Path.Combine(RepositoryFiles.Root, "demo-sessions", "first-shutdown.jsonl"), scratch["long.jsonl"]);
        using (var file = new FileStream(scratch["long.jsonl"], FileMode.Open, FileAccess.Write))
        {
            file.SetLength(LongRecordException.Most + 1);
        }

        var ran = Captured.Run(words.Replace("FILE", scratch["long.jsonl"], StringComparison.Ordinal).Split(' '));
        Assert.Equal(ExitStatus.Unusable, ran.Status);
        Assert.Contains(said, ran.Errors, StringComparison.Ordinal);
        Assert.Equal(LongRecordException.Most + 1, new FileInfo(scratch["long.jsonl"]).Length);
    }

    private static void Pipe(string path)
    {
        using var made = Process.Start("mkfifo", [path]);
        made.WaitForExit();
        Assert.Equal(0, made.ExitCode);
    }
}
