using Panside.Guide.Advice;
using Panside.Guide.Debriefing;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Tests.Sessions;

public class PourTests
{
    private static readonly double PanGallons = 8 * 1.5 / 12 * 7.48052;

    [Fact]
    public void A_poured_pan_is_deeper_a_depth_read_then_is_taken_and_the_tank_has_not_fallen()
    {
        var boil = Conversation.AtSteadyBoil();
        var (pan, tank) = (boil.State.Rig.Pan, boil.State.Rig.Tank!.Value);
        boil.Say("poured 3 gal");
        Assert.Equal("sap", Assert.IsType<Did>(boil.Only<HeardLine>().As).Is);
        Assert.Equal(3, (boil.State.Rig.Pan - pan).UsGallons, 0.05);
        Assert.Equal(tank.UsGallons, boil.State.Rig.Tank!.Value.UsGallons, 0.1);
        boil.Say($"depth {1.5 + (3 / PanGallons * 1.5):0.0}");
        Assert.DoesNotContain(boil.Answers, line => line is QuestionLine or RefusedLine);
        Assert.DoesNotContain(boil.All, line => line is AdviceLine { Advice.Text: var text } && text.Contains("float hangs open", StringComparison.Ordinal));
    }

    [Fact]
    public void Water_thins_the_pan_and_sap_brings_its_sugar()
    {
        var (water, sap) = (Conversation.AtSteadyBoil(), Conversation.AtSteadyBoil());
        var before = water.State.Rig.PanSugar.Kilograms;
        water.Say("poured 2 gal of water");
        sap.Say("poured 2 gal of sap");
        Assert.Equal(before, water.State.Rig.PanSugar.Kilograms, 0.005);
        Assert.Equal(2 * 3.785 * 0.02, sap.State.Rig.PanSugar.Kilograms - before, 0.02);
    }

    [Theory]
    [InlineData("poured 200 gal", "not possible")]
    [InlineData("poured 39 gal", "over its wall, 8 in high")]
    public void More_than_the_pan_can_hold_is_refused(string text, string why)
    {
        var boil = Conversation.AtSteadyBoil();
        var before = boil.State.Rig.Pan;
        boil.Say(text);
        Assert.Contains(why, boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
        Assert.Equal(before.Liters, boil.State.Rig.Pan.Liters, 0.5);
        Assert.Empty(boil.State.Pours);
    }

    [Fact]
    public void A_deed_without_its_amount_is_refused_whoever_says_it()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Hear(new Did(boil.Now, DeedName.FillPan, null));
        Assert.Equal("value", boil.Only<RefusedLine>().Field);
    }

    [Fact]
    public void Twenty_five_gallons_instead_of_two_and_a_half_are_questioned()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("poured 25 gal");
        Assert.Contains("25 gal into the pan? It would stand at", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
        boil.Say("poured 2.5 gal");
        Assert.Equal(2.5, Assert.Single(boil.State.Pours).Measure.Value);
        Assert.Null(boil.State.Doubted);
    }

    [Fact]
    public void A_twin_is_refused_and_water_after_sap_at_the_same_time_is_not()
    {
        var boil = Conversation.AtSteadyBoil();
        var sap = new Did(boil.Now, DeedName.FillPan, new(1, Unit.Gallon));
        boil.Hear(sap);
        boil.Hear(sap with { Is = Liquids.Water });
        Assert.DoesNotContain(boil.Answers, line => line is RefusedLine);
        boil.Hear(sap);
        Assert.Contains("already", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
        Assert.Equal(2, boil.State.Pours.Count);
    }

    [Fact]
    public void Undo_takes_a_pour_back()
    {
        var (boil, other) = (Conversation.AtSteadyBoil(), Conversation.AtSteadyBoil());
        boil.Say("poured 2 gal of water", "undo");
        Assert.Contains("Taken back: poured into the pan, 2 gal of water.", boil.Answers.OfType<ToldLine>().Select(line => line.Text));
        other.Say("status", "status");
        Assert.Equal(other.State.Rig.Pan.Liters, boil.State.Rig.Pan.Liters, 9);
        Assert.Empty(boil.State.Pours);
    }

    [Theory]
    [InlineData("pan", "fill-pan")]
    [InlineData("into the pan", "fill-pan")]
    [InlineData("Tank.", "refill-tank")]
    [InlineData("the tank", "refill-tank")]
    public void An_amount_alone_is_asked_where_and_one_word_takes_it(string place, string deed)
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 20);
        boil.Say("added 2 gal");
        var question = boil.Only<QuestionLine>();
        Assert.Equal("2 gal of sap: into the pan, or into the tank?", question.Text);
        Assert.Equal(["pan", "tank"], question.Choices);
        Assert.DoesNotContain(boil.Answers, line => line is HeardLine);
        boil.Say(place);
        Assert.Equal(deed, Assert.IsType<Did>(boil.Only<HeardLine>().As).Name.Code);
        Assert.Null(boil.State.Doubted);
        Assert.Equal(deed == "fill-pan" ? 1 : 0, boil.State.Pours.Count);
        Assert.Equal(deed == "refill-tank" ? 2 * 3.785411784 : 0, boil.State.Totals.RefilledLiters, 6);
    }

    [Theory]
    [InlineData("2 gal in", "tank", "refill-tank")]
    [InlineData("2 gal of water in", "pan", "fill-pan")]
    public void The_question_says_what_a_bare_yes_means_and_a_yes_takes_it(string said, string place, string deed)
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 20);
        boil.Say(said);
        if (boil.Answers.OfType<QuestionLine>().FirstOrDefault() is { } question)
        {
            Assert.Contains($"Yes means the {place}.", question.WouldTake, StringComparison.Ordinal);
            boil.Say("yes");
        }

        Assert.Equal(deed, Assert.IsType<Did>(boil.All.OfType<HeardLine>().Last(line => line.As is Did).As).Name.Code);
        Assert.Null(boil.State.Doubted);
    }

    [Fact]
    public void A_no_drops_it_and_a_whole_sentence_takes_its_place()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 20);
        boil.Say("2 gal in");
        boil.Say("no");
        Assert.Null(boil.State.Doubted);
        Assert.Empty(boil.State.Pours);
        boil.Say("added 2 gal", "added 3 gal to the pan");
        Assert.Null(boil.State.Doubted);
        Assert.Equal(3, Assert.Single(boil.State.Pours).Measure.Value);
        Assert.DoesNotContain(boil.Answers, line => line is ToldLine { Text: var text } && text.StartsWith("Dropped", StringComparison.Ordinal));
    }

    [Fact]
    public void The_question_stays_while_other_things_are_said_is_told_again_when_going_on_and_lapses_in_the_end()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 20);
        boil.Say("added 2 gal", "boil rolling");
        Assert.IsType<Added>(boil.State.Doubted);
        boil.Leap(5);
        boil.Hear(new Resumed(boil.Now));
        Assert.Contains(boil.Answers.OfType<ToldLine>(), line => line.Text.Contains("'pan' or 'tank' answers this", StringComparison.Ordinal));
        boil.Leap(20);
        boil.Say("no");
        Assert.Contains(boil.Answers.OfType<ToldLine>(), line => line.Text.StartsWith("Lapsed", StringComparison.Ordinal));
    }

    [Fact]
    public void Just_after_the_advice_to_add_sap_to_the_pan_an_amount_alone_means_the_pan()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 0.85");
        Assert.Contains(boil.All.OfType<AdviceLine>(), line => line.Advice.Action == "raise-level");
        boil.Say("added 2.5 gal");
        var did = Assert.IsType<Did>(boil.Only<HeardLine>().As);
        Assert.Equal((DeedName.FillPan, 2.5), (did.Name, did.Measure!.Value.Value));
        boil.Say("depth 1.5");
        boil.Leap(6);
        boil.Say("added 2.5 gal");
        Assert.Single(boil.Answers.OfType<QuestionLine>());
    }

    [Theory]
    [InlineData("dry")]
    [InlineData("scorch")]
    [InlineData("float")]
    [InlineData("emergency")]
    public void S10_in_an_emergency_that_asks_to_pour_an_amount_alone_means_the_pan(string cry)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(cry, "added 2.5 gal");
        Assert.Equal(DeedName.FillPan, Assert.IsType<Did>(boil.Only<HeardLine>().As).Name);
    }

    [Fact]
    public void Sap_from_a_pail_counts_as_used_and_water_does_not()
    {
        var (with, without) = (Conversation.AtSteadyBoil(), Conversation.AtSteadyBoil());
        with.Say("poured 2 gal", "poured 1 gal of water", "leave", "yes");
        without.Say("status", "status", "leave", "yes");
        Assert.Equal(2, Used(with) - Used(without), 0.05);
    }

    [Fact]
    public void Sap_dipped_out_of_the_tank_is_told_by_the_tank_is_not_doubted_and_counts_once()
    {
        var (dipped, without) = (Conversation.AtSteadyBoil(), Conversation.AtSteadyBoil());
        dipped.Say("poured 4 gal");
        var expected = dipped.State.Rig.Tank!.Value.UsGallons - 4;
        dipped.Say($"tank {expected:0.0}");
        Assert.DoesNotContain(dipped.Answers, line => line is QuestionLine);
        Assert.True(Assert.Single(dipped.State.Pours).IsOutOfTank);
        Assert.Equal(expected, dipped.State.Rig.Tank!.Value.UsGallons, 0.2);

        // The fire is not taken to have boiled the four gallons away.
        var before = without.State.Rig.Evaporated.Liters;
        without.Say("status", "status");
        Assert.Equal(before, dipped.State.Rig.Evaporated.Liters, 1.5);
        dipped.Say("leave", "yes");
        without.Say("leave", "yes");
        Assert.Equal(4, Used(dipped) - Used(without), 0.4);
    }

    [Fact]
    public void S1_a_pour_after_the_depth_was_read_or_just_before_a_still_look_is_not_left_alone()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("shutdown", "yes");
        boil.After(60);
        boil.Say("depth 2.4", "boil still", "coals spent", "gradient gone", "poured 1 gal");
        Assert.Contains("the depth has not been read since the last pour", new Situation(boil.Session.Setting, boil.State).Unmet);
        boil.Say("depth 2.5", "boil still");
        Assert.Contains("the boil must be seen still 10 minutes after a pour", new Situation(boil.Session.Setting, boil.State).Unmet);
    }

    /// <summary>A pour that was taken back and is in the pan all the same lets the tank stand: readings then put right what had gone before.</summary>
    [Fact]
    public void After_a_pour_and_an_undo_in_the_shutdown_no_debrief_says_that_less_than_nothing_has_gone()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.FireFor(27);
        var course = new Course(boil.Session.Setting);
        void Say(params string[] texts)
        {
            foreach (var text in texts)
            {
                boil.Say(text);
                course.Hear(boil.State, boil.Answers);
            }
        }

        Say("shutdown", "yes");
        var held = boil.State.Rig.Evaporated;
        Say("poured 2 gal", "undo", FormattableString.Invariant($"tank {boil.State.Rig.Tank!.Value.UsGallons + 0.9:0.0}"));
        Assert.True(boil.State.Rig.Evaporated < held);
        Say("poured 2 gal of water", "leave", "yes");
        var happened = Debrief.Rows(course, boil.State, boil.Session.Setting).Single(row => row.Heading == "Happened").Text;
        Assert.StartsWith("how much has gone is not known;", happened, StringComparison.Ordinal);
        Assert.Contains("2 gal of water poured into the pan by hand", happened, StringComparison.Ordinal);
    }

    private static double Used(Conversation boil) => boil.Last<OverLine>().Outcome.SapUsed!.Value.Value;
}
