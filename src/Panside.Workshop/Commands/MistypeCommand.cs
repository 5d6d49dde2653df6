using System.CommandLine;
using Panside.Workshop.Judging;

namespace Panside.Workshop.Commands;

/// <summary><c>panside-workshop mistype</c>: slips of the hand in place of readings.</summary>
internal static class MistypeCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var command = new Command("mistype", "Tries so many slips of each kind on typed readings and tells how they fared, as a table.");
        var options = new ManyOptions("slips of each kind").AddTo(command);
        command.SetAction(parsed =>
        {
            var (slips, seed, settings) = options.Read(parsed);
            return Rows.Tell(MistypedTable.Of(boil => settings.Of(boil), slips, seed));
        });
        return command;
    }
}
