namespace Panside.Tests.Terminals;

/// <summary>Advice is spoken of a boil and of a simulated rig, where it says so first.</summary>
public class SpeechTests
{
    [Theory]
    [InlineData("boil", "Pan low?")]
    [InlineData("practice --paused", "Practice. Pan low?")]
    public void What_is_advised_reaches_the_command(string command, string spoken)
    {
        Assert.SkipUnless(Tmux.IsThere, "tmux is not installed");
        using var scratch = new Scratch();
        var heard = scratch["heard"];
        using var terminal = new Tmux(
            80, 24, $"'{Path.Combine(AppContext.BaseDirectory, "panside")}' {command} --plain --home '{scratch.Folder}' --say 'tee -a {heard}'; sleep 60");
        terminal.Wait(() => terminal.Screen.Contains("already this season?", StringComparison.Ordinal), "the first question");
        terminal.Type("emergency");
        terminal.Wait(() => File.Exists(heard) && File.ReadAllText(heard).StartsWith(spoken, StringComparison.Ordinal), spoken);
    }
}
