using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Tests.Advice;

/// <summary>Facts of the trade for a small divided pan of 2 ft by 4 ft, wood-fired: common practice, no source.</summary>
public class CommonPracticeTests
{
    [Fact]
    public void Common_practice_a_pan_is_run_at_about_an_inch_and_a_half()
    {
        var rig = new Conversation(rigText: "rig: plain\nunits: us\npan: { length: 48 in, width: 24 in }\nfire: { draft: natural }\n").Session.Setting.Rig;
        Assert.Equal(1.5, rig.RunDepth.Inches, 9);
        Assert.True(rig.FloodDepth > rig.RunDepth);
    }

    [Fact]
    public void S5_common_practice_a_newcomer_keeps_five_gallons_in_the_tank_at_the_last_charge()
    {
        foreach (var rig in new[] { "two-by-four-natural.yaml", "two-by-four-forced.yaml" })
        {
            var boil = Steady(Guidance.Beginner, rig);
            Assert.True(Stop(boil) > 4.999);
            boil.Say($"tank {Stop(boil) + 6:0.0}");
            var tank = TankAtHold(boil);
            Assert.True(tank >= 5, $"{rig}: held at {tank:0.0} gal");
        }
    }

    [Fact]
    public void S5_common_practice_the_first_shutdown_of_a_season_is_cautious_whoever_runs_it()
    {
        var first = Steady(Guidance.Practised, known: false);
        var later = Steady(Guidance.Practised, known: true);
        Assert.True(Stop(first) > Stop(later));
        Assert.True(Stop(first) > 4.999);
    }

    [Fact]
    public void Common_practice_a_confident_hand_keeps_three_gallons()
    {
        Assert.Equal(3, CommonPractice.ReserveAtLastCharge(Area.FromSquareFeet(8), cautious: false).UsGallons, 9);
        Assert.True(Stop(Steady(Guidance.Practised)) > 2.999);
    }

    [Fact]
    public void Common_practice_the_floor_grows_with_the_pan()
    {
        Assert.Equal(10, CommonPractice.ReserveAtLastCharge(Area.FromSquareFeet(16), cautious: true).UsGallons, 9);
    }

    [Fact]
    public void Common_practice_a_draw_of_over_twice_two_quarts_is_questioned_and_one_of_two_is_not()
    {
        var boil = Steady(Guidance.Practised);
        boil.Say("drew 2 qt");
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
        boil.Say("drew 5 qt");
        Assert.Single(boil.Answers.OfType<QuestionLine>());
    }

    [Fact]
    public void S3_no_text_closes_the_draft_or_shovels_coals_but_in_the_emergency()
    {
        var flow = Conversation.Flow;
        var texts = flow.Steps.Values.Where(step => step.Phase.Code != "emergency").SelectMany(step => new[] { step.Text, step.IfNo ?? "" })
            .Concat(flow.Watches.Select(watch => watch.Text))
            .Concat(flow.Advices.Select(rule => rule.Text));
        foreach (var text in texts)
        {
            Assert.DoesNotMatch("(?i)(close|shut|choke|damp)[^.]*(draft|damper|air)|shovel", text);
        }

        Assert.Contains(flow.Steps.Values, step => step.Text.Contains("draft open", StringComparison.Ordinal));
    }

    [Fact]
    public void Common_practice_coals_are_raked_level_and_burned_out_under_an_open_draft()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("shutdown", "yes", "yes", "yes");
        Assert.Contains(boil.After(10).OfType<AdviceLine>(), line => line.Advice.Action == "spread-coals");
        Assert.Contains("level", boil.Open!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Common_practice_coals_that_pile_up_tell_of_unseasoned_wood()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("coals deep");
        Assert.Contains(boil.Answers.OfType<AdviceLine>(), line => line.Advice.Because.Contains("not seasoned", StringComparison.Ordinal));
    }

    [Fact]
    public void Common_practice_a_container_stands_ready_for_an_unplanned_draw_and_the_last_draw_goes_indoors()
    {
        Assert.Contains("pail", Conversation.Flow.Steps["draw-pail"].Text, StringComparison.Ordinal);
        Assert.Contains("indoors", Conversation.Flow.Steps["kept-warm"].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Common_practice_a_lid_for_the_night_and_a_drying_fire_after_rain()
    {
        Assert.Matches("rain.*insects.*animals.*runs back", Conversation.Flow.Steps["cover-pan"].Because!);
        Assert.Contains("two-hour fire", Conversation.Flow.Steps["weather"].Because!, StringComparison.Ordinal);
        Assert.Contains("wet", Conversation.Flow.Steps["season-last"].Because!, StringComparison.Ordinal);
    }

    private static Conversation Steady(Guidance guidance, string rig = "two-by-four-natural.yaml", bool known = true)
    {
        var boil = Conversation.AtSteadyBoil(guidance, rig, tankGallons: 35, known);
        boil.FireFor(45);
        return boil;
    }

    private static double Stop(Conversation boil) =>
        new Situation(boil.Session.Setting, boil.State).StopLiters!.Value / 3.785411784;

    private static double TankAtHold(Conversation boil)
    {
        for (var charge = 0; charge < 40 && boil.Phase != "shutdown"; charge++)
        {
            boil.FireFor(1);
        }

        return boil.State.Rig.Tank!.Value.UsGallons;
    }
}
