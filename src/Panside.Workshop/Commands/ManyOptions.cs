using System.CommandLine;

namespace Panside.Workshop.Commands;

/// <summary>The options of a command that practises many boils.</summary>
internal sealed class ManyOptions
{
    private readonly string _what;
    private readonly Option<int> _count;
    private readonly Option<long> _seed = new("--seed") { Description = "The first rig's; each has the next. The same seed is the same rig.", DefaultValueFactory = _ => 1, HelpName = "N" };
    private readonly Option<string?> _rig = new("--rig") { Description = "The rig's file. Without it: the two built-in rigs in turn.", HelpName = "FILE" };
    private readonly Option<string?> _flow = new("--flow") { Description = "The flow's file. Without it: the built-in flow.", HelpName = "FILE" };

    /// <summary>The options.</summary>
    /// <param name="what">What is counted.</param>
    public ManyOptions(string what)
    {
        _what = what;
        _count = new("--count") { Description = $"How many {what}.", HelpName = "N", Required = true };
    }

    /// <summary>Adds them to a command.</summary>
    public ManyOptions AddTo(Command command)
    {
        foreach (var option in new Option[] { _count, _seed, _rig, _flow })
        {
            command.Options.Add(option);
        }

        return this;
    }

    /// <summary>Their values.</summary>
    /// <exception cref="UnusableException">Fewer than one are asked for.</exception>
    public (int Count, long Seed, ManySettings Settings) Read(ParseResult parsed)
    {
        var count = parsed.GetValue(_count);
        return count < 1
            ? throw new UnusableException($"--count {count}: expected how many {_what}, 1 or more.")
            : (count, parsed.GetValue(_seed), new(WorkshopLine.Name, parsed.GetValue(_rig), parsed.GetValue(_flow)));
    }
}
