using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

public class EmergencyTests
{
    [Fact]
    public void S2_one_word_leads_to_the_emergency_from_every_phase_and_yes_leads_back()
    {
        foreach (var begin in new Func<Conversation>[]
                 {
                     () => new(),
                     () => Conversation.AtSteadyBoil(),
                     () => Begun("drew 1 qt"),
                     () => Begun("shutdown", "yes"),
                 })
        {
            var boil = begin();
            var step = boil.State.Step;
            boil.Say("emergency");
            Assert.Equal("emergency", boil.Only<PhaseLine>().Phase);
            Assert.Equal("danger", boil.Only<AdviceLine>().Advice.Urgency);
            Assert.NotNull(boil.Open);
            boil.Say("yes");
            Assert.NotEqual("emergency", boil.Phase);
            Assert.True(boil.State.Step == step || boil.Phase == "steady-boil");
        }
    }

    [Theory]
    [InlineData("scorched", "cool-pan")]
    [InlineData("pan dry", "cool-pan")]
    [InlineData("depth 0.5", "cool-pan")]
    [InlineData("foam over", "add-defoamer")]
    [InlineData("float stuck", "raise-level")]
    [InlineData("stack down", "hold-wood")]
    [InlineData("chimney fire", "hold-wood")]
    [InlineData("burned hand", "check-level")]
    [InlineData("must leave", "flood-pan")]
    public void Each_emergency_says_first_what_to_do_first(string said, string action)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(said);
        var advice = boil.Answers.OfType<AdviceLine>().First().Advice;
        Assert.Equal((action, "danger"), (advice.Action, advice.Urgency));
    }

    [Fact]
    public void O14_an_emergency_text_has_at_most_three_actions_and_twenty_seven_words()
    {
        foreach (var step in Conversation.Flow.Steps.Values.Where(step => step.Id.StartsWith("emergency-", StringComparison.Ordinal)))
        {
            Assert.InRange(step.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length, 1, 27);
        }
    }

    [Fact]
    public void A_dry_pan_is_asked_for_until_it_is_covered_again()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 0.3");
        Assert.Equal("emergency-dry", boil.State.Step);
        boil.Say("0.5");
        Assert.Equal("emergency-dry", boil.State.Step);
        boil.Say("1.5");
        Assert.Equal("dry-cause", boil.State.Step);
        boil.Say("yes");
        Assert.Equal("steady-boil", boil.Phase);
    }

    [Fact]
    public void O3_a_dry_pan_gives_no_flood_of_alarms()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 0.3");
        var alarms = boil.Answers.Concat(boil.After(10)).OfType<AdviceLine>().Count(line => line.Advice.Urgency is "danger" or "now");
        Assert.InRange(alarms, 1, 3);
    }

    private static Conversation Begun(params string[] said)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(said);
        return boil;
    }
}
