using System.CommandLine;
using Panside.Faces;

namespace Panside.Commands;

/// <summary>The program's command line, all commands together.</summary>
internal static class CommandLine
{
    /// <summary>Runs the program.</summary>
    public static int Run(string[] args)
    {
        using var guarded = new GuardedConsole();
        return new Running(CommandExamples.Alone, Product.Version, GivenPaths.Demand, fault => Ending.Of(fault, Console.Error)).Of(Root, args);
    }

    /// <summary>All commands with their options.</summary>
    public static RootCommand Root()
    {
        var plain = new Option<bool>("--plain") { Description = "The home screen as lines of text." };
        var home = new Option<string?>("--home") { Description = "Where rigs, flows and sessions live.", HelpName = "FOLDER" };
        var root = new RootCommand("Stands beside a small maple sap boiler, from lighting the fire to leaving the pan safe.")
        {
            BoilCommand.Create(),
            PracticeCommand.Create(),
            CheckCommand.Create(),
            ReplayCommand.Create(),
            ReportCommand.Create(),
            SeasonCommand.Create(),
            ImportCommand.Create(),
            PlanCommand.Create(),
            ReckonCommand.Create(),
            RigCommand.Create(),
            CompletionCommand.Create(),
            plain,
            home,
        };
        var looks = new LookOptions().AddTo(root);
        root.SetAction(given => HomeCommand.Run(given.GetValue(home), given.GetValue(plain), looks.Read(given)));
        ExamplesFirst.AddTo(root, CommandExamples.Alone, CommandExamples.All);
        return root;
    }
}
