using Panside.Guide.Knowledge;
using Panside.Practice.Operator;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;

namespace Panside.Practice.Assurance;

/// <summary>One boil of many: where it began, and how it ended.</summary>
/// <param name="Scenario">Where it began, and what went wrong.</param>
/// <param name="Seed">Which rig.</param>
/// <param name="Outcome">How it ended.</param>
public sealed record AssuredBoil(Scenario Scenario, long Seed, PracticeOutcome Outcome);

/// <summary>Many boils without a person, all scenarios in turn, each with the next seed; the same seed gives the same boils.</summary>
/// <param name="scenarios">The scenarios.</param>
/// <param name="setting">What boil number so many of its scenario runs on.</param>
/// <param name="atOnce">No more at a time: each holds many members in memory.</param>
public sealed class ManyBoils(IReadOnlyList<Scenario> scenarios, Func<int, Scenario, Setting> setting, int atOnce)
{
    /// <summary>Whether the operator goes by habit and heeds no advice.</summary>
    public bool IsByHabit { get; init; }

    /// <summary>Practises them.</summary>
    /// <param name="boils">How many.</param>
    /// <param name="seed">The first boil's.</param>
    /// <param name="start">When each begins.</param>
    public IReadOnlyList<AssuredBoil> Of(int boils, long seed, DateTimeOffset start)
    {
        var done = new AssuredBoil[boils];
        Parallel.For(0, boils, new ParallelOptions { MaxDegreeOfParallelism = atOnce }, boil =>
        {
            // Rigs and guidances go round within each scenario.
            var scenario = scenarios[boil % scenarios.Count];
            done[boil] = new(scenario, seed + boil, One(setting(boil / scenarios.Count, scenario), scenario, seed + boil, start));
        });
        return done;
    }

    private PracticeOutcome One(Setting its, Scenario scenario, long seed, DateTimeOffset start)
    {
        var rig = new PracticeRig(its.Rig, scenario, seed);
        IPracticeOperator person = IsByHabit ? new HabitOperator(rig, its.Units, seed) : new PracticeOperator(rig, its.Units, seed);
        return new Unattended(new SessionDoor(its), rig, person, start).Run();
    }
}
