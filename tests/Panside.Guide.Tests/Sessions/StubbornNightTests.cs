using Panside.Guide.Advice;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>What a tired operator does that no list foresees: goes past a question, cries for nothing, lights again, pours what is taken for wood.</summary>
public class StubbornNightTests
{
    private const string Gas = "gas-divided.yaml";

    [Theory]
    [InlineData("threw a log on to keep it warm")]
    [InlineData("tossed some wood in so it wont freeze")]
    public void Nobody_leaves_past_a_question_whose_yes_would_keep_him(string said)
    {
        var boil = Clear();
        boil.Say(said);
        Assert.NotEmpty(Unmet(boil));
        boil.Say("leave");
        Assert.False(boil.State.IsOver);
        boil.Say("yes", "leave");
        Assert.False(boil.State.IsOver);
    }

    [Fact]
    public void A_no_to_it_lets_him_go()
    {
        var boil = Clear();
        boil.Say("threw a log on to keep it warm", "leave", "no", "leave");
        Assert.True(boil.State.IsOver);
    }

    [Fact]
    public void A_fire_that_caught_again_over_a_still_pan_is_a_fire()
    {
        var boil = Clear();
        boil.Say("fire's caught again");
        Assert.NotEmpty(Unmet(boil));
        Assert.DoesNotContain(boil.Answers, line => line is RefusedLine);
    }

    [Fact]
    public void Looking_again_takes_no_word_back()
    {
        var boil = Clear();
        boil.After(70);
        boil.Say("boil still");
        Assert.Empty(Unmet(boil));
    }

    [Theory]
    [InlineData("dry pan", "false alarm")]
    [InlineData("dry pan", "it was never dry")]
    [InlineData("smoke", "nah just steam")]
    [InlineData("i have to leave now", "not leaving")]
    public void A_cry_that_was_none_is_taken_back(string cry, string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2", cry);
        Assert.Equal("emergency", boil.Phase);
        boil.Say(said);
        Assert.Equal("steady-boil", boil.Phase);
    }

    [Theory]
    [InlineData("co alarm", "no smoke")]
    [InlineData("smoke", "still here")]
    [InlineData("roof fire", "i'm right here")]
    public void But_what_a_real_danger_can_be_said_with_takes_none_back(string cry, string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2", cry, said);
        Assert.Equal("emergency", boil.Phase);
    }

    [Fact]
    public void Who_stays_after_telling_more_is_led_to_a_look_at_the_pan()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("i have to leave now", "depth 1 1/2", "not leaving");
        Assert.Equal("depth-again", boil.State.Step);
    }

    [Fact]
    public void But_not_once_its_page_was_answered()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("emergency", "no", "false alarm");
        Assert.Equal("emergency", boil.Phase);
    }

    [Fact]
    public void Wood_told_in_an_emergency_is_counted()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        var before = boil.State.Totals.WoodKilograms;
        boil.Say("dry pan", "depth 1 1/2", "wood");
        Assert.Equal("emergency", boil.Phase);
        Assert.True(boil.State.Totals.WoodKilograms > before);
    }

    [Theory]
    [InlineData("leaving, pan's at half an inch")]
    [InlineData("heading in now, coals still glowing")]
    [InlineData("heading to bed, still simmering a bit")]
    public void What_is_told_behind_leaving_comes_first(string said)
    {
        var boil = Clear();
        boil.Say(said);
        Assert.False(boil.State.IsOver);
    }

    [Theory]
    [InlineData("door fell off")]
    [InlineData("still got sap")]
    [InlineData("there's still flames in there")]
    [InlineData("havent fed it in 20 minutes")]
    public void What_is_nothing_of_the_kind_opens_no_question(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2", said);
        Assert.Null(boil.State.Doubted);
        Assert.False(boil.State.IsOver);
    }

    [Theory]
    [InlineData("coals fell out on the floor")]
    [InlineData("hot coals everywhere")]
    [InlineData("log rolled out")]
    public void Coals_on_the_floor_are_a_fire(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2", said);
        Assert.Equal("emergency-fire", boil.State.Step);
    }

    [Theory]
    [InlineData("front pan is still")]
    [InlineData("only the front is still")]
    public void The_front_pan_alone_tells_nothing_of_both(string said)
    {
        var boil = Conversation.AtSteadyBoil(rig: "flue-and-syrup-pan.yaml", members: Conversation.Few);
        boil.Say("depth 1 1/2", said);
        Assert.NotEqual("still", boil.State.Last(ObservationName.Boil)?.Value);
        Assert.Null(boil.State.Doubted);
    }

    [Fact]
    public void Nobody_lights_a_burner_over_a_smell_of_gas()
    {
        var boil = Conversation.AtSteadyBoil(rig: Gas, members: Conversation.Few);
        boil.Say("depth 1 1/2", "smell gas", "lit");
        Assert.Contains(boil.Answers.OfType<QuestionLine>(), line => line.Text.StartsWith("Light it in an emergency?", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("i shut the tank valve an hour ago, just noticed")]
    [InlineData("i forgot to open the tank valve")]
    public void A_valve_that_was_forgotten_is_no_draw(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2", said, "opened it");
        Assert.False(boil.State.Deeds.ContainsKey(DeedName.OpenDraw));
    }

    [Fact]
    public void A_look_that_comes_too_soon_is_told_so()
    {
        var boil = Conversation.AtSteadyBoil(rig: Gas, members: Conversation.Few);
        boil.Say("depth 1 1/2", "shut off", "yes");
        boil.After(6);
        boil.Say("boil still");
        Assert.Contains(boil.Answers.OfType<ToldLine>(), told => told.Text.StartsWith("Noted. A still pan tells nothing yet: look again in ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("poured 2 gal")]
    [InlineData("depth 2")]
    public void What_is_poured_into_foam_leads_to_a_look_at_it_and_on(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2", "foam over", "foam over", "foam over", "foam over", said);
        Assert.Equal("foam-look", boil.State.Step);
        boil.Say("low");
        Assert.Equal("depth-again", boil.State.Step);
    }

    [Fact]
    public void Foam_that_is_told_low_on_its_page_is_down()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2", "foam over", "no", "foam low");
        Assert.Equal("depth-again", boil.State.Step);
    }

    [Theory]
    [InlineData("draw valve stuck open", "leak")]
    [InlineData("the draw-off won't shut", "leak")]
    [InlineData("draw wont open", "stuck")]
    public void A_valve_stuck_open_is_another_danger_than_one_stuck_shut(string said, string danger)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2", said);
        Assert.Equal(danger, boil.Session.Setting.Flow.DangerAt(boil.State.Step)?.Code);
    }

    [Theory]
    [InlineData("somebody shut the tank valve")]
    [InlineData("tank valve was shut the whole time")]
    public void A_tank_valve_that_somebody_shut_is_to_be_opened(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2", said);
        Assert.Equal("float-shut", boil.State.Step);
        boil.Say("it was closed all along, open now");
        Assert.False(boil.State.Deeds.ContainsKey(DeedName.OpenDraw));
    }

    [Theory]
    [InlineData("can i throw water on the fire")]
    [InlineData("pulled the coals out")]
    [InlineData("gave the neighbor 5 gal")]
    [InlineData("smells kinda off")]
    public void What_is_answered_and_not_taken(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2");
        var before = (boil.State.Deeds.Count, boil.State.Observations.Count, boil.State.Readings.Count);
        boil.Say(said);
        Assert.Equal("steady-boil", boil.Phase);
        Assert.Null(boil.State.Doubted);
        Assert.Equal(before, (boil.State.Deeds.Count, boil.State.Observations.Count, boil.State.Readings.Count));
    }

    [Fact]
    public void Past_the_draw_point_a_higher_reading_is_believed()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2", "draw 217", "yes");
        boil.After(1);
        boil.Say("218.5");
        boil.After(1);
        boil.Say("222");
        Assert.Null(boil.State.Doubted);
        Assert.Equal(222, boil.State.Last(ReadingName.DrawTemperature)!.Value.Value.Value);
    }

    [Theory]
    [InlineData("wind keeps blowing it out")]
    [InlineData("flame went out and wont relight")]
    [InlineData("burner wont stay lit")]
    public void A_burner_that_does_not_stay_lit_is_shut_off(string said)
    {
        var boil = Conversation.AtSteadyBoil(rig: Gas, members: Conversation.Few);
        boil.Say("depth 1 1/2", said);
        Assert.Equal("flame-out", boil.State.Step);
        boil.Say("its lit");
        Assert.NotEqual("flame-out", boil.State.Step);
    }

    [Theory]
    [InlineData("gas is getting low")]
    [InlineData("changed the bottle")]
    public void Gas_that_runs_low_puts_nothing_out(string said)
    {
        var boil = Conversation.AtSteadyBoil(rig: Gas, members: Conversation.Few);
        boil.Say("depth 1 1/2", said);
        Assert.Equal("steady-boil", boil.Phase);
        Assert.IsType<RefusedLine>(boil.Answers[0]);
    }

    [Fact]
    public void A_pitcher_is_no_wood()
    {
        var boil = Conversation.AtSteadyBoil(rig: "flat-by-hand.yaml", members: Conversation.Few);
        var before = boil.State.Totals.WoodKilograms;
        boil.Say("depth 1 1/2", "put a pitcher in");
        Assert.Equal(before, boil.State.Totals.WoodKilograms);
        Assert.True(boil.State.Deeds.ContainsKey(DeedName.FillPan));
    }

    [Theory]
    [InlineData("yup boiled thursday", AnswerWords.Yes)]
    [InlineData("no its my first year", AnswerWords.No)]
    public void A_yes_or_a_no_with_talk_behind_it_answers(string said, string word)
    {
        var boil = new Conversation();
        boil.Say("note here");
        boil.Say(said);
        Assert.Equal(word, Assert.IsType<Answer>(boil.Only<HeardLine>().As).Word);
    }

    [Theory]
    [InlineData("yes but not yet")]
    [InlineData("no wait")]
    [InlineData("yeah in a minute")]
    public void One_that_takes_it_back_does_not(string said)
    {
        var boil = new Conversation();
        boil.Say("note here");
        boil.Say(said);
        Assert.DoesNotContain(boil.Answers, line => line is HeardLine { As: Answer { Word: AnswerWords.Yes or AnswerWords.No } });
    }

    [Theory]
    [InlineData("leaving in half an hour")]
    [InlineData("leaving soon")]
    public void Who_leaves_later_is_told_what_is_missing(string said)
    {
        var boil = Clear();
        boil.Say(said);
        Assert.False(boil.State.IsOver);
        Assert.Contains(boil.Answers, line => line is ToldLine);
    }

    [Theory]
    [InlineData("went in to put kids to bed", "back")]
    [InlineData("wake me in an hour", "away")]
    [InlineData("taking a nap", "away")]
    public void Who_sleeps_or_was_gone_is_told_of_the_pan(string said, string word)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1 1/2", said);
        Assert.Equal(word, Assert.IsType<Text>(boil.Only<HeardLine>().As).Words);
    }

    [Fact]
    public void A_reading_after_a_cold_pour_begins_no_course_of_a_batch()
    {
        var boil = Conversation.AtSteadyBoil(rig: "flat-by-hand.yaml", members: Conversation.Few);
        boil.Say("depth 1 1/2", "draw 211.5");
        boil.After(5);
        boil.Say("poured 1 gal");
        boil.After(2);
        boil.Say("draw 178", "yes");
        boil.After(7);
        boil.Say("draw 211.8");
        var now = new Situation(boil.Session.Setting, boil.State);
        Assert.False(now.IsDrawImminent);
        Assert.False(now.IsBatchNear);
        Assert.Single(now.Course.Readings);
    }

    [Fact]
    public void What_is_plain_between_commas_is_taken()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("added wood, pan 1 3/8, kids are screaming");
        Assert.Equal(1.375, boil.State.Last(ReadingName.PanDepth)!.Value.Value.Value);
        Assert.True(boil.State.Deeds.ContainsKey(DeedName.AddWood));
    }

    private static IReadOnlyList<string> Unmet(Conversation boil) => new Situation(boil.Session.Setting, boil.State).Unmet;

    /// <summary>A shutdown after which nothing speaks against leaving.</summary>
    internal static Conversation Clear()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12, members: Conversation.Few);
        boil.Say("shutdown", "yes", "flooded", "depth 2.5");
        boil.After(60);
        boil.Say("boil still", "coals spent", "depth 2.4", "gradient gone", "covered");
        boil.After(3);
        boil.Say("boil still");
        Assert.Empty(Unmet(boil));
        return boil;
    }
}
