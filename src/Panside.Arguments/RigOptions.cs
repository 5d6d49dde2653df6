using System.CommandLine;
using Panside.Guide.Knowledge;

namespace Panside.Arguments;

/// <summary>The options that say on which rig, and how carefully.</summary>
public sealed class RigOptions
{
    private readonly Option<string?> _rig = new("--rig") { Description = "The rig's file. Without it: rig.yaml in the home folder, which 'panside rig' makes; else the built-in rig.", HelpName = "FILE" };
    private readonly Option<string> _guidance = new("--guidance") { Description = "beginner (every step and its reason) or practised (the clock and the forecast).", DefaultValueFactory = _ => "beginner" };
    private readonly Option<string?> _home = new("--home") { Description = "Where rigs, flows and sessions live.", HelpName = "FOLDER" };

    /// <summary>Adds them to a command.</summary>
    public RigOptions AddTo(Command command)
    {
        _guidance.AcceptOnlyFromAmong("beginner", "practised");
        foreach (var option in new Option[] { _rig, _guidance, _home })
        {
            command.Options.Add(option);
        }

        return this;
    }

    /// <summary>Their values.</summary>
    public (string? Rig, string Guidance, string? Home) Read(ParseResult parsed) =>
        (parsed.GetValue(_rig), parsed.GetValue(_guidance)!, parsed.GetValue(_home));

    /// <summary>How much is explained, by the option's word.</summary>
    public static Guidance Meant(string guidance) => guidance == "practised" ? Guidance.Practised : Guidance.Beginner;
}
