using Panside.Guide.Hearing;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Words;

namespace Panside.Guide.Tests.Hearing;

public class TypedInputTests
{
    private static readonly Conversation Boil = new();
    private static readonly Prompt Tank = new("tank-read", "tank-volume", Unit.Gallon, "");
    private static readonly Prompt Depth = new("pan-filled", "pan-depth", Unit.Inch, "");
    private static readonly Prompt DrawOff = new("draw-temp", "draw-temperature", Unit.DegreeFahrenheit, "");
    private static readonly Prompt Drawn = new("drawn", "drawn-volume", Unit.Quart, "");
    private static readonly Prompt Confirm = new("pan-sound", "confirm", null, "");

    [Theory]
    [InlineData("217.4", 217.4, "degF")]
    [InlineData("217.4F", 217.4, "degF")]
    [InlineData("217.4 °F", 217.4, "degF")]
    [InlineData("103 C", 103, "degC")]
    [InlineData("103,2 c", 103.2, "degC")]
    public void A_number_answers_the_thermometer_prompt(string text, double value, string unit) =>
        AssertReading(text, DrawOff, ReadingName.DrawTemperature, value, unit);

    [Theory]
    [InlineData("1 1/2", 1.5, "in")]
    [InlineData("1-1/2", 1.5, "in")]
    [InlineData("1.5\"", 1.5, "in")]
    [InlineData("1½", 1.5, "in")]
    [InlineData("½ in", 0.5, "in")]
    [InlineData("3/4", 0.75, "in")]
    [InlineData("1 3/8 inches", 1.375, "in")]
    [InlineData("38 mm", 38, "mm")]
    [InlineData("4 cm", 4, "cm")]
    public void A_depth_is_typed_as_a_ruler_shows_it(string text, double value, string unit) =>
        AssertReading(text, Depth, ReadingName.PanDepth, value, unit);

    [Theory]
    [InlineData("12 gal", 12, "gal")]
    [InlineData("12", 12, "gal")]
    [InlineData("12 1/2", 12.5, "gal")]
    [InlineData("45 L", 45, "L")]
    public void A_volume_answers_the_tank_prompt(string text, double value, string unit) =>
        AssertReading(text, Tank, ReadingName.TankVolume, value, unit);

    [Theory]
    [InlineData("2 qt", 2, "qt")]
    [InlineData("2", 2, "qt")]
    [InlineData("1.5 L", 1.5, "L")]
    public void A_small_volume_answers_how_much_was_drawn(string text, double value, string unit) =>
        AssertReading(text, Drawn, ReadingName.DrawnVolume, value, unit);

    [Fact]
    public void A_named_reading_does_not_take_the_unit_of_another_prompt() =>
        AssertReading("tank 1.5", Drawn, ReadingName.TankVolume, 1.5, "gal");

    [Theory]
    [InlineData("tank 22", "tank-volume", 22, "gal")]
    [InlineData("tank is 22 1/2", "tank-volume", 22.5, "gal")]
    [InlineData("Tank: 22 gal.", "tank-volume", 22, "gal")]
    [InlineData("depth 1 1/2", "pan-depth", 1.5, "in")]
    [InlineData("pan 1.5", "pan-depth", 1.5, "in")]
    [InlineData("pan 12 brix", "pan-brix", 12, "Brix")]
    [InlineData("draw 40 brix", "draw-brix", 40, "Brix")]
    [InlineData("draw 217.4", "draw-temperature", 217.4, "degF")]
    [InlineData("water 211.5", "boiling-water-temperature", 211.5, "degF")]
    [InlineData("sap 2.1", "sap-brix", 2.1, "Brix")]
    [InlineData("hydrometer 59", "hydrometer-brix", 59, "Brix")]
    [InlineData("sample 180F", "sample-temperature", 180, "degF")]
    [InlineData("barometer 29.9", "barometer", 29.9, "inHg")]
    [InlineData("barometer 1013 hPa", "barometer", 1013, "hPa")]
    [InlineData("air -3 C", "air-temperature", -3, "degC")]
    public void A_name_and_a_number_are_a_reading_at_any_time(string text, string name, double value, string unit) =>
        AssertReading(text, Confirm, KnownReadings.BuiltIn.Find(name)!, value, unit);

    [Theory]
    [InlineData("wood", "add-wood", null, null)]
    [InlineData("wood 7 lb", "add-wood", 7.0, "lb")]
    [InlineData("7 lb wood", "add-wood", 7.0, "lb")]
    [InlineData("drew 2 qt", "close-draw", 2.0, "qt")]
    [InlineData("drew 2", "close-draw", 2.0, "qt")]
    [InlineData("draw 2 qt", "close-draw", 2.0, "qt")]
    [InlineData("refill 5 gal", "refill-tank", 5.0, "gal")]
    [InlineData("lit", "lit-fire", null, null)]
    [InlineData("lid on", "cover-pan", null, null)]
    [InlineData("flooded", "flood-pan", null, null)]
    [InlineData("coals spread", "spread-coals", null, null)]
    [InlineData("defoamer", "add-defoamer", null, null)]
    [InlineData("open", "open-draw", null, null)]
    [InlineData("leave", "leave", null, null)]
    public void A_deed_is_said_in_a_word_or_two(string text, string deed, double? value, string? unit)
    {
        var did = Assert.IsType<Did>(Assert.IsType<MeansLine>(Understand(text, Confirm)).Line);
        Assert.Equal(deed, did.Name.Code);
        Assert.Equal(value, did.Measure?.Value);
        Assert.Equal(unit, did.Measure?.Unit.Code());
    }

    [Theory]
    [InlineData("rolling", "boil", "rolling")]
    [InlineData("boil is still", "boil", "still")]
    [InlineData("foam rising", "foam", "rising")]
    [InlineData("spent", "coals", "spent")]
    [InlineData("scorching", "smell", "scorched")]
    [InlineData("channels gone", "gradient", "gone")]
    public void What_is_seen_is_said_by_its_own_word(string text, string name, string state)
    {
        var observed = Assert.IsType<Observed>(Assert.IsType<MeansLine>(Understand(text, Confirm)).Line);
        Assert.Equal((name, state), (observed.Name.Code, observed.Is));
    }

    [Theory]
    [InlineData("yes", "yes")]
    [InlineData("Y", "yes")]
    [InlineData("done", "yes")]
    [InlineData("skip", "skip")]
    [InlineData("later", "later")]
    [InlineData("no", "no")]
    public void Answers_are_heard(string text, string word) =>
        Assert.Equal(word, Assert.IsType<Answer>(Assert.IsType<MeansLine>(Understand(text, Confirm)).Line).Word);

    [Theory]
    [InlineData("why", "why", "")]
    [InlineData("undo", "undo", "")]
    [InlineData("note sap is cloudy", "note", "sap is cloudy")]
    [InlineData("?", "help", "")]
    [InlineData("!", "emergency", "")]
    [InlineData("chimney fire", "chimney", "")]
    [InlineData("last charge", "shutdown", "")]
    public void Words_of_the_assistant_and_of_the_flow_are_heard(string text, string word, string rest)
    {
        var means = Assert.IsType<MeansWord>(Understand(text, Confirm));
        Assert.Equal((word, rest), (means.Word, means.Rest));
    }

    [Theory]
    [InlineData("12 gal", "pan-depth", "Expected: a number in in, ft, m, cm, mm")]
    [InlineData("tank 22 F", "confirm", "tank is read in gal, qt, L, mL")]
    [InlineData("22", "confirm", "'22' of what?")]
    [InlineData("2 gal", "confirm", "'tank 2 gal'")]
    [InlineData("tank 22 bushels", "confirm", "'bushels' is no unit")]
    [InlineData("xyzzy", "confirm", "yes, no, skip or later")]
    [InlineData("1,234", "tank-volume", "not understood")]
    [InlineData("   ", "confirm", "Nothing was typed")]
    public void What_is_not_understood_says_what_was_expected(string text, string ask, string expected)
    {
        var prompt = ask switch { "pan-depth" => Depth, "tank-volume" => Tank, _ => Confirm };
        Assert.Contains(expected, Assert.IsType<MeansNothing>(Understand(text, prompt)).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_metric_rig_assumes_metric_units()
    {
        var boil = new Conversation(rigText: """
            rig: metric
            units: metric
            pan: { length: 120 cm, width: 60 cm }
            fire: { draft: natural }
            """);
        boil.Say("yes", "depth 4", "tank 80");
        Assert.Equal(new Measure(4, Unit.Centimeter), boil.State.Last(ReadingName.PanDepth)!.Value.Value);
        Assert.Equal(new Measure(80, Unit.Liter), boil.State.Last(ReadingName.TankVolume)!.Value.Value);
    }

    private static Understood Understand(string text, Prompt open) =>
        new Listener(Boil.Session.Setting).Understand(Boil.Now, text, open);

    private static void AssertReading(string text, Prompt open, ReadingName name, double value, string unit)
    {
        var reading = Assert.IsType<Reading>(Assert.IsType<MeansLine>(Understand(text, open)).Line);
        Assert.Equal(name, reading.Name);
        Assert.Equal(value, reading.Measure.Value, 9);
        Assert.Equal(unit, reading.Measure.Unit.Code());
    }
}
