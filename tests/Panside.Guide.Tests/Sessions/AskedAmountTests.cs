using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>Who asks whether an amount is right has read nothing, and is told what it should be.</summary>
public class AskedAmountTests
{
    [Theory]
    [InlineData("is 1.5 inches ok", "never under 0.75 in")]
    [InlineData("is 1.5 ok?", "never under 0.75 in")]
    [InlineData("1.5 ok?", "never under 0.75 in")]
    [InlineData("is 1 1/2 in deep enough", "never under 0.75 in")]
    [InlineData("is 2\" too deep", "never under 0.75 in")]
    [InlineData("is depth 1 ok", "never under 0.75 in")]
    [InlineData("is 217 ok", "Syrup is drawn at")]
    [InlineData("is 217.5F too hot?", "Syrup is drawn at")]
    [InlineData("is 20 gal enough", "in the tank when the last charge goes in")]
    [InlineData("is 12 gallons enough sap?", "in the tank when the last charge goes in")]
    public void It_is_answered_and_nothing_is_taken_or_offered(string said, string answer)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        var read = boil.State.Readings;
        boil.Say(said);
        Assert.Equal(read, boil.State.Readings);
        Assert.Null(boil.State.Doubted);
        Assert.Contains(boil.Answers, line => line is ToldLine { Text: var told } && told.Contains(answer, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("depth is 1.5")]
    [InlineData("it's 1.5")]
    [InlineData("pan is 1.5 in deep")]
    public void What_is_told_is_still_read(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1.4", "be right back", "back", said);
        Assert.Equal(1.5, boil.State.Last(ReadingName.PanDepth)!.Value.Value.Value);
    }
}
