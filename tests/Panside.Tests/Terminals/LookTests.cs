using Panside.Tests.Records;

namespace Panside.Tests.Terminals;

/// <summary>T9: how the screen looks is chosen with every command that has one.</summary>
public class LookTests
{
    [Theory]
    [InlineData("boil", "START UP")]
    [InlineData("practice --paused", "PRACTICE")]
    [InlineData("replay", "REPLAY")]
    public void T9_the_screen_is_of_ascii_only_and_of_a_theme_where_that_is_wished(string command, string shown)
    {
        Assert.SkipUnless(Tmux.IsThere, "tmux is not installed");
        using var scratch = new Scratch();
        File.WriteAllBytes(scratch["past.jsonl"], Recorded.Boil());
        var about = command == "replay" ? $"'{scratch["past.jsonl"]}'" : $"--home '{scratch.Folder}'";
        using var terminal = new Tmux(
            80, 24, $"'{Path.Combine(AppContext.BaseDirectory, "panside")}' {command} {about} --ascii --theme high-contrast; sleep 60");
        terminal.Wait(() => terminal.Screen.Contains(shown, StringComparison.Ordinal) && terminal.Screen.Contains("Now ", StringComparison.Ordinal), shown);
        Assert.True(System.Text.Ascii.IsValid(terminal.Screen), terminal.Screen);

        // A ground of its own, and not the terminal's.
        Assert.Matches("\\e\\[([0-9;]*;)?40m", terminal.Colored);
    }

    [Fact]
    public void T9_no_color_leaves_the_terminals_own_colors_whatever_theme_is_named()
    {
        Assert.SkipUnless(Tmux.IsThere, "tmux is not installed");
        using var scratch = new Scratch();
        using var terminal = new Tmux(80, 24, $"NO_COLOR=1 {Boil(scratch)} --theme dark; sleep 60");
        terminal.Wait(() => terminal.Screen.Contains("F9 EMERGENCY", StringComparison.Ordinal), "the screen");
        terminal.Press("F9");
        terminal.Wait(() => terminal.Screen.Contains("!!! DANGER:", StringComparison.Ordinal), "the emergency");
        Assert.DoesNotMatch("\\e\\[([0-9;]*;)?(3[0-7]|4[0-7]|9[0-7]|10[0-7]|[34]8;)[0-9;]*m", terminal.Colored);
    }

    [Theory]
    [InlineData("TERM=dumb", "")]
    [InlineData("", " | cat")]
    public void T9_a_dumb_terminal_or_none_gets_the_plain_face(string environment, string into)
    {
        Assert.SkipUnless(Tmux.IsThere, "tmux is not installed");
        using var scratch = new Scratch();
        using var terminal = new Tmux(80, 24, $"{environment} {Boil(scratch)}{into}; sleep 60");
        terminal.Wait(() => terminal.Screen.Contains("> Has this rig been boiled", StringComparison.Ordinal), "the first question");
        Assert.DoesNotContain("F9 EMERGENCY", terminal.Screen);
    }

    private static string Boil(Scratch scratch) => $"'{Path.Combine(AppContext.BaseDirectory, "panside")}' boil --home '{scratch.Folder}'";
}
