using Panside.Guide.Hearing;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>Who comes back to the pan, or finds its feed shut, is asked for its depth, and a number alone answers.</summary>
public class DepthOwedTests
{
    [Theory]
    [InlineData("the tank valve was shut")]
    [InlineData("i found the valve closed, opened it")]
    [InlineData("tank valve was closed, its open now")]
    [InlineData("found the tank valve half shut")]
    [InlineData("someone shut the tank valve, i opened it again")]
    [InlineData("opened the feed valve all the way")]
    public void A_feed_that_was_found_shut_is_no_draw_and_no_leak(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say(said);
        Assert.Empty(boil.State.Draws);
        Assert.NotEqual("emergency", boil.Phase);
        Assert.Equal("pan-depth", boil.Open!.Ask);
        boil.Say("1.4");
        Assert.Equal(1.4, boil.State.Last(ReadingName.PanDepth)!.Value.Value.Value);
    }

    [Theory]
    [InlineData("shut the tank valve")]
    [InlineData("the valve was shut")]
    [InlineData("is the tank valve open")]
    [InlineData("the tank valve was not shut")]
    public void What_is_said_otherwise_finds_no_feed(string said) => Assert.False(FeedFound.Is(said));

    [Fact]
    public void Asked_for_the_feed_it_is_the_yes()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("float stuck", "the tank valve was shut");
        Assert.Equal("depth-again", boil.State.Step);
    }

    [Theory]
    [InlineData("be right back", "back")]
    [InlineData("back in ten", "i'm back")]
    [InlineData("boil rolling", "im back now")]
    public void Who_is_back_over_a_fire_is_asked_for_the_depth_before_wood(string gone, string back)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1.5", gone);
        boil.After(8);
        boil.Say(back);
        Assert.Equal("pan-depth", boil.Open!.Ask);
        Assert.DoesNotContain(boil.After(2), line => line is AdviceLine { Advice.Action: "add-wood" });
        boil.Say("1.1");
        Assert.Equal(1.1, boil.State.Last(ReadingName.PanDepth)!.Value.Value.Value);
        Assert.NotEqual("depth-owed", boil.Open?.Step);
    }

    [Fact]
    public void Before_the_fire_nothing_is_owed()
    {
        var boil = new Conversation(members: Conversation.Few);
        boil.Say("yes", "back");
        Assert.NotEqual("pan-depth", boil.Open?.Ask);
    }
}
