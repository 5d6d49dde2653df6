using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>What a rig has not is not spoken of in the usual way of a boil.</summary>
public class WhatARigHasNotTests
{
    private static readonly string Forced = RepositoryFiles.Read("flows", "rigs", "two-by-four-forced.yaml");

    [Fact]
    public void A_pan_fed_by_hand_is_started_without_a_word_of_a_float()
    {
        var boil = new Conversation(rigText: Forced.Replace("float: true", "float: false", StringComparison.Ordinal), members: Conversation.Few);
        var asked = new List<string>();
        for (var step = 0; step < 30 && boil.Phase == "start-up" && boil.Open is not null; step++)
        {
            asked.Add(boil.Open!.Step);
            boil.Say(boil.Open.Ask switch { "pan-depth" => "1 1/2", "tank-volume" => "30", "sap-brix" => "2", "confirm" => boil.Open.Step == "pan-leftover" ? "no" : "yes", _ => "skip" });
        }

        Assert.Contains("pails-ready", asked);
        Assert.DoesNotContain("float-works", asked);
        Assert.DoesNotContain("tank-valve", asked);
        Assert.DoesNotContain(boil.All.OfType<PromptLine>(), line => line.Prompt.Text.Contains("float", StringComparison.OrdinalIgnoreCase) || line.Prompt.Because?.Contains("float", StringComparison.OrdinalIgnoreCase) == true);
    }

    [Fact]
    public void Before_the_first_boil_no_look_tells_of_the_last_wood()
    {
        var boil = new Conversation(rigText: Forced, members: Conversation.Few);
        boil.Say("yes", "depth 1 1/2", "tank 30", "sap 2", "lit");
        boil.After(6);
        boil.Say("still");
        Assert.Equal("warming", boil.State.Step);
        boil.After(30);
        Assert.Contains(boil.All.OfType<PromptLine>(), line => line.Prompt.Step == "boil-first");
        Assert.DoesNotContain(boil.All.OfType<PromptLine>(), line => line.Prompt.Because?.Contains("last wood", StringComparison.Ordinal) == true);
    }

    [Fact]
    public void In_one_channel_nobody_is_asked_whether_channels_differ_and_none_keeps_anybody_from_leaving()
    {
        var boil = new Conversation(rigText: Forced.Replace("channels: 3", "channels: 1", StringComparison.Ordinal), members: Conversation.Few);
        boil.Say("yes", "depth 1 1/2", "tank 20", "sap 2", "lit");
        boil.FireFor(27);
        boil.Say("rolling", "water 210.4");
        boil.FireFor(60);
        Assert.DoesNotContain(boil.All.OfType<PromptLine>(), line => line.Prompt.Ask == "gradient");
        boil.Say("shutdown", "yes");
        boil.After(60);
        boil.Say("depth 2 1/2", "still", "spent", "depth 2 1/2");
        Assert.DoesNotContain(new Panside.Guide.Advice.Situation(boil.Session.Setting, boil.State).Unmet, unmet => unmet.Contains("channel", StringComparison.Ordinal));
    }
}
