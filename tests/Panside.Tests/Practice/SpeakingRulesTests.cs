using Panside.Commands;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Practice.Scenarios;

namespace Panside.Tests.Practice;

/// <summary>O2, O3, O13 over whole boils: how often it cries out, and who says that something is done.</summary>
public class SpeakingRulesTests
{
    [Theory]
    [InlineData("two-by-four-forced.yaml", "beginner", 1)]
    [InlineData("two-by-four-natural.yaml", "practised", 30)]
    public void O2_a_boil_in_which_nothing_goes_wrong_has_an_alarm_an_hour_at_the_most(string rig, string guidance, long seed)
    {
        var boil = PracticeBoil.Of(rig, guidance, Scenario.ColdStart, seed);
        Assert.True(boil.Outcome.IsGood);
        Assert.InRange(boil.Outcome.Seconds, 3600, 24 * 3600);
        Assert.True(boil.Outcome.Alarms <= boil.Outcome.Seconds / 3600.0, $"{boil.Outcome.Alarms} alarms in {boil.Outcome.Seconds / 3600.0:0.0} h");

        // Routine work is asked for and is no alarm.
        var told = boil.Said.SelectMany(one => one.Answers).OfType<AdviceLine>().Where(line => line.Advice.Urgency is "danger" or "now").ToList();
        Assert.DoesNotContain(told, line => line.Advice.Action is "add-wood" or "light-fire" or "cover-pan" or "clear-to-leave" or "stay");
    }

    [Theory]
    [InlineData("foamy-night", 1)]
    [InlineData("float-stuck", 9)]
    [InlineData("tank-empty", 2)]
    [InlineData("valve-half-shut", 20)]
    public void O3_a_fault_brings_three_alarms_in_ten_minutes_at_the_most(string scenario, long seed)
    {
        var boil = PracticeBoil.Of("two-by-four-forced.yaml", "beginner", ScenarioLibrary.Of(scenario), seed);
        Assert.InRange(boil.Outcome.AlarmPeak, 1, 3);
    }

    [Fact]
    public void O13_what_is_done_is_done_by_a_line_of_the_person_and_no_forecast_ticks_it()
    {
        var boil = PracticeBoil.Of("two-by-four-forced.yaml", "beginner", Scenario.ColdStart, 1);
        var setting = Screen.Support.SessionDoor.BuiltIn(practice: true);
        var session = new Session(setting);
        var ticked = 0;
        foreach (var (line, _) in boil.Said)
        {
            var before = session.State;
            var answers = session.Hear(line);
            var meant = answers.OfType<HeardLine>().FirstOrDefault()?.As ?? line;
            foreach (var id in session.State.Done.Skip(before.Done.Count))
            {
                ticked++;
                Assert.True(Says(setting, before, meant, id), $"'{id}' was ticked by {meant}");
            }

            if (line is Tick)
            {
                Assert.Equal(before.Done.Count, session.State.Done.Count);
                Assert.Equal(before.Observations, session.State.Observations);
                Assert.Equal(before.Deeds, session.State.Deeds);
            }
        }

        Assert.InRange(ticked, 40, 1000);
        Assert.True(session.State.IsOver);
    }

    /// <summary>Whether a line says what a step or watch asks.</summary>
    private static bool Says(Setting setting, SessionState before, LineIn meant, string id)
    {
        var step = setting.Flow.Steps.GetValueOrDefault(id);
        var watch = setting.Flow.Watches.FirstOrDefault(one => one.Id == id);
        var ask = step?.Ask ?? watch?.Ask;
        return meant switch
        {
            Reading reading => reading.Name.Code == ask || Leads("reading " + reading.Name.Code),
            Observed observed => observed.Name.Code == ask || Leads($"observed {observed.Name.Code}"),
            Did did => did.Name == (step?.Deed ?? watch?.Deed) || Leads("did " + did.Name.Code),
            Answer { Word: "yes" or "no" } => before.Open?.Step == id || before.Doubted is not null,
            _ => false,
        };

        bool Leads(string trigger) => step?.Passages.Any(passage => passage.When.StartsWith(trigger, StringComparison.Ordinal)) == true;
    }
}
