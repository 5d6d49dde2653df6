using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Panside.Arguments;

/// <summary>The help of a command: its examples first, then the library's own; at the program's, the exit statuses last.</summary>
public sealed class ExamplesFirst : SynchronousCommandLineAction
{
    private readonly SynchronousCommandLineAction _usual;
    private readonly string _alone;
    private readonly IReadOnlyDictionary<string, IReadOnlyList<CommandExample>> _examples;

    private ExamplesFirst(SynchronousCommandLineAction usual, string alone, IReadOnlyDictionary<string, IReadOnlyList<CommandExample>> examples) =>
        (_usual, _alone, _examples) = (usual, alone, examples);

    /// <summary>Puts the examples first in the help of a root and of all its commands that have no help of their own.</summary>
    /// <param name="root">The root.</param>
    /// <param name="alone">The program's name: under it stand the examples of the root.</param>
    /// <param name="examples">The examples by command.</param>
    public static void AddTo(RootCommand root, string alone, IReadOnlyDictionary<string, IReadOnlyList<CommandExample>> examples)
    {
        var help = root.Options.OfType<HelpOption>().Single();
        help.Action = new ExamplesFirst((SynchronousCommandLineAction)help.Action!, alone, examples);
    }

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        var command = parseResult.CommandResult.Command;
        var name = command is RootCommand ? _alone : command.Name;
        var examples = _examples[name];
        Console.Out.WriteLine("Examples:");
        var width = examples.Max(example => example.Line.Length) + 2;
        foreach (var example in examples)
        {
            Console.Out.WriteLine($"  {example.Line.PadRight(width)}{example.Does}");
        }

        Console.Out.WriteLine();
        var status = _usual.Invoke(parseResult);
        if (command is RootCommand)
        {
            Console.Out.WriteLine("Exit status:");
            foreach (var (code, means) in ExitStatus.All)
            {
                Console.Out.WriteLine($"  {code,-4} {means}");
            }
        }

        return status;
    }
}
