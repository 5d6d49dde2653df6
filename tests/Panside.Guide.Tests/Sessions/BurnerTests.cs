using Panside.Guide.Advice;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>A pan over a burner: nothing is put in, nothing glows on, and it is not left while it is on.</summary>
public class BurnerTests
{
    private const string Gas = "rig: gas\nunits: us\npan: { length: 48 in, width: 24 in }\nfire: { kind: gas, boils: 8 gal/h }\nfeed: { tank: 35 gal }\n";

    private static Conversation Boiling(double tank = 20)
    {
        var boil = new Conversation(rigText: Gas, members: Conversation.Few);
        boil.Say("yes", "depth 1.5", $"tank {tank}", "sap 2", "lit");
        boil.After(30);
        boil.Say("boil rolling", "water 210.4");
        return boil;
    }

    [Fact]
    public void It_boils_away_about_what_its_file_says_and_no_wood_is_asked_for()
    {
        var boil = Boiling();
        boil.After(60);
        Assert.InRange(new Situation(boil.Session.Setting, boil.State).RateLitersPerHour!.Value.P50 / 3.785, 6.4, 9.6);
        Assert.DoesNotContain(boil.All, line => line is AdviceLine { Advice.Action: "add-wood" or "spread-coals" });
        Assert.DoesNotContain(boil.All.OfType<PromptLine>(), line => line.Prompt.Ask == "coals");
    }

    [Fact]
    public void Shut_off_it_boils_on_for_a_little_of_what_a_wood_fire_would()
    {
        var gas = Boiling();
        var wood = Conversation.AtSteadyBoil(members: Conversation.Few);
        double Residual(Conversation boil) => new Situation(boil.Session.Setting, boil.State).ResidualLiters!.Value.P95;
        Assert.InRange(Residual(gas), 0.1, 0.5 * Residual(wood));
    }

    [Fact]
    public void It_is_told_to_shut_off_in_time_and_a_yes_is_the_deed()
    {
        var boil = Boiling(tank: 9);
        for (var minute = 0; minute < 90 && boil.Open?.Step != "shut-burner"; minute++)
        {
            boil.After(1);
        }

        Assert.Equal("shut-burner", boil.Open?.Step);
        Assert.True(boil.State.Rig.Tank!.Value.UsGallons > 3);
        boil.Say("yes");
        var now = new Situation(boil.Session.Setting, boil.State);
        Assert.True(now is { IsBurnerOn: false, IsHeld: true });
        Assert.Equal("shutdown", boil.Phase);
    }

    [Fact]
    public void Nobody_leaves_while_it_is_on_and_no_coals_keep_anybody_once_it_is_off()
    {
        var boil = Boiling();
        Assert.Contains("the burner is on", new Situation(boil.Session.Setting, boil.State).Unmet);
        boil.Say("shut off");
        Assert.Equal("shutdown", boil.Phase);
        boil.Say("flooded");
        boil.After(20);
        boil.Say("depth 2 1/2", "still", "gradient gone", "depth 2 1/2");
        Assert.Empty(new Situation(boil.Session.Setting, boil.State).Unmet);
    }

    [Fact]
    public void Lit_again_it_boils_on()
    {
        var boil = Boiling();
        boil.Say("shut off");
        boil.After(3);
        boil.Say("lit");
        Assert.DoesNotContain(boil.Answers, line => line is RefusedLine);
        Assert.True(new Situation(boil.Session.Setting, boil.State) is { IsBurnerOn: true, IsHeld: false });
    }

    [Fact]
    public void Nobody_hears_that_it_was_told_off_before_it_was_and_all_the_same_it_is_asked_for()
    {
        var boil = Boiling();
        boil.Say("shutdown");
        boil.After(30);
        Assert.DoesNotContain(boil.All.OfType<AdviceLine>(), line => line.Advice.Because.Contains("told off", StringComparison.Ordinal));
        Assert.Contains(boil.All.OfType<PromptLine>(), line => line.Prompt.Step == "burner-off");
        boil.Say("shut off");
        boil.After(20);
        boil.Say("boil rolling");
        boil.After(1);
        Assert.Contains(boil.All.OfType<AdviceLine>(), line => line.Advice.Because.Contains("told off", StringComparison.Ordinal));
    }

    [Fact]
    public void What_current_heats_is_no_burner()
    {
        var boil = new Conversation(rigText: Gas.Replace("kind: gas", "kind: electric", StringComparison.Ordinal), members: Conversation.Few);
        boil.Say("yes", "depth 1.5", "tank 20", "sap 2", "lit", "wood");
        Assert.Contains("tell of its heat", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
        boil.Say("emergency");
        var list = boil.All.OfType<PromptLine>().Last().Prompt.Text;
        Assert.True(list.Contains("smoke", StringComparison.Ordinal) && !list.Contains("chimney", StringComparison.Ordinal), list);
    }

    [Theory]
    [InlineData("wood")]
    [InlineData("raked")]
    public void What_is_done_to_a_wood_fire_is_refused(string said)
    {
        var boil = Boiling();
        boil.Say(said);
        Assert.Contains("no wood fire", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wood_fire_is_not_shut_off()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("shut off");
        Assert.Contains("wood fire", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Turned_off_is_shut_off_where_that_is_asked_and_no_draw_is_open()
    {
        var boil = Boiling();
        boil.Say("shutdown", "turned it off");
        Assert.NotNull(boil.State.Last(DeedName.ShutOff));
        Assert.Null(boil.State.Last(DeedName.CloseDraw));
    }

    [Theory]
    [InlineData("relit the burner")]
    [InlineData("turned the burner back on")]
    [InlineData("burner on again")]
    public void S1_a_burner_that_is_lit_again_keeps_its_operator_there(string said)
    {
        var boil = Boiling();
        boil.Say("shutdown", "yes");
        boil.After(20);
        boil.Say("still");
        boil.After(16);
        boil.Say("still", said);
        Assert.Contains("the burner is on", new Situation(boil.Session.Setting, boil.State).Unmet);
    }
}
