using Panside.Guide.Lines;
using Panside.Guide.Sessions;

namespace Panside.Guide.Tests.Sessions;

/// <summary>The charge that must not go in, and the one that may.</summary>
public class LastChargeTests
{
    [Theory]
    [InlineData(Guidance.Beginner, "two-by-four-natural.yaml")]
    [InlineData(Guidance.Practised, "two-by-four-natural.yaml")]
    [InlineData(Guidance.Beginner, "two-by-four-forced.yaml")]
    [InlineData(Guidance.Practised, "two-by-four-forced.yaml")]
    public void The_last_charge_is_called_so_and_none_is_asked_for_right_before_the_wood_is_held(Guidance guidance, string rig)
    {
        var boil = Conversation.AtSteadyBoil(guidance, rig, tankGallons: 14);
        for (var minute = 0; minute < 240 && boil.Phase != "shutdown"; minute++)
        {
            boil.After(1);
            if (boil.Open is { } open && open.Step is "wood" or "last-wood")
            {
                boil.Say("wood");
            }
        }

        Assert.Equal("shutdown", boil.Phase);
        var interval = boil.Session.Setting.Rig.Interval;
        var asked = boil.All.OfType<AdviceLine>().Where(line => line.Advice.Action == "add-wood").ToList();
        var held = boil.All.OfType<AdviceLine>().First(line => line.Advice is { Action: "hold-wood", Urgency: "now" }).At!.Value.Time;
        var (last, since) = (asked[^1].Advice.Text, held - asked[^1].At!.Value.Time);
        Assert.True(
            last.StartsWith("Put in the last charge", StringComparison.Ordinal) ? since <= interval : since >= interval / 2,
            $"'{last}' {since.TotalMinutes:F0} min before no more wood");
    }

    [Fact]
    public void A_low_tank_in_doubt_holds_the_wood_back_until_it_is_settled()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 30);
        boil.Say("tank 12");
        boil.Only<QuestionLine>();
        Assert.DoesNotContain(boil.After(12).OfType<AdviceLine>(), line => line.Advice.Action == "add-wood");
        boil.Say("no");
        Assert.Contains(boil.Answers.OfType<AdviceLine>(), line => line.Advice.Action == "add-wood");
    }

    [Fact]
    public void A_second_reading_that_agrees_settles_the_doubt()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 30);
        boil.Say("tank 4");
        boil.Only<QuestionLine>();
        boil.Say("tank 4.5");
        Assert.Empty(boil.Answers.OfType<QuestionLine>());
        Assert.Contains("two readings agree", boil.Answers.OfType<ToldLine>().First().Text, StringComparison.Ordinal);
        Assert.Equal("hold-wood", boil.State.Step);
    }

    [Fact]
    public void A_second_reading_that_does_not_agree_is_doubted_as_well()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 30);
        boil.Say("tank 4", "tank 14");
        boil.Only<QuestionLine>();
    }

    [Fact]
    public void A_tank_too_low_to_light_on_is_said_before_the_fire()
    {
        var boil = new Conversation();
        boil.Say("yes", "yes", "no", "1.5", "yes", "yes");
        Assert.Equal("tank-read", boil.Open!.Step);
        boil.Say("3");
        Assert.Equal("tank-short", boil.Open!.Step);
        Assert.StartsWith("3 gal is too little to light on", boil.Open.Text, StringComparison.Ordinal);
        boil.Say("22");
        Assert.Equal("sap-sugar", boil.Open!.Step);
    }

    [Fact]
    public void A_step_of_the_shutdown_that_nobody_answers_does_not_keep_the_pan_from_being_asked_for()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("shutdown");
        var prompts = boil.After(40).OfType<PromptLine>().Select(line => line.Prompt.Ask).ToList();
        Assert.Contains("pan-depth", prompts);
        Assert.Contains("boil", prompts);
        Assert.Contains(boil.All.OfType<AdviceLine>(), line => line.Advice.Action == "flood-pan");
        Assert.DoesNotContain(boil.All.OfType<AdviceLine>().SkipWhile(line => line.Advice.Action != "hold-wood"), line => line.Advice.Action == "add-wood");
        Assert.Contains("hold-wood", boil.State.Skipped);
    }
}
