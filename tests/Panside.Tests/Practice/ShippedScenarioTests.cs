using Panside.Commands;
using Panside.Guide.Sessions;
using Panside.Judging;
using Panside.Practice;
using Panside.Practice.Operator;

namespace Panside.Tests.Practice;

/// <summary>What each shipped scenario does to a pan: where the advice is followed, where it is followed up to an alarm, where it is ignored.</summary>
public class ShippedScenarioTests
{
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
        Assert.True(Boil(name, seed, isHabit: true).Run().IsScorched);
    }

    [Theory]
    [MemberData(nameof(Burnt))]
    public void Who_follows_the_advice_on_that_very_rig_does_not(string name, long seed)
    {
        var outcome = Boil(name, seed).Run();
        Assert.False(outcome.IsScorched);
        Assert.True(outcome.IsGood);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void F5_an_alarm_comes_ten_minutes_before_the_floor_shows(string name)
    {
        var scenario = ScenarioLibrary.Of(name);
        Assert.True(AlarmAhead.Of(SettingFor(scenario), scenario, seed: 7).SecondsToBare >= AlarmAhead.Asked);
    }

    private static Unattended Boil(string name, long seed, bool isHabit = false)
    {
        var scenario = ScenarioLibrary.Of(name);
        var setting = SettingFor(scenario);
        var rig = new PracticeRig(setting.Rig, scenario, seed);
        IPracticeOperator person = isHabit ? new HabitOperator(rig, setting.Units, seed) : new PracticeOperator(rig, setting.Units, seed);
        return new(new SessionDoor(setting), rig, person, Evening);
    }

    private static Setting SettingFor(Scenario scenario) => new(
        Library.Flow(null), ScenarioLibrary.RigOf(scenario) ?? PracticeBoil.RigOf("two-by-four-forced.yaml"), Guidance.Beginner, "panside", practice: true);
}
