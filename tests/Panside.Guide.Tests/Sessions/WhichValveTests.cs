using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>What was shut or opened without its name is no draw where the draw-off cannot be meant.</summary>
public class WhichValveTests
{
    [Theory]
    [InlineData("shut her off")]
    [InlineData("closed it")]
    [InlineData("it's shut")]
    public void What_is_shut_with_no_draw_open_is_asked_back_and_counts_as_none(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say(said);
        Assert.Empty(boil.State.Draws);
        Assert.Contains("stands as shut. Was syrup drawn?", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
        boil.Say("no");
        Assert.Empty(boil.State.Draws);
    }

    [Fact]
    public void A_draw_that_nobody_told_of_is_counted_by_a_yes_and_once()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("closed it", "yes", "it's shut");
        Assert.Single(boil.State.Draws);
        Assert.Contains("nothing is taken", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Who_says_that_it_was_drawn_is_believed()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("drew");
        Assert.Single(boil.State.Draws);
    }

    [Theory]
    [InlineData("it's open")]
    [InlineData("opened it")]
    [InlineData("open")]
    public void The_tank_valve_that_is_asked_for_is_open_and_no_draw_off(string said)
    {
        var boil = new Conversation(members: Conversation.Few);
        boil.Say("yes", "yes", "no", "depth 1.5");
        Assert.Equal("tank-valve", boil.Open!.Step);
        boil.Say(said);
        Assert.Equal("float-works", boil.Open!.Step);
        Assert.Empty(boil.State.Deeds);
        boil.Say(said);
        Assert.Empty(boil.State.Deeds);
        Assert.Contains("'draw open'", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("float stuck")]
    [InlineData("stack down")]
    public void What_is_open_on_a_page_that_speaks_of_another_thing_is_asked(string cry)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say(cry, "it's open");
        Assert.False(boil.State.Deeds.ContainsKey(DeedName.OpenDraw));
    }

    [Fact]
    public void Sap_that_feeds_again_is_the_yes_of_who_was_asked_to_look()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1", "depth 1.5");
        Assert.Equal("feed-cause", boil.Open!.Step);
        boil.Say("it's feeding");
        Assert.Equal("boiling", boil.State.Step);
    }
}
