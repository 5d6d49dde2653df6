using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Tests.Belief;

public class BeliefTests
{
    [Theory]
    [InlineData("depth 9", "0 to 8 in")]
    [InlineData("depth 15", "Did you mean 1.5 in?")]
    [InlineData("draw 900", "°F")]
    [InlineData("tank 36", "0 to 35 gal")]
    [InlineData("tank -1", "0 to 35 gal")]
    [InlineData("hydrometer 99", "0 to 85 Brix")]
    [InlineData("wood 900", "more than 0")]
    [InlineData("water 100", "100 °C would be possible")]
    public void What_no_rig_could_have_is_refused_and_changes_nothing(string text, string why)
    {
        var boil = Conversation.AtSteadyBoil();
        var before = boil.State;
        boil.Say(text);
        Assert.Contains(why, boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
        Assert.Equal(before.Readings, boil.State.Readings);
        Assert.Equal(before.Totals, boil.State.Totals);
        Assert.Equal(before.Step, boil.State.Step);
        Assert.Equal(before.Open, boil.State.Open);
    }

    /// <summary>A gauge that stands still over a hot fire is asked about; what differs by nothing that is shown is not told as a difference.</summary>
    [Fact]
    public void A_tank_that_stands_still_is_asked_about_as_that_and_not_as_a_refill_of_nothing()
    {
        var boil = Conversation.AtSteadyBoil(rig: "two-by-four-forced.yaml", tankGallons: 32, members: Conversation.Few);
        boil.Say("tank 32");
        for (var look = 0; look < 6; look++)
        {
            boil.Say("wood", "boil rolling");
            boil.After(8);
            boil.Say("wood", "boil rolling");
            boil.After(8);
            boil.Say("tank 32");
        }

        var asked = boil.All.OfType<QuestionLine>().Select(line => line.Text).ToList();
        Assert.Contains(asked, text => text.Contains("nothing gone from the tank in ", StringComparison.Ordinal));
        Assert.DoesNotContain(asked, text => text.Contains("0 gal", StringComparison.Ordinal) || text.Contains("32 gal or 32 gal", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("draw 103", "103 °C would fit")]
    [InlineData("draw 236", "syrup is drawn at")]
    [InlineData("water 205", "is expected here")]
    [InlineData("sap 21", "Raw sap has")]
    [InlineData("barometer 28", "at sea level?")]
    [InlineData("pressure here 30.1", "About")]
    [InlineData("drew 9 qt", "in one draw?")]
    [InlineData("wood 40", "in one charge?")]
    [InlineData("depth 6", "6 in deep?")]
    public void What_this_rig_hardly_has_is_questioned_and_yes_accepts_it(string text, string question)
    {
        var boil = Conversation.AtSteadyBoil();
        var before = boil.State;
        boil.Say(text);
        var asked = boil.Only<QuestionLine>();
        Assert.Contains(question, asked.Text, StringComparison.Ordinal);
        Assert.NotEmpty(asked.WouldTake);
        Assert.Equal(before.Readings, boil.State.Readings);
        Assert.Equal(before.Deeds, boil.State.Deeds);

        boil.Say("yes");
        Assert.Null(boil.State.Doubted);
        Assert.False(ReferenceEquals(before.Readings, boil.State.Readings) && ReferenceEquals(before.Deeds, boil.State.Deeds));
    }

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, false)]
    public void A_tank_that_falls_by_what_a_flood_takes_is_doubted_only_while_wood_goes_in(bool held, bool doubted)
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 20);
        boil.Say("tank 17");
        if (held)
        {
            boil.Say("shutdown", "yes");
        }

        boil.After(3);
        boil.Say("tank 11.5");
        Assert.Equal(doubted, boil.State.Doubted is not null);
    }

    [Fact]
    public void The_flood_of_an_earlier_shutdown_does_not_stand_for_the_one_of_the_next()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("shutdown", "yes", "flooded", "refill 15 gal");
        Assert.Equal("fire-again", boil.State.Step);
        boil.Say("yes", "wood");
        boil.FireFor(9);
        boil.Say("depth 1.5", "tank 17", "shutdown", "yes");
        boil.After(3);
        boil.Say("tank 11.5");
        Assert.Null(boil.State.Doubted);
    }

    [Fact]
    public void Nine_gallons_gone_in_four_minutes_are_questioned()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 30);
        boil.Say("tank 26");
        boil.After(4);
        boil.Say("tank 16.5");
        Assert.Contains("17 gal? That is 9.5 gal gone in 5 minutes, from 26 gal.", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
        boil.Say("no");
        Assert.Contains("Dropped: tank 16.5 gal", boil.Only<ToldLine>().Text, StringComparison.Ordinal);
        Assert.Equal(26, boil.State.Last(ReadingName.TankVolume)!.Value.Value.Value);
    }

    [Fact]
    public void A_corrected_value_closes_the_question()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 103");
        boil.Say("103 C");
        Assert.Null(boil.State.Doubted);
        Assert.Equal(new Measure(103, Unit.DegreeCelsius), boil.State.Last(ReadingName.DrawTemperature)!.Value.Value);
    }

    [Fact]
    public void An_open_question_stays_open_while_other_things_are_said()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 103");
        boil.Say("wood", "foam low", "depth 1.4");
        Assert.NotNull(boil.State.Doubted);
        boil.Say("no");
        Assert.Null(boil.State.Doubted);
    }

    [Theory]
    [InlineData("depth 0.2")]
    [InlineData("depth 0")]
    [InlineData("tank 0")]
    [InlineData("scorched")]
    [InlineData("foam over")]
    public void S4_what_warns_of_danger_is_never_questioned(string text)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(text);
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
        Assert.Empty(boil.Answers.OfType<RefusedLine>());
        Assert.Contains(boil.Answers.OfType<AdviceLine>(), line => line.Advice.Urgency is "danger" or "now");
    }

    [Fact]
    public void Ordinary_readings_are_believed()
    {
        var boil = Conversation.AtSteadyBoil(Guidance.Practised, "two-by-four-forced.yaml");
        foreach (var text in new[] { "tank 28", "depth 1 3/8", "draw 213.6", "foam low", "air 30", "barometer 30.02" })
        {
            boil.Say(text);
            Assert.Empty(boil.Answers.OfType<QuestionLine>());
            Assert.Empty(boil.Answers.OfType<RefusedLine>());
        }
    }
}
