using Panside.Guide.Advice;

namespace Panside.Guide.Tests.Advice;

public class LookThatCountsTests
{
    [Fact]
    public void A_boil_seen_still_too_soon_after_a_flood_is_asked_for_again_as_soon_as_it_counts()
    {
        var boil = Flooded();
        boil.Say("boil still", "coals thin", "gradient gone");
        Assert.False(Holds(boil, "boil-look-counts"));
        boil.After(9);
        boil.Say("depth 2.5");
        Assert.NotEqual("boil", boil.Open?.Ask);
        boil.After(2);
        Assert.True(Holds(boil, "boil-look-counts"));
        Assert.Equal("boil-counts", boil.Open!.Step);
        boil.Say("boil still");
        Assert.False(Holds(boil, "boil-look-counts"));
    }

    [Fact]
    public void Over_thin_coals_the_boil_is_asked_for_once_it_has_been_still_long_enough()
    {
        var boil = Flooded();
        boil.After(12);
        boil.Say("boil still", "coals thin", "gradient gone", "depth 2.5");
        Assert.Contains("the coals were last seen thin, not spent", Unmet(boil));
        boil.After(10);
        Assert.False(Holds(boil, "boil-look-counts"));
        boil.After(11);
        Assert.True(Holds(boil, "boil-look-counts"));
        boil.Say("boil still");
        Assert.DoesNotContain("the coals were last seen thin, not spent", Unmet(boil));
    }

    [Fact]
    public void Coals_seen_deep_are_asked_for_again_once_they_are_reckoned_to_have_burned_down()
    {
        var boil = Flooded();
        boil.After(12);
        boil.Say("boil simmering", "gradient gone", "depth 2.5", "coals deep");
        Assert.False(Holds(boil, "coals-look-counts"));
        boil.After(60);
        boil.Say("boil still");
        Assert.True(Holds(boil, "coals-look-counts"));
        boil.Say("coals spent");
        Assert.False(Holds(boil, "coals-look-counts"));
    }

    [Fact]
    public void While_wood_goes_in_no_look_counts()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("boil still", "coals thin");
        boil.After(15);
        Assert.False(Holds(boil, "boil-look-counts"));
        Assert.False(Holds(boil, "coals-look-counts"));
    }

    private static Conversation Flooded()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("shutdown", "yes");
        boil.After(20);
        boil.Say("spread coals", "flood", "depth 2.5");
        return boil;
    }

    private static bool Holds(Conversation boil, string fact) => Facts.Holds(new Situation(boil.Session.Setting, boil.State), fact);

    private static IReadOnlyList<string> Unmet(Conversation boil) => new Situation(boil.Session.Setting, boil.State).Unmet;
}
