using Panside.Guide.Hearing;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Tests.Hearing;

public class PouringTests
{
    private static readonly Conversation Boil = new();
    private static readonly Prompt Confirm = new("pan-sound", "confirm", null, "");

    [Theory]
    [InlineData("poured 2 gal", 2, "gal", "sap")]
    [InlineData("Poured in 2 1/2 gal.", 2.5, "gal", "sap")]
    [InlineData("poured 2", 2, "gal", "sap")]
    [InlineData("added 2 gal to the pan", 2, "gal", "sap")]
    [InlineData("i just added 2 gal of sap to the pan", 2, "gal", "sap")]
    [InlineData("2 gal of water in", 2, "gal", "water")]
    [InlineData("poured in a gallon of water", 1, "gal", "water")]
    [InlineData("poured half a gallon of clean water in at the syrup side", 0.5, "gal", "water")]
    [InlineData("2 gal sap into the pan", 2, "gal", "sap")]
    [InlineData("water 2 gal in", 2, "gal", "water")]
    [InlineData("water, 2 gal in", 2, "gal", "water")]
    [InlineData("two gallons of sap into the pan", 2, "gal", "sap")]
    [InlineData("refilled the pan with 8 L of water", 8, "L", "water")]
    [InlineData("poured 3 qt from the tank into the pan", 3, "qt", "sap")]
    [InlineData("fill-pan 2 gal", 2, "gal", "sap")]
    [InlineData("fill pan 2 gal water", 2, "gal", "water")]
    [InlineData("added 2,5 gal to the pan", 2.5, "gal", "sap")]
    public void What_went_into_the_pan_is_heard(string text, double value, string unit, string liquid)
    {
        var did = Assert.IsType<Did>(Assert.IsType<MeansLine>(Understand(text)).Line);
        Assert.Equal((DeedName.FillPan, value, unit, liquid), (did.Name, did.Measure!.Value.Value, did.Measure.Value.Unit.Code(), did.Is));
    }

    [Theory]
    [InlineData("refill 5 gal", 5, "gal")]
    [InlineData("refilled 5", 5, "gal")]
    [InlineData("added 2 gal to the tank", 2, "gal")]
    [InlineData("5 gal into the tank", 5, "gal")]
    [InlineData("poured 20 L of sap in the head tank", 20, "L")]
    [InlineData("refill-tank 5 gal", 5, "gal")]
    public void What_went_into_the_tank_is_heard(string text, double value, string unit)
    {
        var did = Assert.IsType<Did>(Assert.IsType<MeansLine>(Understand(text)).Line);
        Assert.Equal((DeedName.RefillTank, value, unit, null), (did.Name, did.Measure!.Value.Value, did.Measure.Value.Unit.Code(), did.Is));
    }

    [Theory]
    [InlineData("added 2 gal", 2, "sap")]
    [InlineData("add 2 gal", 2, "sap")]
    [InlineData("added 5", 5, "sap")]
    [InlineData("2 gal in", 2, "sap")]
    [InlineData("put in another 2 gal of water", 2, "water")]
    public void Where_it_went_stays_open_where_nobody_said(string text, double value, string liquid)
    {
        var added = Assert.IsType<Added>(Assert.IsType<MeansLine>(Understand(text)).Line);
        Assert.Equal((value, liquid), (added.Measure.Value, added.Liquid));
    }

    [Theory]
    [InlineData("poured", "sap")]
    [InlineData("poured in", "sap")]
    [InlineData("poured some water", "water")]
    [InlineData("poured in a little sap", "sap")]
    [InlineData("added sap to the pan", "sap")]
    [InlineData("added some water", "water")]
    [InlineData("poured in a pail of water", "water")]
    [InlineData("poured 2 pails", "sap")]
    public void A_pour_into_the_pan_without_a_volume_is_heard_as_one_that_nobody_measured(string text, string liquid)
    {
        var pour = Assert.IsType<MeansPoured>(Understand(text)).Pour;
        Assert.Equal((DeedName.FillPan, null, liquid), (pour.Name, pour.Measure, pour.Is));
    }

    [Theory]
    [InlineData("poured 1 gal into the back pan", "back")]
    [InlineData("added 1 gal to the rear pan", "back")]
    [InlineData("1 gal of water into the flue pan", "back")]
    [InlineData("poured 1 gal in the front pan", "front")]
    [InlineData("poured half a gallon of water into the syrup pan", "front")]
    [InlineData("poured some water into the back pan", "back")]
    [InlineData("poured 1 gal into the pan", null)]
    public void Of_two_pans_the_one_that_is_named_is_heard(string text, string? pan)
    {
        var two = new Conversation(rig: "flue-and-syrup-pan.yaml", members: Conversation.Few);
        var understood = new Listener(two.Session.Setting).Understand(two.Now, text, Confirm);
        var did = understood is MeansPoured(var pour) ? pour : Assert.IsType<Did>(Assert.IsType<MeansLine>(understood).Line);
        Assert.Equal((DeedName.FillPan, pan), (did.Name, did.Pan));
    }

    [Fact]
    public void Of_one_pan_no_other_is_heard() => Assert.False(Understand("poured 1 gal into the back pan") is MeansLine(Did { Pan: not null }));

    [Theory]
    [InlineData("added")]
    [InlineData("added sap")]
    [InlineData("refilled the tank")]
    [InlineData("poured 7 lb")]
    public void A_pour_without_a_volume_is_asked_how_much(string text) =>
        Assert.Matches("How much|told in gal", Assert.IsType<MeansNothing>(Understand(text)).Why);

    /// <summary>What tells of something else is heard as it was, or not at all.</summary>
    [Theory]
    [InlineData("tank 22", "tank-volume")]
    [InlineData("22 gal in the tank", "tank-volume")]
    [InlineData("2 in", "pan-depth")]
    [InlineData("pan 1.5", "pan-depth")]
    [InlineData("water 211.5", "boiling-water-temperature")]
    [InlineData("sap 2.1", "sap-brix")]
    public void Readings_stay_readings(string text, string name) =>
        Assert.Equal(name, Assert.IsType<Reading>(Assert.IsType<MeansLine>(Understand(text)).Line).Name.Code);

    [Theory]
    [InlineData("did not pour 2 gal in")]
    [InlineData("should i add 2 gal?")]
    [InlineData("pan needs 2 gal to run")]
    [InlineData("added -2 gal")]
    [InlineData("pan emptied")]
    public void What_is_denied_or_asked_is_no_pour(string text) => Assert.IsNotType<MeansLine>(Understand(text));

    private static Understood Understand(string text) => new Listener(Boil.Session.Setting).Understand(Boil.Now, text, Confirm);
}
