using System.CommandLine;
using Panside.Workshop.Judging;

namespace Panside.Workshop.Commands;

/// <summary><c>panside-workshop learned</c>: what learning from two boils is worth to the third.</summary>
internal static class LearnedCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var command = new Command("learned", "Practises three boils on each of so many rigs that are a quarter off their file, and tells what learning from two was worth to the third, as a table.");
        var options = new ManyOptions("rigs").AddTo(command);
        command.SetAction(parsed =>
        {
            var (rigs, seed, settings) = options.Read(parsed);
            return Rows.Tell(LearnedTable.Of((rig, learned) => settings.Of(rig / 2, learned: learned), rigs, seed));
        });
        return command;
    }
}
