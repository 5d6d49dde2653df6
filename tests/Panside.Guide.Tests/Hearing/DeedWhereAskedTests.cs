using Panside.Guide.Hearing;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Tests.Hearing;

/// <summary>A short word is of the deed, or of the amount, that is asked.</summary>
public class DeedWhereAskedTests
{
    [Theory]
    [InlineData("wood", "its in", "add-wood", null)]
    [InlineData("wood", "3 sticks", "add-wood", null)]
    [InlineData("wood", "put it in", "add-wood", null)]
    [InlineData("draw-close", "its off", "close-draw", null)]
    [InlineData("draw-close", "shut her down", "close-draw", null)]
    [InlineData("draw-close", "2 qts", "close-draw", 2.0)]
    [InlineData("draw-close", "half gallon", "close-draw", 0.5)]
    [InlineData("draw-close", "bout a quart", "close-draw", 1.0)]
    public void It_is_taken_for_that(string step, string said, string deed, double? value)
    {
        var did = Assert.IsType<Did>(Assert.IsType<MeansLine>(Heard(step, "confirm", said)).Line);
        Assert.Equal((deed, value), (did.Name.Code, did.Measure?.Value));
    }

    [Theory]
    [InlineData("wont open")]
    [InlineData("can't")]
    public void A_draw_off_that_does_not_open_where_it_is_asked_to_is_stuck(string said) =>
        Assert.Equal("stuck", Assert.IsType<MeansCry>(Heard("draw-open", "confirm", said)).Dangers[0]);

    [Theory]
    [InlineData("half", 17.5)]
    [InlineData("half full", 17.5)]
    [InlineData("about a quarter tank", 8.8)]
    public void A_share_of_the_tank_is_asked_back_as_a_volume(string said, double gallons) =>
        Assert.Equal(gallons, Assert.IsType<Reading>(Assert.IsType<MeansUnsure>(Heard("tank", "tank-volume", said)).Line).Measure.Value, 6);

    [Theory]
    [InlineData("tank", "tank-volume", "pretty low")]
    [InlineData("tank", "tank-volume", "same")]
    [InlineData("depth", "pan-depth", "same as before")]
    public void What_says_no_figure_is_asked_for_one(string step, string ask, string said) => Assert.IsType<MeansNothing>(Heard(step, ask, said));

    [Fact]
    public void Shut_in_other_words_is_no_foam_that_is_low() => Assert.IsNotType<MeansLine>(Heard("tank", "tank-volume", "shut her down"));

    private static Understood Heard(string step, string ask, string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        return new Listener(boil.Session.Setting).Understand(boil.Now, said, new(step, ask, ask == "tank-volume" ? Unit.Gallon : ask == "pan-depth" ? Unit.Inch : null, "Look."));
    }
}
