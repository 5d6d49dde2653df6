using System.CommandLine;
using Panside.Practice.Physics;
using Panside.Workshop.Judging;
using Panside.Workshop.Worlds;

namespace Panside.Workshop.Commands;

/// <summary><c>panside-workshop judge</c>: forecasts beside what truly came.</summary>
internal static class JudgeCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var command = new Command("judge", "Practises boils without a person and tells how the forecasts fared, as a table.");
        var world = new Option<string>("--world")
        {
            Description = $"The world that the rig is in: {string.Join(", ", AllWorlds.Names)}.",
            DefaultValueFactory = _ => World.Practised.Name,
            HelpName = "NAME",
        };
        command.Add(world);
        var waits = new Option<bool>("--waits") { Description = "Tell of each boil what it still waited for once it was safe to leave." };
        command.Add(waits);
        var options = new ManyOptions("boils").AddTo(command);
        command.SetAction(parsed =>
        {
            // A setting of its own for each boil: they run at the same time.
            var (boils, seed, settings) = options.Read(parsed);
            return Rows.Tell(JudgedTable.Of(boil => settings.Of(boil), AllWorlds.Wanted(parsed.GetValue(world)!), boils, seed, parsed.GetValue(waits)));
        });
        return command;
    }
}
