using Panside.Practice;
using Panside.Practice.Assurance;
using Panside.Practice.Operator;
using Panside.Practice.Scenarios;

namespace Panside.Workshop.Trials;

/// <summary>Each scenario that is shipped and needs no person.</summary>
internal static class ScenarioTrials
{
    /// <summary>The seed of a boil up to its first alarm.</summary>
    public const long SeedAhead = 7;

    /// <summary>Dangerous scenarios, each with the seed of a rig that habit burns in it.</summary>
    public static IReadOnlyList<(string Scenario, long Seed)> Burnt { get; } =
    [
        ("blower-dead", 1), ("float-stuck", 1), ("heaped-bed", 2), ("leaving-early", 2), ("tank-empty", 1), ("valve-half-shut", 1),
    ];

    /// <summary>All of them, the alarms over so many seeds.</summary>
    public static IEnumerable<Trial> All(int seeds) =>
        Enumerable.Range(0, seeds)
            .SelectMany(more => ScenarioLibrary.WithoutPerson.Select(scenario => Ahead(scenario.Name, SeedAhead + more)))
            .Concat(Burnt.SelectMany(one => new[] { Habit(one.Scenario, one.Seed), Followed(one.Scenario, one.Seed) }));

    /// <summary>F5: an alarm comes ten minutes before the floor shows.</summary>
    public static Trial Ahead(string name, long seed) => new($"scenario {name}, an alarm ahead, seed {seed}", () =>
    {
        var scenario = ScenarioLibrary.Of(name);
        return FaultTrials.InTime(AlarmAhead.Of(Evening.For(scenario), scenario, seed));
    });

    /// <summary>Who ignores the advice burns the pan.</summary>
    public static Trial Habit(string name, long seed) => new($"scenario {name}, by habit, seed {seed}", () =>
        Boiled(name, seed, isHabit: true).IsScorched ? null : "the pan did not burn: the scenario is not as dangerous as it says");

    /// <summary>Who follows it on that very rig does not.</summary>
    public static Trial Followed(string name, long seed) => new($"scenario {name}, the advice followed, seed {seed}", () =>
    {
        var outcome = Boiled(name, seed, isHabit: false);
        return Trial.FirstBroken((!outcome.IsScorched, "the pan burned"), (outcome.IsGood, "the boil did not end well"));
    });

    private static PracticeOutcome Boiled(string name, long seed, bool isHabit) =>
        new ManyBoils([ScenarioLibrary.Of(name)], (_, scenario) => Evening.For(scenario), 1) { IsByHabit = isHabit }.Of(1, seed, Evening.Start)[0].Outcome;
}
