using Panside.Commands;

namespace Panside.Tests.Terminals;

/// <summary><c>panside</c> alone in a real terminal: from nothing to a rig file and the first step of a boil on it.</summary>
public class HomeTests
{
    [Fact]
    public void The_first_evening_goes_from_the_home_screen_through_the_rig_to_a_boil_on_it()
    {
        Assert.SkipUnless(Tmux.IsThere, "tmux is not installed");
        using var scratch = new Scratch();
        using var terminal = new Tmux(80, 24, $"'{Path.Combine(AppContext.BaseDirectory, "panside")}' --home '{scratch.Folder}'; sleep 60");
        Await(terminal, "1  rig");
        terminal.Press("Enter");
        foreach (var (asked, answer) in new[]
        {
            ("Which units", "us"), ("How long is the pan", "30"), ("How wide is the pan", "20"), ("Does a blower", "no"), ("Does a float", "no"), ("How much sap goes in", "rest"),
            ("Is this your rig?", "name hill shed"), ("'hill shed'", "yes"),
        })
        {
            Await(terminal, asked);
            terminal.Type(answer);
        }

        Await(terminal, "- Written: ");
        Assert.Equal("hill shed", Library.Rig(null, Home.Of(scratch.Folder)).Name);
        Await(terminal, "1  start");
        terminal.Press("1");
        Await(terminal, "START UP");
        Await(terminal, "hill shed");
        terminal.Press("C-c");
        terminal.Press("C-c");
        terminal.Wait(() => terminal.Screen.Contains("Interrupted.", StringComparison.Ordinal), "the word that it can be gone on with");
    }

    [Fact]
    public void After_a_power_cut_enter_goes_on_with_the_boil()
    {
        Assert.SkipUnless(Tmux.IsThere, "tmux is not installed");
        using var scratch = new Scratch();
        var panside = Path.Combine(AppContext.BaseDirectory, "panside");
        using (var first = new Tmux(80, 24, $"'{panside}' boil --home '{scratch.Folder}'; sleep 60"))
        {
            Await(first, "F9 EMERGENCY");
        }

        // What another program still holds is not offered: the first one takes a moment to end.
        SpinWait.SpinUntil(() => UnfinishedBoil.Of(scratch["sessions"], TimeProvider.System.GetUtcNow()) is not null, TimeSpan.FromSeconds(20));
        using var terminal = new Tmux(80, 24, $"'{panside}' --home '{scratch.Folder}'; sleep 60");
        Await(terminal, "1  go on");
        terminal.Press("Enter");
        Await(terminal, "START UP");
        Assert.Single(Directory.GetFiles(scratch["sessions"]));
    }

    private static void Await(Tmux terminal, string text) =>
        terminal.Wait(() => terminal.Screen.Contains(text, StringComparison.Ordinal), $"'{text}'");
}
