using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>A pan that boils while nobody says a word: it is asked for, then to be done now, then a danger, until somebody answers.</summary>
public class NobodyAnswersTests
{
    private const string Blower = "two-by-four-forced.yaml";
    private const string TwoPans = "flue-and-syrup-pan.yaml";

    [Theory]
    [InlineData("two-by-four-natural.yaml")]
    [InlineData("two-by-four-forced.yaml")]
    [InlineData("one-channel.yaml")]
    [InlineData("gas-divided.yaml")]
    [InlineData("flue-and-syrup-pan.yaml")]
    public void A_boil_that_nobody_tells_of_comes_to_a_danger_within_the_hour(string rig)
    {
        var boil = Conversation.AtSteadyBoil(rig: rig);
        boil.Say("depth 1.5");
        var said = boil.After(75);
        Assert.Contains(said, line => line is AdviceLine { Advice: { Action: "check-level", Urgency: "now" } });
        Assert.Contains(said, line => line is AdviceLine { Advice.Urgency: "danger" });
    }

    [Fact]
    public void And_goes_on_being_one()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 1.5");
        boil.After(75);
        Assert.InRange(boil.After(20).Count(line => line is AdviceLine { Advice: { Action: "check-level", Urgency: "danger" } }), 3, 6);
    }

    [Fact]
    public void Until_a_depth_is_told()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 1.5");
        boil.After(75);
        boil.Say("depth 1.5");
        Assert.DoesNotContain(boil.After(8), line => line is AdviceLine { Advice: { Action: "check-level", Urgency: "danger" } });
    }

    [Fact]
    public void The_depth_is_then_what_stands_asked_and_a_bare_number_is_that_depth()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 1.5");
        for (var gone = 0; gone < 60 && boil.Open?.Step != "depth-called"; gone++)
        {
            boil.After(1);
        }

        Assert.Equal("depth-called", boil.Open!.Step);
        boil.Say("1 1/4");
        Assert.Equal(1.25, boil.State.Last(ReadingName.PanDepth)!.Value.Value.Value);
        Assert.NotEqual("depth-called", boil.Open?.Step);
    }

    [Fact]
    public void Before_that_which_of_the_two_is_asked_where_the_tank_is()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 1.5");
        for (var gone = 0; gone < 180 && !(boil.Open?.Ask == "tank-volume" && Facts.Holds(new(boil.Session.Setting, boil.State), "depth-overdue")); gone++)
        {
            boil.After(0.5);
        }

        Assert.Equal("tank-volume", boil.Open!.Ask);
        Assert.False(Facts.Holds(new(boil.Session.Setting, boil.State), "depth-unseen"));
        boil.Say("1 1/4");
        Assert.NotEqual(1.25, boil.State.Last(ReadingName.PanDepth)!.Value.Value.Value);
        Assert.Contains(boil.Answers.OfType<RefusedLine>(), line => line.Why.Contains("depth 1 1/4", StringComparison.Ordinal));
    }

    [Fact]
    public void Nor_is_wood_told_to_be_due_before_it()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 1.5");
        Assert.NotNull(new Situation(boil.Session.Setting, boil.State).WoodDue);
        boil.After(60);
        Assert.Null(new Situation(boil.Session.Setting, boil.State).WoodDue);
    }

    [Fact]
    public void The_pan_behind_as_well()
    {
        var boil = Conversation.AtSteadyBoil(rig: TwoPans);
        boil.Say("depth 1.5", "back pan 2");
        var said = new List<LineOut>();
        for (var gone = 0; gone < 60; gone += 10)
        {
            boil.Say("depth 1.5");
            said.AddRange(boil.After(10));
        }

        Assert.Contains(said, line => line is AdviceLine { Advice: { Urgency: "danger" } danger } && danger.Text.Contains("back pan", StringComparison.Ordinal));
        Assert.DoesNotContain(said, line => line is AdviceLine { Advice: { Urgency: "danger" } danger } && danger.Text.Contains("front pan", StringComparison.Ordinal));
    }

    [Fact]
    public void A_pan_that_was_filled_and_lit_and_never_told_of_again_is_asked_for()
    {
        var boil = new Conversation();
        boil.Say("no", "depth 1.5", "tank 15", "sap 2", "lit");
        Assert.Contains(boil.After(60), line => line is AdviceLine { Advice: { Action: "check-level", Urgency: "danger" } });
    }

    [Fact]
    public void One_that_nobody_has_ever_read_too_and_no_wood_goes_under_it()
    {
        var boil = new Conversation(Guidance.Practised);
        boil.Say("lit", "later");
        boil.After(18);
        boil.Say("boil rolling");
        var said = boil.After(40);
        Assert.Contains(said, line => line is AdviceLine { Advice: { Action: "check-level", Urgency: "danger" } });
        Assert.DoesNotContain(said, line => line is PromptLine { Prompt.Step: "wood" or "last-wood" });
    }

    [Fact]
    public void One_whose_fire_was_told_by_wood_alone()
    {
        var boil = new Conversation(Guidance.Practised);
        boil.Say("wood", "later");
        var said = new List<LineOut>();
        for (var gone = 0; gone < 48; gone += 8)
        {
            said.AddRange(boil.After(8));
            said.AddRange(boil.Say("wood"));
        }

        Assert.Contains(said, line => line is AdviceLine { Advice: { Action: "check-level", Urgency: "danger" } });
    }

    [Fact]
    public void And_one_that_was_seen_still_while_it_warmed()
    {
        var boil = new Conversation();
        boil.Say("no", "depth 1.5", "tank 15", "sap 2", "lit");
        boil.After(6);
        boil.Say("still");
        Assert.Contains(boil.After(70), line => line is AdviceLine { Advice: { Action: "check-level", Urgency: "danger" } });
    }

    [Fact]
    public void A_burner_that_was_lit_again_has_burned_before()
    {
        var boil = Conversation.AtSteadyBoil(rig: "gas-divided.yaml");
        boil.Say("depth 1.5");
        boil.After(24);
        boil.Say("flame went out", "its off", "lit", "boil rolling");
        Assert.Contains(boil.After(14), line => line is AdviceLine { Advice: { Action: "check-level", Urgency: "now" or "danger" } });
    }

    [Fact]
    public void A_volume_in_doubt_is_put_right_by_saying_it_again()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 1.5", "draw 219", "yes", "open", "drew 30 gal");
        Assert.Null(new Situation(boil.Session.Setting, boil.State).DrawOpenSince);
        Assert.IsType<Reading>(boil.State.Doubted);
        var draws = boil.State.Draws.Count;
        boil.Say("drew 2 qt");
        Assert.Null(boil.State.Doubted);
        Assert.Equal(draws, boil.State.Draws.Count);
        Assert.Equal("2 qt", boil.State.Last(ReadingName.DrawnVolume)!.Value.Value.ToString());
    }

    [Fact]
    public void A_dying_fire_under_a_shallow_pan_too_until_the_boil_is_seen_still()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 10);
        boil.Say("depth 1.2", "wood", "shutdown", "yes");
        var said = boil.After(60);
        Assert.Contains(said, line => line is AdviceLine { Advice: { Action: "check-level", Urgency: "now" } });
        Assert.Contains(said, line => line is AdviceLine { Advice: { Action: "check-level", Urgency: "danger" } });
    }

    [Fact]
    public void No_wood_is_asked_for_over_a_depth_that_is_long_unread_whatever_else_is_told()
    {
        var boil = Conversation.AtSteadyBoil(rig: Blower);
        boil.Say("depth 1.5");
        boil.After(35);
        boil.Say("boil simmering", "foam low");
        Assert.DoesNotContain(boil.After(6), line => line is AdviceLine { Advice.Action: "add-wood" });
        boil.Say("depth 1.5");
        Assert.Contains(boil.Answers.Concat(boil.After(20)), line => line is AdviceLine { Advice.Action: "add-wood" } or PromptLine { Prompt.Step: "wood" or "fire-weak" });
    }

    [Fact]
    public void No_wood_goes_under_a_blower_that_nobody_has_seen_running()
    {
        var boil = Conversation.AtSteadyBoil(rig: Blower);
        boil.Say("depth 1.5", "fan quit");
        Assert.Equal("blower-out", boil.State.Step);
        boil.After(2);
        boil.Say("no");
        var said = new List<LineOut>();
        for (var gone = 0; gone < 50; gone += 10)
        {
            said.AddRange(boil.After(10));
            said.AddRange(boil.Say("depth 1.5"));
        }

        Assert.DoesNotContain(said, line => line is AdviceLine { Advice.Action: "add-wood" });
        Assert.Contains(said, line => line is PromptLine { Prompt.Step: "blower-out" });
        boil.Say("fan is back");
        Assert.Equal("boiling", boil.State.Step);
    }

    [Fact]
    public void A_guess_that_nobody_took_up_takes_no_later_yes()
    {
        var boil = Conversation.AtSteadyBoil(rig: Blower);
        boil.Say("depth 1.5");
        boil.Say("coals spent");
        var guessed = Assert.IsType<Observed>(boil.State.Doubted);
        for (var gone = 0; gone < 20 && boil.State.Doubted is not null; gone++)
        {
            boil.After(1);
        }

        Assert.Null(boil.State.Doubted);
        boil.Say("yes");
        Assert.NotEqual(guessed.Is, boil.State.Last(guessed.Name)?.Value);
    }

    [Theory]
    [InlineData("huh")]
    [InlineData("what")]
    [InlineData("hmm")]
    public void Who_has_not_understood_says_no_yes(string said)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("leave");
        Assert.NotNull(boil.State.Doubted);
        boil.Say(said);
        Assert.False(boil.State.IsOver);
        Assert.DoesNotContain(boil.Answers, line => line is HeardLine { As: Answer });
    }

    [Fact]
    public void A_tank_valve_that_is_shut_over_a_hung_float_is_to_be_opened_again_and_both_pans_read()
    {
        var boil = Conversation.AtSteadyBoil(rig: TwoPans);
        boil.Say("depth 1.5", "back pan 2", "back float stuck open", "closed the tank valve");
        Assert.Equal("float-shut", boil.State.Step);
        boil.Say("opened it again", "1.5");
        Assert.Equal("back-again", boil.State.Step);
        boil.Say("2");
        Assert.Equal("steady-boil", boil.Phase);
    }

    [Fact]
    public void With_no_sap_left_near_syrup_the_pan_is_thinned_but_no_batch_is()
    {
        Assert.Contains(NearSyrupWithoutSap("two-by-four-natural.yaml", "draw 217.4"), line => line is AdviceLine { Advice: { Action: "cool-pan", Urgency: "now" } });
        Assert.DoesNotContain(NearSyrupWithoutSap("flat-by-hand.yaml", "draw 215"), line => line is AdviceLine { Advice: { Action: "cool-pan", Urgency: "now" } });
    }

    private static List<LineOut> NearSyrupWithoutSap(string rig, string read)
    {
        var boil = Conversation.AtSteadyBoil(rig: rig);
        boil.Say("depth 1.5", read, "yes");
        Assert.True(Facts.Holds(new(boil.Session.Setting, boil.State), "draw-at-hand"), read);
        boil.Say("tank 0");
        return [.. boil.All, .. boil.After(2)];
    }

    [Fact]
    public void A_leak_that_does_not_hold_shuts_a_burner_off_before_any_draw()
    {
        var boil = Conversation.AtSteadyBoil(rig: "gas-divided.yaml");
        boil.Say("depth 1.5", "draw 219", "yes", "it is leaking", "1.2", "no");
        Assert.Equal("leak-off", boil.State.Step);
        boil.Say("its off");
        Assert.True(boil.State.Deeds.ContainsKey(DeedName.ShutOff));
    }
}
