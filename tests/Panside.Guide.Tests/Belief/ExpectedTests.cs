using Panside.Guide.Advice;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Belief;

public class ExpectedTests
{
    [Theory]
    [InlineData(10, 2, 14, 2)]
    [InlineData(10, 2, 4, -3)]
    public void Off_counts_deviations(double mean, double deviation, double value, double off) =>
        Assert.Equal(off, new Expectation(mean, deviation).Off(value), 1e-9);

    [Fact]
    public void A_ratio_is_as_far_off_both_ways()
    {
        var expected = new Expectation(8, 0.5) { IsRatio = true };
        Assert.Equal(expected.Off(16), -expected.Off(4), 1e-9);
    }

    [Fact]
    public void Below_may_have_a_deviation_of_its_own()
    {
        var expected = new Expectation(100, 0.5) { Below = 20 };
        Assert.Equal(-1, expected.Off(80), 1e-9);
        Assert.True(expected.IsFar(103));
    }

    [Theory]
    [InlineData("tank 3 L", "", "gone in")]
    [InlineData("depth 2.5", "", "expected")]
    [InlineData("draw 231", "", "syrup is drawn at")]
    [InlineData("draw 198", "", "is drawn at")]
    [InlineData("draw 312 F", "", "not possible")]
    [InlineData("sap 0.2", "", "Raw sap has")]
    [InlineData("sap 3.4", "", "expected")]
    [InlineData("water 201", "", "expected")]
    [InlineData("sample 18", "", "not possible")]
    [InlineData("depth 3.8", "3.8 cm would fit", "About 1.5 in is expected")]
    public void A_slip_is_not_taken_silently(string text, string hint, string says)
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 28);
        boil.Say(text);
        var said = boil.Answers.OfType<QuestionLine>().Select(line => line.Text)
            .Concat(boil.Answers.OfType<RefusedLine>().Select(line => line.Why)).Single();
        Assert.Contains(says, said, StringComparison.Ordinal);
        Assert.Contains(hint, said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("draw 217", "have the pail ready")]
    [InlineData("draw 221", "draw it off now")]
    [InlineData("draw 226", "pour sap in at the draw-off now")]
    public void A_draw_off_that_surprises_says_what_it_would_ask_for(string text, string says)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 212.5");
        boil.After(1);
        boil.Say("draw 212.5");
        boil.After(1);
        boil.Say(text);
        Assert.Contains(says, boil.Only<QuestionLine>().WouldTake, StringComparison.Ordinal);
    }

    [Fact]
    public void A_doubt_that_another_takes_the_place_of_is_said_to_be_dropped()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 28);
        boil.Say("draw 198");
        boil.Say("sap 22");
        Assert.Contains(boil.Answers.OfType<ToldLine>(), line => line.Text.StartsWith("Dropped, as it was not answered: draw-off", StringComparison.Ordinal));
        Assert.Single(boil.Answers.OfType<QuestionLine>());
    }

    [Fact]
    public void S4_a_low_pan_is_acted_on_first_and_then_the_way_back_is_told()
    {
        var boil = Conversation.AtSteadyBoil();
        var (phase, depth) = (boil.Phase, boil.State.Last(ReadingName.PanDepth));
        boil.Say("depth 0.15");
        Assert.Equal("emergency", boil.Phase);
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
        var told = boil.Answers.OfType<ToldLine>().Last(line => line.Text.Contains("'undo'", StringComparison.Ordinal));
        Assert.StartsWith("About 1.5 in was expected, 0.15 in is said.", told.Text, StringComparison.Ordinal);
        Assert.True(boil.Answers.OfType<PromptLine>().First().Sequence < told.Sequence);

        boil.Say("undo");
        Assert.Equal(phase, boil.Phase);
        Assert.Equal(depth, boil.State.Last(ReadingName.PanDepth));
    }

    [Fact]
    public void A_pan_filled_by_hand_once_no_wood_goes_in_is_believed()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("shutdown", "yes", "depth 2.5");
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
    }

    [Fact]
    public void Thinner_liquid_at_an_open_draw_off_is_believed()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 217.5", "open", "draw 212");
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
    }

    [Fact]
    public void A_pan_left_sweeter_than_anyone_said_is_believed_at_its_first_reading()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 219");
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
    }

    [Fact]
    public void Every_reading_that_is_known_has_an_expectation_over_the_fire()
    {
        var boil = Conversation.AtSteadyBoil();
        var situation = new Situation(boil.Session.Setting, boil.State);
        Assert.All(KnownReadings.BuiltIn.All.Where(name => name.IsThere(boil.Session.Setting.Rig)), name => Assert.True(name.Expected(situation) is { Deviation: > 0 }, name.Code));
    }
}
