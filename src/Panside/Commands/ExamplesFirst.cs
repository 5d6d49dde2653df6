using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Panside.Commands;

/// <summary>The help of a command: its examples first, then the library's own; at the program's, the exit statuses last.</summary>
/// <param name="usual">The library's own.</param>
internal sealed class ExamplesFirst(SynchronousCommandLineAction usual) : SynchronousCommandLineAction
{
    /// <summary>Puts the examples first in the help of a root and of all its commands that have no help of their own.</summary>
    public static void AddTo(RootCommand root)
    {
        var help = root.Options.OfType<HelpOption>().Single();
        help.Action = new ExamplesFirst((SynchronousCommandLineAction)help.Action!);
    }

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        var command = parseResult.CommandResult.Command;
        var name = command is RootCommand ? CommandExamples.Alone : command.Name;
        var examples = CommandExamples.All[name];
        Console.Out.WriteLine("Examples:");
        var width = examples.Max(example => example.Line.Length) + 2;
        foreach (var example in examples)
        {
            Console.Out.WriteLine($"  {example.Line.PadRight(width)}{example.Does}");
        }

        Console.Out.WriteLine();
        var status = usual.Invoke(parseResult);
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
