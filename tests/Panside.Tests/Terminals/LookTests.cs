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
        terminal.Wait(() => terminal.Screen.Contains(shown, StringComparison.Ordinal) && terminal.Screen.Contains("| Now ", StringComparison.Ordinal), shown);
        Assert.True(System.Text.Ascii.IsValid(terminal.Screen), terminal.Screen);

        // A ground of its own, and not the terminal's.
        Assert.Matches("\\e\\[([0-9;]*;)?40m", terminal.Colored);
    }
}
