using Panside.Commands;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;
using Panside.Judging;
using Panside.Practice;
using Panside.Practice.Operator;

namespace Panside.Assurance;

/// <summary>One boil of many: where it began, and how it ended.</summary>
internal sealed record AssuredBoil(Scenario Scenario, long Seed, PracticeOutcome Outcome);

/// <summary>Many boils without a person, all scenarios in turn, each with the next seed; the same seed gives the same boils.</summary>
internal static class ManyBoils
{
    /// <summary>Practises them.</summary>
    /// <param name="setting">What boil number so many runs on, by the rig that its scenario wants.</param>
    /// <param name="scenarios">The scenarios.</param>
    /// <param name="boils">How many.</param>
    /// <param name="seed">The first boil's.</param>
    /// <param name="isHabit">Whether the operator goes by habit and heeds no advice.</param>
    /// <param name="start">When each begins.</param>
    public static IReadOnlyList<AssuredBoil> Of(
        Func<int, Rig?, Setting> setting, IReadOnlyList<Scenario> scenarios, int boils, long seed, bool isHabit, DateTimeOffset start)
    {
        var done = new AssuredBoil[boils];
        Parallel.For(0, boils, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, boil =>
        {
            // Rigs and guidances go round within each scenario.
            var scenario = scenarios[boil % scenarios.Count];
            var its = setting(boil / scenarios.Count, ScenarioLibrary.RigOf(scenario));
            done[boil] = new(scenario, seed + boil, One(its, scenario, seed + boil, isHabit, start));
        });
        return done;
    }

    private static PracticeOutcome One(Setting setting, Scenario scenario, long seed, bool isHabit, DateTimeOffset start)
    {
        var rig = new PracticeRig(setting.Rig, scenario, seed);
        IPracticeOperator person = isHabit ? new HabitOperator(rig, setting.Units, seed) : new PracticeOperator(rig, setting.Units, seed);
        return new Unattended(new SessionDoor(setting), rig, person, start).Run();
    }
}
