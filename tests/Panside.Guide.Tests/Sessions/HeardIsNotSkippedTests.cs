using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>What was heard is not told as skipped, and what was read this minute is told as it was read.</summary>
public class HeardIsNotSkippedTests
{
    [Fact]
    public void A_step_whose_deed_was_told_before_it_was_asked_is_not_skipped_when_facts_lead_over_it()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 8);
        boil.Say("shutdown", "yes", "spread", "yes", "yes");
        Assert.Equal("spread-coals", boil.State.Step);
        boil.Say("coals spent", "yes");
        Assert.Equal("keep-fed", boil.State.Step);
        Assert.DoesNotContain("spread-coals", boil.State.Skipped);
    }

    [Fact]
    public void A_step_that_was_led_over_and_is_told_of_later_is_not_skipped()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 8);
        boil.Say("shutdown", "yes", "yes", "yes", "coals spent", "yes");
        Assert.Contains("spread-coals", boil.State.Skipped);
        boil.Say("spread");
        Assert.DoesNotContain("spread-coals", boil.State.Skipped);
        boil.Say("undo");
        Assert.Contains("spread-coals", boil.State.Skipped);
    }

    [Fact]
    public void Coals_that_were_raked_before_the_last_wood_are_to_be_raked_again()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("spread");
        boil.After(2);
        boil.Say("wood");
        boil.After(2);
        boil.Say("shutdown", "yes", "yes", "yes", "coals spent", "yes");
        Assert.Contains("spread-coals", boil.State.Skipped);
    }

    [Theory]
    [InlineData("depth 1 1/8", "1.13 in")]
    [InlineData("depth 1 3/4", "1.75 in")]
    public void A_depth_of_this_very_minute_is_told_as_it_was_read(string said, string told)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(said);
        boil.Say("status");
        Assert.Contains($"pan {told} deep,", boil.Answers.OfType<ToldLine>().First().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_depth_that_something_has_changed_since_or_that_was_taken_back_is_told_as_reckoned()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 1 1/8", "undo", "status");
        Assert.DoesNotContain("1.13 in", boil.Answers.OfType<ToldLine>().First().Text, StringComparison.Ordinal);
        boil.Say("depth 1 1/8", "poured 2 gal", "status");
        Assert.DoesNotContain("1.13 in", boil.Answers.OfType<ToldLine>().First().Text, StringComparison.Ordinal);
    }
}
