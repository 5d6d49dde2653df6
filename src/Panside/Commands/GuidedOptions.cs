using System.CommandLine;

namespace Panside.Commands;

/// <summary>The options that every guided command takes.</summary>
internal sealed class GuidedOptions
{
    private readonly RigOptions _rig = new();
    private readonly Option<string?> _flow = new("--flow") { Description = "The flow's file. Without it: the built-in flow for a divided pan.", HelpName = "FILE" };
    private readonly Option<string?> _journal = new("--journal") { Description = "The session's record; goes on from it where it exists.", HelpName = "FILE" };

    /// <summary>Adds them to a command.</summary>
    public GuidedOptions AddTo(Command command)
    {
        _rig.AddTo(command);
        command.Options.Add(_flow);
        command.Options.Add(_journal);
        return this;
    }

    /// <summary>Their values.</summary>
    public GuidedArguments Read(ParseResult parsed)
    {
        var (rig, guidance, home) = _rig.Read(parsed);
        return new(rig, parsed.GetValue(_flow), guidance, parsed.GetValue(_journal), home);
    }
}

/// <summary>What a guided command was given.</summary>
internal sealed record GuidedArguments(string? Rig, string? Flow, string Guidance, string? Journal, string? Home)
{
    /// <summary>What past boils have taught of the rig; null where nothing is to be taken from them.</summary>
    public Guide.Rigs.LearnedRig? Learned { get; init; }

    /// <summary>Whether the boil is brought in from a table.</summary>
    public bool Imported { get; init; }
}
