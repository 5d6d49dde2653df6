using Panside.Guide.Advice;
using Panside.Guide.Answering;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Tests.Sessions;

/// <summary>What somebody said who had never seen the program, and was heard otherwise than it was meant.</summary>
public class StrangersEveningTests
{
    private const string Gas = "rig: gas\nunits: us\npan: { length: 48 in, width: 24 in }\nfire: { kind: gas, boils: 8 gal/h }\nfeed: { tank: 35 gal }\n";

    [Theory]
    [InlineData("haven't flooded yet")]
    [InlineData("I didn't draw anything")]
    [InlineData("do not put in wood")]
    public void What_is_denied_is_neither_taken_nor_asked_as_if_it_were_so(string said)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(said);
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
        Assert.DoesNotContain(boil.Answers.OfType<HeardLine>(), line => line.As is Did or Observed or Reading);
    }

    [Fact]
    public void Minutes_ago_are_no_minutes_away()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("put wood in ten minutes ago");
        Assert.DoesNotContain(boil.Answers.OfType<HeardLine>(), line => line.As is Text { Words: var words } && words.StartsWith("away", StringComparison.Ordinal));
    }

    [Fact]
    public void A_smell_of_gas_sends_out_and_touches_no_switch()
    {
        var boil = new Conversation(rigText: Gas, members: Conversation.Few);
        boil.Say("yes", "depth 1.5", "tank 20", "sap 2", "lit", "I smell gas");
        var advice = boil.Only<AdviceLine>().Advice;
        Assert.Equal("danger", advice.Urgency);
        Assert.Contains("Get everyone out", advice.Text, StringComparison.Ordinal);
        Assert.Contains("touch no switch", advice.Text, StringComparison.Ordinal);
    }

    /// <summary>Sap that thickens fast reads higher each time; who doubts each reading anew loses the pan.</summary>
    [Fact]
    public void A_draw_off_that_is_read_far_over_the_draw_point_twice_is_believed()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 228");
        boil.Only<QuestionLine>();
        boil.After(1);
        boil.Say("draw 231");
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
        Assert.Contains(boil.Answers.OfType<AdviceLine>(), line => line.Advice is { Urgency: "danger", Action: "cool-pan" });
    }

    [Theory]
    [InlineData("HELP")]
    [InlineData("help!")]
    public void Help_that_is_shouted_opens_the_list_of_dangers(string said)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(said);
        Assert.Equal("emergency", boil.Phase);
    }

    [Fact]
    public void A_burner_that_nobody_said_is_lit_is_on_once_the_pan_boils()
    {
        var boil = new Conversation(rigText: Gas, members: Conversation.Few);
        boil.Say("yes", "depth 1.5", "tank 20", "sap 2", "boil rolling");
        var now = new Situation(boil.Session.Setting, boil.State);
        Assert.True(now is { IsBurnerOn: true, IsHeld: false });
        Assert.Contains("the burner is on", now.Unmet);
        boil.Say("burner off");
        Assert.False(new Situation(boil.Session.Setting, boil.State).IsBurnerOn);
    }

    [Fact]
    public void Off_with_the_draw_open_may_be_either()
    {
        var boil = new Conversation(rigText: Gas, members: Conversation.Few);
        boil.Say("yes", "depth 1.5", "tank 20", "sap 2", "lit");
        boil.After(30);
        boil.Say("boil rolling", "water 210.4", "open", "off");
        Assert.Contains("or the burner?", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
        boil.Say("burner off");
        Assert.False(new Situation(boil.Session.Setting, boil.State).IsBurnerOn);
    }

    [Fact]
    public void Shut_off_over_a_wood_fire_is_the_draw()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("open", "shut it off");
        Assert.True(boil.State.Deeds.ContainsKey(DeedName.CloseDraw));
    }

    [Fact]
    public void Lit_again_in_the_same_second_a_burner_is_on()
    {
        var boil = new Conversation(rigText: Gas, members: Conversation.Few);
        boil.Say("yes", "depth 1.5", "tank 20", "sap 2", "lit");
        boil.After(30);
        boil.Say("boil rolling");
        boil.Hear(new Did(boil.Now, DeedName.ShutOff, null));
        boil.Hear(new Did(boil.Now, DeedName.LitFire, null));
        Assert.True(new Situation(boil.Session.Setting, boil.State).IsBurnerOn);
    }

    [Fact]
    public void A_depth_read_before_a_draw_of_the_same_breath_is_old()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("shutdown", "yes");
        boil.After(100);
        boil.Say("boil still", "coals spent", "gradient gone");
        boil.Hear(new Reading(boil.Now, ReadingName.PanDepth, new(2.5, Unit.Inch)));
        Assert.Empty(new Situation(boil.Session.Setting, boil.State).Unmet);
        boil.Hear(new Did(boil.Now, DeedName.CloseDraw, new(1, Unit.Quart)));
        Assert.Contains(new Situation(boil.Session.Setting, boil.State).Unmet, reason => reason.Contains("since the last draw", StringComparison.Ordinal));
    }

    [Fact]
    public void Over_a_burner_no_wood_is_due()
    {
        var boil = new Conversation(rigText: Gas, members: Conversation.Few);
        boil.Say("yes", "depth 1.5", "tank 20", "sap 2", "lit");
        boil.After(30);
        boil.Say("boil rolling", "water 210.4");
        var now = new Situation(boil.Session.Setting, boil.State);
        Assert.Null(now.WoodDue);
        Assert.NotNull(now.MinutesToLastCharge);
        Assert.DoesNotContain(boil.Session.Setting.Flow.Counts.Where(count => count.When.All(fact => Facts.Holds(now, fact))), count => count.Text.Contains("wood", StringComparison.Ordinal));
    }

    [Fact]
    public void Fire_in_an_emergency_is_questioned()
    {
        var boil = new Conversation(members: Conversation.Few);
        boil.Say("yes", "depth 1.5", "tank 20", "leaking", "lit");
        Assert.NotEmpty(boil.Answers.OfType<QuestionLine>());
        Assert.False(boil.State.Deeds.ContainsKey(DeedName.LitFire));
    }

    [Theory]
    [InlineData("poured a pail", 1)]
    [InlineData("poured 2 pails", 2)]
    [InlineData("poured half a bucket of sap in the pan", 0.5)]
    public void A_pail_of_a_known_size_is_a_volume(string said, double pails)
    {
        var rig = RepositoryFiles.Read("flows", "rigs", "two-by-four-natural.yaml").Replace("float: true", "by: hand\n  pail: 1.5 gal", StringComparison.Ordinal);
        var boil = new Conversation(rigText: rig, members: Conversation.Few);
        boil.Say("yes", "depth 1.5", "tank 20", "sap 2", "lit", said);
        Assert.Equal(1.5 * pails, boil.State.Pours[^1].Measure.Value, 2);
    }

    [Fact]
    public void Percent_of_sugar_is_Brix()
    {
        var boil = new Conversation(members: Conversation.Few);
        boil.Say("sap is 2%");
        Assert.Equal("2 Brix", boil.State.Last(ReadingName.SapBrix)?.Value.ToString());
    }

    [Fact]
    public void Raking_over_deep_coals_begins_the_wait_for_thin_ones_anew()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("shutdown", "yes");
        boil.After(100);
        boil.Say("depth 2.5", "boil still", "coals deep", "gradient gone");
        boil.After(22);
        boil.Say("boil still", "raked");
        boil.After(1);
        boil.Say("coals thin", "depth 2.5");
        Assert.NotEmpty(new Situation(boil.Session.Setting, boil.State).Unmet);
    }

    [Fact]
    public void The_terms_of_a_step_are_those_in_its_words_and_each_is_explained()
    {
        var boil = Conversation.AtSteadyBoil();
        for (var minute = 0; minute < 60 && boil.Open is null; minute++)
        {
            boil.After(1);
        }

        var terms = TermsOfStep.Of(boil.Session.Setting, boil.State);
        Assert.NotEmpty(terms);
        Assert.All(terms, term => Assert.NotEmpty(term.Is));
        Assert.Equal(terms.Distinct().Count(), terms.Count);
    }
}
