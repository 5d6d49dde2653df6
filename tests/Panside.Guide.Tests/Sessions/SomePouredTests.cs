using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>Sap or water that somebody tipped in without measuring: it counts at once, and then how much it was is asked.</summary>
public class SomePouredTests
{
    [Fact]
    public void Some_water_is_taken_and_asked_how_much()
    {
        var boil = Boiling();
        boil.Say("poured some water");
        Assert.DoesNotContain(boil.Answers, line => line is RefusedLine);
        Assert.Contains("How much water was it?", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
        Assert.Equal(boil.Now, boil.State.ChilledAt);
        Assert.True(Assert.Single(boil.State.Pours).IsUnmeasured);
    }

    [Theory]
    [InlineData("2 gal", 2, "water")]
    [InlineData("about half a gallon", 0.5, "water")]
    [InlineData("poured 2 gal", 2, "water")]
    [InlineData("it was 3 qt of sap", 3, "sap")]
    public void The_amount_answers_it_and_is_counted_once(string answer, double value, string liquid)
    {
        var boil = Boiling();
        boil.Say("poured some water", answer);
        Assert.Null(boil.State.Doubted);
        var pour = Assert.Single(boil.State.Pours);
        Assert.Equal((value, liquid), (pour.Measure.Value, pour.Liquid));
        Assert.DoesNotContain(boil.Answers, line => line is PromptLine { Prompt.Step: "depth-poured" });
    }

    [Theory]
    [InlineData("yes")]
    [InlineData("skip")]
    [InlineData("no")]
    public void Who_does_not_know_is_asked_for_the_depth(string answer)
    {
        var boil = Boiling();
        boil.Say("poured some sap", answer);
        Assert.Null(boil.State.Doubted);
        Assert.Equal("depth-poured", boil.Open?.Step);
        boil.After(1);
        boil.Say("depth 2.2");
        Assert.DoesNotContain(boil.Answers, line => line is QuestionLine or RefusedLine);
        Assert.NotEqual("depth-poured", boil.Open?.Step);
        Assert.Equal(2.2, (boil.State.Rig.Pan / boil.Session.Setting.Rig.PanArea).Inches, 0.15);
    }

    [Fact]
    public void The_depth_answers_it_too()
    {
        var boil = Boiling();
        boil.Say("poured some sap", "depth 2.2");
        Assert.Null(boil.State.Doubted);
        Assert.DoesNotContain(boil.Answers, line => line is QuestionLine or RefusedLine);
    }

    [Fact]
    public void One_undo_takes_it_back_with_its_question()
    {
        var boil = Boiling();
        boil.Say("poured some water", "undo");
        Assert.Null(boil.State.Doubted);
        Assert.Null(boil.State.ChilledAt);
        Assert.Null(boil.State.Last(DeedName.FillPan));
    }

    [Fact]
    public void S1_a_pan_seen_still_before_it_is_looked_at_again()
    {
        var boil = Boiling();
        boil.Say("boil still");
        boil.Say("poured some water");
        Assert.Null(boil.State.StillSince);
    }

    [Fact]
    public void S4_in_an_emergency_nothing_is_asked_beside_it()
    {
        var boil = Boiling();
        boil.Say("dry", "poured some water");
        Assert.DoesNotContain(boil.Answers, line => line is QuestionLine or RefusedLine);
        Assert.Null(boil.State.Doubted);
        Assert.Equal(boil.Now, boil.State.ChilledAt);
    }

    [Fact]
    public void Of_two_pans_the_one_that_is_named_rises_and_the_other_does_not()
    {
        var (back, front) = (TwoPans(), TwoPans());
        back.Say("poured 1 gal into the back pan");
        front.Say("poured 1 gal into the front pan");
        Assert.Equal(1, (back.State.Rig.BackPan!.Value - front.State.Rig.BackPan!.Value).UsGallons, 0.05);
        Assert.Equal(1, (front.State.Rig.DrawPan - back.State.Rig.DrawPan).UsGallons, 0.05);
        Assert.Equal("poured into the front pan, 1 gal of sap", front.State.LastSaid);
    }

    [Fact]
    public void A_pan_that_is_not_there_is_refused()
    {
        var boil = Boiling();
        boil.Hear(new Did(boil.Now, DeedName.FillPan, new(1, Measures.Unit.Gallon)) { Pan = Pans.Back });
        Assert.Equal("pan", boil.Only<RefusedLine>().Field);
    }

    private static Conversation Boiling() => Conversation.AtSteadyBoil(Knowledge.Guidance.Practised, members: Conversation.Few);

    private static Conversation TwoPans()
    {
        var boil = new Conversation(rig: "flue-and-syrup-pan.yaml", members: Conversation.Few);
        boil.Say("yes", "depth 1.5", "back pan 2", "tank 40", "sap 2", "lit");
        return boil;
    }
}
