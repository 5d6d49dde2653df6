using System.CommandLine;
using Panside.Screen;

namespace Panside.Commands;

/// <summary>The options of every command that has the full screen.</summary>
internal sealed class LookOptions
{
    /// <summary>The environment's wish, for <c>panside</c> alone too.</summary>
    public const string Variable = "PANSIDE_THEME";

    private static readonly Dictionary<string, Theme> Themes = new(StringComparer.OrdinalIgnoreCase)
    {
        ["terminal"] = Theme.Terminal,
        ["light"] = Theme.Light,
        ["dark"] = Theme.Dark,
        ["high-contrast"] = Theme.HighContrast,
        ["monochrome"] = Theme.Monochrome,
    };

    private readonly Option<bool> _ascii = new("--ascii") { Description = "Only signs of ASCII on the full screen." };
    private readonly Option<bool> _quiet = new("--quiet") { Description = "The bell stays silent." };
    private readonly Option<string?> _theme = new("--theme")
    {
        Description = $"Colors of the full screen: {string.Join(", ", Themes.Keys)}; {Variable} in the environment does the same.",
        HelpName = "NAME",
    };

    /// <summary>The look where no option is named.</summary>
    public static ScreenLook OfEnvironment => new(Named(Variable, Environment.GetEnvironmentVariable(Variable)), false);

    /// <summary>Adds them to a command.</summary>
    public LookOptions AddTo(Command command)
    {
        _theme.CompletionSources.Add([.. Themes.Keys]);
        command.Options.Add(_ascii);
        command.Options.Add(_theme);
        command.Options.Add(_quiet);
        return this;
    }

    /// <summary>Their values.</summary>
    public ScreenLook Read(ParseResult parsed) => new(
        parsed.GetValue(_theme) is { } name ? Named("--theme", name) : OfEnvironment.Theme, parsed.GetValue(_ascii), parsed.GetValue(_quiet));

    /// <summary>The arguments that say a look, for a command that another one starts.</summary>
    public static IReadOnlyList<string> Arguments(ScreenLook look) =>
        ["--theme", Themes.Single(theme => theme.Value == look.Theme).Key, .. look.IsAscii ? ["--ascii"] : Array.Empty<string>(), .. look.IsQuiet ? ["--quiet"] : Array.Empty<string>()];

    private static Theme Named(string place, string? name) =>
        string.IsNullOrEmpty(name) ? Theme.Terminal
        : Themes.TryGetValue(name, out var theme) ? theme
        : throw new UnusableException($"{place} {name}: expected one of {string.Join(", ", Themes.Keys)}.");
}
