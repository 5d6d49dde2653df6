using System.CommandLine;
using Panside.Guide.Knowledge;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;
using Panside.Workshop.Shutdowns;

namespace Panside.Workshop.Commands;

/// <summary><c>panside-workshop picture</c>: one shutdown drawn, forecasts beside what truly came.</summary>
internal static class PictureCommand
{
    private static readonly DateTimeOffset Evening = new(2031, 3, 8, 16, 0, 0, TimeSpan.FromHours(-5));

    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var file = new Argument<string>("FILE") { Description = "The picture, a name that ends in .svg; what is there under it is written over." };
        var scenario = new Option<string>("--scenario") { Description = "A built-in scenario or a scenario file.", DefaultValueFactory = _ => Scenario.ColdStart.Name, HelpName = "NAME|FILE" };
        var seed = new Option<long>("--seed") { Description = "Another seed is another rig of the same size; the same seed is the same rig.", DefaultValueFactory = _ => 1, HelpName = "N" };
        var flow = new Option<string?>("--flow") { Description = "The flow's file. Without it: the built-in flow.", HelpName = "FILE" };
        var command = new Command("picture", "Practises one boil without a person and draws its shutdown, forecasts beside what truly came, as an SVG file.") { file, scenario, seed, flow };
        var rigOptions = new RigOptions().AddTo(command);
        command.SetAction(parsed =>
        {
            var (rig, guidance, home) = rigOptions.Read(parsed);
            var setting = new Setting(Library.Flow(parsed.GetValue(flow)), Library.Rig(rig, Home.Of(home)), RigOptions.Meant(guidance), WorkshopLine.Name, practice: true);
            return Drawn(setting, ScenarioLibrary.Of(parsed.GetValue(scenario)!), parsed.GetValue(seed), parsed.GetValue(file)!);
        });
        return command;
    }

    private static int Drawn(Setting setting, Scenario scenario, long seed, string file)
    {
        if (!file.EndsWith(".svg", StringComparison.OrdinalIgnoreCase))
        {
            // What is there under that name is written over: no record may be lost to a slip.
            throw new UnusableException($"{file}: expected a name that ends in .svg.");
        }

        if (ShutdownWatch.Of(setting, scenario, seed, Evening) is not { } shutdown)
        {
            Console.Error.WriteLine("The boil did not come to its shutdown within a day; there is nothing to draw.");
            return ExitStatus.Wrong;
        }

        File.WriteAllText(file, ShutdownPicture.Of(shutdown));
        return ExitStatus.Done;
    }
}
