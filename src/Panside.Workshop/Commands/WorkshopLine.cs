using System.CommandLine;
using System.Reflection;

namespace Panside.Workshop.Commands;

/// <summary>The workshop's command line: what those who change the program measure and try it with; no operator needs it.</summary>
internal static class WorkshopLine
{
    /// <summary>The name of the program, as a setting says it.</summary>
    public const string Name = "panside-workshop";

    /// <summary>Runs the program.</summary>
    public static int Run(string[] args)
    {
        var version = typeof(WorkshopLine).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "0";
        return new Running(Name, version).Of(Root, args);
    }

    /// <summary>All commands with their options.</summary>
    public static RootCommand Root()
    {
        var root = new RootCommand("Measures and tries Panside on simulated rigs: for those who change it.")
        {
            JudgeCommand.Create(),
            CalibrateCommand.Create(),
            LearnedCommand.Create(),
            MistypeCommand.Create(),
            AssureCommand.Create(),
            PictureCommand.Create(),
            EarCommand.Create(),
            TalkCommand.Create(),
            LintCommand.Create(),
            TrialsCommand.Create(),
        };
        ExamplesFirst.AddTo(root, Name, WorkshopExamples.All);
        return root;
    }
}
