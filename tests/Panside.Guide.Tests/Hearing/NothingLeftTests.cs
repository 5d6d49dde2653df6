using Panside.Guide.Hearing;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Hearing;

/// <summary>No sap is left, or nothing that could be poured: in the forms in which it is said, and in no other.</summary>
public class NothingLeftTests
{
    [Theory]
    [InlineData("out of sap")]
    [InlineData("I'm all out of sap")]
    [InlineData("we've run out of sap")]
    [InlineData("ran out of sap")]
    [InlineData("no sap left")]
    [InlineData("no more sap")]
    [InlineData("there's no sap left in the tank")]
    [InlineData("i have no sap left")]
    [InlineData("we don't have any more sap")]
    [InlineData("the sap's all gone now")]
    [InlineData("sap is gone")]
    [InlineData("the tank is empty")]
    [InlineData("tank's dry")]
    [InlineData("the tank just ran dry")]
    [InlineData("sap tank is empty")]
    [InlineData("looks like the tank is empty")]
    [InlineData("nothing left in the tank")]
    [InlineData("ok, that was the last of the sap")]
    [InlineData("used up all the sap")]
    public void No_sap_is_left(string said) => Assert.Equal(NothingLeft.Sap, NothingLeft.In(said));

    [Theory]
    [InlineData("nothing left to pour")]
    [InlineData("i've got nothing")]
    [InlineData("nothing")]
    [InlineData("I have nothing left")]
    [InlineData("i don't have anything to pour")]
    [InlineData("no sap and no water")]
    [InlineData("the pails are empty")]
    public void Nothing_can_be_poured(string said) => Assert.Equal(NothingLeft.ToPour, NothingLeft.In(said));

    [Theory]
    [InlineData("nearly out of sap")]
    [InlineData("not out of sap")]
    [InlineData("no sap left in the pan")]
    [InlineData("ran out of sap last Sunday")]
    [InlineData("if we run out of sap")]
    [InlineData("the spare tank is dry")]
    [InlineData("tank is half empty")]
    [InlineData("nothing smells")]
    [InlineData("when out of sap")]
    public void Another_word_says_something_else(string said) => Assert.Null(NothingLeft.In(said));

    [Theory]
    [InlineData("out of sap")]
    [InlineData("out of sap and she's boiling like mad")]
    [InlineData("there's no sap left in the tank")]
    [InlineData("no more sap in the tank")]
    public void A_cry_that_no_sap_is_left_empties_the_tank_and_one_undo_takes_both_back(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        var (tank, step) = (boil.State.Last(ReadingName.TankVolume)!.Value.Value, boil.State.Step);
        boil.Say(said);
        Assert.Equal("emergency-dry", boil.State.Step);
        Assert.Equal(0, boil.State.Last(ReadingName.TankVolume)!.Value.Value.Value);
        boil.Say("undo");
        Assert.Equal(tank, boil.State.Last(ReadingName.TankVolume)!.Value.Value);
        Assert.Equal(step, boil.State.Step);
    }

    [Theory]
    [InlineData("sap tank is empty")]
    [InlineData("looks like the tank is empty")]
    [InlineData("tank's about empty")]
    public void Said_of_the_tank_alone_it_is_its_reading_or_nothing(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say(said);
        Assert.NotEqual("emergency", boil.Phase);
        Assert.Equal(said.Contains("about", StringComparison.Ordinal) ? 30 : 0, boil.State.Last(ReadingName.TankVolume)!.Value.Value.Value);
    }

    [Theory]
    [InlineData("empty")]
    [InlineData("nothing left")]
    [InlineData("it's empty")]
    [InlineData("none")]
    public void Where_the_tank_is_asked_none_is_its_reading(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        for (var minute = 0; minute < 60 && boil.Open?.Ask != "tank-volume"; minute++)
        {
            boil.After(1);
        }

        boil.Say(said);
        Assert.Equal(0, boil.State.Last(ReadingName.TankVolume)!.Value.Value.Value);
        Assert.NotEqual("emergency", boil.Phase);
    }

    [Theory]
    [InlineData("pan low", "nothing left to pour", "dry-nothing")]
    [InlineData("pan low", "no sap left", "dry-nothing")]
    [InlineData("pan low", "i've got nothing", "dry-nothing")]
    [InlineData("pan low", "tank is dry", "dry-nothing")]
    [InlineData("smells burnt", "i have nothing left", "dry-nothing")]
    [InlineData("float stuck", "we're out of sap", "hand-feed")]
    [InlineData("leaking", "no more sap", "hand-feed")]
    public void On_a_page_that_asks_to_pour_it_is_its_no(string cry, string said, string leadsTo)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say(cry);
        boil.Say(said);
        Assert.Equal(leadsTo, boil.State.Step);
        Assert.Equal(NothingLeft.In(said) == NothingLeft.Sap ? 0 : 30, boil.State.Last(ReadingName.TankVolume)!.Value.Value.Value);
    }

    [Fact]
    public void Where_water_is_asked_for_already_no_sap_leads_nobody_round()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("pan low", "no", "no sap left");
        Assert.Equal("dry-nothing", boil.State.Step);
        boil.Say("nothing to pour");
        Assert.Equal("dry-lost", boil.State.Step);
    }
}
