using Panside.Guide.Advice;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <content>In what words a batch is told to be out, and what is none.</content>
public partial class BatchTests
{
    [Theory]
    [InlineData("poured out", null)]
    [InlineData("poured out 5 gal", 5.0)]
    [InlineData("we poured it out into the finishing pot, 5 1/2 gal", 5.5)]
    [InlineData("emptied the pan, five gallons", 5.0)]
    [InlineData("poured the whole batch off together", null)]
    [InlineData("we poured out 5 gal into the pot", 5.0)]
    public void It_is_told_in_many_words(string words, double? gallons)
    {
        var boil = Ready(Wood);
        boil.Say("yes", words);
        var did = Assert.IsType<Did>(boil.Only<HeardLine>().As);
        Assert.Equal((DeedName.EmptyPan, gallons), (did.Name, did.Measure?.Value));
    }

    [Theory]
    [InlineData("emptied a pail into the pan")]
    [InlineData("poured 2 gal out of the pail into the pan")]
    [InlineData("poured the pail out")]
    [InlineData("poured off some")]
    [InlineData("the pan is empty")]
    [InlineData("pan emptied")]
    public void S4_what_went_in_what_was_little_and_a_pan_that_is_bare_are_no_batch(string words)
    {
        var boil = Ready(Wood);
        boil.Say("yes", words);
        Assert.Null(boil.State.Last(DeedName.EmptyPan));
        Assert.False(boil.State.Doubted is Did { Name.Code: "empty-pan" }, words);
    }

    [Theory]
    [InlineData("pour out")]
    [InlineData("pour it out")]
    [InlineData("pour out the pan")]
    [InlineData("should I pour out the pan")]
    [InlineData("should I pour it out now")]
    [InlineData("when do I pour out the pan?")]
    public void To_pour_out_is_no_leak_and_nothing_that_is_done(string words)
    {
        var boil = Boiling(Wood);
        boil.Say(words);
        Assert.NotEqual("emergency", boil.Phase);
        Assert.Null(boil.State.Last(DeedName.EmptyPan));
        Assert.Contains(boil.Answers, line => line is ToldLine || line is RefusedLine { Why: var why } && why.Contains("'poured out'", StringComparison.Ordinal));
    }

    [Fact]
    public void S2_what_pours_out_of_a_seam_is_a_leak_on_a_batch_rig_too()
    {
        var boil = Boiling(Wood);
        boil.Say("it's pouring out of the seam");
        Assert.Equal("leak", boil.Session.Setting.Flow.DangerAt(boil.State.Step)?.Code);
    }

    [Fact]
    public void Less_than_half_the_pan_is_asked_about_and_no_whole_batch()
    {
        var boil = Ready(Wood);
        boil.Say("yes", "poured out 1 gal");
        Assert.StartsWith("The whole pan poured out, 1 gal in all?", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
        boil.Say("no");
        Assert.False(new Situation(boil.Session.Setting, boil.State).IsPanEmptied);
    }
}
