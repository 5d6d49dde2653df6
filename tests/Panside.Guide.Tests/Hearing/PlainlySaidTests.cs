using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;

namespace Panside.Guide.Tests.Hearing;

/// <summary>What a first-time user said and was heard wrongly, each kind with its variants: nothing is taken that was not so.</summary>
public class PlainlySaidTests
{
    private const string Wood = "two-by-four-natural.yaml";
    private const string Blower = "two-by-four-forced.yaml";
    private const string Gas = "gas-divided.yaml";
    private const string Batch = "flat-by-hand.yaml";

    /// <summary>A rig with a refractometer, no thermometer, and a ladle.</summary>
    private const string Ladled = "rig: small pan\nunits: metric\naltitude: 300 m\npan: { length: 70 cm, width: 45 cm, channels: 2 }\nfire: { draft: natural, wood: { species: ash, moisture: 25 % } }\nfeed: { by: valve, tank: 60 L }\ndraw: { by: ladle }\ninstruments: [refractometer]\nlid: false\n";

    [Theory]
    [InlineData("pan is boiling", "steady")]
    [InlineData("pan's boiling", "steady")]
    [InlineData("pan boiling", "steady")]
    [InlineData("pan is bubbling", "steady")]
    [InlineData("sap is boiling", "steady")]
    [InlineData("the pan is boiling again", "steady")]
    [InlineData("ok it is boiling now", "steady")]
    [InlineData("pan boils", "steady")]
    [InlineData("nearly still", "simmering")]
    [InlineData("almost still", "simmering")]
    public void A_pan_that_boils_is_up(string said, string state) => Assert.Equal(state, Assert.IsType<Observed>(Heard(Wood, said)).Is);

    [Theory]
    [InlineData("the pan started boiling again", "boil", "steady")]
    [InlineData("not still yet", "boil", "simmering")]
    [InlineData("coals glow again", "coals", "deep")]
    [InlineData("coals not spent", "coals", "thin")]
    [InlineData("coals aren't out yet", "coals", "thin")]
    public void The_opposite_is_never_asked_back(string said, string seen, string state)
    {
        var boil = Ending();
        boil.Say(said);
        var doubted = Assert.IsType<Observed>(boil.State.Doubted);
        Assert.Equal((seen, state), (doubted.Name.Code, doubted.Is));
    }

    [Theory]
    [InlineData("stopped boiling")]
    [InlineData("the pan has stopped bubbling")]
    [InlineData("it quit boiling")]
    public void What_stopped_is_still(string said) => Assert.Equal("still", Assert.IsType<Observed>(Heard(Wood, said)).Is);

    [Theory]
    [InlineData("coals are burnt out")]
    [InlineData("the embers have all gone out")]
    public void What_burnt_out_is_spent(string said)
    {
        var boil = Ending();
        boil.Say(said);
        var heard = boil.Answers.OfType<HeardLine>().FirstOrDefault()?.As ?? boil.State.Doubted;
        Assert.Equal("spent", Assert.IsType<Observed>(heard).Is);
    }

    [Theory]
    [InlineData(Wood, "how do i shut it off")]
    [InlineData(Wood, "where do i shut it off")]
    [InlineData(Wood, "are the coals spent")]
    [InlineData(Wood, "are the coals out?")]
    [InlineData(Wood, "is the boil still")]
    [InlineData(Wood, "did it stop boiling")]
    [InlineData(Wood, "is the pan covered")]
    [InlineData(Wood, "are the channels clear")]
    [InlineData(Wood, "is the foam low")]
    [InlineData(Wood, "how do i cover the pan")]
    [InlineData(Wood, "how to shut the draw off")]
    [InlineData(Wood, "have we poured 2 gal")]
    [InlineData(Wood, "is the tank at 22")]
    [InlineData(Wood, "who put wood in")]
    [InlineData(Gas, "is the burner off")]
    [InlineData(Gas, "how do i turn it off")]
    public void A_question_changes_nothing_and_is_answered(string rig, string said)
    {
        var boil = Conversation.AtSteadyBoil(rig: rig, members: Conversation.Few);
        boil.Say("shutdown");
        var (deeds, seen, read) = (boil.State.Deeds, boil.State.Observations, boil.State.Readings);
        boil.Say(said);
        Assert.Equal((deeds, seen, read), (boil.State.Deeds, boil.State.Observations, boil.State.Readings));
        Assert.Null(boil.State.Doubted);
        Assert.Contains(boil.Answers, line => line is ToldLine);
    }

    [Fact]
    public void It_is_told_what_was_seen_last_and_when()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("coals deep");
        boil.After(4);
        boil.Say("are the coals spent");
        Assert.StartsWith("Last told: coals deep, 4 minutes ago.", boil.Answers.OfType<ToldLine>().First().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fact_behind_a_question_that_is_answered_is_taken()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("is it syrup, depth 1.4");
        Assert.Equal(1.4, boil.State.Last(ReadingName.PanDepth)!.Value.Value.Value, 6);
    }

    [Fact]
    public void A_cry_goes_before_a_question()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("how do i put the fire out the roof is burning");
        Assert.Equal("emergency-fire", boil.State.Step);
    }

    [Theory]
    [InlineData("i have 3 gallons of water left")]
    [InlineData("i only have half a gallon of water")]
    [InlineData("have half a gallon of sap")]
    [InlineData("2 gallons of water standing by")]
    [InlineData("i've got 2 gallons of water ready")]
    [InlineData("about to pour 1 gal")]
    [InlineData("going to pour 2 gallons now")]
    [InlineData("we will add 5 gal")]
    [InlineData("need to pour 2 gallons")]
    public void What_is_only_there_or_to_come_is_not_poured(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        var deeds = boil.State.Deeds;
        boil.Say(said);
        Assert.Equal(deeds, boil.State.Deeds);
        Assert.Null(boil.State.Doubted);
        Assert.Contains("then say 'poured'", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("i have poured 2 gal of water")]
    [InlineData("i had to pour 2 gal of water in")]
    [InlineData("i've put 2 gallons of water in the pan")]
    public void What_went_in_is(string said) => Assert.Equal(2, Assert.IsType<Did>(Heard(Wood, said)).Measure!.Value.Value);

    [Theory]
    [InlineData("tank isnt moving", "float")]
    [InlineData("the tank isn't going down", "float")]
    [InlineData("gauge not moving", "float")]
    [InlineData("the tank hasn't moved", "float")]
    [InlineData("he's by the tank and isn't moving", "faint")]
    [InlineData("she isnt moving", "faint")]
    public void A_tank_that_stands_still_is_no_person(string said, string danger)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say(said);
        Assert.Equal("emergency-" + danger, boil.State.Step);
    }

    [Theory]
    [InlineData("how long have i got", "Unfed, the floor shows in about")]
    [InlineData("how long do we have left", "Unfed, the floor shows in about")]
    [InlineData("how much water do I need", "three times as much of snow")]
    [InlineData("i have a bucket of snow", "Snow will do")]
    [InlineData("only snow", "Snow will do")]
    public void In_an_emergency_a_question_is_of_the_pan(string said, string told)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("depth 1.5", "dry pan", said);
        Assert.StartsWith("emergency-dry", boil.State.Step, StringComparison.Ordinal);
        Assert.Contains(told, boil.Only<ToldLine>().Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("i turned the burner off")]
    [InlineData("its off")]
    [InlineData("it's off now")]
    [InlineData("turned the gas off")]
    [InlineData("propane is shut")]
    [InlineData("killed the burner")]
    [InlineData("shut it off at the bottle")]
    public void A_burner_is_off_in_many_words(string said)
    {
        var boil = AtShutBurner();
        boil.Say(said);
        Assert.NotNull(boil.State.Last(DeedName.ShutOff));
    }

    [Theory]
    [InlineData("the flame is still on low", "it still boils")]
    [InlineData("i turned it down", "it still boils")]
    [InlineData("can't shut it off", "Shut the gas at cylinder or meter")]
    [InlineData("burner won't turn off", "Shut the gas at cylinder or meter")]
    public void A_burner_that_burns_counts_as_on(string said, string told)
    {
        var boil = AtShutBurner();
        boil.Say(said);
        Assert.Null(boil.State.Last(DeedName.ShutOff));
        Assert.Equal("shut-burner", boil.State.Step);
        Assert.Contains(told, boil.Only<ToldLine>().Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("we ran out of gas")]
    [InlineData("gas ran out")]
    [InlineData("bottle is empty")]
    public void Gas_that_ran_out_is_a_flame_that_is_out(string said)
    {
        var boil = AtShutBurner();
        boil.Say(said);
        Assert.Equal("flame-out", boil.State.Step);
    }

    [Theory]
    [InlineData("the draw valve won't close")]
    [InlineData("valve won't shut, syrup is running out")]
    public void A_valve_of_the_pan_that_does_not_shut_leaks(string said)
    {
        var boil = AtShutBurner();
        boil.Say(said);
        Assert.Equal("emergency-leak", boil.State.Step);
    }

    [Theory]
    [InlineData("i shut the draft", "carbon monoxide")]
    [InlineData("i closed the damper to save the coals", "carbon monoxide")]
    [InlineData("should i close the damper", "carbon monoxide")]
    [InlineData("can i choke the fire", "carbon monoxide")]
    [InlineData("should i shovel out the coals", "burn people and buildings")]
    [InlineData("is it ok to shovel the coals out", "burn people and buildings")]
    [InlineData("i shoveled the coals out", "burn people and buildings")]
    public void S3_who_chokes_a_fire_or_shovels_coals_out_is_told_no_and_why(string said, string told)
    {
        var boil = Ending();
        boil.Say(said);
        Assert.Null(boil.State.Last(DeedName.SpreadCoals));
        var answer = boil.Answers.OfType<ToldLine>().First().Text;
        Assert.StartsWith("No, because", answer, StringComparison.Ordinal);
        Assert.Contains(told, answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("raked the coals out flat")]
    [InlineData("pulled the coals level")]
    public void Who_rakes_them_level_has_raked_them(string said) => Assert.Equal(DeedName.SpreadCoals, Assert.IsType<Did>(Heard(Wood, said)).Name);

    [Theory]
    [InlineData("should i turn the blower off")]
    [InlineData("i turned the blower off")]
    [InlineData("blower off")]
    public void Of_a_blower_that_is_off_its_due_is_told(string said)
    {
        var boil = Conversation.AtSteadyBoil(rig: Blower, members: Conversation.Few);
        boil.Say("shutdown", "yes", said);
        Assert.StartsWith("With no blower", boil.Answers.OfType<RefusedLine>().Single().Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ladling", "open-draw")]
    [InlineData("ladled 0.5 L", "close-draw")]
    [InlineData("i ladled it out", "close-draw")]
    public void Who_ladles_draws(string said, string deed) => Assert.Equal(deed, Assert.IsType<Did>(AtLadle(said).Answers.OfType<HeardLine>().Single().As).Name.Code);

    [Theory]
    [InlineData("brix 58")]
    [InlineData("66 brix at the draw-off side")]
    public void Without_a_hydrometer_syrup_is_read_by_refractometer(string said) =>
        Assert.Equal(ReadingName.DrawBrix, Assert.IsType<Reading>(AtLadle(said).Answers.OfType<HeardLine>().Single().As).Name);

    [Theory]
    [InlineData("it's sheeting off the spoon", "ladle it out now")]
    [InlineData("aproning", "ladle it out now")]
    [InlineData("the draw off tastes like syrup", "Dip a cold spoon")]
    [InlineData("how long until the draw", "cold spoon")]
    public void Syrup_is_told_by_what_the_rig_has(string said, string told)
    {
        var boil = AtLadle(said);
        Assert.Contains(boil.Answers, line => line is ToldLine(_, _, var text) && text.Contains(told, StringComparison.Ordinal) && !text.Contains("thermometer", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("I can't see the coals")]
    [InlineData("too much steam to see")]
    [InlineData("can't see a thing for steam")]
    public void What_steam_hides_counts_as_the_worse(string said)
    {
        var boil = Ending();
        var seen = boil.State.Observations;
        boil.Say(said);
        Assert.Equal(seen, boil.State.Observations);
        Assert.Contains("coals as deep", boil.Answers.OfType<ToldLine>().First().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_is_named_it_is_asked_or_looked_at()
    {
        var boil = Ending();
        boil.Say("nothing is moving");
        Assert.Equal("still", Assert.IsType<Observed>(boil.State.Doubted).Is);
        boil = Ending();
        boil.Say("cant see the bottom");
        Assert.NotEqual("emergency", boil.Phase);
        Assert.Contains("depth", boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
        boil.Say("uh fell asleep, all quiet");
        Assert.NotEqual("still", boil.State.Last(ObservationName.Boil)?.Value);
        Assert.Contains("depth first of all", boil.Answers.OfType<ToldLine>().First().Text, StringComparison.Ordinal);
        boil.Say("its going down quick");
        Assert.Equal("emergency-dry", boil.State.Step);
    }

    [Theory]
    [InlineData(Wood, "tank is nearly empty", "'tank 2'")]
    [InlineData(Wood, "drained the pan", "An empty pan burns")]
    [InlineData(Wood, "took the lid off", "while it boils")]
    [InlineData(Wood, "lid is off", "while it boils")]
    public void What_changes_nothing_counted_is_answered(string rig, string said, string told)
    {
        var boil = Conversation.AtSteadyBoil(rig: rig, members: Conversation.Few);
        boil.Say(said);
        Assert.Contains(boil.Answers, line => (line is ToldLine(_, _, var text) && text.Contains(told, StringComparison.Ordinal)) || (line is RefusedLine(_, _, var why, _) && why.Contains(told, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("poured it out into cans")]
    [InlineData("drained the pan")]
    public void A_batch_that_is_out_is_out(string said) => Assert.Equal(DeedName.EmptyPan, Assert.IsType<Did>(Heard(Batch, said)).Name);

    [Theory]
    [InlineData("\u001b[2J\u0007depth 0.6")]
    [InlineData("depth 1e-1")]
    [InlineData("tank 2e1")]
    public void What_nobody_types_is_no_reading(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        var read = boil.State.Readings;
        boil.Say(said);
        Assert.Equal(read, boil.State.Readings);
        Assert.Null(boil.State.Doubted);
        Assert.Single(boil.Answers.OfType<RefusedLine>());
    }

    [Fact]
    public void A_cry_is_heard_through_stray_marks()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("\u001b[Athe roof is on fire");
        Assert.Equal("emergency-fire", boil.State.Step);
    }

    private static LineIn Heard(string rig, string said)
    {
        var boil = Conversation.AtSteadyBoil(rig: rig, members: Conversation.Few);
        boil.Say(said);
        return boil.Only<HeardLine>().As;
    }

    private static Conversation Ending()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say("shutdown", "yes");
        boil.After(12);
        boil.Say("coals thin", "boil simmering");
        return boil;
    }

    private static Conversation AtShutBurner()
    {
        var boil = Conversation.AtSteadyBoil(rig: Gas, members: Conversation.Few);
        boil.Say("shutdown");
        Assert.Equal("shut-burner", boil.State.Step);
        return boil;
    }

    private static Conversation AtLadle(string said)
    {
        var boil = new Conversation(rig: "ladled.yaml", rigText: Ladled, members: Conversation.Few);
        boil.Say("yes", "depth 4", "tank 50", "sap 2", "lit");
        boil.After(20);
        boil.Say("boil rolling", said);
        return boil;
    }
}
