using Panside.Workshop.Trials;

namespace Panside.Tests.Practice;

/// <summary>What each shipped scenario does to a pan: where the advice is followed, where it is followed up to an alarm, where it is ignored.</summary>
public class ShippedScenarioTests
{
    /// <summary>Seeds with which an operator who heeds nothing burns the pan; not every seed does.</summary>
    public static TheoryData<string, long> Burnt { get; } = [.. ScenarioTrials.Burnt];

    [Fact]
    public void Each_dangerous_scenario_is_tried_by_habit() =>
        Assert.Equal(
            ScenarioLibrary.WithoutPerson.Where(scenario => scenario.IsDangerous).Select(scenario => scenario.Name).Order(),
            ScenarioTrials.Burnt.Select(one => one.Scenario).Order());

    [Theory]
    [MemberData(nameof(Burnt))]
    public void Who_ignores_the_advice_burns_the_pan_of_a_dangerous_scenario(string name, long seed) => Assert.Null(ScenarioTrials.Habit(name, seed).Fault());

    [Theory]
    [MemberData(nameof(Burnt))]
    public void Who_follows_the_advice_on_that_very_rig_does_not(string name, long seed) => Assert.Null(ScenarioTrials.Followed(name, seed).Fault());

    /// <summary>Here in the scenarios that are dangerous and in some others; <c>panside-workshop trials</c>, which <c>.ci/run</c> runs, tries all.</summary>
    [Theory]
    [InlineData("blower-dead")]
    [InlineData("float-stuck")]
    [InlineData("heaped-bed")]
    [InlineData("leaving-early")]
    [InlineData("tank-empty")]
    [InlineData("valve-half-shut")]
    [InlineData("leaks")]
    [InlineData("tired-operator")]
    public void F5_an_alarm_comes_ten_minutes_before_the_floor_shows(string name) =>
        Assert.Null(ScenarioTrials.Ahead(name, ScenarioTrials.SeedAhead).Fault());
}
