using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>The charge that must not go in, and the one that may.</summary>
public class LastChargeTests
{
    [Theory]
    [InlineData(Guidance.Beginner, "two-by-four-natural.yaml")]
    [InlineData(Guidance.Practised, "two-by-four-natural.yaml")]
    [InlineData(Guidance.Beginner, "two-by-four-forced.yaml")]
    [InlineData(Guidance.Practised, "two-by-four-forced.yaml")]
    public void The_last_charge_is_called_so_and_none_is_asked_for_right_before_the_wood_is_held(Guidance guidance, string rig)
    {
        var boil = Conversation.AtSteadyBoil(guidance, rig, tankGallons: 14);
        for (var minute = 0; minute < 240 && boil.Phase != "shutdown"; minute++)
        {
            boil.After(1);
            if (minute % 10 == 5)
            {
                boil.Say("depth 1 1/2");
            }

            if (boil.Open is { } open && open.Step is "wood" or "last-wood")
            {
                boil.Say("wood");
            }
        }

        Assert.Equal("shutdown", boil.Phase);
        var interval = boil.Session.Setting.Rig.Interval;
        var asked = boil.All.OfType<AdviceLine>().Where(line => line.Advice.Action == "add-wood").ToList();
        var held = boil.All.OfType<AdviceLine>().First(line => line.Advice is { Action: "hold-wood", Urgency: "now" }).At!.Value.Time;
        var (last, since) = (asked[^1].Advice.Text, held - asked[^1].At!.Value.Time);

        // A call that is near is called the last: then a weaker fire takes a while longer to come down to the stop.
        Assert.True(
            last.StartsWith("Put in the last charge", StringComparison.Ordinal) ? since <= 1.6 * interval : since >= interval / 2,
            $"'{last}' {since.TotalMinutes:F0} min before no more wood");
    }

    /// <summary>It once told of a charge, so that none was asked for and the fire went out.</summary>
    [Fact]
    public void A_yes_to_firing_on_tells_of_no_charge_and_one_is_asked_for_when_it_is_due()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 30);
        var before = boil.State.Last(DeedName.AddWood);
        boil.Say("depth 1.5", "boil still");
        Assert.Equal("fire-down", boil.Open?.Step);
        boil.Say("yes");
        Assert.Equal(before, boil.State.Last(DeedName.AddWood));
        Assert.Equal("steady-boil", boil.Phase);
        Assert.Contains(boil.After(12).OfType<AdviceLine>(), line => line.Advice.Action == "add-wood");
    }

    [Fact]
    public void A_boil_that_is_seen_to_roll_is_reckoned_to_boil_at_once()
    {
        var boil = new Conversation();
        boil.Say("yes", "depth 1.5", "tank 14", "lit", "boil rolling", "water 210.4");
        Assert.True(boil.State.Rig.IsBoiling);
        boil.Say("what if I fire for 20 min");
        Assert.DoesNotContain(boil.Answers.OfType<ToldLine>(), told => told.Text.Contains("not known before the pan boils", StringComparison.Ordinal));
    }

    [Fact]
    public void A_low_tank_in_doubt_holds_the_wood_back_until_it_is_settled()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 30);
        boil.Say("depth 1 1/2", "tank 12");
        boil.Only<QuestionLine>();
        Assert.DoesNotContain(boil.After(12).OfType<AdviceLine>(), line => line.Advice.Action == "add-wood");
        boil.Say("no");
        Assert.Contains(boil.Answers.OfType<AdviceLine>(), line => line.Advice.Action == "add-wood");
    }

    [Fact]
    public void A_tank_that_rose_and_was_stood_by_is_looked_at_once_more_before_it_is_fired_for()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 20);
        boil.Say("depth 1 1/2", "tank 30");
        boil.Only<QuestionLine>();
        boil.Say("yes");
        boil.After(5);
        Assert.Equal("tank-second", boil.Open!.Step);
        boil.Say("19", "yes");
        Assert.False(Facts.Holds(new(boil.Session.Setting, boil.State), "tank-risen"));
    }

    [Theory]
    [InlineData("refill 10 gal")]
    [InlineData("refill")]
    public void A_tank_that_rose_by_a_refill_is_not_asked_again(string refill)
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 20);
        boil.Say("depth 1 1/2", refill, "tank 30");
        Assert.False(Facts.Holds(new(boil.Session.Setting, boil.State), "tank-risen"));
    }

    [Fact]
    public void A_bare_number_answers_the_reading_in_doubt()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 30);
        boil.Say("tank 2.6", "26");
        Assert.Null(boil.State.Doubted);
        Assert.Equal(26, boil.State.Last(ReadingName.TankVolume)!.Value.Value.Value);
    }

    [Fact]
    public void A_question_that_nobody_answers_lapses()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("leave");
        boil.After(20);
        boil.Say("yes");
        Assert.False(boil.State.IsOver);
        Assert.StartsWith("Leaving lapsed", boil.Answers.OfType<ToldLine>().First().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_refill_without_an_amount_is_asked_how_much()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("refill");
        Assert.StartsWith("How much?", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_boil_joined_in_its_middle_begins_with_the_depth_and_the_tank()
    {
        var boil = new Conversation();
        boil.Say("yes", "lit");
        boil.After(10);
        boil.Say("boil rolling");
        Assert.Equal("lit-depth", boil.Open!.Step);
        boil.Say("1.5", "skip");
        Assert.Equal("tank-first", boil.Open!.Step);
    }

    [Fact]
    public void A_pan_too_shallow_to_leave_is_to_be_filled_before_it_is_covered()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("shutdown", "yes");
        boil.After(60);
        boil.Say("boil still", "coals spent", "depth 0.8");
        Assert.Contains(boil.All.OfType<AdviceLine>(), line => line.Advice.Text == "Fill the pan to 2.5 in with sap or clean water; say its depth.");
        Assert.NotEqual("cover-pan", boil.State.Step);
    }

    [Fact]
    public void A_second_reading_that_agrees_settles_the_doubt()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 30);
        boil.Say("tank 4");
        boil.Only<QuestionLine>();
        boil.Say("tank 4.5");
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
        Assert.Contains("two readings agree", boil.Answers.OfType<ToldLine>().First().Text, StringComparison.Ordinal);
        Assert.Equal("hold-wood", boil.State.Step);
    }

    [Fact]
    public void A_second_reading_that_does_not_agree_is_doubted_as_well()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 30);
        boil.Say("tank 4", "tank 14");
        boil.Only<QuestionLine>();
    }

    [Fact]
    public void A_charge_that_is_asked_for_is_taken_back_when_the_tank_comes_in_doubt()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 30);
        boil.Say("depth 1 1/2");
        boil.After(10);
        Assert.Equal("wood", boil.Open!.Step);
        boil.Say("tank 12");
        boil.Only<QuestionLine>();
        Assert.NotEqual("wood", boil.Open?.Step);
    }

    [Fact]
    public void Sap_that_was_asked_for_at_the_last_charge_brings_the_question_whether_to_fire_on()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("shutdown", "no");
        Assert.Equal("hold-wood", boil.State.Step);
        boil.Say("refill 20 gal");
        Assert.Equal("fire-again", boil.State.Step);
    }

    [Fact]
    public void Wood_held_back_in_a_draw_is_held_after_it_even_when_the_boil_has_gone_down()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("draw 218.2", "yes", "tank 4");
        boil.After(9);
        boil.Say("yes");
        boil.After(40);
        boil.Say("drew 1 qt", "skip", "skip", "skip", "skip");
        Assert.Equal("hold-wood", boil.State.Step);
    }

    [Fact]
    public void A_tank_too_low_to_light_on_is_said_before_the_fire()
    {
        var boil = new Conversation();
        boil.Say("yes", "yes", "no", "1.5", "yes", "yes");
        Assert.Equal("tank-read", boil.Open!.Step);
        boil.Say("3");
        Assert.Equal("tank-short", boil.Open!.Step);
        Assert.StartsWith("It holds 3 gal, too little to light on", boil.Open.Because, StringComparison.Ordinal);
        boil.Say("22");
        Assert.Equal("sap-sugar", boil.Open!.Step);
    }

    [Fact]
    public void A_step_of_the_shutdown_that_nobody_answers_does_not_keep_the_pan_from_being_asked_for()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("shutdown");
        var prompts = boil.After(40).OfType<PromptLine>().Select(line => line.Prompt.Ask).ToList();
        Assert.Contains("pan-depth", prompts);
        Assert.Contains("boil", prompts);
        Assert.Contains(boil.All.OfType<AdviceLine>(), line => line.Advice.Action == "flood-pan");
        Assert.DoesNotContain(boil.All.OfType<AdviceLine>().SkipWhile(line => line.Advice.Action != "hold-wood"), line => line.Advice.Action == "add-wood");
        Assert.Contains("hold-wood", boil.State.Skipped);
    }

    [Fact]
    public void Coals_that_are_spent_are_not_to_be_raked()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 8);
        boil.Say("shutdown", "yes", "yes", "yes");
        Assert.Equal("spread-coals", boil.State.Step);
        boil.Say("coals deep");
        Assert.Equal("spread-coals", boil.State.Step);
        boil.Say("coals spent", "yes");
        Assert.Equal("keep-fed", boil.State.Step);
    }

    [Theory]
    [InlineData("tank 2", "flood-pan")]
    [InlineData("tank 15", "fire-again")]
    public void Sap_that_comes_into_a_flood_has_the_tank_read_before_it_is_fired_on(string read, string step)
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 8);
        boil.Say("shutdown", "yes", "yes", "yes");
        boil.After(10);
        boil.Say("raked", "yes");
        Assert.Equal("flood-pan", boil.State.Step);
        boil.Say("refill 12 gal");
        Assert.Equal("tank-again", boil.State.Step);
        boil.Say(read);
        if (boil.State.Doubted is not null)
        {
            boil.Say("yes");
        }

        Assert.Equal(step, boil.State.Step);
    }
}
