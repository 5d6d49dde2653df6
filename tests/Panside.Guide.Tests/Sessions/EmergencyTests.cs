using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

public class EmergencyTests
{
    [Fact]
    public void S2_one_word_leads_to_the_emergency_from_every_phase_and_yes_leads_back()
    {
        foreach (var begin in new Func<Conversation>[]
                 {
                     () => new(),
                     () => Conversation.AtSteadyBoil(),
                     () => Begun("drew 1 qt"),
                     () => Begun("shutdown", "yes"),
                 })
        {
            var boil = begin();
            var step = boil.State.Step;
            boil.Say("emergency");
            Assert.Equal("emergency", boil.Only<PhaseLine>().Phase);
            Assert.Equal("danger", boil.Only<AdviceLine>().Advice.Urgency);
            Assert.NotNull(boil.Open);
            boil.Say("yes", "skip");
            Assert.NotEqual("emergency", boil.Phase);
            Assert.Equal(step, boil.State.Step);
        }
    }

    [Theory]
    [InlineData("scorched", "cool-pan")]
    [InlineData("pan dry", "cool-pan")]
    [InlineData("depth 0.5", "cool-pan")]
    [InlineData("foam over", "add-defoamer")]
    [InlineData("float stuck", "raise-level")]
    [InlineData("stack down", "hold-wood")]
    [InlineData("chimney fire", "hold-wood")]
    [InlineData("burned hand", "check-level")]
    [InlineData("must leave", "flood-pan")]
    public void Each_emergency_says_first_what_to_do_first(string said, string action)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(said);
        var advice = boil.Answers.OfType<AdviceLine>().First().Advice;
        Assert.Equal((action, "danger"), (advice.Action, advice.Urgency));
    }

    [Fact]
    public void O14_an_emergency_text_has_at_most_three_actions_and_twenty_seven_words()
    {
        foreach (var step in Conversation.Flow.Steps.Values.Where(step => step.Id.StartsWith("emergency-", StringComparison.Ordinal)))
        {
            Assert.InRange(step.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length, 1, 27);
        }
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(3, 1)]
    public void A_drop_of_defoamer_is_given_two_minutes_before_another_is_asked_for(double minutes, int asked)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("defoamer");
        boil.After(minutes);
        boil.Say("foam rising");
        Assert.Equal(asked, boil.Answers.OfType<AdviceLine>().Count(line => line.Advice.Action == "add-defoamer"));
    }

    [Fact]
    public void Over_a_burnt_smell_a_pail_is_not_asked_for_just_after_a_flood_and_is_later()
    {
        static bool IsPail(LineOut line) => line is AdviceLine { Advice: { Action: "cool-pan", Urgency: "now" } };
        var boil = Conversation.AtSteadyBoil();
        boil.Say("scorched", "depth 1 1/2");
        boil.After(4);
        boil.Say("scorched");
        Assert.Equal("scorch-stop", boil.State.Step);
        Assert.DoesNotContain(boil.Say("flooded", "yes"), IsPail);
        Assert.DoesNotContain(boil.After(8), IsPail);
        Assert.Contains(boil.After(4), IsPail);
    }

    [Fact]
    public void A_dry_pan_is_asked_for_until_it_is_covered_again()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 0.3");
        Assert.Equal("emergency-dry", boil.State.Step);
        boil.Say("0.5");
        Assert.Equal("emergency-dry", boil.State.Step);
        boil.Say("1.5");
        Assert.Equal("dry-cause", boil.State.Step);
        boil.Say("yes");
        Assert.Equal("steady-boil", boil.Phase);
    }

    [Fact]
    public void O3_a_dry_pan_gives_no_flood_of_alarms()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 0.3");
        var alarms = boil.Answers.Concat(boil.After(10)).OfType<AdviceLine>().Count(line => line.Advice.Urgency is "danger" or "now");
        Assert.InRange(alarms, 1, 3);
    }

    [Theory]
    [InlineData("!", "emergency-which")]
    [InlineData("fire", "emergency-fire")]
    [InlineData("I smell burning", "emergency-scorched")]
    [InlineData("it smells burnt", "emergency-scorched")]
    [InlineData("the pan is dry", "emergency-dry")]
    [InlineData("the pan is running low", "emergency-dry")]
    [InlineData("I smell burnt sugar", "emergency-scorched")]
    [InlineData("my hand is burnt", "emergency-burn")]
    [InlineData("I smell something burnt", "emergency-scorched")]
    [InlineData("hurt", "emergency-burn")]
    [InlineData("burn", "emergency-burn")]
    [InlineData("help me", "emergency-which")]
    [InlineData("It is boiling over!", "emergency-foam")]
    [InlineData("I burned my hand", "emergency-burn")]
    public void What_one_cries_out_is_understood(string cry, string step)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(cry);
        Assert.Equal(step, boil.State.Step);
    }

    [Fact]
    public void What_to_do_in_danger_is_not_put_off()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("pan dry", "later");
        Assert.Contains("cannot wait", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
        Assert.Equal("emergency-dry", boil.Open!.Step);
        Assert.False(boil.Open.CanSkip || boil.Open.CanWait);
        boil.Say("skip");
        Assert.DoesNotContain("later", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
        boil.Say("ok");
        Assert.Equal("A number is asked, in, ft, m, cm, mm.", boil.Only<RefusedLine>().Why);
    }

    [Fact]
    public void A_yes_in_an_emergency_answers_the_emergency_and_no_older_question()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("drew 9 qt", "stack down");
        Assert.Null(boil.State.Doubted);
        Assert.Contains(boil.Answers.OfType<ToldLine>(), told => told.Text.StartsWith("Dropped: ", StringComparison.Ordinal));
        boil.Say("yes");
        Assert.False(boil.State.Deeds.ContainsKey(DeedName.CloseDraw));
        Assert.NotEqual("emergency", boil.Phase);
    }

    [Theory]
    [InlineData("stack down", "yes")]
    [InlineData("chimney fire", "yes", "yes")]
    [InlineData("leak", "1 1/2", "no")]
    [InlineData("smoke", "yes", "yes", "no")]
    [InlineData("fire", "yes", "yes")]
    public void After_what_ends_a_fire_no_wood_is_asked_for(params string[] said)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(said);
        Assert.Equal("fire-ends", boil.State.Step);
        boil.Say("yes");
        Assert.DoesNotContain(boil.After(60).OfType<AdviceLine>(), line => line.Advice.Action == "add-wood");
    }

    [Fact]
    public void After_a_burn_the_pan_is_asked_for_first_and_a_clock_counts_twenty_minutes_of_cooling()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("burned hand", "yes");
        Assert.Equal(("people-pan", "pan-depth"), (boil.Open!.Step, boil.Open.Ask));
        Assert.Equal(20, (Assert.Single(boil.State.Clocks).Until - boil.Now.Time).TotalMinutes, 0.1);
        boil.Say("status");
        Assert.Contains(boil.Answers.OfType<ToldLine>(), told => told.Text == "Cool the burn: 20 minutes to go.");
        boil.Say("1 1/2");
        Assert.DoesNotContain(boil.After(19).OfType<AdviceLine>(), line => line.Advice.Action == "add-wood");
        Assert.Contains(boil.After(2).OfType<ToldLine>(), told => told.Text.StartsWith("Twenty minutes of cooling are over.", StringComparison.Ordinal));
        Assert.Empty(boil.State.Clocks);
        Assert.Equal("people-after", boil.Open!.Step);
        boil.Say("yes", "1 1/2");
        Assert.Equal("steady-boil", boil.Phase);
    }

    [Fact]
    public void A_fire_that_is_lit_under_a_pan_that_nobody_has_read_is_taken_and_the_depth_asked_at_once()
    {
        var boil = new Conversation();
        boil.Say("lit");
        Assert.True(boil.State.Deeds.ContainsKey(DeedName.LitFire));
        Assert.Equal("pan-depth", boil.Open!.Ask);
        Assert.Contains("nobody has read the pan", boil.Open.Because, StringComparison.Ordinal);
        boil.Say("0.9");
        Assert.Equal("lit-fill", boil.Open!.Step);
        boil.Say("1 1/2");
        Assert.Equal("first-boil", boil.State.Step);
        var bare = new Conversation();
        bare.Say("lit", "0.2");
        Assert.Equal("emergency-dry", bare.State.Step);
    }

    [Fact]
    public void S2_a_pan_read_low_after_a_draw_is_answered_as_a_low_pan()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("drew 1 qt");
        Assert.Equal("drawn-pan", boil.Open!.Step);
        boil.Say("0.4");
        Assert.Equal("emergency-dry", boil.Open!.Step);
        Assert.Equal("cool-pan", boil.Answers.OfType<AdviceLine>().First().Advice.Action);
    }

    [Fact]
    public void What_to_do_in_danger_is_said_again_until_it_is_answered()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("pan dry");
        Assert.InRange(boil.After(20).OfType<AdviceLine>().Count(line => line.Advice.Action == "cool-pan"), 4, 6);
    }

    [Fact]
    public void What_to_do_in_danger_comes_before_all_other_advice()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("open", "chimney");
        Assert.Equal("danger", boil.Answers.OfType<AdviceLine>().First().Advice.Urgency);
        Assert.Contains(boil.Answers.OfType<AdviceLine>(), line => line.Advice.Action == "close-draw");
    }

    [Fact]
    public void Wood_in_an_emergency_is_counted_and_no_more_of_it_is_to_go_in()
    {
        var boil = Conversation.AtSteadyBoil();
        var wood = boil.State.Totals.WoodKilograms;
        boil.Say("pan dry", "wood");
        Assert.Contains(boil.Answers.OfType<ToldLine>(), told => told.Text.StartsWith("Counted. Add no more wood", StringComparison.Ordinal));
        Assert.True(boil.State.Totals.WoodKilograms > wood);
    }

    [Fact]
    public void Low_at_the_list_of_emergencies_means_the_pan()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("emergency", "low");
        Assert.Equal("emergency-dry", boil.State.Step);
    }

    [Fact]
    public void After_a_chimney_fire_nobody_is_told_to_open_the_draft()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 14);
        boil.Say("chimney fire", "yes", "yes");
        while (boil.Open is { Ask: "confirm" })
        {
            Assert.DoesNotContain("draft", boil.Open.Text, StringComparison.Ordinal);
            boil.Say("yes");
        }
    }

    [Fact]
    public void A_low_pan_is_not_left_for_the_shutdown()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 0.4", "shutdown");
        Assert.Equal("emergency-dry", boil.State.Step);
    }

    [Fact]
    public void A_pan_that_goes_on_smelling_scorched_ends_the_firing_and_is_not_a_dead_end()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("scorched", "depth 1.5", "scorched");
        Assert.Equal("scorch-stop", boil.State.Step);
        boil.Say("flooded");
        Assert.Equal("fire-ends", boil.State.Step);
        boil.Say("yes");
        Assert.Contains("fire-over", boil.State.Marks);
        Assert.Equal("shutdown", boil.Phase);
        Assert.Contains(boil.After(12).OfType<AdviceLine>(), line => line.Advice.Action == "cool-pan");
        boil.Say("refill 10 gal");
        Assert.NotEqual("fire-again", boil.State.Step);
        boil.After(30);
        Assert.Contains(boil.All.OfType<PromptLine>().TakeLast(8), line => line.Prompt.Ask == "smell");
    }

    [Theory]
    [InlineData("chimney fire", "yes", "yes", "yes")]
    [InlineData("stack down", "yes", "yes")]
    public void No_refill_brings_the_fire_back_after_a_chimney_fire_or_a_fallen_stack(params string[] said)
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 14);
        boil.Say(said);
        boil.Say("refill 15 gal");
        Assert.Equal("shutdown", boil.Phase);
        Assert.NotEqual("fire-again", boil.State.Step);
    }

    [Fact]
    public void Having_to_leave_ends_the_firing()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("must leave", "yes");
        Assert.Equal("hold-wood", boil.State.Step);
    }

    [Fact]
    public void O12_an_emergency_over_a_draw_leads_back_into_the_draw()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("drew 1 qt");
        var step = boil.State.Step;
        Assert.Equal("draw-off", boil.Phase);
        boil.Say("emergency", "yes", "skip");
        Assert.Equal(step, boil.State.Step);
        boil.Say("skip", "skip", "skip", "skip", "skip");
        Assert.Equal("steady-boil", boil.Phase);
    }

    [Theory]
    [InlineData("pan dry")]
    [InlineData("shutdown")]
    public void Undo_takes_back_a_word_of_the_flow_and_nothing_before_it(string word)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("wood");
        var (wood, step) = (boil.State.Totals.WoodKilograms, boil.State.Step);
        boil.Say(word, "undo");
        Assert.Equal(step, boil.State.Step);
        Assert.Equal(wood, boil.State.Totals.WoodKilograms);
    }

    [Fact]
    public void S10_who_answers_and_is_asked_again_is_not_told_that_nobody_answered()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 0.5");
        for (var answer = 0; answer < 16 && boil.Open is { } open; answer++)
        {
            boil.Say(open.Ask == "pan-depth" ? "0.5" : open.Step == "dry-lost" ? "no" : "yes");
        }

        var asked = boil.All.OfType<PromptLine>().Select(line => line.Prompt.Text).ToList();
        Assert.DoesNotContain(asked, text => text.Contains("No answer for under", StringComparison.Ordinal));
        Assert.Contains(asked, text => text.StartsWith("Still not over. ", StringComparison.Ordinal));
    }

    private static Conversation Begun(params string[] said)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(said);
        return boil;
    }
}
