using System.CommandLine;

namespace Panside.Commands;

/// <summary><c>panside check</c>: validates flows, rigs and records.</summary>
internal static class CheckCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var files = new Argument<string[]>("FILE") { Description = "Flows, rigs, scenarios and session records; what each is, is told by what stands in it.", Arity = ArgumentArity.OneOrMore };
        var graph = new Option<bool>("--graph") { Description = "Print a flow as a Mermaid diagram." };
        var command = new Command("check", "Checks flows, rigs and records; every fault as file:line:column: what is wrong, what was expected.")
        {
            files, graph,
        };
        command.SetAction(parsed => new Checking(Console.Out, Console.Error).Run(parsed.GetValue(files)!, parsed.GetValue(graph)));
        return command;
    }
}
