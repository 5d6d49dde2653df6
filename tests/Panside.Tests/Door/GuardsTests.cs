using Panside.Commands;
using Panside.Faces;
using Panside.Tests.Reckon;

namespace Panside.Tests.Door;

/// <summary>What is written to a stream that refuses, and to a file that is nobody else's.</summary>
public class GuardsTests
{
    [Fact]
    public void A_warning_that_cannot_be_written_is_let_go()
    {
        var errors = new GuardedWriter(new Refusing(), isQuiet: true);
        errors.Write('x');
        errors.Write("x");
        errors.WriteLine("x");
        errors.WriteLine();
        errors.Flush();
    }

    [Fact]
    public void An_answer_that_cannot_be_written_is_told_as_an_output_that_is_gone()
    {
        var output = new GuardedWriter(new Refusing(), isQuiet: false);
        Assert.Throws<OutputGoneException>(() => output.Write("x"));
        Assert.Throws<OutputGoneException>(() => output.WriteLine("x"));
        Assert.Throws<OutputGoneException>(output.Flush);
    }

    [Fact]
    public void A_command_leaves_the_console_as_it_was()
    {
        // The first to take it over puts every test's own console in its place.
        Captured.Run("--version");
        var before = (Console.Out, Console.Error);
        Assert.Equal(ExitStatus.Unusable, Captured.Run("nonsense").Status);
        Assert.Equal(before, (Console.Out, Console.Error));
    }

    [Fact]
    public void A_crash_file_is_new_unguessable_and_its_owners_alone()
    {
        using var scratch = new Scratch();
        using var aside = new Aside(scratch.Folder);
        var (one, other) = (CrashFile.Write("panside", "1", new InvalidOperationException("first")), CrashFile.Write("panside", "1", new InvalidOperationException("second")));
        Assert.NotEqual(one, other);
        Assert.StartsWith(scratch.Folder, one, StringComparison.Ordinal);
        Assert.DoesNotContain(Environment.ProcessId.ToString(), Path.GetFileName(one), StringComparison.Ordinal);
        Assert.Contains("first", File.ReadAllText(one), StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(one));
        }
    }

    [Fact]
    public void A_link_that_was_planted_is_not_followed()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["theirs"], "mine");
        File.CreateSymbolicLink(scratch["planted"], scratch["theirs"]);
        Assert.Throws<IOException>(() => Journal.PrivateFile.New(scratch["planted"], "ours"));
        Assert.Equal("mine", File.ReadAllText(scratch["theirs"]));
    }

    private sealed class Refusing : TextWriter
    {
        public override System.Text.Encoding Encoding => System.Text.Encoding.UTF8;

        public override void Write(char value) => throw new IOException("No space left on device");

        public override void Flush() => throw new IOException("No space left on device");
    }
}
