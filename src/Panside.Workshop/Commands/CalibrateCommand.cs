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
        var write = new Option<FileInfo?>("--write") { Description = "Also write the calibration with what was fitted to all of them into this file: src/Panside.Reckoning/Ensemble/calibration.json is the program's.", HelpName = "FILE" };
        command.Add(write);
        var options = new ManyOptions("boils in each world").AddTo(command);
        command.SetAction(parsed =>
        {
            var (boils, seed, settings) = options.Read(parsed);
            IReadOnlyList<World> worlds = parsed.GetValue(world) is { Length: > 0 } names ? [.. names.Select(AllWorlds.Wanted)] : AllWorlds.InOrder;
            var by = $"{WorkshopLine.Name} calibrate --count {boils} --seed {seed}";
            var (rows, fitted) = LeftOutTable.WithFit(boil => settings.Of(boil), worlds, boils, seed, by);
            if (parsed.GetValue(write) is { } file)
            {
                File.WriteAllText(file.FullName, fitted.Written());
            }

            return Rows.Tell(rows);
        });
        return command;
    }
}
