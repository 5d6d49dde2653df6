using Panside.Commands;
using Panside.Screen;
using Panside.Tests.Reckon;

namespace Panside.Tests.Checks;

/// <summary>T9: the look that the environment wishes.</summary>
[Collection(ProcessAlone.Name)]
public sealed class LookOptionsTests
{
    [Theory]
    [InlineData(null, Theme.Terminal)]
    [InlineData("light", Theme.Light)]
    [InlineData("HIGH-CONTRAST", Theme.HighContrast)]
    public void The_environment_chooses_a_theme(string? name, Theme theme) =>
        With(LookOptions.Variable, name, () => Assert.Equal(new(theme, false), LookOptions.OfEnvironment));

    [Fact]
    public void A_theme_that_there_is_none_of_is_told_with_those_that_there_are() => With(LookOptions.Variable, "purple", () =>
        Assert.Equal(
            "PANSIDE_THEME purple: expected one of terminal, light, dark, high-contrast, monochrome.",
            Assert.Throws<UnusableException>(() => LookOptions.OfEnvironment).Message));

    [Fact]
    public void A_command_that_another_one_starts_looks_and_sounds_the_same() =>
        Assert.Equal(["--theme", "dark", "--ascii", "--quiet"], LookOptions.Arguments(new(Theme.Dark, IsAscii: true, IsQuiet: true)));

    [Fact]
    public void No_color_goes_before_every_theme() => With("NO_COLOR", "1", () =>
        Assert.All(Enum.GetValues<Theme>(), theme => Assert.Equal(Theme.Monochrome, Palette.Shown(theme))));

    [Theory]
    [InlineData("boil")]
    [InlineData("practice")]
    [InlineData("replay")]
    public void Every_command_with_a_screen_has_the_options_of_its_look(string command)
    {
        var help = Captured.Run(command, "--help").Out;
        Assert.Contains("--ascii", help);
        Assert.Contains("--theme <NAME>", help);
        Assert.Contains("--quiet", help);
        Assert.Equal(command != "replay", help.Contains("--say <COMMAND>", StringComparison.Ordinal));
    }

    private static void With(string variable, string? value, Action so)
    {
        var before = Environment.GetEnvironmentVariable(variable);
        Environment.SetEnvironmentVariable(variable, value);
        try
        {
            so();
        }
        finally
        {
            Environment.SetEnvironmentVariable(variable, before);
        }
    }
}
