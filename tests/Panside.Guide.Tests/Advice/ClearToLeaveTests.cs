using Panside.Guide.Advice;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Advice;

public class ClearToLeaveTests
{
    /// <summary>A shutdown in which everything has been seen that must be.</summary>
    private static readonly string[] AllSeen = ["depth 2.5", "boil still", "coals spent", "gradient gone"];

    [Fact]
    public void S1_it_is_clear_when_all_has_been_seen()
    {
        var boil = LongAfterTheLastWood();
        boil.Say(AllSeen);
        Assert.Empty(Unmet(boil));
    }

    [Theory]
    [InlineData("boil rolling", "boil was last seen rolling")]
    [InlineData("boil steady", "boil was last seen steady")]
    [InlineData("boil simmering", "boil was last seen simmering")]
    [InlineData("coals deep", "coals were last seen deep")]
    [InlineData("coals thin", "coals were last seen thin")]
    [InlineData("wood", "since the last wood")]
    [InlineData("scorched", "smells scorched")]
    [InlineData("foam rising", "foam is up")]
    [InlineData("depth 0.8", "too shallow")]
    [InlineData("open", "draw-off is open")]
    public void S1_it_is_not_clear_once_something_speaks_against_it(string seen, string unmet)
    {
        var boil = LongAfterTheLastWood();
        boil.Say(AllSeen);
        boil.Say(seen);
        Assert.Contains(Unmet(boil), reason => reason.Contains(unmet, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0, "depth")]
    [InlineData(1, "boil")]
    [InlineData(2, "coals")]
    [InlineData(3, "channels")]
    public void S1_each_thing_must_have_been_seen(int left, string missing)
    {
        var boil = LongAfterTheLastWood();
        boil.Say([.. AllSeen.Where((_, index) => index != left)]);
        Assert.Contains(Unmet(boil), reason => reason.Contains(missing, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("wood", "wood", "depth 2.5", "boil still", "coals spent", "gradient gone")]
    [InlineData("flooding", "flood", "depth 2.5", "boil still", "coals spent", "gradient gone")]
    public void S1_a_boil_seen_still_right_after_wood_or_cold_sap_tells_nothing(string after, params string[] said)
    {
        var boil = LongAfterTheLastWood();
        boil.Say(said);
        Assert.Contains(Unmet(boil), reason => reason.EndsWith(after, StringComparison.Ordinal));
        boil.After(20);
        boil.Say("depth 2.5", "boil still", "coals spent", "gradient gone");
        Assert.Empty(Unmet(boil));
    }

    [Theory]
    [InlineData("spread coals", "raking", 10)]
    [InlineData("flood", "flooding", 10)]
    [InlineData("poured 1 gal", "a pour", 10)]
    [InlineData("wood", "wood", 15)]
    public void S1_a_boil_seen_still_counts_only_so_many_minutes_after_what_stirs_or_chills_it(string said, string after, int minutes)
    {
        var boil = LongAfterTheLastWood();
        boil.Say(said);
        boil.After(minutes - 1);
        boil.Say("depth 2.5", "boil still", "coals spent", "gradient gone");
        Assert.Contains($"the boil must be seen still {minutes} minutes after {after}", Unmet(boil));
        boil.After(2);
        boil.Say("boil still", "depth 2.5");
        Assert.Empty(Unmet(boil));
    }

    [Fact]
    public void S1_a_depth_read_hours_before_the_boil_went_still_does_not_count()
    {
        var boil = LongAfterTheLastWood();
        boil.Say("depth 2.5");
        boil.After(60);
        boil.Say("boil still", "coals spent", "gradient gone");
        Assert.Contains(Unmet(boil), reason => reason.Contains("depth was read long before", StringComparison.Ordinal));
    }

    [Fact]
    public void S1_wood_at_the_very_time_of_a_look_counts_as_later()
    {
        var boil = LongAfterTheLastWood();
        boil.Say(AllSeen);
        boil.Hear(new Did(boil.Now, DeedName.AddWood, null));
        Assert.NotEmpty(Unmet(boil));
    }

    [Fact]
    public void S1_channels_that_fade_are_not_mixed()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("draw 217.8", "shutdown", "yes");
        boil.After(60);
        boil.Say("depth 2.5", "boil still", "coals spent", "gradient fading");
        Assert.Contains(Unmet(boil), reason => reason.Contains("draw-off side is near syrup", StringComparison.Ordinal));
        boil.Say("gradient gone");
        Assert.Empty(Unmet(boil));
    }

    [Fact]
    public void S1_thin_coals_under_a_pan_that_stays_still_are_down_after_a_while()
    {
        var boil = LongAfterTheLastWood();
        boil.Say("depth 2.5", "boil still", "coals thin", "gradient gone");
        Assert.Contains(Unmet(boil), reason => reason.Contains("thin, not spent", StringComparison.Ordinal));
        boil.After(15);
        boil.Say("boil still", "depth 2.5");
        Assert.NotEmpty(Unmet(boil));
        boil.After(10);
        boil.Say("boil still");
        Assert.Empty(Unmet(boil));
        boil.Say("boil simmering");
        Assert.NotEmpty(Unmet(boil));
        boil.Say("boil still");
        Assert.NotEmpty(Unmet(boil));
    }

    /// <summary>The last reading fell by a slip of the finger: what the one before it showed counts until another one agrees.</summary>
    [Fact]
    public void S1_one_slip_at_the_thermometer_opens_nothing()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("draw 217.8", "shutdown", "yes");
        boil.After(20);
        boil.Say("draw 213.1");
        if (boil.State.Doubted is not null)
        {
            boil.Say("yes");
        }

        boil.After(40);
        boil.Say("depth 2.5", "boil still", "coals spent", "gradient fading");
        Assert.Contains(Unmet(boil), reason => reason.Contains("draw-off side is near syrup", StringComparison.Ordinal));
    }

    /// <summary>A draw-off well under syrup, and a flood since: by balance nothing there can pass it, and nobody is kept for it.</summary>
    [Fact]
    public void S1_what_the_flood_has_thinned_keeps_nobody()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("draw 215", "shutdown", "yes");
        boil.After(5);
        boil.Say("draw 215.2", "flood");
        boil.After(60);
        boil.Say("depth 2.5", "boil still", "coals spent", "gradient fading");
        Assert.Empty(Unmet(boil));
    }

    [Fact]
    public void S1_clear_to_leave_is_never_said_while_the_boil_rolls_or_over_deep_coals()
    {
        foreach (var order in Orders())
        {
            var boil = LongAfterTheLastWood();
            foreach (var said in order)
            {
                boil.Say(said);
                var unsafeNow = boil.State.Last(ObservationName.Boil)?.Value is "rolling" or "steady"
                    || boil.State.Last(ObservationName.Coals)?.Value == "deep";
                if (unsafeNow)
                {
                    Assert.DoesNotContain(boil.Answers.OfType<AdviceLine>(), line => line.Advice.Action == "clear-to-leave");
                }
            }
        }
    }

    [Fact]
    public void Leaving_before_it_is_clear_is_questioned_and_ends_unsafe()
    {
        var boil = LongAfterTheLastWood();
        boil.Say("leave");
        Assert.Contains("not clear to leave", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
        Assert.False(boil.State.IsOver);
        boil.Say("yes");
        Assert.True(boil.State.IsOver);
        Assert.False(boil.Only<OverLine>().Outcome.Safe);
    }

    [Fact]
    public void Leaving_when_it_is_clear_ends_safe()
    {
        var boil = LongAfterTheLastWood();
        boil.Say(AllSeen);
        boil.Say("cover");
        boil.Say("leave");
        Assert.True(boil.State.IsOver);
        Assert.True(boil.Only<OverLine>().Outcome.Safe);
        Assert.Equal("over", boil.Only<PhaseLine>().Phase);
        boil.Say("tank 3");
        Assert.Contains("over", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Also_the_emergency_of_having_to_leave_is_questioned_once_and_ends_unsafe()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("must leave");
        Assert.Equal("emergency", boil.Phase);
        boil.Say("leave");
        Assert.Contains("not clear to leave", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
        boil.Say("yes");
        Assert.False(boil.Only<OverLine>().Outcome.Safe);
    }

    [Fact]
    public void Leaving_a_pan_read_dry_is_told_first()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("depth 0.4", "leave");
        Assert.Contains("the pan stood at 0.4 in, under its least depth", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
        Assert.False(boil.State.IsOver);
    }

    [Fact]
    public void Once_it_is_clear_nothing_is_asked_any_more()
    {
        var boil = LongAfterTheLastWood();
        boil.Say(AllSeen);
        boil.Say("cover");
        for (var answers = 0; boil.Open is { } open && answers < 20; answers++)
        {
            boil.Say(open.Ask == "confirm" ? "yes" : "2.5");
        }

        Assert.Equal("leave-check", boil.State.Step);
        Assert.Empty(boil.After(45).OfType<PromptLine>());
        boil.Say("boil simmering");
        Assert.NotEmpty(boil.After(15).OfType<PromptLine>());
    }

    private static Conversation LongAfterTheLastWood()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("shutdown", "yes");
        boil.After(100);
        return boil;
    }

    private static IReadOnlyList<string> Unmet(Conversation boil) => new Situation(boil.Session.Setting, boil.State).Unmet;

    private static IEnumerable<string[]> Orders()
    {
        string[] said = ["depth 2.5", "boil still", "coals spent", "gradient gone", "cover", "boil rolling", "coals deep", "boil still", "coals spent", "wood"];
        for (var first = 0; first < said.Length; first++)
        {
            yield return [.. said[first..], .. said[..first]];
        }
    }
}
