using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Tests.Sessions;

/// <summary>A flue pan behind a syrup pan: whichever is worse decides.</summary>
public class TwoPansTests
{
    private const string Rig = "flue-and-syrup-pan.yaml";

    private static readonly string[] AllSeen = ["back pan 3", "depth 2.5", "boil still", "coals spent", "gradient gone"];

    [Fact]
    public void S1_it_is_clear_when_both_pans_have_been_seen_deep()
    {
        var boil = LongAfterTheLastWood();
        boil.Say(AllSeen);
        Assert.Empty(Unmet(boil));
    }

    [Fact]
    public void S1_nobody_is_let_go_before_the_back_pan_was_read_over_the_still_boil()
    {
        var boil = LongAfterTheLastWood();
        boil.Say([.. AllSeen.Skip(1)]);
        Assert.Contains(Unmet(boil), reason => reason.Contains("the back pan's depth was read long before", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("flooding")]
    [InlineData("poured 2 gal")]
    [InlineData("drew 1 qt")]
    public void S1_what_moves_sap_makes_the_back_pan_be_read_again(string said)
    {
        var boil = LongAfterTheLastWood();
        boil.Say(AllSeen);
        boil.Say(said, "depth 2.5");
        boil.After(17);
        boil.Say("depth 2.5", "boil still");
        Assert.Contains(Unmet(boil), reason => reason.Contains("the back pan's depth", StringComparison.Ordinal));
        boil.Say("back pan 3");
        Assert.DoesNotContain(Unmet(boil), reason => reason.Contains("the back pan's depth", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("back pan 1.02", "the back pan is too shallow")]
    [InlineData("back pan 0.8", "the back pan stood at")]
    [InlineData("depth 0.77", "the pan is too shallow")]
    public void S1_either_pan_alone_keeps_the_operator_there(string shallow, string why)
    {
        var boil = LongAfterTheLastWood();
        boil.Say(AllSeen);
        boil.Say(shallow);
        Assert.Contains(Unmet(boil), reason => reason.StartsWith(why, StringComparison.Ordinal));
    }

    [Fact]
    public void A_back_pan_under_its_least_depth_over_a_fire_is_a_danger_however_deep_the_other_is()
    {
        var boil = AtSteadyBoil();
        boil.Say("depth 1.5", "back pan 0.5");
        Assert.Equal("emergency-back", boil.State.Step);
        Assert.Contains(boil.Answers.OfType<AdviceLine>(), line => line.Advice.Text.Contains("into the back pan now", StringComparison.Ordinal));
        boil.Say("2");
        Assert.Equal("dry-cause", boil.State.Step);
    }

    [Theory]
    [InlineData("the back pan is dry")]
    [InlineData("rear pan is low")]
    [InlineData("flue pan bare")]
    public void S2_a_cry_that_names_the_back_pan_asks_for_that_pan(string cry)
    {
        var boil = AtSteadyBoil();
        boil.Say(cry);
        Assert.Equal("emergency-back", boil.State.Step);
    }

    [Fact]
    public void S2_of_a_cry_that_names_neither_pan_both_are_read()
    {
        var boil = AtSteadyBoil();
        boil.Say("pan dry", "depth 1.5");
        Assert.Equal("back-look", boil.State.Step);
        boil.Say("0.5");
        Assert.Equal("emergency-back", boil.State.Step);
    }

    [Fact]
    public void Who_has_nothing_to_pour_into_the_back_pan_is_asked_for_the_depth_of_that_pan()
    {
        var boil = AtSteadyBoil();
        boil.Say("back pan 0.8", "no", "yes");
        Assert.Equal("back-dry-look", boil.State.Step);
        boil.Say("2");
        Assert.Equal("dry-cause", boil.State.Step);
    }

    [Fact]
    public void No_wood_is_asked_for_over_a_back_pan_under_its_least_depth()
    {
        var boil = AtSteadyBoil();
        boil.Say("back pan 0.8", "no", "yes", "depth 1.5");
        boil.All.Clear();
        boil.After(20);
        Assert.DoesNotContain(boil.All.OfType<AdviceLine>(), line => line.Advice.Action == "add-wood");
    }

    [Theory]
    [InlineData("rear pan 1.9")]
    [InlineData("depth of the back pan 1.9")]
    public void The_pan_behind_is_read_by_each_of_its_names(string said)
    {
        var boil = AtSteadyBoil();
        boil.Say(said);
        Assert.Equal(1.9, boil.State.Last(ReadingName.BackPanDepth)!.Value.Value.Value);
    }

    [Fact]
    public void A_back_pan_that_rolls_is_not_heard_as_of_before()
    {
        var boil = LongAfterTheLastWood();
        boil.Say("front pan still, back pan rolling");
        Assert.Equal("rolling", boil.State.Last(ObservationName.Boil)!.Value.Value);
    }

    [Fact]
    public void A_back_pan_that_falls_is_filled_before_wood_goes_in()
    {
        var boil = AtSteadyBoil();
        boil.Say("back pan 1.4");
        Assert.Equal("back-raise", boil.State.Step);
        boil.Say("2");
        Assert.Equal("feed-cause", boil.State.Step);
    }

    [Fact]
    public void The_depth_of_each_is_asked_for_and_told_by_its_name()
    {
        var boil = AtSteadyBoil();
        boil.After(14);
        var asked = boil.All.OfType<PromptLine>().Select(line => line.Prompt).ToList();
        Assert.Contains(asked, prompt => prompt.Ask == "back-pan-depth" && prompt.Text.Contains("back pan", StringComparison.Ordinal));
        Assert.All(asked.Where(prompt => prompt.Ask == "pan-depth"), prompt => Assert.Contains("front pan", prompt.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void A_rig_of_one_pan_refuses_the_depth_of_another()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        var depth = boil.State.Rigs.Expected.Depth;
        boil.Say("back pan 2");
        Assert.Contains(boil.Answers.OfType<RefusedLine>(), line => line.Why.StartsWith("This rig has no back pan depth", StringComparison.Ordinal));
        Assert.Equal(depth, boil.State.Rigs.Expected.Depth);
    }

    [Fact]
    public void S2_the_word_for_a_bare_back_pan_leads_to_the_one_pan_of_a_rig_that_has_one()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("bare");
        Assert.Equal("emergency-dry", boil.State.Step);
    }

    [Fact]
    public void What_is_told_of_the_boil_names_both_pans()
    {
        var boil = AtSteadyBoil();
        boil.Say("status");
        Assert.Contains(boil.Answers.OfType<ToldLine>(), line => line.Text.Contains("back pan 2 in deep, least 1 in; front pan 1.5 in deep", StringComparison.Ordinal));
        boil.Say("what if I stop now");
        Assert.Contains(boil.Answers.OfType<ToldLine>(), line => line.Text.Contains("both pans", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_look_says_which_pan()
    {
        var flow = new Guide.Knowledge.Setting(Conversation.Flow, Guide.Rigs.RigFile.Read(Rig, RepositoryFiles.Read("flows", "rigs", Rig)), Guide.Knowledge.Guidance.Beginner, "test").Flow;
        var looks = flow.Watches.Select(watch => (watch.Id, watch.Ask, watch.Text))
            .Concat(flow.Steps.Values.Where(step => !step.Phase.IsEmergency).Select(step => (step.Id, Ask: step.Ask ?? "", step.Text))).ToList();
        Assert.All(looks.Where(look => look.Ask == "boil" && look.Id != "first-boil"), look => Assert.Contains("both pans", look.Text, StringComparison.Ordinal));
        Assert.All(looks.Where(look => look.Ask == "pan-depth" && !look.Id.StartsWith("batch", StringComparison.Ordinal)), look => Assert.Contains("front pan", look.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void Who_is_told_that_waiting_does_not_clear_it_is_told_the_deed()
    {
        var boil = LongAfterTheLastWood();
        boil.Say(AllSeen);
        boil.Say("back pan 1.02");
        boil.After(16);
        Assert.Contains(boil.All.OfType<AdviceLine>(), line => line.Advice is { Action: "flood-pan", Text: "Stay, and fill the back pan to 3 in; say its depth." });
        Assert.DoesNotContain(boil.All.OfType<AdviceLine>(), line => line.Advice.Text.Contains("waiting alone", StringComparison.Ordinal));
    }

    private static Conversation AtSteadyBoil()
    {
        var boil = new Conversation(Guide.Knowledge.Guidance.Beginner, Rig, members: Conversation.Few);
        boil.Say("yes", "depth 1.5", "back pan 2", "tank 55", "sap 2", "lit");
        boil.FireFor(27);
        boil.Say("boil rolling", "water 210.4", "back pan 2", "depth 1.5");
        return boil;
    }

    private static Conversation LongAfterTheLastWood()
    {
        var boil = AtSteadyBoil();
        boil.Say("shutdown", "yes");
        boil.After(90);
        return boil;
    }

    private static IReadOnlyList<string> Unmet(Conversation boil) => new Situation(boil.Session.Setting, boil.State).Unmet;

    [Fact]
    public void A_bare_number_after_back_is_the_depth_behind_or_asked_about_and_never_the_front_pans()
    {
        var boil = LongAfterTheLastWood();
        boil.Say("back 3");
        Assert.Equal(3, boil.State.Last(ReadingName.BackPanDepth)?.Value.Value);
        boil.Say("back 15");
        Assert.Contains("'back pan 15 in'", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
        Assert.Null(boil.State.Doubted);
    }
}
