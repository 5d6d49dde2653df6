using Panside.Guide.Advice;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>One word misheard, one look that contradicts another, one thing told twice: none of them opens the gate.</summary>
public class SlipsAtLeavingTests
{
    [Theory]
    [InlineData("still boiling")]
    [InlineData("it's still boiling")]
    [InlineData("pan still boils")]
    [InlineData("boiling still")]
    [InlineData("still bubbling")]
    [InlineData("the boil is still strong")]
    public void S1_a_boil_that_goes_on_is_not_heard_as_still(string said)
    {
        var boil = Held();
        boil.Say("boil rolling", said);
        Assert.NotEqual("still", boil.State.Last(ObservationName.Boil)!.Value.Value);
    }

    [Theory]
    [InlineData("the boil is still")]
    [InlineData("still, no bubbles")]
    [InlineData("it's still not boiling")]
    public void A_boil_that_is_still_is_heard_as_still(string said)
    {
        var boil = Held();
        boil.After(40);
        boil.Say(said);
        Assert.True(boil.State.Last(ObservationName.Boil) is { Value: "still" } || boil.State.Doubted is Observed { Is: "still" }, said);
    }

    [Fact]
    public void S1_a_second_pour_does_not_make_a_look_count_that_the_first_one_hid()
    {
        var boil = Held();
        boil.After(30);
        boil.Say("boil rolling", "poured 1 qt sap");
        boil.After(1);
        boil.Say("boil still", "poured 1 qt sap", "depth 1.5", "coals spent", "gradient gone");
        Assert.Contains("the boil must be seen still 10 minutes after a pour", Unmet(boil));
        boil.After(11);
        boil.Say("boil still", "depth 1.5");
        Assert.DoesNotContain(Unmet(boil), reason => reason.Contains("seen still", StringComparison.Ordinal));
    }

    [Fact]
    public void S1_a_boil_seen_still_minutes_after_it_was_seen_up_wants_another_look()
    {
        var boil = Held();
        boil.After(40);
        boil.Say("boil rolling");
        boil.After(3);
        boil.Say("depth 1.5", "boil still", "coals spent", "gradient gone");
        Assert.Contains("the boil was seen up minutes before: look once more", Unmet(boil));
        Assert.True(Facts.Holds(new(boil.Session.Setting, boil.State), "boil-look-counts"));
        boil.Say("boil still");
        Assert.DoesNotContain("the boil was seen up minutes before: look once more", Unmet(boil));
    }

    [Fact]
    public void S1_a_flood_told_by_the_depth_alone_over_a_boil_hides_it_as_one_that_is_told()
    {
        var boil = Held();
        boil.After(30);
        boil.Say("flood", "depth 2.5");
        boil.After(30);
        boil.Say("boil rolling");
        boil.After(1);
        boil.Say("depth 3.6");
        if (boil.State.Doubted is not null)
        {
            boil.Say("yes");
        }

        boil.After(2);
        boil.Say("boil still", "coals spent", "gradient gone");
        boil.Say("boil still");
        Assert.Contains(Unmet(boil), reason => reason.StartsWith("the boil must be seen still 10 minutes after", StringComparison.Ordinal));
    }

    [Fact]
    public void S1_a_lid_is_not_asked_for_over_a_pan_whose_stillness_does_not_count_yet()
    {
        var boil = Held();
        boil.After(30);
        boil.Say("flood", "depth 2.5", "boil still", "coals spent", "gradient gone");
        Assert.NotEqual("cover-pan", boil.State.Step);
        boil.After(11);
        boil.Say("depth 2.5", "boil still");
        Assert.Equal("cover-pan", boil.State.Step);
    }

    [Fact]
    public void S1_a_burner_that_was_told_off_and_boils_on_counts_as_on()
    {
        var boil = new Conversation(rigText: RepositoryFiles.Read("flows", "rigs", "gas-divided.yaml"), members: Conversation.Few);
        boil.Say("yes", "depth 1.5", "tank 20", "sap 2", "lit");
        boil.After(30);
        boil.Say("boil rolling", "water 210.4", "shutdown", "shut off");
        boil.After(10);
        boil.Say("boil rolling");
        Assert.DoesNotContain("the burner is on", Unmet(boil));
        boil.After(10);
        boil.Say("boil rolling");
        Assert.Contains("the burner is on", Unmet(boil));
        Assert.Contains(boil.Answers.OfType<AdviceLine>(), line => line.Advice.Text.StartsWith("Look whether the burner is off", StringComparison.Ordinal));
        boil.Say("shut off");
        Assert.DoesNotContain("the burner is on", Unmet(boil));
    }

    [Theory]
    [InlineData("put in one more stick")]
    [InlineData("threw another log on, that's it")]
    public void One_more_stick_is_not_heard_as_no_more_wood(string said)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(said);
        Assert.False(new Situation(boil.Session.Setting, boil.State).IsHeld);
        Assert.Equal("steady-boil", boil.Phase);
    }

    [Fact]
    public void S1_coals_that_were_deep_minutes_ago_are_not_spent_without_a_question()
    {
        var boil = Held();
        boil.Say("coals deep");
        boil.After(3);
        boil.Say("coals spent");
        Assert.StartsWith("Spent now? They were deep 3 minutes ago.", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
        Assert.Equal("deep", boil.State.Last(ObservationName.Coals)!.Value.Value);
        boil.Say("no");
        boil.After(9);
        boil.Say("coals spent");
        Assert.Equal("spent", boil.State.Last(ObservationName.Coals)!.Value.Value);
    }

    [Fact]
    public void S1_a_look_at_thin_coals_between_does_not_hide_that_they_were_deep()
    {
        var boil = Held();
        boil.Say("coals deep");
        boil.After(1);
        boil.Say("coals thin");
        boil.After(1);
        boil.Say("coals spent");
        Assert.StartsWith("Spent now? They were deep 2 minutes ago.", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
        Assert.Equal("thin", boil.State.Last(ObservationName.Coals)!.Value.Value);
    }

    [Theory]
    [InlineData("nothing burned tonight", "coals")]
    [InlineData("no sparks left", "coals")]
    [InlineData("sweet smell with a burnt edge", "smell")]
    [InlineData("smells like caramel, a bit too much", "smell")]
    public void S1_what_names_neither_coals_nor_a_clean_smell_is_not_taken_for_them(string said, string name)
    {
        var boil = Held();
        boil.Say(said);
        Assert.NotEqual(name == "smell" ? "sweet" : "spent", boil.State.Last(ObservationName.FromCode(name)!)?.Value);
    }

    [Theory]
    [InlineData("poured it")]
    [InlineData("ok, poured")]
    [InlineData("i poured it in")]
    [InlineData("poured about half of it")]
    public void S1_a_pour_that_is_only_mentioned_hides_the_boil_like_one_that_is_measured(string said)
    {
        var boil = Held();
        boil.After(20);
        boil.Say("flood", "depth 2.5");
        boil.After(12);
        boil.Say(said, "yes", "coals spent", "gradient gone", "boil still", "depth 2.8");
        Assert.Contains("the boil must be seen still 10 minutes after a pour", Unmet(boil));
    }

    private static Conversation Held()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("shutdown", "yes");
        boil.After(20);
        return boil;
    }

    private static IReadOnlyList<string> Unmet(Conversation boil) => new Situation(boil.Session.Setting, boil.State).Unmet;

    [Theory]
    [InlineData("boil almost still", "boil", "simmering")]
    [InlineData("coals almost out", "coals", "thin")]
    [InlineData("the coals are nearly gone", "coals", "thin")]
    public void S1_what_is_nearly_so_is_not_so_yet(string said, string name, string state)
    {
        var boil = Held();
        boil.Say(said);
        Assert.Equal(state, boil.State.Last(ObservationName.FromCode(name)!)?.Value);
        Assert.Null(boil.State.Doubted);
    }

    [Fact]
    public void Alone_is_no_slip_of_done()
    {
        var boil = Held();
        boil.Hear(new Text(boil.State.Now!.Value, "alone"));
        Assert.DoesNotContain(boil.Answers.OfType<HeardLine>(), line => line.As is Answer { Word: "yes" });
    }
}
