using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Tests.Sessions;

/// <summary>What makes it clear to leave sooner: a pour that stills a dying boil, and a second sample where one alone does not count.</summary>
public class SoonerClearTests
{
    [Fact]
    public void A_pour_that_stills_a_dying_boil_is_asked_for_with_its_amount_and_both_times()
    {
        var boil = Dying();
        var pour = boil.All.OfType<AdviceLine>().Last(line => line.Advice.Text.StartsWith("To leave sooner", StringComparison.Ordinal)).Advice;
        Assert.Equal(("cool-pan", "pour-to-still"), (pour.Action, boil.Open?.Step));
        Assert.Matches("pour in [1-5] gal of cold sap or clean water", pour.Text);
        Assert.Matches("Clear about 15 minutes after it; waiting can take [2-9][05] minutes", pour.Because);
    }

    [Fact]
    public void Yes_counts_what_was_asked_for_as_poured_in_and_the_boil_must_be_seen_still_again()
    {
        var boil = Dying();
        var asked = Now(boil).StillingPour!.Liquid;
        boil.Say("yes");
        var poured = boil.State.Last(DeedName.FillPan)!.Value;
        Assert.Equal(asked.UsGallons, boil.Session.Setting.Units.Volume(poured.Value!.Value).UsGallons, 6);
        boil.Say("depth 3", "boil still");
        Assert.Contains("the boil must be seen still 10 minutes after a pour", Now(boil).Unmet);
    }

    [Fact]
    public void It_is_the_least_that_stills_four_of_five_members_and_one_gallon_less_does_not()
    {
        var now = Now(Dying());
        var least = now.StillingPour!.Liquid;
        double Still(Volume poured) => now.State.Rigs.Poured(poured, isWater: true).Forecasts.WithoutFeed.StillMinutes(0.8);
        Assert.True(Still(least) < 1);
        Assert.True(Still(Volume.FromUsGallons(least.UsGallons - 1)) >= 1);
    }

    [Theory]
    [InlineData("boil rolling")]
    [InlineData("coals deep")]
    [InlineData("smell scorched")]
    [InlineData("foam rising")]
    [InlineData("boil still")]
    [InlineData("poured 1 gal sap")]
    public void None_is_asked_for_where_something_else_comes_first(string said)
    {
        var boil = Dying();
        boil.Say(said);
        Assert.Null(Now(boil).StillingPour);
    }

    [Fact]
    public void A_sample_much_thinner_than_the_reading_before_the_flood_is_asked_for_again_at_once_and_two_that_agree_count()
    {
        var boil = SweetThenFlooded("coals deep");
        boil.Say("draw-off sugar 25 brix");
        Assert.True(Facts.Holds(Now(boil), "draw-side-once"), string.Join("; ", Now(boil).Unmet));
        boil.Say("coals deep");
        boil.After(4);
        Assert.Contains(boil.All.OfType<PromptLine>(), line => line.Prompt.Step == "draw-side-again");
        boil.Say("draw-off sugar 26 brix");
        Assert.False(Facts.Holds(Now(boil), "draw-side-once"));
        Assert.DoesNotContain(Now(boil).Unmet, reason => reason.Contains("near syrup", StringComparison.Ordinal));
    }

    [Fact]
    public void S1_one_thin_sample_typed_twice_is_one()
    {
        var boil = SweetThenFlooded("coals spent");
        boil.Say("draw-off sugar 8 brix", "yes", "draw-off sugar 8 brix", "yes");
        Assert.Contains(Now(boil).Unmet, reason => reason.Contains("near syrup", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("what if I pour a gallon")]
    [InlineData("what if I pour in 2 gal of cold water")]
    [InlineData("what if I pour 2 gal at the draw-off side?")]
    public void What_a_pour_would_do_can_be_asked_with_and_without_it(string asked)
    {
        var boil = Dying();
        boil.Say(asked);
        var told = boil.Answers.OfType<ToldLine>().Select(line => line.Text).ToList();
        Assert.Contains(told, text => text.Contains("The pan would stand at about", StringComparison.Ordinal));
        Assert.Contains(told, text => text.StartsWith("Without it: still in about", StringComparison.Ordinal));
        Assert.Null(boil.State.Last(DeedName.FillPan));
    }

    /// <summary>A pan that was near syrup, then flooded, and is still; its channels differ.</summary>
    private static Conversation SweetThenFlooded(string coals)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw temp 217.2", "draw temp 217.2", "shutdown", "yes");
        boil.After(30);
        boil.Say("flood", "depth 2.5", "gradient clear", coals);
        boil.After(11);
        boil.Say("boil still", "depth 2.5");
        return boil;
    }

    /// <summary>A flooded pan that simmers over thin coals.</summary>
    private static Conversation Dying()
    {
        var boil = Flooded(afterMinutes: 16);
        boil.Say("depth 2.5", "coals thin", "boil simmering");
        boil.After(2);
        return boil;
    }

    private static Conversation Flooded(double afterMinutes, Guidance guidance = Guidance.Practised)
    {
        var boil = Conversation.AtSteadyBoil(guidance);
        boil.Say("shutdown", "yes", "flood", "depth 2.5");
        boil.After(afterMinutes);
        return boil;
    }

    private static Situation Now(Conversation boil) => new(boil.Session.Setting, boil.State);
}
