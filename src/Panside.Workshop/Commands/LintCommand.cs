using System.CommandLine;
using Panside.Workshop.Linting;

namespace Panside.Workshop.Commands;

/// <summary><c>panside-workshop lint</c>: how the texts of flows read.</summary>
internal static class LintCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var files = new Argument<string[]>("FILE") { Description = "Flows. Without any: the built-in flow.", Arity = ArgumentArity.ZeroOrMore };
        var command = new Command("lint", "Tells how hard the texts of a flow are to read, as a table, and which of them read badly, each with its place.") { files };
        command.SetAction(parsed =>
        {
            var named = parsed.GetValue(files) ?? [];
            var linted = (named.Length > 0 ? named.Select(file => LintedFlow.Of(file, Library.Flow(file))) : [LintedFlow.Of(Library.BuiltInFlow, Library.Flow(null))]).ToList();
            Rows.Tell(linted.SelectMany(flow => flow.Rows));
            return linted.All(flow => flow.ReadsWell) ? ExitStatus.Done : ExitStatus.Wrong;
        });
        return command;
    }
}
