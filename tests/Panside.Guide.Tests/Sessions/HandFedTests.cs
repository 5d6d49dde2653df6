using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Tests.Sessions;

/// <summary>A pan that a hand feeds: how much to pour, when, by when it is too low, and what nobody pours after leaving.</summary>
public class HandFedTests
{
    private static readonly string HandFed = RepositoryFiles.Read("flows", "rigs", "two-by-four-natural.yaml")
        .Replace("float: true", "by: hand\n  pail: 1 gal", StringComparison.Ordinal);

    private static Conversation Boiling(string rig, double tank = 20, bool isDeep = true)
    {
        var boil = new Conversation(rigText: rig, members: Conversation.Few);
        boil.Say("yes", "depth 1.5", $"tank {tank}", "sap 2", "lit");
        boil.After(9);
        boil.Say("wood");
        boil.After(9);
        boil.Say("wood");
        boil.After(9);
        boil.Say("boil rolling", "water 210.4");
        boil.Say(isDeep ? ["depth 1.5"] : []);
        return boil;
    }

    [Fact]
    public void A_pour_is_asked_for_with_how_much_when_next_and_by_when_it_is_too_low()
    {
        var boil = Boiling(HandFed);
        var pour = Poured(boil);
        Assert.StartsWith("Pour in at the feed side: one pail, 1 gal of sap.", pour.Text, StringComparison.Ordinal);
        Assert.Matches("^Again in about ([0-9]+ minutes|a minute or two); with none, 0.75 in by [0-9]{2}:[0-9]{2}[.]$", pour.Because);
    }

    [Fact]
    public void A_yes_counts_one_portion_out_of_the_tank_and_undo_takes_it_back()
    {
        var boil = Boiling(HandFed);
        Poured(boil);
        var (pan, tank) = (boil.State.Rig.Pan, boil.State.Rig.Tank!.Value);
        boil.Say("yes");
        Assert.Contains(boil.Answers.OfType<ToldLine>(), told => told.Text == "Counted: 1 gal of sap poured in. 'undo' takes it back.");
        Assert.Equal(1, (boil.State.Rig.Pan - pan).UsGallons, 0.1);
        Assert.Equal(-1, (boil.State.Rig.Tank!.Value - tank).UsGallons, 0.1);
        Assert.True(Assert.Single(boil.State.Pours).IsOutOfTank);
        boil.Say("undo");
        Assert.Empty(boil.State.Pours);
    }

    [Theory]
    [InlineData("yes", 1)]
    [InlineData("poured 2 gal", 2)]
    public void With_no_sap_left_water_is_asked_for_and_counted(string said, double gallons)
    {
        var boil = Boiling(HandFed, tank: 2);
        boil.Say("yes", "tank 0", "yes", "yes", "depth 1.2");
        for (var minute = 0; minute < 40 && boil.Open?.Step != "pour-water"; minute++)
        {
            boil.After(1);
            if (boil.Open is { Step: not "pour-water" } open)
            {
                boil.Say(open.CanSkip ? "skip" : "yes");
            }
        }

        Assert.StartsWith("No sap is left: pour one pail, 1 gal of clean water", boil.Open?.Text, StringComparison.Ordinal);
        boil.Say(said);
        var pour = Assert.Single(boil.State.Pours);
        Assert.Equal(gallons, pour.Volume.UsGallons, 0.01);
        Assert.Equal(Liquids.Water, pour.Liquid);
        Assert.False(pour.IsOutOfTank);
    }

    [Fact]
    public void Sap_that_did_not_come_out_of_the_tank_is_put_back_into_it_once_it_is_read()
    {
        var boil = Boiling(HandFed);
        boil.Say("poured 2 gal", "poured 2 gal", "tank 20");
        Assert.DoesNotContain(boil.Answers, line => line is QuestionLine or RefusedLine);
        Assert.All(boil.State.Pours, pour => Assert.False(pour.IsOutOfTank));
        Assert.Equal(20, boil.State.Rig.Tank!.Value.UsGallons, 0.5);
    }

    [Theory]
    [InlineData("tank 18.5")]
    [InlineData("tank 17")]
    [InlineData("tank 20")]
    public void A_tank_that_falls_in_pails_that_nobody_told_is_not_questioned(string said)
    {
        var boil = Boiling(HandFed);
        boil.After(14);
        boil.Say(said);
        Assert.DoesNotContain(boil.Answers, line => line is QuestionLine or RefusedLine);
    }

    [Fact]
    public void A_tank_that_falls_by_far_more_than_pails_is_questioned()
    {
        var boil = Boiling(HandFed);
        boil.After(14);
        boil.Say("tank 6");
        Assert.Single(boil.Answers.OfType<QuestionLine>());
    }

    /// <summary>By the balance of water: what is in the pan, less what the fire still boils away.</summary>
    [Fact]
    public void What_if_I_stop_now_says_to_what_depth_the_pan_comes_where_nobody_pours()
    {
        var boil = Boiling(HandFed);
        boil.Say("depth 1.1", "what if I stop now");
        var told = boil.Answers.OfType<ToldLine>().Select(line => line.Text).ToList();
        var now = new Situation(boil.Session.Setting, boil.State);
        var end = Volume.FromLiters(now.Unfed!.LeastPanLiters(0.5)) / now.Setting.Rig.PanArea;
        Assert.True(end < now.Setting.Rig.LeastDepth);
        Assert.Contains(told, line => line.StartsWith("If nobody pours, it comes to 0.75 in, its least depth, about", StringComparison.Ordinal)
            && line.Contains($"and to {Amount.Shown(now.Setting.Units.From(end))} in the end", StringComparison.Ordinal));
        Assert.DoesNotContain(told, line => line.Contains("stays in the tank", StringComparison.Ordinal));
        var balance = boil.State.Rig.Pan.Liters - now.Unfed!.ResidualLiters(0.5);
        Assert.Equal(double.Max(balance, 0), now.Unfed!.LeastPanLiters(0.5), 2.5);
    }

    /// <summary>A pan that runs dry in the reckoning would boil no more, and ask for too little sap.</summary>
    [Fact]
    public void What_the_shutdown_wants_is_no_less_than_with_a_float()
    {
        // Without a depth: one that has not fallen tells of a fire that hardly boils where nobody feeds, and of a float where one does.
        var (hand, other) = (Boiling(HandFed, isDeep: false), Boiling(RepositoryFiles.Read("flows", "rigs", "two-by-four-natural.yaml"), isDeep: false));
        var (by, of) = (new Situation(hand.Session.Setting, hand.State), new Situation(other.Session.Setting, other.State));
        Assert.InRange(by.ResidualLiters!.Value.P95, 0.85 * of.ResidualLiters!.Value.P95, 1.25 * of.ResidualLiters!.Value.P95);
        Assert.InRange(by.StopLiters!.Value, 0.85 * of.StopLiters!.Value, 1.25 * of.StopLiters!.Value);
    }

    [Fact]
    public void Nobody_pours_after_leaving_a_shallow_pan_is_not_clear()
    {
        var boil = Boiling(HandFed);
        boil.Say("shutdown", "yes");
        boil.After(60);
        boil.Say("depth 0.8", "still", "spent", "gradient gone", "depth 0.8");
        Assert.Contains(new Situation(boil.Session.Setting, boil.State).Unmet, reason => reason.Contains("too shallow", StringComparison.Ordinal));
    }

    [Fact]
    public void No_hand_is_asked_to_pour_where_a_float_feeds()
    {
        var boil = Boiling(RepositoryFiles.Read("flows", "rigs", "two-by-four-natural.yaml"));
        boil.After(40);
        Assert.DoesNotContain(boil.All.OfType<PromptLine>(), line => line.Prompt.Step == "pour");
    }

    private static Prompt Poured(Conversation boil)
    {
        for (var minute = 0; minute < 40 && boil.Open?.Step != "pour"; minute++)
        {
            boil.After(1);
            if (boil.Open is { Step: not "pour" } open)
            {
                boil.Say(open.CanSkip ? "skip" : "yes");
            }
        }

        Assert.Equal("pour", boil.Open?.Step);
        return boil.Open!;
    }
}
