namespace Panside.Tests.Terminals;

/// <summary>T5, T6: Ctrl-Z gives the terminal back as it was, fg paints the screen anew, and every way out leaves it whole.</summary>
public class StoppingTests
{
    [Fact]
    public void T6_control_z_gives_the_terminal_back_and_fg_paints_the_screen_anew()
    {
        Assert.SkipUnless(Tmux.IsThere, "tmux is not installed");
        using var scratch = new Scratch();
        using var terminal = Shell(scratch);
        terminal.Type($"stty -a > '{scratch["before"]}'; {Panside(scratch)}");
        terminal.Wait(() => terminal.Screen.Contains("F9 EMERGENCY", StringComparison.Ordinal), "the screen");
        terminal.Press("C-z");
        terminal.Wait(() => terminal.Screen.Contains("Stopped", StringComparison.Ordinal), "the shell's word that it is stopped");
        terminal.Type($"stty -a > '{scratch["away"]}'; echo asked");
        terminal.Wait(() => File.Exists(scratch["away"]) && File.ReadAllText(scratch["away"]).Contains("echo", StringComparison.Ordinal), "the terminal's state");
        terminal.Type("fg");
        terminal.Wait(() => terminal.Screen.Contains("- Stopped at ", StringComparison.Ordinal), "the time away");
        Assert.Contains("F9 EMERGENCY", terminal.Screen);
        Assert.DoesNotContain("echo asked", terminal.Screen);
        Assert.Equal(File.ReadAllText(scratch["before"]), File.ReadAllText(scratch["away"]));
    }

    [Theory]
    [InlineData("TERM")]
    [InlineData("HUP")]
    [InlineData("INT")]
    [InlineData("QUIT")]
    public void T5_every_signal_leaves_the_terminal_as_it_was(string signal)
    {
        Assert.SkipUnless(Tmux.IsThere, "tmux is not installed");
        using var scratch = new Scratch();
        using var terminal = Shell(scratch);
        terminal.Type($"stty -a > '{scratch["before"]}'; {Panside(scratch)}; stty -a > '{scratch["after"]}'; echo came back");
        terminal.Wait(() => terminal.Screen.Contains("F9 EMERGENCY", StringComparison.Ordinal), "the screen");
        terminal.Signal(signal);
        terminal.Wait(() => terminal.Screen.Contains("\ncame back", StringComparison.Ordinal), "the shell");
        Assert.Equal(File.ReadAllText(scratch["before"]), File.ReadAllText(scratch["after"]));
    }

    [Fact]
    public void T14_a_second_control_c_leaves_and_the_terminal_is_as_it_was()
    {
        Assert.SkipUnless(Tmux.IsThere, "tmux is not installed");
        using var scratch = new Scratch();
        using var terminal = Shell(scratch);
        terminal.Type($"stty -a > '{scratch["before"]}'; {Panside(scratch)}; stty -a > '{scratch["after"]}'; echo came back");
        terminal.Wait(() => terminal.Screen.Contains("F9 EMERGENCY", StringComparison.Ordinal), "the screen");
        terminal.Press("C-c");
        terminal.Wait(() => terminal.Screen.Contains("Leave the session?", StringComparison.Ordinal), "the question");
        terminal.Press("C-c");
        terminal.Wait(() => terminal.Screen.Contains("\ncame back", StringComparison.Ordinal), "the shell");
        Assert.Equal(File.ReadAllText(scratch["before"]), File.ReadAllText(scratch["after"]));
    }

    private static Tmux Shell(Scratch scratch) => new(80, 24, $"cd '{scratch.Folder}'; exec bash --norc --noediting");

    private static string Panside(Scratch scratch) =>
        $"'{Path.Combine(AppContext.BaseDirectory, "panside")}' boil --journal '{scratch["boil.jsonl"]}' --home '{scratch.Folder}'";
}
