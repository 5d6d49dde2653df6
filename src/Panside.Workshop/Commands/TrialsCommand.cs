using System.CommandLine;
using Panside.Workshop.Trials;

namespace Panside.Workshop.Commands;

/// <summary><c>panside-workshop trials</c>: what must hold of many boils, too many to wait for at every test.</summary>
internal static class TrialsCommand
{
    private static readonly Dictionary<string, Func<int, IEnumerable<Trial>>> Kinds = new()
    {
        ["faults"] = FaultTrials.All,
        ["scenarios"] = ScenarioTrials.All,
        ["boils"] = BoilTrials.All,
    };

    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var kinds = new Argument<string[]>("KIND") { Description = "Which: faults, scenarios, boils. Without any: all.", Arity = ArgumentArity.ZeroOrMore };
        kinds.AcceptOnlyFromAmong([.. Kinds.Keys]);
        var seeds = new Option<int>("--seeds") { Description = "So many rigs for each trial, one after the other; 1 unless said.", DefaultValueFactory = _ => 1, HelpName = "N" };
        var command = new Command("trials", "Tries every fault, scenario and beginning that the tests try some of, and counts what held.") { kinds, seeds };
        command.SetAction(parsed =>
        {
            var each = parsed.GetValue(seeds);
            if (each < 1)
            {
                throw new UnusableException($"--seeds {each}: expected how many rigs for each trial, 1 or more.");
            }

            var named = parsed.GetValue(kinds) is { Length: > 0 } some ? some : [.. Kinds.Keys];
            return Run([.. named.Distinct().SelectMany(kind => Kinds[kind](each))]);
        });
        return command;
    }

    /// <summary>Runs them, as many at a time as there are cores; tells each that failed, and how many there were of each.</summary>
    internal static int Run(IReadOnlyList<Trial> trials)
    {
        var faults = new string?[trials.Count];
        Parallel.For(0, trials.Count, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, trial => faults[trial] = trials[trial].Fault());
        foreach (var (trial, fault) in trials.Zip(faults).Where(one => one.Second is not null))
        {
            Console.Out.WriteLine($"Failed: {trial.Name}: {fault}.");
        }

        var failed = faults.Count(fault => fault is not null);
        Console.Out.WriteLine($"{trials.Count - failed} passed, {failed} failed");
        return failed == 0 ? ExitStatus.Done : ExitStatus.Wrong;
    }
}
