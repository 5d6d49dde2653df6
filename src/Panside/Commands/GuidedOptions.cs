using System.CommandLine;

namespace Panside.Commands;

/// <summary>The options that every guided command takes.</summary>
internal sealed class GuidedOptions
{
    private readonly Option<string?> _rig = new("--rig") { Description = "The rig's file. Without it: rig.yaml in the home folder, else the built-in rig.", HelpName = "FILE" };
    private readonly Option<string?> _flow = new("--flow") { Description = "The flow's file. Without it: the built-in flow for a divided pan.", HelpName = "FILE" };
    private readonly Option<string> _guidance = new("--guidance") { Description = "beginner (every step and its reason) or practised (the clock and the forecast).", DefaultValueFactory = _ => "beginner" };
    private readonly Option<string?> _journal = new("--journal") { Description = "The session's record; goes on from it where it exists.", HelpName = "FILE" };
    private readonly Option<string?> _home = new("--home") { Description = "Where rigs, flows and sessions live.", HelpName = "FOLDER" };

    /// <summary>Adds them to a command.</summary>
    public GuidedOptions AddTo(Command command)
    {
        _guidance.AcceptOnlyFromAmong("beginner", "practised");
        foreach (var option in new Option[] { _rig, _flow, _guidance, _journal, _home })
        {
            command.Options.Add(option);
        }

        return this;
    }

    /// <summary>Their values.</summary>
    public GuidedArguments Read(ParseResult parsed) => new(
        parsed.GetValue(_rig), parsed.GetValue(_flow), parsed.GetValue(_guidance)!, parsed.GetValue(_journal), parsed.GetValue(_home));
}

/// <summary>What a guided command was given.</summary>
internal sealed record GuidedArguments(string? Rig, string? Flow, string Guidance, string? Journal, string? Home);
