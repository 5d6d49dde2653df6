using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Belief;

/// <summary>F7: an outlier that the operator stands by widens the forecasts instead of being ignored.</summary>
public class InsistedTests
{
    [Theory]
    [InlineData("tank 14")]
    [InlineData("tank 34.5")]
    [InlineData("depth 3")]
    [InlineData("draw 103")]
    [InlineData("draw 236")]
    [InlineData("water 205")]
    [InlineData("sap 21")]
    [InlineData("pan sugar 60")]
    [InlineData("draw sugar 70")]
    [InlineData("hydrometer 33")]
    [InlineData("sample 30")]
    [InlineData("air 130")]
    [InlineData("barometer 28")]
    [InlineData("pressure here 30.1")]
    [InlineData("drew 9 qt")]
    [InlineData("wood 40")]
    public void An_outlier_that_is_insisted_on_widens_the_forecast(string text)
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 28);
        var before = RateBand(boil);
        boil.Say(text);
        Assert.NotEmpty(boil.Only<QuestionLine>().WouldTake);
        Assert.Equal(before, RateBand(boil));

        boil.Say("yes");
        Assert.Null(boil.State.Doubted);
        Assert.InRange(RateBand(boil), before * 1.15, double.MaxValue);
    }

    [Fact]
    public void What_was_insisted_on_is_not_doubted_again_while_it_stands_there()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 28);
        boil.Say("depth 5 1/2");
        boil.Only<QuestionLine>();
        boil.Say("yes");
        var band = RateBand(boil);
        boil.Say("depth 5 1/2");
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
        Assert.InRange(RateBand(boil), 0, band * 1.06);
        boil.Say("depth 6 1/2");
        boil.Only<QuestionLine>();
    }

    [Theory]
    [InlineData("tank 25")]
    [InlineData("depth 1 3/8")]
    [InlineData("draw 213")]
    [InlineData("water 210.6")]
    [InlineData("sap 2.1")]
    public void What_is_about_what_was_expected_does_not(string text)
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 28);
        var before = RateBand(boil);
        boil.Say(text);
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
        Assert.InRange(RateBand(boil), 0, before * 1.06);
    }

    [Fact]
    public void Two_readings_that_agree_are_as_good_as_a_yes()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 28);
        var before = RateBand(boil);
        boil.Say("tank 14");
        boil.After(1);
        boil.Say("tank 14");
        Assert.Null(boil.State.Doubted);
        Assert.InRange(RateBand(boil), before * 1.15, double.MaxValue);
    }

    /// <summary>The middle nine tenths of what boils off in an hour, over its middle: a shallower pan that boils less is no surer for that.</summary>
    private static double RateBand(Conversation boil)
    {
        var rate = boil.State.Rigs.Forecasts.RatesLitersPerHour(firing: true);
        return (rate.At(0.95) - rate.At(0.05)) / rate.At(0.5);
    }
}
