using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Judging;
using Panside.Practice;
using Panside.Practice.Operator;

namespace Panside.Tests.Practice;

/// <summary>What each shipped scenario does to a pan: where the advice is followed, where it is followed up to an alarm, where it is ignored.</summary>
public class ShippedScenarioTests
{
    private const double BareMeters = 0.012;

    /// <summary>Rule F5.</summary>
    private const long Ahead = 600;

    private static readonly DateTimeOffset Evening = new(2031, 3, 8, 16, 0, 0, TimeSpan.FromHours(-5));

    /// <summary>Seeds with which an operator who heeds nothing burns the pan; not every seed does.</summary>
    public static TheoryData<string, long> Burnt { get; } = new()
    {
        { "blower-dead", 1 },
        { "float-stuck", 1 },
        { "heaped-bed", 2 },
        { "leaving-early", 2 },
        { "tank-empty", 1 },
        { "valve-half-shut", 1 },
    };

    public static TheoryData<string> Names { get; } = [.. ScenarioLibrary.WithoutPerson.Select(scenario => scenario.Name)];

    [Fact]
    public void Each_dangerous_scenario_is_tried_by_habit() =>
        Assert.Equal(
            ScenarioLibrary.WithoutPerson.Where(scenario => scenario.IsDangerous).Select(scenario => scenario.Name).Order(),
            Burnt.Select(row => row.Data.Item1).Order());

    [Theory]
    [MemberData(nameof(Burnt))]
    public void Who_ignores_the_advice_burns_the_pan_of_a_dangerous_scenario(string name, long seed)
    {
        var (boil, _) = Boil(name, seed, isHabit: true);
        Assert.True(boil.Run().IsScorched);
    }

    [Theory]
    [MemberData(nameof(Burnt))]
    public void Who_follows_the_advice_on_that_very_rig_does_not(string name, long seed)
    {
        var (boil, _) = Boil(name, seed);
        var outcome = boil.Run();
        Assert.False(outcome.IsScorched);
        Assert.True(outcome.IsGood);
    }

    /// <summary>
    /// The advice is followed up to the first alarm after a fault began, or after the boil where the scenario has none; from there on the
    /// rig is fired on as usual by somebody who looks at nothing.
    /// </summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void F5_an_alarm_comes_ten_minutes_before_the_floor_shows(string name)
    {
        var isAlarmed = false;
        var (boil, rig) = Boil(name, seed: 7);
        boil.Overheard = (_, answers) => isAlarmed |= (rig.Begun.Any() || rig.Scenario.Mishaps.Count == 0) && answers.Any(answer => answer is AdviceLine
        {
            Advice.Action: "check-level" or "raise-level" or "cool-pan" or "hold-wood", Advice.Urgency: "now" or "danger",
        });
        boil.RunUntil(() => isAlarmed || rig.Depth.Meters <= BareMeters);
        Assert.True(rig.Depth.Meters > BareMeters, "no alarm, or too late for one");
        if (!isAlarmed)
        {
            // Nothing came that had to be done at once, and the boil is over.
            return;
        }

        var alarmed = rig.Second;
        while (rig.Depth.Meters > BareMeters && rig.Second < alarmed + Ahead)
        {
            if (rig.SecondsSinceWood >= rig.Makeup.Rig.Interval.TotalSeconds)
            {
                rig.AddWood(rig.Makeup.Rig.Charge);
                rig.AddDefoamer();
            }

            rig.Step(10);
        }

        Assert.True(rig.Second >= alarmed + Ahead, $"alarm at {alarmed} s, bare at {rig.Second} s");
    }

    private static (Unattended Boil, PracticeRig Rig) Boil(string name, long seed, bool isHabit = false)
    {
        var scenario = ScenarioLibrary.Of(name);
        var setting = new Setting(Library.Flow(null), ScenarioLibrary.RigOf(scenario) ?? PracticeBoil.RigOf("two-by-four-forced.yaml"), Guidance.Beginner, "panside", practice: true);
        var rig = new PracticeRig(setting.Rig, scenario, seed);
        IPracticeOperator person = isHabit ? new HabitOperator(rig, setting.Units, seed) : new PracticeOperator(rig, setting.Units, seed);
        return (new(new SessionDoor(setting), rig, person, Evening), rig);
    }
}
