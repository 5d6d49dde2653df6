using System.CommandLine;

namespace Panside.Commands;

/// <summary><c>panside check</c>: validates flows, rigs and records, plays a flow through its plan, tells the form of files to editors.</summary>
internal static class CheckCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var files = new Argument<string[]>("FILE") { Description = "Flows, rigs, scenarios, plans and session records; what each is, is told by what stands in it.", Arity = ArgumentArity.ZeroOrMore };
        var graph = new Option<bool>("--graph") { Description = "Print a flow as a Mermaid diagram." };
        var walk = new Option<string?>("--walk") { Description = "Play this flow through the plans that are named, or the rig's own in 'plans' beside it; the first difference is a fault.", HelpName = "FLOW FILE" };
        var rig = new Option<string?>("--rig") { Description = "The rig to walk on.", HelpName = "RIG FILE" };
        var asWalked = new Option<bool>("--as-walked") { Description = "Print the plan with what was asked at each line." };
        var schema = new Option<string?>("--schema") { Description = "Print the form of a kind of file as a JSON Schema, for editors.", HelpName = string.Join('|', SchemaJson.Kinds) };
        schema.AcceptOnlyFromAmong([.. SchemaJson.Kinds]);
        var command = new Command("check", "Checks flows, rigs and records; every fault as file:line:column: what is wrong, what was expected.")
        {
            files, graph, walk, rig, asWalked, schema,
        };
        command.SetAction(parsed => Run(
            parsed.GetValue(files) ?? [], parsed.GetValue(graph), parsed.GetValue(walk), parsed.GetValue(rig), parsed.GetValue(asWalked), parsed.GetValue(schema)));
        return command;
    }

    private static int Run(string[] files, bool graph, string? walk, string? rig, bool asWalked, string? schema)
    {
        if (new[] { graph, walk is not null, schema is not null }.Count(asked => asked) > 1)
        {
            throw new UnusableException("--graph, --walk and --schema are three things. Ask for one at a time.");
        }

        if ((walk is null) != (rig is null) || (asWalked && walk is null))
        {
            throw new UnusableException("--walk FLOW and --rig RIG stand together, with --as-walked or without.");
        }

        if (schema is not null)
        {
            if (files.Length > 0)
            {
                throw new UnusableException("--schema tells the form of a kind of file and looks at none. Leave the files out, or --schema.");
            }

            Console.Out.Write(SchemaJson.Of(schema));
            return ExitStatus.Done;
        }

        if (walk is not null)
        {
            return new Walking(Console.Out, Console.Error).Run(walk, rig!, files, asWalked);
        }

        return files.Length > 0
            ? new Checking(Console.Out, Console.Error).Run(files, graph)
            : throw new UnusableException("Name the files to check. 'panside check --help' has examples.");
    }
}
