using System.Diagnostics;
using Panside.Commands;
using Panside.Tests.Stream;

namespace Panside.Tests.Door;

/// <summary>The program as a shell starts it: streams that are closed, full or gone, folders that anybody may read.</summary>
public class StandardStreamsTests
{
    private static readonly string Program = Path.ChangeExtension(typeof(CommandLine).Assembly.Location, null);

    [Theory]
    [InlineData("boil --stream", "<&-", ExitStatus.Interrupted)]
    [InlineData("boil --plain", "<&-", ExitStatus.Interrupted)]
    [InlineData("rig", "<&-", ExitStatus.Interrupted)]
    [InlineData("boil --stream", ">&-", ExitStatus.Interrupted)]
    [InlineData("boil --plain", ">&-", ExitStatus.Interrupted)]
    [InlineData("boil --stream", ">/dev/full", ExitStatus.Interrupted)]
    [InlineData("boil --plain", ">/dev/full", ExitStatus.Interrupted)]
    [InlineData("boil --stream", "2>&-", ExitStatus.Interrupted)]
    [InlineData("boil --stream", "</", ExitStatus.Unusable)]
    [InlineData("boil --plain", "</", ExitStatus.Unusable)]
    [InlineData("check nothing", "2>/dev/full", ExitStatus.Unusable)]
    [InlineData("check nothing", "2>&-", ExitStatus.Unusable)]
    [InlineData("nonsense", "2>/dev/full", ExitStatus.Unusable)]
    public void A_standard_stream_that_is_closed_or_full_ends_nothing_but_what_it_must(string command, string streams, int status)
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["lines"], $"{StreamRun.Tick(0)}\n");
        var input = streams.StartsWith('<') ? "" : $"<'{scratch["lines"]}'";
        Assert.Equal(status, Shell(scratch, $"'{Program}' {command}{(command.StartsWith("check", StringComparison.Ordinal) ? "" : $" --home '{scratch.Folder}'")} {input} {streams}").Status);
    }

    [Fact]
    public void A_warning_that_cannot_be_written_does_not_end_the_guidance()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["lines"], $"{StreamRun.Tick(0)}\n{StreamRun.Tick(1)}\n");
        var (status, output) = Shell(scratch, $"'{Program}' boil --stream --home /proc/nowhere <'{scratch["lines"]}' 2>/dev/full");
        Assert.Equal(ExitStatus.Interrupted, status);
        Assert.Equal(2, output.Split("\"ready\":true").Length - 1);
    }

    [Fact]
    public void Who_reads_no_more_ends_the_session_quietly_and_its_record_is_whole()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["lines"], string.Concat(WholeBoil.Lines.Select(line => line + "\n")));
        var (status, _) = Shell(scratch, $"set -o pipefail; '{Program}' boil --stream --home '{scratch.Folder}' --journal '{scratch["boil.jsonl"]}' <'{scratch["lines"]}' 2>'{scratch["errors"]}' | head -n 1");
        Assert.Equal((ExitStatus.Interrupted, ""), (status, File.ReadAllText(scratch["errors"])));
        Assert.Equal(0, Shell(scratch, $"'{Program}' check '{scratch["boil.jsonl"]}'").Status);
    }

    [Fact]
    public void What_the_program_keeps_is_its_owners_alone_whatever_the_umask()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["lines"], $"{StreamRun.Tick(0)}\n");
        Shell(scratch, $"umask 0; '{Program}' boil --stream --home '{scratch["home"]}' <'{scratch["lines"]}'");
        var kept = Directory.EnumerateFileSystemEntries(scratch["home"], "*", SearchOption.AllDirectories).Append(scratch["home"]).ToList();
        Assert.Contains(kept, path => path.EndsWith(".jsonl", StringComparison.Ordinal));
        Assert.All(kept, path => Assert.Equal(
            Directory.Exists(path) ? UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute : UnixFileMode.UserRead | UnixFileMode.UserWrite,
            OperatingSystem.IsWindows() ? default : File.GetUnixFileMode(path)));
    }

    private static (int Status, string Output) Shell(Scratch scratch, string line)
    {
        var start = new ProcessStartInfo("bash", ["-c", line]) { RedirectStandardOutput = true, RedirectStandardInput = true };
        start.Environment["XDG_DATA_HOME"] = start.Environment["XDG_STATE_HOME"] = scratch.Folder;
        using var shell = Process.Start(start)!;
        shell.StandardInput.Close();
        var output = shell.StandardOutput.ReadToEndAsync();
        if (!shell.WaitForExit(TimeSpan.FromMinutes(2)))
        {
            shell.Kill(entireProcessTree: true);
            Assert.Fail($"{line} did not end.");
        }

        return (shell.ExitCode, output.GetAwaiter().GetResult());
    }
}
