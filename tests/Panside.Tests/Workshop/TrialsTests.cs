using Panside.Practice.Scenarios;
using Panside.Tests.Reckon;
using Panside.Workshop.Commands;
using Panside.Workshop.Trials;

namespace Panside.Tests.Workshop;

/// <summary>What the trials try, and how they are counted; that they hold is for <c>.ci/run</c> to see.</summary>
public class TrialsTests
{
    [Fact]
    public void S1_F5_every_fault_is_tried_to_the_end_and_up_to_its_first_alarm()
    {
        var names = FaultTrials.All(1).Select(trial => trial.Name).ToList();
        Assert.Distinct(names);
        Assert.All(ScenarioFile.Faults, fault =>
        {
            Assert.Contains($"fault {fault.Name}, the advice followed, seed 7", names);
            Assert.Contains($"fault {fault.Name}, the first alarm ahead, seed 3", names);
        });
        Assert.Equal((2 * ScenarioFile.Faults.Count) + FaultTrials.Emptying.Count, names.Count);
        Assert.Equal(2 * ScenarioFile.Faults.Count, FaultTrials.All(2).Count() - names.Count);
    }

    [Fact]
    public void F5_every_scenario_without_a_person_is_tried_and_every_beginning_with_each_rig_and_guidance()
    {
        var names = ScenarioTrials.All(1).Select(trial => trial.Name).ToList();
        Assert.Distinct(names);
        Assert.All(ScenarioLibrary.WithoutPerson, scenario => Assert.Contains($"scenario {scenario.Name}, an alarm ahead, seed 7", names));
        var boils = BoilTrials.All(1).Select(trial => trial.Name).ToList();
        Assert.Distinct(boils);
        Assert.Equal(2 * 2 * BoilTrials.Beginnings.Count, boils.Count);
    }

    [Fact]
    public void What_held_and_what_did_not_is_counted_and_told()
    {
        Trial[] trials = [new("one", () => null), new("two", () => Trial.FirstBroken((true, "a"), (false, "the pan burned"), (false, "c"))), new("three", () => null)];
        using var own = new OwnConsole(TextReader.Null);
        Assert.Equal(ExitStatus.Wrong, TrialsCommand.Run(trials));
        Assert.Equal(ExitStatus.Done, TrialsCommand.Run(trials[..1]));
        Assert.Equal("Failed: two: the pan burned.\n2 passed, 1 failed\n1 passed, 0 failed\n", own.Out);
    }

    [Fact]
    public void F5_an_alarm_too_late_is_a_fault_of_its_trial()
    {
        Assert.Null(FaultTrials.InTime(new(true, AlarmAhead.Asked)));
        Assert.Equal("the floor showed 599 s after the alarm, expected 600 s at the least", FaultTrials.InTime(new(true, AlarmAhead.Asked - 1)));
    }
}
