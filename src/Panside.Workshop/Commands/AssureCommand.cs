using System.CommandLine;
using Panside.Practice.Assurance;

namespace Panside.Workshop.Commands;

/// <summary><c>panside-workshop assure</c>: what becomes of many boils, the advice followed or ignored.</summary>
internal static class AssureCommand
{
    private static readonly DateTimeOffset Evening = new(2031, 3, 8, 16, 0, 0, TimeSpan.FromHours(-5));

    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var scenario = new Option<string?>("--scenario") { Description = "One built-in scenario or a scenario file. Without it: all that need no person, in turn.", HelpName = "NAME|FILE" };
        var habit = new Option<bool>("--habit") { Description = "An operator who fires by the clock, trusts the float, heeds no advice and goes to bed a while after the last wood." };
        var command = new Command("assure", "Practises boils without a person and tells what became of them, as a table.") { scenario, habit };
        var options = new ManyOptions("boils").AddTo(command);
        command.SetAction(parsed =>
        {
            var (boils, seed, settings) = options.Read(parsed);
            IReadOnlyList<Practice.Scenarios.Scenario> scenarios = parsed.GetValue(scenario) is { } one ? [ScenarioLibrary.Of(one)] : ScenarioLibrary.WithoutPerson;
            var isHabit = parsed.GetValue(habit);
            var assured = new ManyBoils(scenarios, settings.For, Environment.ProcessorCount) { IsByHabit = isHabit }.Of(boils, seed, Evening);
            Console.Out.Write(AssuranceTable.Of(assured, scenarios.Count));
            return isHabit || assured.All(boil => boil.Outcome is { IsScorched: false, IsPromiseKept: true }) ? ExitStatus.Done : ExitStatus.Wrong;
        });
        return command;
    }
}
