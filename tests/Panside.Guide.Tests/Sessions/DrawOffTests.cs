using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>An open draw-off empties a pan in minutes: it is never forgotten.</summary>
public class DrawOffTests
{
    [Fact]
    public void A_draw_read_under_its_point_brings_shut_it_at_once()
    {
        var boil = Opened();
        boil.Say("draw 212");
        var advice = boil.Answers.OfType<AdviceLine>().First().Advice;
        Assert.Equal(("close-draw", "now"), (advice.Action, advice.Urgency));
        Assert.Contains("It stands at 212", advice.Because, StringComparison.Ordinal);
        Assert.Contains(boil.After(5).OfType<AdviceLine>(), line => line.Advice.Action == "close-draw");
        boil.Say("drew 1 qt");
        Assert.DoesNotContain(boil.After(10).OfType<AdviceLine>(), line => line.Advice.Action == "close-draw");
    }

    [Fact]
    public void A_draw_that_nobody_shuts_is_cried_out_again_and_again()
    {
        var boil = Opened();
        Assert.InRange(boil.After(30).OfType<AdviceLine>().Count(line => line.Advice is { Action: "close-draw" }), 6, 9);
        Assert.Equal("danger", boil.All.OfType<AdviceLine>().Last(line => line.Advice.Action == "close-draw").Advice.Urgency);
        Assert.Equal("draw-off", boil.Phase);
    }

    [Theory]
    [InlineData("open")]
    [InlineData("open", "yes")]
    public void No_wood_is_asked_for_while_it_is_open(params string[] said)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(said[0]);
        Assert.DoesNotContain(boil.After(30).OfType<AdviceLine>(), line => line.Advice.Action == "add-wood");
    }

    [Fact]
    public void A_draw_that_was_asked_for_and_not_opened_gives_way_after_a_while()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 218.2");
        Assert.Equal("draw-open", boil.State.Step);
        boil.Say("wood", "draw 212");
        boil.After(16);
        Assert.Equal("steady-boil", boil.Phase);
    }

    [Fact]
    public void A_reading_that_corrects_the_one_before_takes_the_draw_back()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 219");
        Assert.Equal("draw-open", boil.State.Step);
        boil.Say("draw 215");
        Assert.Equal("steady-boil", boil.Phase);
    }

    [Fact]
    public void Far_over_the_draw_point_one_is_told_to_pour_sap_in()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 225");
        Assert.Contains(boil.All.OfType<AdviceLine>(), line => line.Advice is { Action: "cool-pan", Urgency: "danger" });
    }

    [Fact]
    public void Close_to_the_draw_point_the_thermometer_is_asked_for_every_other_minute_also_while_the_shutdown_waits()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("depth 1 1/2", "draw 217");
        Assert.Equal("draw-at-hand", Assert.Single(boil.After(3).OfType<PromptLine>()).Prompt.Step);
        boil.Say("draw 217", "shutdown", "yes", "yes", "yes");
        Assert.Equal("spread-coals", boil.State.Step);
        Assert.Equal("draw-at-hand", boil.After(3).OfType<PromptLine>().First().Prompt.Step);
        boil.Say("draw 216");
        Assert.Equal("spread-coals", boil.After(6).OfType<PromptLine>().Last().Prompt.Step);
    }

    /// <summary>Each charge hastens the draw: where both are due, the thermometer comes first.</summary>
    [Fact]
    public void A_draw_near_has_the_thermometer_read_before_wood()
    {
        var boil = Conversation.AtSteadyBoil(Guidance.Practised);
        boil.FireFor(54);
        boil.After(4);
        boil.Say("depth 1 1/2", $"tank {boil.State.Rig.Tank!.Value.Liters / 3.785:0.0}", "water 210.4", "draw 216");
        Assert.True(new Situation(boil.Session.Setting, boil.State).MinutesToDraw is { P5: <= 4 }, "no draw is near");
        boil.After(7);
        Assert.Equal("draw-close-by", boil.Open!.Step);
        boil.Say("draw 214.5");
        Assert.Equal("wood", boil.Open!.Step);
    }

    [Fact]
    public void A_draw_open_before_the_first_boil_is_cried_out_as_well()
    {
        var boil = new Conversation();
        boil.Say("yes", "depth 1.5", "lit", "open");
        Assert.Contains(boil.After(6).OfType<AdviceLine>(), line => line.Advice.Action == "close-draw");
    }

    [Theory]
    [InlineData(1.892706, "open", "drawn 2 qt", "drew 2 qt")]
    [InlineData(0.946353, "closed", "drawn 2 qt", "drawn 1 qt")]
    [InlineData(1.892706, "drew 1 qt", "drew 1 qt")]
    public void A_draw_is_counted_once_and_a_correction_takes_its_place(double liters, params string[] said)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(said);
        Assert.Equal(liters, boil.State.Totals.DrawnLiters, 5);
    }

    [Fact]
    public void A_draw_told_too_large_is_given_back_to_the_pan()
    {
        var (boil, right) = (Conversation.AtSteadyBoil(), Conversation.AtSteadyBoil());
        boil.Say("closed", "drawn 2 qt", "drawn 1 qt");
        right.Say("closed", "drawn 1 qt", "foam low");
        Assert.Equal(right.State.Rig.Pan.Liters, boil.State.Rig.Pan.Liters, 1);
        Assert.Equal(right.State.Rig.PanSugar.Kilograms, boil.State.Rig.PanSugar.Kilograms, 1);
    }

    [Theory]
    [InlineData("no more wood")]
    [InlineData("shutdown")]
    public void No_more_wood_in_an_open_draw_ends_the_draw_and_then_the_firing(string said)
    {
        var boil = Opened();
        boil.Say(said);
        Assert.DoesNotContain(boil.Answers, line => line is RefusedLine);
        Assert.Equal("draw-last", boil.State.Step);
        Assert.Contains("No wood goes in any more", boil.Only<PromptLine>().Prompt.Because, StringComparison.Ordinal);
        boil.Say("drew 2 qt");
        Assert.Contains("wood-held", boil.State.Marks);
        boil.Say("depth 1.5", "skip", "skip", "skip");
        Assert.Equal("shutdown", boil.Phase);
        Assert.NotEqual("hold-wood", boil.State.Step);
    }

    [Fact]
    public void Over_a_burner_the_draw_ends_first_and_then_it_is_shut_off()
    {
        var boil = Conversation.AtSteadyBoil(rig: "gas-divided.yaml");
        boil.Say("draw 218.2", "yes", "shutdown");
        Assert.Equal("draw-last", boil.State.Step);
        boil.Say("drew 2 qt", "depth 1.5", "skip", "skip", "skip");
        Assert.Equal("shut-burner", boil.State.Step);
        boil.Say("yes");
        Assert.Equal("shutdown", boil.Phase);
        Assert.DoesNotContain("stop-after-draw", boil.State.Marks);
    }

    private static Conversation Opened()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 218.2", "yes");
        Assert.Equal("draw-close", boil.State.Step);
        return boil;
    }
}
