using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>A pan that has fallen, or is about to: no wood, no draw and no shut valve goes past it, and who has no sap is told of water.</summary>
public class LowPanTests
{
    [Theory]
    [InlineData("blower quit")]
    [InlineData("pan 1")]
    public void Wood_where_none_is_to_go_in_is_counted_and_told(string said)
    {
        var boil = Conversation.AtSteadyBoil(rig: "two-by-four-forced.yaml", members: Conversation.Few);
        boil.Say("depth 1 1/2", said);
        var before = boil.State.Totals.WoodKilograms;
        boil.Say("wood in");
        Assert.True(boil.State.Totals.WoodKilograms > before);
        Assert.Contains(boil.Answers.OfType<ToldLine>(), line => line.Text.Contains("no more wood", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("cant pour no sap left")]
    [InlineData("cant pour")]
    [InlineData("can't flood it, no sap")]
    public void Who_cannot_pour_is_told_of_water(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("pan 0.6", said);
        Assert.Equal("dry-nothing", boil.State.Step);
    }

    [Fact]
    public void A_draw_over_a_pan_that_has_fallen_ends_at_once()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2", "draw open");
        boil.After(0.5);
        boil.Say("pan 1");
        Assert.Contains(boil.Answers.OfType<AdviceLine>(), line => line.Advice is { Action: "close-draw", Urgency: "now" });
    }

    [Fact]
    public void A_tank_valve_shut_over_a_shallow_pan_is_asked_to_be_opened_after_the_last_wood_too()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2", "shutdown", "yes", "shut the tank valve");
        Assert.Contains("Open it again", boil.Only<ToldLine>().Text, StringComparison.Ordinal);
    }
}
