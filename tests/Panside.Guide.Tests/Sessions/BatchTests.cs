using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>A flat pan that is poured out whole: off the fire first, never bare over it, and what comes out is counted.</summary>
public partial class BatchTests
{
    private const string Wood = "rig: batch\nunits: us\naltitude: 600 ft\npan: { length: 30 in, width: 20 in, channels: 1 }\nfire: { draft: natural, charge: 3 lb }\nfeed: { by: hand, pail: 1 gal, tank: 20 gal }\ndraw: { by: pour }\ninstruments: [thermometer, hydrometer]\n";

    private const string Gas = "rig: batch\nunits: us\naltitude: 600 ft\npan: { length: 30 in, width: 20 in, channels: 1 }\nfire: { kind: gas, boils: 4 gal/h }\nfeed: { by: hand, pail: 1 gal, tank: 20 gal }\ndraw: { by: pour }\ninstruments: [thermometer, hydrometer]\nfinishing pot: true\n";

    [Theory]
    [InlineData(false, 66.9)]
    [InlineData(true, 60)]
    public void It_is_ready_at_syrup_or_nearly_so_where_a_pot_finishes_it(bool hasPot, double brix)
    {
        var boil = Boiling(Wood + (hasPot ? "finishing pot: true\n" : ""));
        var now = new Situation(boil.Session.Setting, boil.State);
        Assert.Equal(brix, Knowledge.DrawPoint.SugarAt(boil.State, now.DrawPointToday)!.Value.Brix, 0.2);
        Assert.Equal(66.9, Knowledge.DrawPoint.SugarAt(boil.State, now.SyrupPointToday)!.Value.Brix, 0.2);
    }

    [Fact]
    public void S8_over_a_wood_fire_two_people_lift_it_off_and_only_then_is_it_poured_out()
    {
        var boil = Ready(Wood + "finishing pot: true\n");
        Assert.Equal("batch-off", boil.State.Step);
        Assert.Contains(boil.All.OfType<CautionLine>(), line => line.Text.Contains("lifts a full pan alone", StringComparison.Ordinal));
        Assert.Contains("second person", boil.Only<PromptLine>().Prompt.Text, StringComparison.Ordinal);
        boil.Say("yes");
        Assert.Equal("batch-empty", boil.State.Step);
        Assert.Contains("finishing pot", boil.Only<PromptLine>().Prompt.Text, StringComparison.Ordinal);
        boil.Say("poured out 5 gal");
        Assert.Equal((DeedName.EmptyPan, 5), (Assert.IsType<Did>(boil.Only<HeardLine>().As).Name, ((Did)boil.Only<HeardLine>().As).Measure!.Value.Value));
        Assert.Equal("batch-refill", boil.State.Step);
    }

    [Fact]
    public void Who_is_alone_thins_it_and_lets_the_fire_die()
    {
        var boil = Ready(Wood);
        boil.Say("no");
        Assert.Equal("batch-alone", boil.State.Step);
        boil.Say("poured 1 gal", "depth 1.5");
        Assert.Equal("hold-wood", boil.State.Step);
    }

    [Fact]
    public void S8_over_a_burner_as_well_two_people_lift_it_and_who_is_alone_ladles_it_out()
    {
        var boil = Ready(Gas);
        boil.Say("yes");
        Assert.Equal("batch-off", boil.State.Step);
        Assert.Contains("second person", boil.Only<PromptLine>().Prompt.Text, StringComparison.Ordinal);
        boil.Say("no");
        Assert.Equal("batch-ladle", boil.State.Step);
        boil.Say("poured out");
        Assert.Equal("batch-refill", boil.State.Step);
        Assert.True(new Situation(boil.Session.Setting, boil.State).IsPanEmptied);
    }

    [Fact]
    public void A_depth_that_rose_as_it_was_asked_to_is_the_pour_and_the_old_reading_calls_no_more()
    {
        var boil = Ready(Wood);
        boil.Say("no");
        boil.Say("2 1/4");
        Assert.Equal("hold-wood", boil.State.Step);
        boil.Say("yes");
        boil.After(3);
        Assert.Equal("shutdown", boil.Phase);
        Assert.DoesNotContain(boil.Answers.OfType<PromptLine>(), line => line.Prompt.Step.StartsWith("batch", StringComparison.Ordinal));
        boil.After(15);
        Read(boil, "draw 218.6");
        Assert.Equal("batch-off", boil.State.Step);
        boil.Say("no");
        boil.Say("2 3/4");
        Assert.Equal("shutdown", boil.Phase);
        Assert.NotEqual("hold-wood", boil.State.Step);
    }

    [Fact]
    public void A_depth_that_did_not_rise_asks_for_the_pour_again()
    {
        var boil = Ready(Wood);
        boil.Say("no");
        var depth = new Situation(boil.Session.Setting, boil.State).Depth.Inches;
        boil.Say(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{depth - 0.2:0.00}"));
        Assert.Equal("batch-alone", boil.State.Step);
    }

    [Fact]
    public void Nothing_thickens_on_after_a_batch_that_is_out()
    {
        var boil = Ready(Wood);
        boil.Say("yes", "poured out", "depth 1 3/4", "skip", "skip", "skip", "wood");
        boil.After(9);
        boil.Say("boil rolling");
        boil.After(15);
        Assert.DoesNotContain(boil.All.OfType<PromptLine>(), line => line.Prompt.Step == "draw-again");
    }

    /// <summary>The members hold the pan for thin, the thermometer has it minutes before its point: what is told rests on the thermometer.</summary>
    [Fact]
    public void What_rests_on_minutes_tells_of_no_hours()
    {
        var boil = Boiling(Wood);
        foreach (var read in new[] { "draw 214.6", "draw 215.2", "draw 215.8", "draw 216.4", "draw 217" })
        {
            Read(boil, read);
            boil.After(1.5);
        }

        var told = boil.All.OfType<AdviceLine>().Select(line => line.Advice).Where(advice => advice.Text.Contains("batch", StringComparison.Ordinal)).ToList();
        Assert.Contains(told, advice => advice.Text.Contains("no wood until the batch", StringComparison.Ordinal));
        Assert.All(told, advice => Assert.DoesNotContain("hour", advice.Because, StringComparison.Ordinal));
    }

    [Fact]
    public void What_came_out_leaves_the_pan_with_its_sugar_and_counts_as_the_syrup_that_it_makes()
    {
        var boil = Ready(Wood + "finishing pot: true\n");
        var (held, sugar) = (boil.State.Rig.DrawPan, boil.State.Rig.DrawPanSugar);
        boil.Say("yes", "poured out");
        Assert.True(boil.State.Rig.DrawPan.Liters < 0.1 * held.Liters);
        Assert.True(boil.State.Rig.DrawPanSugar.Kilograms < 0.1 * sugar.Kilograms);
        Assert.Equal(sugar.Kilograms / 0.669 / 1.28, boil.State.Totals.DrawnLiters, 0.06 * boil.State.Totals.DrawnLiters);
        boil.Say("undo");
        Assert.Equal(held.Liters, boil.State.Rig.DrawPan.Liters, 0.1 * held.Liters);
        Assert.Equal(0, boil.State.Totals.DrawnLiters);
    }

    [Fact]
    public void A_bare_pan_is_no_low_pan_no_wood_is_asked_for_and_it_is_filled_before_it_goes_back()
    {
        var boil = Ready(Wood);
        boil.Say("yes", "poured out");
        boil.After(10);
        Assert.DoesNotContain(boil.Answers.OfType<AdviceLine>(), line => line.Advice.Action == "add-wood" || line.Advice.Urgency == "danger");
        Assert.Equal("batch-refill", boil.State.Step);
        boil.Say("poured 1.25 gal", "depth 0.6");
        Assert.Equal("batch-refill", boil.State.Step);
        boil.Say("depth 1 3/4");
        Assert.False(new Situation(boil.Session.Setting, boil.State).IsPanEmptied);
        boil.Say("skip", "skip", "skip");
        Assert.Equal("steady-boil", boil.Phase);
    }

    [Fact]
    public void S1_with_no_sap_left_it_stays_off_and_the_fire_alone_keeps_the_operator()
    {
        var boil = Ready(Wood + "finishing pot: true\n");
        boil.Say("yes", "poured out 5 gal", "no", "yes");
        Assert.Equal("pot-last", boil.State.Step);
        boil.Say("yes");
        Assert.Contains("coals", string.Join(' ', new Situation(boil.Session.Setting, boil.State).Unmet), StringComparison.Ordinal);
        Assert.Equal(0, boil.After(3).OfType<AdviceLine>().Count(line => line.Advice.Action is "flood-pan" or "raise-level" or "cool-pan"));
        boil.Say("coals deep");
        boil.After(20);
        Assert.DoesNotContain(boil.All, line => line is AdviceLine { Advice.Action: "clear-to-leave" });
        boil.Say("coals spent");
        boil.After(2);
        boil.Say("leave");
        Assert.True(boil.State is { IsOver: true, IsSafe: true });
    }

    [Fact]
    public void Over_a_burner_it_is_shut_off_first_and_lit_again_over_the_filled_pan()
    {
        var boil = Ready(Gas);
        Assert.Equal("batch-burner", boil.State.Step);
        boil.Say("yes", "yes");
        Assert.Equal("batch-empty", boil.State.Step);
        boil.Say("poured it out", "depth 1 1/2");
        Assert.Equal("batch-light", boil.State.Step);
        boil.Say("yes");
        Assert.True(new Situation(boil.Session.Setting, boil.State).IsBurnerOn);
        Assert.Equal("batch-pot", boil.State.Step);
        Assert.Contains("°F", boil.Only<PromptLine>().Prompt.Text, StringComparison.Ordinal);
        boil.Say("yes", "skip");
        Assert.Equal("steady-boil", boil.Phase);
    }

    [Fact]
    public void As_it_comes_near_no_more_wood_and_no_more_sap_is_asked_for()
    {
        var boil = Boiling(Wood);
        Read(boil, "pan 63 brix");
        Read(boil, "draw 216.6");
        boil.After(1.5);
        Read(boil, "draw 217.3");
        Assert.True(Facts.Holds(new(boil.Session.Setting, boil.State), "batch-near"));
        var said = boil.After(5);
        Assert.DoesNotContain(said.OfType<AdviceLine>(), line => line.Advice.Action is "add-wood");
        Assert.DoesNotContain(said.OfType<PromptLine>(), line => line.Prompt.Step is "pour");
        Assert.Contains(boil.All.OfType<AdviceLine>(), line => line.Advice.Text.Contains("no wood until the batch", StringComparison.Ordinal));
    }

    /// <summary>Common practice, no source: what is in the pan at the sap's end is boiled down and finished in the pot, and not flooded thin.</summary>
    [Fact]
    public void Common_practice_at_the_saps_end_it_boils_down_over_its_least_depth_and_goes_into_the_pot()
    {
        var boil = Boiling(Wood + "finishing pot: true\n");
        ToTheEnd(boil);
        Assert.Equal("boil-down", boil.State.Step);
        boil.Say("yes");
        boil.All.Clear();
        Assert.Equal("wait-still", boil.State.Step);
        for (var minute = 0; minute < 60; minute++)
        {
            boil.After(1);
            var now = new Situation(boil.Session.Setting, boil.State);
            Assert.True(now.Depth > now.Setting.Rig.LeastDepth);
            if (boil.Open?.Step == "pour-low")
            {
                boil.Say("yes");
            }
        }

        Assert.DoesNotContain(string.Join(" ", boil.All.OfType<PromptLine>().Select(line => line.Prompt.Step)).Split(" "), step => step is "flood-pan" or "flood-late" or "pour");
        var depth = new Situation(boil.Session.Setting, boil.State).Depth.Inches;
        boil.Say(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"depth {depth:0.00}"));
        boil.Say("coals spent", "boil still");
        boil.After(12);
        boil.Say("boil still");
        Assert.Equal("batch-last", boil.State.Step);
        boil.Say("poured out");
        Assert.Equal("pot-last", boil.State.Step);
        boil.Say("yes");
        boil.After(2);
        Assert.Contains(boil.All.OfType<AdviceLine>(), line => line.Advice.Action == "clear-to-leave");
    }

    [Fact]
    public void A_batch_that_has_boiled_down_too_far_to_be_left_goes_into_the_pot_and_is_not_thinned()
    {
        var boil = BoiledDown();
        Assert.True(Facts.Holds(new(boil.Session.Setting, boil.State), "too-shallow-to-leave"));
        Assert.Equal("batch-last", boil.State.Step);
        Assert.DoesNotContain(boil.All.OfType<AdviceLine>(), line => line.Advice.Text.StartsWith("Fill the pan", StringComparison.Ordinal));
        boil.Say("poured out");
        Assert.Equal("pot-last", boil.State.Step);
    }

    [Fact]
    public void S1_where_it_stays_in_the_pan_after_all_nobody_leaves_before_it_is_filled()
    {
        var boil = BoiledDown();
        boil.Say("no");
        boil.After(20);
        Assert.NotEmpty(new Situation(boil.Session.Setting, boil.State).Unmet);
        Assert.Contains(boil.All.OfType<AdviceLine>(), line => line.Advice is { Action: "flood-pan" } advice && advice.Text.Contains("or fill it to 2.5 in", StringComparison.Ordinal));
    }

    private static Conversation BoiledDown()
    {
        var boil = Boiling(Wood + "finishing pot: true\n");
        ToTheEnd(boil);
        boil.Say("yes");
        boil.After(45);
        boil.All.Clear();
        boil.Say("depth 0.8", "coals spent", "boil still");
        boil.After(12);
        boil.Say("boil still");
        return boil;
    }

    [Fact]
    public void A_flood_stays_the_way_out_of_boiling_down()
    {
        var boil = Boiling(Wood);
        ToTheEnd(boil);
        boil.Say("no");
        Assert.Equal("flood-pan", boil.State.Step);
    }

    [Fact]
    public void Who_floods_after_all_boils_down_no_more()
    {
        var boil = Boiling(Wood);
        ToTheEnd(boil);
        boil.Say("yes");
        Assert.Contains("boil-down", boil.State.Marks);
        boil.Say("wood", "yes");
        ToTheEnd(boil);
        boil.Say("no", "yes");
        Assert.DoesNotContain("boil-down", boil.State.Marks);
    }

    [Fact]
    public void S5_who_is_cautious_floods_as_common_practice_does()
    {
        var boil = Boiling(Wood, Guidance.Beginner);
        ToTheEnd(boil);
        Assert.DoesNotContain(boil.All.OfType<PromptLine>(), line => line.Prompt.Step == "boil-down");
    }

    private static void ToTheEnd(Conversation boil)
    {
        boil.Say("shutdown", "yes");
        for (var minute = 0; minute < 12 && boil.State.Step is not ("boil-down" or "flood-pan"); minute++)
        {
            boil.After(1);
            boil.Say(boil.Open?.Step is "keep-draft" or "spread-coals" ? ["yes"] : []);
        }
    }

    [Fact]
    public void S4_once_sap_covered_it_again_a_low_pan_is_a_danger_as_ever()
    {
        var boil = Ready(Wood);
        boil.Say("yes", "poured out");
        Assert.True(new Situation(boil.Session.Setting, boil.State).IsPanEmptied);
        boil.Say("poured 6 gal", "depth 1 3/4", "skip", "skip", "skip");
        boil.After(30);
        boil.Say("depth 0.4");
        if (boil.State.Doubted is not null)
        {
            boil.Say("yes");
        }

        Assert.False(new Situation(boil.Session.Setting, boil.State).IsPanEmptied);
        Assert.Equal("emergency", boil.Phase);
    }

    [Theory]
    [InlineData("two-by-four-natural.yaml", "drawn off")]
    public void A_pan_with_a_draw_off_is_not_emptied_over_a_fire(string rig, string why)
    {
        var boil = Conversation.AtSteadyBoil(rig: rig, members: Conversation.Few);
        boil.Say("emptied the pan");
        Assert.Contains(why, boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
    }

    private static Conversation Ready(string rig)
    {
        var boil = Boiling(rig);
        Read(boil, "pan 66 brix");
        foreach (var read in new[] { "draw 217.6", "draw 218.4" })
        {
            if (boil.Phase != "draw-off")
            {
                Read(boil, read);
            }
        }

        return boil;
    }

    /// <summary>Reads, and stands by it where it is doubted.</summary>
    private static void Read(Conversation boil, string read)
    {
        boil.Say(read);
        if (boil.State.Doubted is not null)
        {
            boil.Say("yes");
        }
    }

    private static Conversation Boiling(string rig, Guidance guidance = Guidance.Practised)
    {
        var boil = new Conversation(guidance, rigText: rig, members: Conversation.Few);
        boil.Say("yes", "yes", "no", "depth 1.75", "yes", "tank 12", "sap 2", "yes", "lit");
        for (var charge = 0; charge < 4; charge++)
        {
            boil.After(9);
            boil.Say(rig == Gas ? "depth 1.75" : "wood");
        }

        boil.Say("boil rolling", "water 210.9", "depth 1.75");
        return boil;
    }
}
