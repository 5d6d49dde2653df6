using Panside.Guide.Hearing;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Tests.Hearing;

/// <summary>Machines that fail, gas that is smelled, pans named in one breath, numbers that only one thing can be, in the words of tired people.</summary>
public class FailsAndRunsTests
{
    private const string Wood = "two-by-four-natural.yaml";
    private const string Blower = "two-by-four-forced.yaml";
    private const string Gas = "gas-divided.yaml";
    private const string TwoPans = "flue-and-syrup-pan.yaml";

    [Theory]
    [InlineData("fan quit")]
    [InlineData("fans not spinnin")]
    [InlineData("blower is not running")]
    [InlineData("the blower tripped the breaker")]
    [InlineData("power went out in the whole shed")]
    [InlineData("still no fan")]
    [InlineData("shit the fan died on me")]
    public void A_blower_that_stopped(string said) => Assert.Equal("blower-out", Steady(Blower, said).State.Step);

    [Theory]
    [InlineData("burners out")]
    [InlineData("the burner went out")]
    [InlineData("ran outta propane")]
    [InlineData("wind blew it out")]
    [InlineData("wont relight")]
    [InlineData("its gone out")]
    [InlineData("gas bottle is empty")]
    [InlineData("flame died")]
    public void A_burner_that_went_out(string said)
    {
        Assert.Equal("flame-out", Steady(Gas, said).State.Step);
    }

    /// <summary>Cries that sound like a machine, a door or an absence: they go before all of that.</summary>
    [Theory]
    [InlineData("leaking at the fitting")]
    [InlineData("hose is leaking")]
    [InlineData("i hear hissing at the regulator")]
    public void Gas_that_leaks_empties_the_building(string said) => Assert.Equal("emergency-smoke", Steady(Gas, said).State.Step);

    [Theory]
    [InlineData("leak at the fitting of the draw off")]
    [InlineData("no leak at the hose now")]
    public void What_leaks_no_gas_does_not(string said) => Assert.NotEqual("emergency-smoke", Steady(Gas, said).State.Step);

    [Fact]
    public void A_regulator_that_froze_puts_a_burner_out() => Assert.Equal("flame-out", Steady(Gas, "regulator froze up").State.Step);

    [Fact]
    public void A_generator_that_ran_out_stops_the_blower() => Assert.Equal("blower-out", Steady(Blower, "generator out of gas").State.Step);

    [Theory]
    [InlineData("boiling away")]
    [InlineData("its boiling away nicely")]
    [InlineData("really going now")]
    [InlineData("its raining in on the pan")]
    [InlineData("snowing hard again")]
    [InlineData("needle's off the scale")]
    [InlineData("hydro sinks to the bottom")]
    public void What_sounds_like_a_danger_and_is_none(string said) => Assert.Equal("steady-boil", Steady(Wood, said).Phase);

    [Fact]
    public void Cried_out_it_is_a_danger() => Assert.Equal("emergency", Steady(Wood, "it's boiling away!").Phase);

    [Fact]
    public void A_boil_that_goes_well_rolls() => Assert.Equal("rolling", Steady(Wood, "boiling away").State.Last(ObservationName.Boil)!.Value.Value);

    [Theory]
    [InlineData("its just a blister")]
    [InlineData("its running under the tap")]
    [InlineData("hand is under cold water now")]
    public void A_burn_that_is_cooled_is_no_boil_and_no_leak(string said)
    {
        var boil = Steady(Wood, "i burned my hand");
        boil.Say("yes", said);
        Assert.IsType<RefusedLine>(boil.Answers[0]);
        Assert.Equal("people-pan", boil.State.Step);
    }

    [Theory]
    [InlineData("it's overflowing", "foam")]
    [InlineData("it's running over the fire", "foam")]
    [InlineData("fire door won't close and my sleeve is on fire", "hurt")]
    [InlineData("door won't shut there is fire on the wall", "fire")]
    [InlineData("there's nobody here to help me i burned my arm", "hurt")]
    public void But_a_cry_goes_first(string said, string danger)
    {
        foreach (var rig in new[] { Wood, Gas })
        {
            var boil = Steady(rig, said);
            Assert.Equal("emergency", boil.Phase);
            Assert.Contains(danger, boil.State.Suspected.Append(boil.Session.Setting.Flow.DangerAt(boil.State.Step)?.Code ?? ""));
        }
    }

    [Theory]
    [InlineData("fire out here")]
    [InlineData("she just went out")]
    public void What_is_no_burner(string said) => Assert.NotEqual("flame-out", Steady(Gas, said).State.Step);

    [Fact]
    public void In_a_fire_what_went_out_is_the_fire()
    {
        var boil = Steady(Gas, "the roof is on fire");
        boil.Say("the fire is out now");
        Assert.Equal("emergency", boil.Phase);
        Assert.Equal(AnswerWords.Yes, Assert.IsType<Answer>(boil.Only<HeardLine>().As).Word);
    }

    [Theory]
    [InlineData("no more juice")]
    [InlineData("popped it in")]
    public void What_says_no_amount_no_wood_and_no_blower_is_none(string said)
    {
        var boil = Steady(Blower, said);
        Assert.DoesNotContain(boil.Answers, line => line is HeardLine { As: Did { Name.Code: "add-wood" } or Reading { Name.Code: "tank-volume", Measure.Value: 5 } });
        Assert.NotEqual("blower-out", boil.State.Step);
    }

    [Fact]
    public void A_burner_is_shut_off_under_a_batch_as_elsewhere()
    {
        var boil = new Conversation(rigText: BatchOnGas, members: Conversation.Few);
        boil.Say("no", "yes", "no", "depth 2", "yes", "tank 15", "sap 2", "yes", "yes", "lit", "boil rolling", "water 210.4", "shutdown");
        Assert.Equal("shut-burner", boil.State.Step);
        boil.Say("its off");
        Assert.True(boil.State.Deeds.ContainsKey(DeedName.ShutOff));
    }

    private const string BatchOnGas = "rig: kettle\nunits: us\naltitude: 300 m\npan: { length: 30 in, width: 20 in, channels: 1 }\nfire: { kind: gas, boils: 4 gal/h }\nfeed: { by: hand, pail: 2 gal, tank: 20 gal }\ndraw: { by: pour }\ninstruments: [thermometer]\nlid: true\n";

    [Theory]
    [InlineData("i smell gas a little")]
    [InlineData("theres a gas smell")]
    [InlineData("smell a bit of gas")]
    [InlineData("i think theres a gas leak")]
    [InlineData("smells like rotten eggs in here")]
    [InlineData("diesel fumes")]
    public void Gas_that_is_smelled(string said) => Assert.Equal("emergency-smoke", Steady(Gas, said).State.Step);

    [Theory]
    [InlineData("no gas smell here")]
    [InlineData("gas valve is open")]
    [InlineData("gas is on")]
    public void Gas_that_is_not(string said) => Assert.NotEqual("emergency", Steady(Gas, said).Phase);

    [Theory]
    [InlineData("pan's flooding", "emergency-float")]
    [InlineData("back float dont close", "emergency-float")]
    public void A_float_that_hangs_open(string said, string step) => Assert.Equal(step, Steady(TwoPans, said).State.Step);

    [Fact]
    public void Nobody_floods_a_pan_in_a_boil_on_purpose()
    {
        var boil = Steady(Wood, "pan flooded");
        Assert.Single(boil.Answers.OfType<RefusedLine>());
        Assert.False(boil.State.Deeds.ContainsKey(DeedName.FloodPan));
    }

    [Theory]
    [InlineData("front 1.5 back 2", 1.5, 2)]
    [InlineData("back 1 3/4 front 1 1/4", 1.25, 1.75)]
    [InlineData("front inch and a half, back two", 1.5, 2)]
    [InlineData("whoops sorry. front 1 1/2 back 2", 1.5, 2)]
    public void Two_depths_in_one_breath(string said, double front, double back)
    {
        var boil = Steady(TwoPans, said);
        Assert.Equal((front, back), (boil.State.Last(ReadingName.PanDepth)!.Value.Value.Value, boil.State.Last(ReadingName.BackPanDepth)!.Value.Value.Value));
    }

    [Fact]
    public void The_pan_behind_and_not_somebody_who_is_back()
    {
        var boil = Steady(TwoPans, "back is like 2 inches now");
        Assert.Equal(2, boil.State.Last(ReadingName.BackPanDepth)!.Value.Value.Value);
        Assert.DoesNotContain(Steady(TwoPans, "back in 20 minutes").Answers, line => line is HeardLine { As: Reading });
    }

    [Theory]
    [InlineData("depth")]
    [InlineData("tank")]
    public void Nothing_but_the_thermometer_reads_218(string asked)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        var open = new Prompt(asked, asked == "depth" ? "pan-depth" : "tank-volume", asked == "depth" ? Unit.Inch : Unit.Gallon, "");
        foreach (var said in new[] { "218", "225 and climbing" })
        {
            var heard = Assert.IsType<MeansLine>(new Listener(boil.Session.Setting).Understand(boil.Now, said, open));
            Assert.Equal("draw-temperature", Assert.IsType<Reading>(heard.Line).Name.Code);
        }
    }

    [Theory]
    [InlineData("threw one in")]
    [InlineData("chucked 2 more in")]
    [InlineData("just tossed a couple in")]
    public void Wood_that_was_thrown(string said) => Assert.Equal("add-wood", Assert.IsType<Did>(Steady(Wood, said).Only<HeardLine>().As).Name.Code);

    [Fact]
    public void A_pan_behind_a_pour_is_its_depth_and_no_volume()
    {
        var boil = Steady("flat-by-hand.yaml", "poured");
        boil.Say("pan 1 3/4");
        Assert.Equal("1.75 in", boil.State.Last(ReadingName.PanDepth)!.Value.Value.ToString());
        Assert.Equal("1 gal", Poured("poured some sap in", "about 1 gal"));
        Assert.Null(Poured("poured some sap in", "about 1 1/2"));
    }

    [Theory]
    [InlineData("saps running low only got 4 gal", 4)]
    [InlineData("the sap is getting low, about 12 gal left", 12)]
    public void Sap_that_runs_low_is_the_tank(string said, double gallons)
    {
        var boil = Steady(Wood, said);
        var told = boil.State.Doubted ?? boil.Answers.OfType<HeardLine>().First().As;
        Assert.Equal(("tank-volume", gallons), told is Reading read ? (read.Name.Code, read.Measure.Value) : default);
    }

    [Theory]
    [InlineData("thats all the sap there is")]
    [InlineData("i'm outta sap")]
    [InlineData("barrels dry")]
    [InlineData("tank is zip")]
    [InlineData("last pail just went in")]
    public void No_sap_in_more_words(string said) => Assert.Equal(0, Steady(Wood, said).State.Last(ReadingName.TankVolume)!.Value.Value.Value);

    [Theory]
    [InlineData("got it running again")]
    [InlineData("yes its open")]
    public void What_runs_or_is_open_is_no_draw(string said)
    {
        var boil = Steady(Wood, said);
        Assert.False(boil.State.Deeds.ContainsKey(DeedName.OpenDraw));
    }

    [Theory]
    [InlineData("firebox door wont shut")]
    [InlineData("front door won't shut")]
    [InlineData("the fire is going out for the night")]
    [InlineData("callin it a night")]
    [InlineData("heading home in 10 whats left to do")]
    public void What_is_no_leak_and_no_leaving(string said)
    {
        var boil = Steady(Wood, said);
        Assert.NotEqual("emergency", boil.Phase);
        Assert.Null(boil.State.Doubted);
        Assert.False(boil.State.IsOver);
    }

    [Fact]
    public void Foam_that_was_up_is_what_goes_down()
    {
        var boil = Steady(Wood, "foam rising");
        boil.After(1);
        boil.Say("its down");
        Assert.Equal("low", boil.State.Last(ObservationName.Foam)!.Value.Value);
    }

    private static string? Poured(string first, string then)
    {
        var boil = Steady("flat-by-hand.yaml", first);
        boil.Say(then);
        return boil.State.Last(DeedName.FillPan)?.Value?.ToString();
    }

    private static Conversation Steady(string rig, string said)
    {
        var boil = Conversation.AtSteadyBoil(rig: rig, members: Conversation.Few);
        boil.Say("depth 1.5");
        boil.After(1);
        boil.Say(said);
        return boil;
    }
}
