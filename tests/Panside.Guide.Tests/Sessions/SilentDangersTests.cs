using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>Dangers that nobody cries out: a float that hangs late, a draw that nobody made, a pan that nobody reads, a look that is too good.</summary>
public class SilentDangersTests
{
    private const string Gas = "gas-divided.yaml";
    private const string Batch = "flat-by-hand.yaml";

    [Theory]
    [InlineData("smells burnt")]
    [InlineData("chimney fire")]
    [InlineData("float stuck")]
    [InlineData("i burned my hand")]
    public void Nobody_leaves_an_open_emergency_as_safe(string cry)
    {
        var boil = AtClear();
        boil.Say(cry);
        Assert.Equal("emergency", boil.Phase);
        boil.Say("leave");
        Assert.Contains("the emergency is not over", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
        Assert.False(boil.State.IsOver);
    }

    [Fact]
    public void Who_must_go_and_has_a_pan_that_is_clear_goes()
    {
        var boil = AtClear();
        boil.Say("must leave", "leave");
        Assert.True(boil.State is { IsOver: true, IsSafe: true });
    }

    [Fact]
    public void What_reassures_is_doubted_a_depth_that_nothing_has_raised()
    {
        var boil = AtFlooded();
        boil.Say("depth 1.5");
        boil.After(3);
        boil.Say("depth 2.5");
        Assert.Contains("No sap that was told of", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
        boil.Say("no", "poured 6 gal of water", "depth 2.5");
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
    }

    [Fact]
    public void But_no_depth_that_was_asked_for_is_not_that_of_a_pan_in_danger()
    {
        var boil = AtFlooded();
        boil.Say("depth 0.4");
        Assert.Equal("emergency-dry", boil.State.Step);
        boil.Say("depth 2");
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
        Assert.Equal("2 in", boil.State.Last(ReadingName.PanDepth)!.Value.Value.ToString());
    }

    [Fact]
    public void Nor_that_of_a_pan_that_was_to_be_filled()
    {
        var boil = AtShutdown();
        boil.Say("tank 5", "depth 1.1");
        boil.Say("flooded", "tank 0.2");
        boil.Say(boil.State.Doubted is null ? "depth 1" : "yes");
        boil.Say("depth 1");
        boil.After(6);
        Assert.Contains(boil.All.TakeLast(20), line => line is AdviceLine { Advice: { Action: "raise-level", Urgency: "now" } });
        boil.Say("depth 2.4");
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
    }

    [Fact]
    public void Nor_that_of_a_pan_that_may_just_be_flooded()
    {
        var boil = AtShutdown();
        boil.Say("tank 0.2");
        boil.Say(boil.State.Doubted is null ? "depth 1.5" : "yes");
        boil.Say("depth 1.5");
        boil.After(3);
        boil.Say("depth 2.5");
        Assert.DoesNotContain(boil.Answers.OfType<QuestionLine>(), line => line.Text.Contains("told of", StringComparison.Ordinal));
    }

    [Fact]
    public void A_pan_that_falls_with_sap_in_the_tank_has_sap_poured_in_after_the_last_wood_as_well()
    {
        var boil = AtShutdown();
        boil.Say("tank 5");
        boil.Say("depth 1.1");
        Assert.Contains(boil.All, line => line is AdviceLine { Advice: { Action: "raise-level", Urgency: "now" } advice } && advice.Because.Contains("something does not feed", StringComparison.Ordinal));
    }

    [Fact]
    public void Coals_spent_minutes_after_wood_are_asked_about()
    {
        var boil = AtShutdown();
        boil.Say("wood");
        boil.After(6);
        boil.Say("coals spent");
        Assert.Contains("Wood went in 6 minutes ago", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_draw_that_nobody_makes_is_asked_for_again_and_comes_before_wood()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1.5", "draw 219");
        boil.Say(boil.State.Doubted is null ? "depth 1.5" : "yes");
        Assert.Equal("draw-open", boil.State.Step);
        var said = boil.After(14);
        Assert.Equal(2, said.Count(line => line is AdviceLine { Advice: { Action: "open-draw", Urgency: "now" } }));
        boil.Say("depth 1.5");
        said = [.. boil.After(12), .. boil.Say("depth 1.5"), .. boil.After(12)];
        Assert.DoesNotContain(said, line => line is AdviceLine { Advice.Action: "add-wood" });
        Assert.Contains(said, line => line is PromptLine { Prompt: { Step: "draw-missed", Because: { } because } } && because.Contains("nobody has drawn", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("no")]
    [InlineData("no", "no")]
    public void A_depth_over_the_least_ends_what_a_dry_pan_began(params string[] answers)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say(["depth 0.4", .. answers]);
        boil.Say("depth 1.8");
        Assert.Equal("dry-cause", boil.State.Step);
    }

    [Fact]
    public void A_deep_pan_with_nothing_more_to_pour_is_not_given_up()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1.5", "float stuck", "no", "no");
        Assert.NotEqual("dry-lost", boil.State.Step);
        Assert.DoesNotContain(boil.All, line => line is AdviceLine advice && advice.Advice.Text.StartsWith("Stand back", StringComparison.Ordinal));
    }

    [Fact]
    public void An_empty_tank_is_not_asked_to_feed()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("tank 0", "depth 0.4", "depth 1.8");
        Assert.Equal("dry-pour", boil.State.Step);
        boil.Say("yes");
        Assert.NotEqual("emergency", boil.Phase);
    }

    [Fact]
    public void After_the_first_page_of_an_emergency_the_depth_is_asked_for_as_long_as_nobody_reads_it()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 0.4", "depth 1.2");
        Assert.Equal("dry-cause", boil.State.Step);
        var said = boil.After(90);
        Assert.True(said.OfType<AdviceLine>().Count(line => line.Advice is { Urgency: "now" or "danger", Action: "check-level" or "raise-level" }) >= 10);
    }

    [Fact]
    public void A_burner_that_burns_on_is_told_of_every_few_minutes()
    {
        var boil = Conversation.AtSteadyBoil(rig: Gas, members: Conversation.Few);
        boil.Say("shutdown");
        Assert.Equal("shut-burner", boil.State.Step);
        Assert.InRange(boil.After(40).OfType<AdviceLine>().Count(line => line.Advice is { Urgency: "now", Action: "hold-wood" }), 6, 8);
    }

    [Fact]
    public void No_wood_is_asked_for_while_the_depth_is_overdue()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1.5", "boil rolling");
        var said = boil.After(80);
        var overdue = said.First(line => line is AdviceLine { Advice: { Action: "check-level", Urgency: "now" } }).At;
        Assert.DoesNotContain(said, line => line is AdviceLine { Advice.Action: "add-wood" } && line.At!.Value.Time > overdue!.Value.Time);
    }

    [Fact]
    public void A_tank_that_stands_still_while_the_pan_stands_over_its_float_is_believed()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("tank 28");
        boil.Say(boil.State.Doubted is null ? "depth 2" : "yes");
        boil.Say("depth 2");
        boil.Say(boil.State.Doubted is null ? "boil rolling" : "yes");
        boil.FireFor(18);
        boil.Say("depth 1.8", "tank 28");
        Assert.DoesNotContain(boil.Answers.OfType<QuestionLine>(), line => line.Text.StartsWith("Nothing gone", StringComparison.Ordinal));
    }

    [Fact]
    public void A_time_more_than_a_week_ahead_is_refused_and_changes_nothing()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        var before = boil.State.Now;
        boil.Hear(new Tick(Moment.Of(boil.Now.Time.AddYears(4))));
        Assert.Equal("at", boil.Only<RefusedLine>().Field);
        Assert.Equal(before, boil.State.Now);
    }

    [Fact]
    public void Shutdown_said_in_the_shutdown_is_no_fault()
    {
        var boil = AtShutdown();
        boil.After(30);
        boil.Say("shutdown");
        Assert.Empty(boil.Answers.OfType<RefusedLine>());
    }

    [Fact]
    public void A_pan_fed_by_hand_that_nobody_pours_into_is_a_danger_by_the_balance_of_water()
    {
        var boil = Conversation.AtSteadyBoil(rig: Batch, members: Conversation.Few);
        boil.Say("depth 1.5");
        for (var minute = 0; minute < 120 && boil.Phase != "emergency"; minute++)
        {
            boil.After(1);
            if (minute % 8 == 0)
            {
                boil.Say("wood", "boil rolling");
            }
        }

        Assert.Equal("emergency-dry", boil.State.Step);
    }

    [Fact]
    public void Nor_does_silence_about_wood_and_depth_let_it_stand()
    {
        var boil = Conversation.AtSteadyBoil(rig: Batch, members: Conversation.Few);
        boil.Say("depth 1.5", "boil rolling");
        boil.After(75);
        Assert.Equal("emergency-dry", boil.State.Step);

        // Whoever has nothing to pour is not asked the same at once again.
        boil.Say("depth 1.2");
        Assert.NotEqual("emergency-dry", boil.State.Step);
        boil.After(5);
        Assert.NotEqual("emergency-dry", boil.State.Step);
    }

    [Fact]
    public void A_float_fed_boil_that_falls_silent_is_asked_for_its_depth_at_once()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1.5", "boil rolling");
        Assert.Contains(boil.After(60), line => line is AdviceLine { Advice: { Action: "check-level", Urgency: "now" } });
    }

    [Theory]
    [InlineData("what do i do")]
    [InlineData("ok, what should we do now?")]
    [InlineData("what now")]
    [InlineData("now what")]
    public void Who_asks_what_to_do_is_told_again_what_stands_asked(string asked)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1.5", "tank 0");
        Assert.Equal("hold-wood", boil.Open!.Step);
        boil.Say(asked);
        Assert.Equal("hold-wood", boil.Only<PromptLine>().Prompt.Step);
        boil.Say("depth 0.4", asked);
        Assert.Equal("emergency-dry", boil.Only<PromptLine>().Prompt.Step);
    }

    private static Conversation AtShutdown()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1.5", "shutdown", "yes");
        Assert.Equal("shutdown", boil.Phase);
        return boil;
    }

    /// <summary>Flooded with what the tank held, and that is told.</summary>
    private static Conversation AtFlooded()
    {
        var boil = AtShutdown();
        boil.Say("flooded", "depth 2.2");
        boil.Say("tank 0.2");
        boil.Say(boil.State.Doubted is null ? "depth 2.2" : "yes");
        boil.After(2);
        return boil;
    }

    private static Conversation AtClear()
    {
        var boil = AtShutdown();
        boil.After(90);
        boil.Say("flooded", "depth 2.5");
        boil.After(60);
        boil.Say("boil still", "coals spent", "gradient gone", "depth 2.5");
        boil.After(15);
        boil.Say("boil still", "coals spent", "depth 2.5", "gradient gone");
        Assert.Empty(new Panside.Guide.Advice.Situation(boil.Session.Setting, boil.State).Unmet);
        return boil;
    }
}
