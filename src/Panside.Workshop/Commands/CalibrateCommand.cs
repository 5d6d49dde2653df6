using System.CommandLine;
using Panside.Practice.Physics;
using Panside.Workshop.Calibration;
using Panside.Workshop.Worlds;

namespace Panside.Workshop.Commands;

/// <summary><c>panside-workshop calibrate</c>: what sets the forecasts right, fitted on all worlds but one and judged on that one.</summary>
internal static class CalibrateCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var command = new Command("calibrate", "Practises boils in each world, fits what sets the forecasts right on all worlds but one, judges it on that one, and tells the fit to all, as tables.");
        var world = new Option<string[]>("--world") { Description = $"Only these of the worlds: {string.Join(", ", AllWorlds.Names)}.", HelpName = "NAME", AllowMultipleArgumentsPerToken = true };
        command.Add(world);
        var options = new ManyOptions("boils in each world").AddTo(command);
        command.SetAction(parsed =>
        {
            var (boils, seed, settings) = options.Read(parsed);
            IReadOnlyList<World> worlds = parsed.GetValue(world) is { Length: > 0 } names ? [.. names.Select(AllWorlds.Wanted)] : AllWorlds.InOrder;
            return Rows.Tell(LeftOutTable.Of(boil => settings.Of(boil), worlds, boils, seed));
        });
        return command;
    }
}
