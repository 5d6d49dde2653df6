namespace Panside.Tests.Terminals;

/// <summary>T13: each shell completes what the program knows, typed with Tab in a real terminal.</summary>
public class CompletionTests
{
    [Theory]
    [InlineData("bash", "--norc", "source <(panside completion bash)")]
    [InlineData("zsh", "-f", "autoload -U compinit; compinit -u -D; source <(panside completion zsh)")]
    [InlineData("fish", "--no-config", "panside completion fish | source")]
    public void T13_a_shell_completes_commands_options_and_names(string shell, string without, string setUp)
    {
        Assert.SkipUnless(Tmux.IsThere, "tmux is not installed");
        Assert.SkipUnless(Tmux.Has(shell), shell + " is not installed");
        using var scratch = new Scratch();
        using var terminal = new Tmux(
            100, 24, $"cd '{scratch.Folder}'; HOME='{scratch.Folder}' PATH='{AppContext.BaseDirectory}':\"$PATH\" exec {shell} {without}");
        terminal.Type(setUp + "; echo ready");
        terminal.Wait(() => terminal.Screen.Contains("\nready", StringComparison.Ordinal), "the shell");
        Complete(terminal, "panside prac", "panside practice");
        Complete(terminal, " --scen", "panside practice --scenario");
        Complete(terminal, " float-s", "panside practice --scenario float-stuck");
        Complete(terminal, " --theme high", "panside practice --scenario float-stuck --theme high-contrast");
    }

    private static void Complete(Tmux terminal, string typed, string whole)
    {
        terminal.Letters(typed);
        terminal.Press("Tab");

        // A shell puts a space after a word that can be no other.
        terminal.Wait(() => terminal.Screen.Contains(whole, StringComparison.Ordinal), $"'{whole}'");
        terminal.Press("BSpace");
        terminal.Wait(() => terminal.Screen.Contains(whole, StringComparison.Ordinal), $"'{whole}'");
    }
}
