using Panside.Guide.Advice;
using Panside.Guide.Answering;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Tests.Sessions;

/// <summary>Every question is asked in every phase: it is answered, changes nothing, and its figures are the ensemble's.</summary>
public class QuestionTests
{
    private static readonly string[] Asked =
    [
        "when can I leave", "when can I go to bed?", "how long until the draw", "is it syrup yet?", "when does the last charge go in",
        "when will it stop boiling", "is it boiling too hard?", "how fast is it boiling off", "how long will the sap last", "how much sap must I keep",
        "how much wood have I burned so far", "how much wood is left to burn", "how much sap has gone through so far", "how much syrup have I made so far",
        "how much syrup will it be tonight", "when is wood due", "how much wood in a charge", "what is due next", "what did I say last", "why do you ask",
        "what happens if I am away ten minutes", "what should the thermometer show", "how deep should the pan be", "how long have I been boiling",
        "how do we stand", "what is gradient", "how do I measure depth", "repeat", "what do I do if the pan leaks?",
    ];

    public static TheoryData<string> Phases => ["start-up", "steady-boil", "draw-off", "shutdown", "emergency"];

    [Theory]
    [MemberData(nameof(Phases))]
    public void Every_question_is_answered_in_every_phase_and_changes_nothing(string phase)
    {
        foreach (var question in Asked)
        {
            var boil = In(phase);
            boil.Hear(new Tick(boil.Now));
            var before = boil.State;
            boil.Hear(new Text(boil.Now, question));
            Assert.True(boil.Answers.Any(line => line is ToldLine or PromptLine) && !boil.Answers.Any(line => line is RefusedLine), $"{phase}: '{question}'");
            Assert.DoesNotContain(boil.Answers.OfType<ToldLine>(), told => told.Text.Contains('{', StringComparison.Ordinal));
            Assert.Equal((before.Step, before.Rigs, before.LastSaid, before.Marks), (boil.State.Step, boil.State.Rigs, boil.State.LastSaid, boil.State.Marks));
        }
    }

    [Fact]
    public void The_draw_is_told_as_the_ensemble_has_it()
    {
        var boil = In("steady-boil");
        var minutes = new Situation(boil.Session.Setting, boil.State).MinutesToDraw!.Value;
        Assert.Contains(Amount.Minutes(double.Round(minutes.P50 / 5) * 5), Told(boil, "how long until the draw"), StringComparison.Ordinal);
    }

    [Fact]
    public void Leaving_is_told_as_the_last_charge_and_the_dying_fire_have_it()
    {
        var boil = In("steady-boil");
        var now = new Situation(boil.Session.Setting, boil.State);
        var last = now.MinutesToLastCharge!.Value;
        var still = boil.State.Rigs.Forecasts.OnceLastCharged(boil.Session.Setting.Rig.Charge).StillMinutes(0.5);

        // Somebody must look (2 min); the cautious look on for 20 min over thin coals.
        var at = boil.Now.Time.AddMinutes(last.P50 + still + 2 + (now.IsCautious ? 20 : 0));
        var told = Told(boil, "when can I leave");
        var clock = TimeOnly.Parse(told[(told.IndexOf("about ", StringComparison.Ordinal) + 6)..][..5], System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(double.Abs((clock.ToTimeSpan() - at.TimeOfDay).TotalMinutes), 0, 3);
    }

    [Fact]
    public void Wood_so_far_is_what_was_told()
    {
        var boil = In("steady-boil");
        Assert.Contains(Amount.Shown(boil.Session.Setting.Units.From(Mass.FromKilograms(boil.State.Totals.WoodKilograms))), Told(boil, "how much wood so far"), StringComparison.Ordinal);
    }

    [Fact]
    public void Syrup_to_come_is_a_balance_of_sugar()
    {
        // 30 gal of 2 Brix less what is kept: 86 gal of 1 Brix make a gallon (rule of 86), so about (30 - stop) * 2 / 86 gal.
        var boil = In("steady-boil");
        var now = new Situation(boil.Session.Setting, boil.State);
        var gallons = (now.State.Rig.Tank!.Value.Liters - now.StopLiters!.Value) / 3.785 * 2 / 86;
        var told = Evening.SyrupLiters(now)!.Value / 3.785;
        Assert.InRange(told, 0.93 * gallons, 1.07 * gallons);
    }

    [Fact]
    public void Several_facts_in_a_line_are_taken_one_by_one_and_one_undo_takes_all_back()
    {
        var boil = In("steady-boil");
        boil.Leap(1);
        var before = boil.State;
        boil.Say("tank 29 and a half, depth inch and a half and I threw in seven pounds");
        Assert.Equal(
            ["tank 29.5 gal", "pan depth 1.5 in", "wood added, 7 lb"],
            boil.Answers.OfType<HeardLine>().Select(heard => Panside.Guide.Words.Describe.Line(heard.As)));
        boil.Say("undo");
        Assert.Equal(before.Readings[ReadingName.TankVolume].Count, boil.State.Readings[ReadingName.TankVolume].Count);
        Assert.Equal(before.Last(DeedName.AddWood)!.Value.At, boil.State.Last(DeedName.AddWood)!.Value.At);
    }

    [Fact]
    public void What_is_not_possible_is_not_heard()
    {
        var boil = In("steady-boil");
        boil.Say("tank 300");
        Assert.Empty(boil.Answers.OfType<HeardLine>());
        Assert.Single(boil.Answers.OfType<RefusedLine>());
    }

    [Fact]
    public void What_nobody_has_is_asked_for_no_more()
    {
        var boil = In("draw-off");
        boil.Say("I have no hydrometer");
        boil.Say("no thermometer either");
        Assert.NotEmpty(boil.Answers.OfType<ToldLine>());
        for (var minute = 0; minute < 60; minute++)
        {
            boil.After(1);
            Assert.False(boil.Open?.Ask is "hydrometer-brix" or "sample-temperature" or "draw-temperature" or "boiling-water-temperature", boil.Open?.Ask);
        }
    }

    [Fact]
    public void Who_goes_away_is_called_back_before_the_floor_can_show()
    {
        var boil = In("steady-boil");
        boil.Say("depth 1 1/2");
        boil.Say("I must go for 40 minutes");
        var clock = Assert.Single(boil.State.Clocks);
        var bare = new Situation(boil.Session.Setting, boil.State).MinutesToBare!.Value;
        Assert.InRange((clock.Until - boil.Now.Time).TotalMinutes, 1, bare / 2);
        boil.Say("I'm back");
        Assert.Empty(boil.State.Clocks);
    }

    [Fact]
    public void Gone_by_a_time_is_planned_backwards_from_it()
    {
        var boil = In("steady-boil");
        boil.Say("I must be gone by 22:30");
        var clock = Assert.Single(boil.State.Clocks);
        var still = boil.State.Rigs.Forecasts.OnceLastCharged(boil.Session.Setting.Rig.Charge).StillMinutes(0.95);
        Assert.InRange((new TimeOnly(22, 30).ToTimeSpan() - clock.Until.TimeOfDay).TotalMinutes - still, 29, 31); // 20 min over thin coals, 10 to have looked
    }

    [Theory]
    [InlineData("the coals are not spent")]
    [InlineData("boil is not still yet")]
    [InlineData("I never shut the draw")]
    [InlineData("I didn't flood the pan")]
    [InlineData("coals will be spent soon")]
    [InlineData("should I add 2 gal?")]
    [InlineData("no more wood?")]
    [InlineData("going to bed, yes")]
    [InlineData("two thousand")]
    [InlineData("it smells funny")]
    public void What_is_denied_asked_or_still_to_come_is_not_taken(string text)
    {
        var boil = In("steady-boil");
        boil.Leap(1);
        boil.Hear(new Tick(boil.Now));
        var before = boil.State;
        boil.Say(text);
        Assert.Equal((before.Deeds.Count, before.Observations.Count, before.IsOver, before.Step), (boil.State.Deeds.Count, boil.State.Observations.Count, boil.State.IsOver, boil.State.Step));
        Assert.All(before.Observations, seen => Assert.Equal(seen.Value, boil.State.Observations[seen.Key]));
    }

    [Fact]
    public void A_smell_that_nobody_can_name_is_never_taken_for_a_good_one()
    {
        var boil = In("steady-boil");
        boil.Say("it smells funny");
        Assert.Null(boil.State.Doubted);
        Assert.Contains("scorched", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("im out of sap", "dry")]
    [InlineData("we are all out of sap", "dry")]
    public void A_danger_said_with_who_says_it_is_heard(string text, string danger)
    {
        var boil = In("steady-boil");
        boil.Say("tank 29", text);
        Assert.Equal(danger, boil.Session.Setting.Flow.DangerAt(boil.State.Step)?.Code);
    }

    [Theory]
    [InlineData("gone by 7 am", "07:00")]
    [InlineData("I must be gone by midnight", "00:00")]
    [InlineData("must be gone by half past ten", "22:30")]
    public void A_time_is_the_half_of_the_day_that_was_said(string text, string by)
    {
        var boil = In("steady-boil");
        boil.Say(text);
        Assert.Equal($"gone by {by}", Assert.IsType<Text>(boil.Only<HeardLine>().As).Words);
    }

    [Fact]
    public void Nobody_is_let_go_from_a_scorched_smell_or_a_draw_that_is_due()
    {
        var boil = In("steady-boil");
        boil.Say("depth 1 1/2", "draw 218.5", "yes");
        Assert.Equal("draw-off", boil.Phase);
        boil.Say("I must go for ten minutes");
        Assert.Contains("Not now", string.Join(' ', boil.Answers.OfType<ToldLine>().Select(line => line.Text)), StringComparison.Ordinal);
        Assert.Empty(boil.State.Clocks);
    }

    [Theory]
    [InlineData("do I need to add wood")]
    [InlineData("when is wood due")]
    [InlineData("when can I leave")]
    public void In_an_emergency_no_answer_goes_past_it(string question)
    {
        Assert.Contains("emergency", Told(In("emergency"), question), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("what do I do if the pan leaks?")]
    [InlineData("when does foam go over?")]
    [InlineData("how would I notice a leak under the pan")]
    [InlineData("what should I do if the stack catches fire?")]
    [InlineData("what if the pan leaks")]
    [InlineData("what if somebody gets scalded?")]
    public void A_question_about_a_danger_opens_none_and_is_told_how_one_is_opened(string question)
    {
        var boil = In("steady-boil");
        var before = boil.State.Step;
        Assert.Contains("No question opens an emergency", Told(boil, question), StringComparison.Ordinal);
        Assert.Equal(before, boil.State.Step);
    }

    [Theory]
    [InlineData("leaking")]
    [InlineData("smoke")]
    [InlineData("fire")]
    [InlineData("hurt")]
    [InlineData("dry pan")]
    [InlineData("foam over")]
    [InlineData("danger")]
    public void S2_the_words_that_this_answer_names_open_the_emergency(string word)
    {
        var boil = In("steady-boil");
        Assert.Contains($"'{word}'", Told(boil, "what do I do if the pan leaks?"), StringComparison.Ordinal);
        boil.Say(word);
        Assert.Equal("emergency", boil.Phase);
    }

    [Theory]
    [InlineData("what if he's not breathing", "faint")]
    [InlineData("what if someone collapses", "faint")]
    [InlineData("what do i do if someone is burned", "hurt")]
    [InlineData("what do I do if the pan leaks?", "leak")]
    public void A_question_that_supposes_a_danger_is_told_the_one_word_of_its_page(string question, string word)
    {
        var boil = In("steady-boil");
        Assert.Contains($"Type '{word}'", Told(boil, question), StringComparison.Ordinal);
        boil.Say(word);
        Assert.Equal(word, boil.Session.Setting.Flow.DangerAt(boil.State.Step)?.Code);
    }

    [Theory]
    [InlineData("he's not breathing what do i do", "faint")]
    [InlineData("someone is burned what do i do", "hurt")]
    [InlineData("my kid got burned what now", "hurt")]
    [InlineData("she collapsed what should i do", "faint")]
    public void Somebody_who_is_hurt_now_opens_the_page_whatever_is_asked_behind_it(string cry, string danger)
    {
        var boil = In("steady-boil");
        boil.Say(cry);
        Assert.Equal(danger, boil.Session.Setting.Flow.DangerAt(boil.State.Step)?.Code);
    }

    [Fact]
    public void What_if_that_names_no_danger_is_still_reckoned()
    {
        var boil = In("steady-boil");
        Assert.DoesNotContain("No question opens an emergency", Told(boil, "what if I stop now"), StringComparison.Ordinal);
        Assert.DoesNotContain("No question opens an emergency", Told(boil, "what if I add 5 gal"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_thermometer_that_is_found_is_asked_for_again()
    {
        var boil = In("steady-boil");
        boil.Say("no thermometer");
        Assert.Contains("lacks-thermometer", boil.State.Marks);
        boil.Say("draw 213.5");
        Assert.DoesNotContain("lacks-thermometer", boil.State.Marks);
    }

    [Fact]
    public void Every_answer_and_every_term_can_be_said()
    {
        Assert.All(KnownAnswers.BookOf("en").Asks.Values, ask => Assert.NotEmpty(ask.Answers));
        Assert.All(KnownAnswers.TermsOf("en").All, term => Assert.InRange(term.Is.Length, 20, 240));
        Assert.Equal("gradient", KnownAnswers.TermsOf("en").In("so what the heck is the gradient?")?.Name);
        Assert.Null(KnownAnswers.TermsOf("en").In("what is love"));
    }

    private static string Told(Conversation boil, string question)
    {
        boil.Hear(new Text(boil.Now, question));
        return string.Join(' ', boil.Answers.OfType<ToldLine>().Select(line => line.Text));
    }

    private static Conversation In(string phase)
    {
        if (phase == "start-up")
        {
            return new Conversation(members: Conversation.Few);
        }

        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("draw 213");
        switch (phase)
        {
            case "draw-off":
                boil.Say("draw 218");
                boil.Say("opened");
                break;
            case "shutdown":
                boil.Say("shutdown");
                break;
            case "emergency":
                boil.Say("foam over");
                break;
        }

        Assert.Equal(phase, boil.Phase);
        return boil;
    }
}
