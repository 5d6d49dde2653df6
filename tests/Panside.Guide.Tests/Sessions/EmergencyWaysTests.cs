using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>S10 and S11: every emergency has a way out, and of two the graver stands first.</summary>
public class EmergencyWaysTests
{
    [Theory]
    [InlineData("hurt", "foam over", "emergency-burn", "emergency-foam")]
    [InlineData("fire", "depth 0.4", "emergency-fire", "emergency-dry")]
    [InlineData("dry", "foam over", "emergency-dry", "emergency-foam")]
    [InlineData("depth 0.4", "float stuck", "emergency-dry", "emergency-float")]
    [InlineData("scorched", "leak", "emergency-scorched", "emergency-leak")]
    [InlineData("foam", "chimney", "emergency-foam", "emergency-chimney")]
    public void S11_the_graver_danger_stands_and_the_lesser_comes_after_it(string graver, string lesser, string stands, string comes)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(graver, lesser);
        Assert.Equal(stands, boil.State.Step);
        Assert.Equal(stands, boil.Open!.Step);
        Assert.Equal("danger", boil.Answers.OfType<AdviceLine>().First().Advice.Urgency);
        Assert.Contains(boil.Answers.OfType<ToldLine>(), told => told.Text.StartsWith("Then: ", StringComparison.Ordinal));
        Assert.Contains(comes, boil.State.Back);
        for (var answers = 0; boil.State.Step != comes; answers++)
        {
            Assert.InRange(answers, 0, 12);
            Assert.Equal("emergency", boil.Phase);
            Answered(boil);
        }
    }

    [Theory]
    [InlineData("foam over", "hurt", "emergency-burn", "emergency-foam")]
    [InlineData("float stuck", "scorched", "emergency-scorched", "emergency-float")]
    [InlineData("chimney", "depth 0.4", "emergency-dry", "emergency-chimney")]
    public void S11_a_graver_danger_comes_over_the_lesser_which_comes_back_by_itself(string lesser, string graver, string stands, string comes)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(lesser, graver);
        Assert.Equal(stands, boil.Open!.Step);
        for (var answers = 0; boil.State.Step != comes; answers++)
        {
            Assert.InRange(answers, 0, 12);
            Answered(boil);
        }
    }

    [Fact]
    public void S10_with_no_sap_and_no_water_an_emergency_ends_by_honest_answers()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 0.3");
        var asked = new List<string>();
        while (boil.Phase == "emergency")
        {
            asked.Add(boil.Open!.Text);
            Assert.InRange(asked.Count, 1, 6);
            boil.Say(boil.Open.Step == "dry-lost" ? "yes" : "no");
        }

        Assert.Contains(asked, text => text.Contains("snow", StringComparison.Ordinal));
        Assert.Equal(asked.Distinct(), asked);
        boil.Say("yes");
        Assert.DoesNotContain(boil.After(9).OfType<PhaseLine>(), line => line.Phase == "emergency");
        Assert.Contains(boil.After(5).OfType<PhaseLine>(), line => line.Phase == "emergency");
    }

    [Fact]
    public void S10_a_pan_that_stays_low_is_asked_for_three_times_and_then_something_else()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 0.3", "0.3", "0.3", "0.4");
        Assert.Equal("dry-nothing", boil.State.Step);
    }

    [Fact]
    public void S10_a_bare_pan_over_a_spent_fire_ends_the_emergency_and_it_does_not_come_back()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 0.3", "no", "no", "yes", "yes", "still", "spent", "yes");
        Assert.NotEqual("emergency", boil.Phase);
        Assert.DoesNotContain(boil.After(60).OfType<PhaseLine>(), line => line.Phase == "emergency");
        boil.Say("depth 0.3");
        Assert.Equal("emergency-dry", boil.State.Step);
        boil.Say("no", "still");
        Assert.NotEqual("emergency", boil.Phase);
    }

    [Fact]
    public void S10_nothing_is_asked_more_than_three_times_in_the_same_words()
    {
        foreach (var danger in Conversation.Flow.Dangers)
        {
            var boil = Conversation.AtSteadyBoil();
            boil.Say(danger.Code);
            boil.After(90);
            Assert.All(
                boil.All.OfType<PromptLine>().Where(line => line.Prompt.Step == danger.Go).GroupBy(line => line.Prompt.Text),
                same => Assert.InRange(same.Count(), 1, 3));
        }
    }

    [Fact]
    public void S11_no_defoamer_is_asked_for_over_a_bare_pan()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 0.3", "foam rising");
        Assert.DoesNotContain(boil.Answers.OfType<AdviceLine>(), line => line.Advice.Action == "add-defoamer");
        boil.Say("1 1/2", "yes");
        Assert.Contains(boil.Answers.OfType<AdviceLine>(), line => line.Advice.Action == "add-defoamer");
    }

    [Fact]
    public void S10_a_building_that_burns_ends_the_boil_as_left_and_not_as_safe()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("fire", "no", "no");
        Assert.False(boil.Only<OverLine>().Outcome.Safe);
    }

    /// <summary>Answers what is open as somebody would for whom all goes well.</summary>
    private static void Answered(Conversation boil)
    {
        if (boil.Open is null || boil.Open.Step != boil.State.Step)
        {
            boil.After(1);
            return;
        }

        boil.Say(boil.Open.Ask switch { "pan-depth" => "1 1/2", "smell" => "sweet", "foam" => "low", _ => "yes" });
    }
}
