using Panside.Guide.Hearing;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>Who goes for supper is away, and is told the same as who is right back.</summary>
public class ErrandTests
{
    [Theory]
    [InlineData("going for supper", "away")]
    [InlineData("gonna grab some dinner", "away")]
    [InlineData("running to the house", "away")]
    [InlineData("I'm heading in to eat", "away")]
    [InlineData("going to get more wood", "away")]
    [InlineData("gotta run to the bathroom", "away")]
    [InlineData("going in for supper now", "away")]
    [InlineData("dinner's ready", "away")]
    [InlineData("off to the house for a bite", "away")]
    [InlineData("going for supper, back in 20", "away 20 minutes")]
    [InlineData("running to the house, be back in ten", "away 10 minutes")]
    [InlineData("be right back", "away")]
    [InlineData("brb", "away")]
    [InlineData("back in ten", "away 10 minutes")]
    public void Who_goes_for_a_while_is_told_what_to_do_first(string said, string heard)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1.5", said);
        Assert.Equal(heard, Assert.IsType<Text>(boil.Only<HeardLine>().As).Words);
        Assert.Contains(boil.Answers, line => line is ToldLine { Text: var told } && told.StartsWith("Before you go: read the depth", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("going home")]
    [InlineData("going to bed")]
    [InlineData("going to put wood in")]
    [InlineData("the fire is going for the house")]
    [InlineData("fire's running to the house")]
    [InlineData("can i go for supper")]
    [InlineData("going to get some foam")]
    [InlineData("heading in")]
    public void Another_word_is_no_errand(string said) => Assert.False(Errand.In(said).IsOne);
}
