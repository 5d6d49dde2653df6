using Panside.Guide.Hearing;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Tests.Hearing;

/// <summary>A short word for what is seen is of what is asked.</summary>
public class SeenWhereAskedTests
{
    [Theory]
    [InlineData("foam", "its down", "low")]
    [InlineData("foam", "climbing", "rising")]
    [InlineData("boil", "barely", "simmering")]
    [InlineData("boil", "its going", "steady")]
    [InlineData("coals", "still glowing", "deep")]
    [InlineData("smell", "still", "scorched")]
    [InlineData("smell", "bad", "scorched")]
    public void It_is_taken_for_that(string ask, string said, string state) =>
        Assert.Equal((ask, state), Assert.IsType<Observed>(Assert.IsType<MeansLine>(Heard(ask, said)).Line) is var seen ? (seen.Name.Code, seen.Is) : default);

    /// <summary>Who knows the words of the lists says them unasked.</summary>
    [Theory]
    [InlineData("boil", "gone", "gradient")]
    [InlineData("boil", "thin", "coals")]
    [InlineData("coals", "low", "foam")]
    [InlineData("gradient", "still", "boil")]
    public void A_word_of_the_lists_is_of_its_own_state_whatever_is_asked(string ask, string said, string name) =>
        Assert.Equal(name, Assert.IsType<Observed>(Assert.IsType<MeansLine>(Heard(ask, said)).Line).Name.Code);

    /// <summary>By these a fire or a draw-off is left.</summary>
    [Theory]
    [InlineData("coals", "gone", "spent")]
    [InlineData("boil", "nothing", "still")]
    [InlineData("coals", "black", "spent")]
    [InlineData("gradient", "all the same", "gone")]
    public void What_lets_go_of_a_fire_is_asked_back(string ask, string said, string state) =>
        Assert.Equal((ask, state), Assert.IsType<Observed>(Assert.IsType<MeansUnsure>(Heard(ask, said)).Line) is var seen ? (seen.Name.Code, seen.Is) : default);

    [Theory]
    [InlineData("smell", "fine")]
    [InlineData("smell", "gone")]
    [InlineData("smell", "nothing")]
    [InlineData("boil", "nothing")]
    public void None_of_them_is_a_smell_that_is_good_or_a_boil_that_is_still(string ask, string said)
    {
        var heard = Heard(ask, said);
        Assert.False(heard is MeansLine(Observed { Is: "sweet" or "still" } or Observed { Name.Code: not "smell" }), heard.ToString());
    }

    [Theory]
    [InlineData("climbing")]
    [InlineData("going up")]
    public void A_thermometer_that_climbs_is_no_foam_and_no_fire(string said) => Assert.IsType<MeansNothing>(Heard("draw-temperature", said));

    private static Understood Heard(string ask, string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        return new Listener(boil.Session.Setting).Understand(boil.Now, said, new("asked", ask, ask == "draw-temperature" ? Unit.DegreeFahrenheit : null, "Look."));
    }
}
