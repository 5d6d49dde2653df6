using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>Nobody leaves past words of fire, pan or boil that were not understood.</summary>
public class UnheardTests
{
    [Theory]
    [InlineData("flames in the stove")]
    [InlineData("wind got the coals going again")]
    [InlineData("pan looks lower than before")]
    [InlineData("drained the pan into buckets")]
    public void They_are_asked_about_before(string said)
    {
        var boil = Clear();
        boil.Say(said);
        Assert.IsType<RefusedLine>(boil.Answers[0]);
        boil.Say("leave");
        Assert.False(boil.State.IsOver);
        Assert.Contains(said, boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_yes_leaves_as_it_was_clear()
    {
        var boil = Clear();
        boil.Say("flames in the stove", "leave", "yes");
        Assert.True(boil.State.IsSafe);
    }

    [Fact]
    public void A_no_stays_and_the_next_word_goes()
    {
        var boil = Clear();
        boil.Say("flames in the stove", "leave", "no");
        Assert.False(boil.State.IsOver);
        boil.Say("leave");
        Assert.True(boil.State.IsSafe);
    }

    [Theory]
    [InlineData("coals spent")]
    [InlineData("boil still")]
    public void Who_looks_again_is_not_asked(string seen)
    {
        var boil = Clear();
        boil.Say("flames in the stove", seen, "leave");
        Assert.True(boil.State.IsSafe);
    }

    [Theory]
    [InlineData("the moon is out")]
    [InlineData("flames in the stove?")]
    public void What_tells_of_no_fire_or_only_asks_does_not_hold_anybody(string said)
    {
        var boil = Clear();
        boil.Say(said, "leave");
        Assert.True(boil.State.IsOver);
    }

    [Fact]
    public void Where_it_is_not_clear_that_is_what_is_said()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2", "flames in the stove", "leave");
        Assert.Contains("not clear", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void After_half_an_hour_they_no_longer_count()
    {
        var boil = Clear();
        boil.Say("flames in the stove");
        boil.After(31);
        boil.Say("leave");
        Assert.True(boil.State.IsOver);
    }

    private static Conversation Clear() => StubbornNightTests.Clear();
}
