using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Sessions;

namespace Panside.Guide.Tests.Sessions;

public class ConversationTests
{
    [Fact]
    public void The_first_line_opens_the_session_in_order()
    {
        var boil = new Conversation();
        Assert.Equal(
            [typeof(SessionLine), typeof(ToldLine), typeof(PhaseLine), typeof(PromptLine)],
            boil.Answers.Where(line => line is not ForecastLine).Select(line => line.GetType()));
        Assert.Equal(Enumerable.Range(1, boil.Answers.Count), boil.Answers.Select(line => line.Sequence));
        Assert.Equal("start-up", boil.Phase);
    }

    [Fact]
    public void S8_local_codes_are_deferred_to_once()
    {
        var boil = Conversation.AtSteadyBoil();
        Assert.Single(boil.All.OfType<ToldLine>(), line => line.Text.Contains("Local fire and food codes", StringComparison.Ordinal));
    }

    [Fact]
    public void Help_names_the_flows_words_in_the_files_order_emergency_first()
    {
        var boil = new Conversation();
        boil.Say("help");
        Assert.Equal(
            "Flow: emergency, fire, smoke, faint, hurt, dry, scorch, foam, chimney, stuck, stack, float, leak, away, shutdown, tank-valve-shut.", boil.Answers.OfType<ToldLine>().Last().Text);
    }

    [Fact]
    public void O7_a_practised_hand_is_asked_without_reasons_and_why_still_tells_them()
    {
        var practised = Conversation.AtSteadyBoil(Guidance.Practised);
        practised.After(30);
        Assert.All(practised.All.OfType<PromptLine>(), line => Assert.Null(line.Prompt.Because));
        practised.Say("why");
        Assert.NotEmpty(practised.Only<ToldLine>().Text);
        var beginner = Conversation.AtSteadyBoil();
        beginner.After(30);
        Assert.All(beginner.All.OfType<PromptLine>(), line => Assert.NotEmpty(line.Prompt.Because!));
    }

    [Fact]
    public void Time_never_goes_back()
    {
        var boil = new Conversation();
        var earlier = Moment.Of(boil.Now.Time.AddMinutes(-1));
        var before = boil.State;
        boil.Hear(new Tick(earlier));
        Assert.Equal("at", boil.Only<RefusedLine>().Field);
        Assert.Equal(boil.Now, boil.Only<RefusedLine>().At);
        Assert.Equal(before with { Sequence = before.Sequence + 1 }, boil.State);
    }

    [Fact]
    public void The_same_reading_at_the_same_time_is_refused_once_taken()
    {
        var boil = new Conversation();
        var line = boil.Read(ReadingName.TankVolume, 20, Unit.Gallon);
        boil.Hear(line);
        Assert.Empty(boil.Answers.OfType<RefusedLine>());
        boil.Hear(line);
        Assert.Single(boil.State.Readings[ReadingName.TankVolume]);
        Assert.Contains("already", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fire_is_lit_once()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("lit");
        Assert.Contains("lit already", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Undo_takes_back_the_last_thing_and_the_one_before()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("tank 28");
        var wood = boil.State.Totals.WoodKilograms;
        boil.Say("tank 27", "wood");
        boil.Say("undo");
        Assert.Equal("Taken back: wood added.", boil.Only<ToldLine>().Text);
        Assert.Equal(wood, boil.State.Totals.WoodKilograms, 9);
        boil.Say("undo");
        Assert.Equal(28, boil.State.Last(ReadingName.TankVolume)!.Value.Value.Value);
    }

    [Fact]
    public void Undo_brings_the_step_back()
    {
        var boil = new Conversation();
        var step = boil.Open!.Step;
        boil.Say("yes");
        Assert.NotEqual(step, boil.Open!.Step);
        boil.Say("undo");
        Assert.Equal(step, boil.Open!.Step);
        Assert.Empty(boil.State.Marks);
    }

    [Fact]
    public void Undo_brings_no_stale_figures_and_no_dropped_question_back()
    {
        var (boil, other) = (Conversation.AtSteadyBoil(), Conversation.AtSteadyBoil());
        boil.Say("foam low");
        boil.After(30);
        boil.Say("undo");
        other.Leap(0.0333);
        other.After(30);
        Assert.Equal(other.State.Rig.Rate.LitersPerHour, boil.State.Rig.Rate.LitersPerHour, 1);
        boil.Say("tank 3", "foam low", "undo", "undo");
        Assert.Null(boil.State.Doubted);
    }

    [Fact]
    public void Undo_tells_the_forecasts_as_they_are_again()
    {
        var boil = Conversation.AtSteadyBoil();
        var before = boil.State.Forecasts;
        boil.Say("depth 2.5", "undo");
        Assert.Equal(before["minutes-to-last-charge"], boil.State.Forecasts["minutes-to-last-charge"]);
    }

    [Fact]
    public void Undo_with_nothing_said_is_refused()
    {
        var boil = new Conversation();
        boil.Say("undo");
        Assert.Contains("nothing to take back", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Skip_goes_on_and_stays_listed()
    {
        var boil = new Conversation();
        boil.Say("yes", "yes", "skip");
        Assert.Contains("pan-leftover", boil.State.Skipped);
        boil.Say("skipped");
        Assert.Contains("old liquid in the pan", boil.Only<ToldLine>().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_critical_step_is_not_skipped()
    {
        var boil = new Conversation();
        boil.Say("yes", "yes", "no");
        Assert.Equal("pan-filled", boil.Open!.Step);
        boil.Say("skip");
        Assert.Equal("pan-filled", boil.Open!.Step);
        Assert.Single(boil.Answers.OfType<RefusedLine>());
    }

    [Fact]
    public void Later_asks_again_after_a_while()
    {
        var boil = new Conversation();
        boil.Say("yes");
        var step = boil.Open!.Step;
        boil.Say("later");
        Assert.Null(boil.Open);
        Assert.Empty(boil.After(4).OfType<PromptLine>());
        Assert.Equal(step, Assert.Single(boil.After(2).OfType<PromptLine>()).Prompt.Step);
    }

    [Fact]
    public void A_pan_too_shallow_is_asked_for_again()
    {
        var boil = new Conversation();
        boil.Say("yes", "yes", "no", "1/2");
        Assert.Equal("pan-refill", boil.Open!.Step);
        Assert.StartsWith("At 0.5 in it is too shallow", boil.Open.Because, StringComparison.Ordinal);
        boil.Say("3/4");
        Assert.Equal("pan-refill", boil.Open!.Step);
        boil.Say("1 1/2");
        Assert.Equal("tank-valve", boil.Open!.Step);
    }

    [Fact]
    public void Why_gives_the_reason_to_a_practised_hand_who_is_not_told_it_unasked()
    {
        var boil = new Conversation(Guidance.Practised);
        Assert.Null(boil.Last<PromptLine>().Prompt.Because);
        boil.Say("why");
        Assert.Contains("first shutdown", boil.Only<ToldLine>().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Why_between_two_questions_tells_the_advice_that_stands()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("shutdown", "yes");
        boil.After(100);
        boil.Say("boil simmering", "coals thin", "depth 2.5", "tank 11", "gradient clear", "low", "draw 212");
        for (var answers = 0; boil.Open is not null && answers < 20; answers++)
        {
            boil.Say("skip");
        }

        boil.Say("why");
        Assert.Contains("Stay: clear in about", boil.Only<ToldLine>().Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("exit")]
    [InlineData("quit")]
    public void Who_wants_out_is_told_the_two_ways(string word)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(word);
        Assert.Contains("'leave' ends the boil", boil.Only<ToldLine>().Text, StringComparison.Ordinal);
        Assert.False(boil.State.IsOver);
    }

    [Fact]
    public void A_practised_hand_is_asked_less()
    {
        static int Prompts(Guidance guidance)
        {
            var boil = new Conversation(guidance);
            boil.Say("yes");
            for (var answers = 0; boil.Open is { } open && boil.Phase == "start-up" && answers < 40; answers++)
            {
                boil.Say(open.Ask switch
                {
                    "confirm" when open.Step == "pan-leftover" => "no",
                    "confirm" => "yes",
                    "pan-depth" => "1.5",
                    "tank-volume" => "20",
                    _ => "2",
                });
            }

            return boil.All.OfType<PromptLine>().Count();
        }

        Assert.True(Prompts(Guidance.Practised) < Prompts(Guidance.Beginner));
    }

    [Fact]
    public void A_note_is_noted()
    {
        var boil = new Conversation();
        boil.Say("note sap is cloudy");
        Assert.Equal("note sap is cloudy", Assert.IsType<Text>(boil.Only<HeardLine>().As).Words);
    }

    [Fact]
    public void A_prompt_shows_unit_range_and_the_last_value_with_its_age()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 30);
        boil.After(20);
        boil.Say("wood", "draw 211", "depth 1.5", "low");
        var prompt = boil.All.OfType<PromptLine>().Last(line => line.Prompt.Ask == "tank-volume").Prompt;
        Assert.Equal((Unit.Gallon, 0.0, 35.0, 30.0), (prompt.Unit, prompt.Low, prompt.High, prompt.Last));
        Assert.True(prompt.LastMinutes >= 15);
    }

    [Fact]
    public void A_tick_that_says_nothing_leaves_no_trace()
    {
        static Conversation Boil(bool ticks)
        {
            var boil = Conversation.AtSteadyBoil();
            for (var minute = 0; minute < 6; minute++)
            {
                if (ticks)
                {
                    boil.After(0.5);
                    boil.After(0.5);
                }
                else
                {
                    boil.Leap(1);
                }
            }

            boil.Say("tank 24");
            return boil;
        }

        var (with, without) = (Boil(ticks: true), Boil(ticks: false));
        Assert.Equal(without.State.Rig, with.State.Rig);
    }

    [Fact]
    public void The_same_lines_give_the_same_answers()
    {
        static List<LineOut> Run()
        {
            var boil = Conversation.AtSteadyBoil(known: false);
            boil.FireFor(30);
            boil.Say("tank 22", "draw 103", "yes", "emergency", "yes", "shutdown", "yes");
            return boil.All;
        }

        Assert.Equal(Run().Select(line => line.ToString()), Run().Select(line => line.ToString()));
    }

    [Fact]
    public void Going_on_tells_the_phase_and_the_open_prompt_again()
    {
        var boil = new Conversation();
        boil.Say("yes");
        var open = boil.Open;
        boil.Hear(new Resumed(boil.Now));
        Assert.Equal("start-up", boil.Only<PhaseLine>().Phase);
        Assert.Equal(open, boil.Only<PromptLine>().Prompt);
    }
}
