using Panside.Guide.Flows;
using Panside.Guide.Hearing;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;

namespace Panside.Guide.Tests.Hearing;

/// <summary>What a tired person types: taken where it can only mean one thing, and never for a deed that it does not name.</summary>
public class SaidInSteamTests
{
    private const string Wood = "two-by-four-natural.yaml";
    private const string Gas = "gas-divided.yaml";
    private const string Batch = "flat-by-hand.yaml";
    private const string Two = "flue-and-syrup-pan.yaml";

    [Theory]
    [InlineData("pan 1.4, no wait 1.3", 1.3)]
    [InlineData("depth 1.5 sorry 1.3", 1.3)]
    [InlineData("pan 1.6, make that 1.4", 1.4)]
    [InlineData("depth is not 1.4 it's 1.3", 1.3)]
    [InlineData("pan 1.6, no 1.4", 1.4)]
    [InlineData("35 mm", 35)]
    public void Of_two_figures_in_one_breath_the_later_counts(string said, double value) =>
        Assert.Equal(value, Assert.IsType<Reading>(Heard(Wood, said)).Measure.Value, 6);

    [Theory]
    [InlineData("3/4 inch")]
    [InlineData("0.75 in")]
    [InlineData("1.1")]
    public void A_depth_is_taken_while_the_thermometer_is_asked(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        Until(boil, prompt => prompt.Ask == "draw-temperature");
        boil.Say(said);
        Assert.Equal("pan-depth", boil.State.Readings.Keys.Single(name => boil.State.Last(name)?.At == boil.Now).Code);
    }

    [Theory]
    [InlineData(Two, "2 inches over the flues", "back-pan-depth")]
    [InlineData(Two, "back pan's at 1 3/4", "back-pan-depth")]
    [InlineData(Two, "1 3/4 in the back", "back-pan-depth")]
    [InlineData(Two, "front 1 1/2", "pan-depth")]
    public void What_it_is_of_is_heard(string rig, string said, string reading) => Assert.Equal(reading, Assert.IsType<Reading>(Heard(rig, said)).Name.Code);

    [Fact]
    public void A_number_that_only_a_thermometer_shows_is_its_reading_where_a_yes_is_asked()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2");
        Until(boil, prompt => prompt.Ask == Prompt.Confirm);
        boil.Say("213.4");
        Assert.Equal(ReadingName.DrawTemperature, Assert.IsType<Reading>(boil.Answers.OfType<HeardLine>().Single().As).Name);
    }

    [Fact]
    public void Readings_one_after_the_other_are_all_taken()
    {
        var boil = Conversation.AtSteadyBoil(rig: Two, members: Conversation.Few);
        boil.Say("tank 29, back 2, front 1.5");
        Assert.Equal(["tank-volume", "back-pan-depth", "pan-depth"], boil.Answers.OfType<HeardLine>().Select(line => Assert.IsType<Reading>(line.As).Name.Code));
    }

    [Theory]
    [InlineData(Batch, "poured a gallon of sap out by accident")]
    [InlineData(Batch, "tipped it out into the kettle, a gallon and a half")]
    [InlineData(Batch, "dumped it in the pot, about a gallon")]
    [InlineData(Wood, "wait it's coming up again")]
    [InlineData(Wood, "running low on wood")]
    [InlineData(Wood, "opened the draft")]
    [InlineData(Wood, "shut up")]
    [InlineData(Wood, "i'm ok to keep going")]
    [InlineData(Wood, "no more smoke")]
    [InlineData(Wood, "can i cover the pan")]
    [InlineData(Wood, "did i put wood in")]
    [InlineData(Wood, "can i put in more wood")]
    [InlineData(Wood, "is it ok to leave the draw valve open")]
    [InlineData(Wood, "why no more wood")]
    [InlineData(Wood, "stop asking me that")]
    public void What_names_another_thing_or_asks_is_no_deed(string rig, string said)
    {
        var boil = Conversation.AtSteadyBoil(rig: rig, members: Conversation.Few);
        var (deeds, step) = (boil.State.Deeds, boil.State.Step);
        boil.Say(said);
        Assert.Equal(deeds, boil.State.Deeds);
        Assert.Equal(step, boil.State.Step);
        Assert.Null(boil.State.Doubted);
    }

    [Theory]
    [InlineData("put one more log in to keep warm")]
    [InlineData("the kids put wood in")]
    public void Wood_in_words_of_ones_own_is_asked_back(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("shutdown", "yes");
        boil.Say(said);
        Assert.Equal(DeedName.AddWood, Assert.IsType<Did>(boil.State.Doubted).Name);
    }

    [Fact]
    public void Wood_that_goes_in_with_a_dropped_letter_ends_no_firing()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("puttin wood");
        Assert.Equal("boiling", boil.State.Step);
        Assert.Equal(DeedName.AddWood, Assert.IsType<Did>(boil.State.Doubted).Name);
    }

    [Theory]
    [InlineData("put in no more wood")]
    [InlineData("no more wood")]
    [InlineData("out of wood")]
    [InlineData("stopped adding wood")]
    public void No_more_wood_still_ends_it(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say(said);
        Assert.Equal("hold-wood", boil.State.Step);
    }

    [Theory]
    [InlineData("yep wood", "add-wood")]
    [InlineData("ok, wood in", "add-wood")]
    [InlineData("yeah rolling", "boil")]
    public void What_stands_behind_a_yes_counts(string said, string code)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        Until(boil, prompt => prompt.Ask == "pan-depth");
        boil.Say(said);
        Assert.Equal(code, boil.Only<HeardLine>().As switch { Did did => did.Name.Code, Observed seen => seen.Name.Code, _ => "" });
    }

    [Fact]
    public void A_draw_that_still_runs_is_no_leak()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("open", "still running");
        Assert.Equal("draw-close", boil.State.Step);
        Assert.Contains(boil.Answers, line => line is ToldLine { Text: var told } && told.StartsWith("Go on while it is syrup", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("shut the gas off", "shut-off")]
    [InlineData("turned the burner off", "shut-off")]
    public void A_burner_that_is_shut_is_no_draw_off(string said, string deed) => Assert.Equal(deed, Assert.IsType<Did>(Heard(Gas, said)).Name.Code);

    [Theory]
    [InlineData("i turned the burner back on")]
    [InlineData("put the heat back on")]
    public void A_burner_that_is_on_again_is_lit(string said)
    {
        var boil = Conversation.AtSteadyBoil(rig: Gas, members: Conversation.Few);
        boil.Say("burner off");
        boil.Say(said);
        Assert.Equal(DeedName.LitFire, Assert.IsType<Did>(boil.Answers.OfType<HeardLine>().Single().As).Name);
    }

    [Theory]
    [InlineData("burner went out")]
    [InlineData("out of propane")]
    public void A_flame_that_is_out_is_shut_off_first(string said)
    {
        var boil = Conversation.AtSteadyBoil(rig: Gas, members: Conversation.Few);
        boil.Say(said);
        Assert.Equal("flame-out", boil.State.Step);
        boil.Say("yes");
        Assert.NotNull(boil.State.Last(DeedName.ShutOff));
        Assert.Equal("draw-pail", boil.State.Step);
        boil.After(5);
        boil.Say("lit");
        Assert.Equal("start-up", boil.Phase);
    }

    [Fact]
    public void A_blower_that_is_out_keeps_wood_back_and_draws_go_on()
    {
        var boil = Conversation.AtSteadyBoil(rig: "two-by-four-forced.yaml", members: Conversation.Few);
        boil.Say("blower quit");
        Assert.Equal("blower-out", boil.State.Step);
        boil.Say("draw 219.5");
        Assert.Equal("draw-open", boil.State.Step);
    }

    [Fact]
    public void A_draw_that_is_shut_while_the_burner_is_on_is_no_burner_shut_off()
    {
        var boil = Conversation.AtSteadyBoil(rig: Gas, members: Conversation.Few);
        boil.Say("draw open", "closed the draw off and turned the heat down");
        Assert.Null(boil.State.Last(DeedName.ShutOff));
    }

    [Theory]
    [InlineData("added 2 splits, sorry, depth 1.4")]
    [InlineData("drew 2 qt, sorry, tank 20")]
    [InlineData("smoke in here 5 min, wait tank 12")]
    [InlineData("depth 1 1/2 rather than 2")]
    public void Another_thing_behind_a_sorry_takes_nothing_back(string said) => Assert.Null(Correction.Of(said));

    [Theory]
    [InlineData("the heater is back on fire", "fire")]
    [InlineData("burner is on again and theres smoke everywhere", "smoke")]
    public void A_cry_goes_before_a_burner_that_is_on_again(string said, string danger)
    {
        var boil = Conversation.AtSteadyBoil(rig: Gas, members: Conversation.Few);
        boil.Say(said);
        Assert.Equal("emergency-" + danger, boil.State.Step);
    }

    [Theory]
    [InlineData("is that gas i smell")]
    [InlineData("why do i smell propane")]
    public void Gas_that_is_smelled_is_no_question_and_nothing_is_lit_over_it(string said)
    {
        var boil = Conversation.AtSteadyBoil(rig: Gas, members: Conversation.Few);
        boil.Say("burner off", said);
        Assert.Equal("emergency-smoke", boil.State.Step);
        boil.Say("relit");
        Assert.IsType<Did>(boil.State.Doubted);
    }

    [Fact]
    public void A_fire_that_still_burns_is_no_still_boil()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("roof is on fire", "yes");
        Assert.Equal("fire-after", boil.State.Step);
        boil.Say("still");
        Assert.NotEqual("still", boil.State.Last(ObservationName.Boil)?.Value);
        Assert.NotEqual("fire-after", boil.State.Step);
    }

    [Fact]
    public void A_chimney_fire_comes_over_a_stuck_draw_off()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("valve is frozen shut", "chimney fire");
        Assert.Equal("emergency-chimney", boil.State.Step);
    }

    [Theory]
    [InlineData("tank's empty")]
    [InlineData("the tank is empty")]
    [InlineData("the sap is gone")]
    [InlineData("head tank is empty")]
    [InlineData("that was the last of the sap")]
    public void An_empty_tank_is_its_reading_and_ends_the_firing(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say(said);
        Assert.Equal(0, boil.State.Last(ReadingName.TankVolume)!.Value.Value.Value);
        Assert.Equal("hold-wood", boil.State.Step);
        Assert.Contains(boil.Answers, line => line is AdviceLine { Advice: { Action: "raise-level", Urgency: "now" } });
    }

    [Theory]
    [InlineData("too low")]
    [InlineData("pretty low")]
    public void Low_is_the_pan_where_its_depth_is_asked(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        Until(boil, prompt => prompt.Ask == "pan-depth");
        boil.Say(said);
        Assert.Equal("emergency-dry", boil.State.Step);
    }

    [Fact]
    public void Low_alone_is_asked_back_there_for_foam_is_low_as_well()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        Until(boil, prompt => prompt.Ask == "pan-depth");
        boil.Say("foam low");
        Assert.Contains(boil.Say("low"), line => line is RefusedLine(_, _, var why, _) && why.StartsWith("The pan, or the foam?", StringComparison.Ordinal));
    }

    [Fact]
    public void It_is_the_foam_that_is_low_while_a_look_at_it_is_owed()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        Until(boil, prompt => prompt.Ask == "foam");
        Until(boil, prompt => prompt.Ask == "pan-depth");
        boil.Say("low");
        Assert.Equal("low", Assert.IsType<Observed>(boil.Answers.OfType<HeardLine>().Single().As).Is);
    }

    [Theory]
    [InlineData("valve is frozen shut")]
    [InlineData("the draw-off is stuck")]
    public void A_draw_off_that_does_not_open_has_a_page_of_its_own(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say(said);
        Assert.Equal("emergency-stuck", boil.State.Step);
        Assert.Contains("Pour cold sap", boil.Open!.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no more butter")]
    [InlineData("no more questions")]
    public void Nothing_that_is_guessed_takes_one_out_of_an_emergency(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("chimney fire", said);
        Assert.Equal("emergency-chimney", boil.State.Step);
    }

    [Theory]
    [InlineData("what do i do")]
    [InlineData("it's still roaring")]
    public void A_vague_cry_brings_the_same_page_again(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("chimney fire");
        boil.Say(said);
        Assert.Equal("emergency-chimney", boil.State.Step);
        Assert.Contains(boil.Answers, line => line is PromptLine);
    }

    [Fact]
    public void A_page_hears_its_own_words_as_yes()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("chimney fire", "it's out");
        Assert.NotEqual("emergency-chimney", boil.State.Step);
    }

    [Fact]
    public void A_yes_to_a_later_question_never_leaves()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("leave");
        Assert.Equal(DeedName.Leave, Assert.IsType<Did>(boil.State.Doubted).Name);
        boil.After(3);
        boil.Say("yes");
        Assert.False(boil.State.IsOver);
    }

    [Fact]
    public void Nobody_is_asked_for_wood_while_away_or_while_a_reading_of_syrup_is_in_doubt()
    {
        var away = Conversation.AtSteadyBoil(members: Conversation.Few);
        away.Say("be right back, 10 minutes");
        Assert.DoesNotContain(away.After(14), line => line is AdviceLine { Advice.Action: "add-wood" });
        Assert.Contains("back", away.Say("back").OfType<HeardLine>().Select(line => Assert.IsType<Text>(line.As).Words));

        var doubted = Conversation.AtSteadyBoil(members: Conversation.Few);
        doubted.Say("draw 211.5");
        doubted.After(4);
        doubted.Say("draw 218.4");
        Assert.IsType<Reading>(doubted.State.Doubted);
        Assert.DoesNotContain(doubted.After(5), line => line is AdviceLine { Advice.Action: "add-wood" });
    }

    [Fact]
    public void A_vague_cry_that_may_be_graver_than_the_page_brings_the_list_with_the_likely_first()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("chimney fire", "something is wrong with him");
        Assert.Equal("emergency-which", boil.State.Step);
        Assert.Contains("Type what is wrong: hurt, faint", boil.Open!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_that_pass_each_other_by_stop_at_one_of_them()
    {
        var flow = FlowFile.ReadUnwalked("round", RepositoryFiles.Read("tests", "Panside.Guide.Tests", "Flows", "rejected", "Steps-MustNotPassEachOtherBy.yaml"), Vocabularies.Flow);
        var session = new Session(new(flow, RigFile.Read("r", RepositoryFiles.Read("flows", "rigs", Wood)), Guidance.Beginner, "test") { Members = Conversation.Few });
        var start = new DateTimeOffset(2031, 3, 8, 17, 0, 0, TimeSpan.FromHours(-5));
        session.Hear(new Tick(Moment.Of(start)));
        session.Hear(new Text(Moment.Of(start), "no"));
        Assert.Contains(session.State.Step, new[] { "one", "two" });
    }

    private static LineIn Heard(string rig, string said)
    {
        var boil = Conversation.AtSteadyBoil(rig: rig, members: Conversation.Few);
        boil.Say(said);
        return boil.Only<HeardLine>().As;
    }

    private static void Until(Conversation boil, Func<Prompt, bool> isAsked)
    {
        for (var minute = 0; minute < 60 && !(boil.Open is { } open && isAsked(open)); minute++)
        {
            boil.After(1);
        }

        Assert.NotNull(boil.Open);
        Assert.True(isAsked(boil.Open));
    }
}
