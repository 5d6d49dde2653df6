using System.Globalization;
using System.Text.RegularExpressions;
using Panside.Guide.Hearing.Terms;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Sessions;

namespace Panside.Guide.Tests.Hearing;

/// <summary>Questions about what would be: each form is answered, and asking changes nothing.</summary>
public partial class WhatIfTests
{
    private static readonly DateTimeOffset Evening = new(2031, 3, 8, 18, 10, 0, TimeSpan.FromHours(-5));

    [Theory]
    [InlineData("stop now")]
    [InlineData("I stop now?")]
    [InlineData("i stop")]
    [InlineData("I stop firing now")]
    public void Stopping_is_understood(string rest) => Assert.IsType<StopNow>(Read(rest));

    [Theory]
    [InlineData("I add 5 gal", 5, Unit.Gallon)]
    [InlineData("i add 5", 5, Unit.Gallon)]
    [InlineData("I add 2 1/2 gal to the tank?", 2.5, Unit.Gallon)]
    [InlineData("we put in 20 L of sap", 20, Unit.Liter)]
    [InlineData("we pour in 20 L to the tank", 20, Unit.Liter)]
    [InlineData("add 3 qt more", 3, Unit.Quart)]
    public void Adding_is_understood(string rest, double value, Unit unit) =>
        Assert.Equal(new AddSap(new(value, unit)), Read(rest));

    [Theory]
    [InlineData("I fire until eight", "2031-03-08T20:00")]
    [InlineData("I fire until 8", "2031-03-08T20:00")]
    [InlineData("I fire until 6", "2031-03-09T06:00")]
    [InlineData("i fire till 20:00", "2031-03-08T20:00")]
    [InlineData("I fire until 8:30 pm", "2031-03-08T20:30")]
    [InlineData("I fire until 8:30 am", "2031-03-09T08:30")]
    [InlineData("I fire until 08:30", "2031-03-09T08:30")]
    [InlineData("I fire until half past eight?", "2031-03-08T20:30")]
    [InlineData("I keep firing until midnight", "2031-03-09T00:00")]
    [InlineData("I stop at eight", "2031-03-08T20:00")]
    [InlineData("I fire for 30 min", "2031-03-08T18:40")]
    [InlineData("I fire another half an hour", "2031-03-08T18:40")]
    [InlineData("I go on for 1 1/2 h", "2031-03-08T19:40")]
    public void Firing_on_is_understood_until_the_next_such_time(string rest, string until)
    {
        var fired = Assert.IsType<FireUntil>(Read(rest)).Until;
        Assert.Equal((until, Evening.Offset), (fired.ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture), fired.Offset));
    }

    [Theory]
    [InlineData("what if")]
    [InlineData("what if it rains")]
    [InlineData("what if I add 5 lb")]
    [InlineData("what if I add -5 gal")]
    [InlineData("what if I add some")]
    [InlineData("what if I fire until the cows come home")]
    [InlineData("what if I fire until 25:00")]
    [InlineData("what if I fire until 8:75")]
    [InlineData("what if I fire until 20 pm")]
    [InlineData("what if I fire for 0 min")]
    [InlineData("what if I fire for 90 h")]
    public void Nonsense_is_refused_with_the_forms_that_are_understood(string text)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say(text);
        Assert.Contains(Supposition.Forms, boil.Only<RefusedLine>().Why, StringComparison.Ordinal);
        Assert.Empty(boil.Answers.OfType<ToldLine>());
    }

    [Theory]
    [InlineData("what if I stop now")]
    [InlineData("what if I add 5 gal")]
    [InlineData("what if I fire for 30 min")]
    [InlineData("What if we fire until midnight?")]
    public void Asking_changes_nothing_but_the_sequence(string text)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Hear(new Tick(boil.Now));
        var before = boil.State;
        boil.Hear(new Text(boil.Now, text));
        Assert.Equal(before, boil.State with { Sequence = before.Sequence });
        Assert.Equal(text[8..].TrimEnd('?'), Assert.IsType<Text>(boil.Only<HeardLine>().As).Words[8..].TrimEnd('?'));
        Assert.InRange(boil.Answers.OfType<ToldLine>().Count(), 1, 2);
        Assert.True(boil.State.Sequence > before.Sequence);
    }

    [Fact]
    public void Stopping_now_tells_what_boils_away_when_it_is_still_and_what_is_left()
    {
        var told = Told(Conversation.AtSteadyBoil(), "what if I stop now");
        Assert.Matches(@"^Stop now: \d[\d.]* gal to \d[\d.]* gal of water still leaves the pan\. The boil goes still in about .*, .* at the latest \(\d\d:\d[05]\)\.$", told[0]);
        Assert.Matches(@"gal to \d[\d.]* gal stays in the tank, and the pan over its least depth of 0\.75 in\.$", told[1]);
    }

    [Fact]
    public void Stopping_over_an_empty_tank_tells_how_much_is_short_and_what_common_practice_wants()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("tank 0.2", "yes", "depth 0.9");
        var told = Told(boil, "what if I stop now");
        Assert.Matches(@"^The tank can fall short: up to \d[\d.]* gal more is wanted", told[1]);
        Assert.Contains("Common practice wants 5 gal", told[1], StringComparison.Ordinal);
    }

    [Fact]
    public void An_unread_tank_is_said()
    {
        var boil = new Conversation();
        boil.Say("yes", "depth 1.5", "lit");
        boil.FireFor(30);
        Assert.All(
            ["what if I stop now", "what if I add 5 gal", "what if I fire for 30 min"],
            text => Assert.Contains("The tank was not read", string.Join(' ', Told(boil, text)), StringComparison.Ordinal));
    }

    [Fact]
    public void More_sap_never_brings_an_earlier_last_charge()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 15);
        var times = new[] { 1, 3, 5, 10, 15 }.Select(gallons => Time(Told(boil, $"what if I add {gallons} gal")[0])).ToList();
        Assert.Equal(times.Order(), times);
        Assert.True(times[^1] > times[0]);
    }

    [Fact]
    public void A_later_stop_never_leaves_more_sap()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 25);
        var left = new[] { 10, 20, 40, 60, 90 }.Select(minutes => Left().Match(Told(boil, $"what if I fire for {minutes} min")[1]))
            .Select(match => (Low: Number(match.Groups["low"].Value), High: Number(match.Groups["high"].Value))).ToList();
        Assert.Equal(left.Select(band => band.Low).OrderDescending(), left.Select(band => band.Low));
        Assert.Equal(left.Select(band => band.High).OrderDescending(), left.Select(band => band.High));
        Assert.True(left[0].Low > left[^1].High);
    }

    [Fact]
    public void Firing_past_the_last_charge_is_said_first_with_when_it_must_be_in()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 15);
        Assert.Matches(@"^Too long: \d\d:\d\d is past the last charge; it must be in by about \d\d:\d\d, .* at the soonest, at [\d.]+ gal", Told(boil, "what if I fire for 6 h")[0]);
        Assert.Contains("the tank would have run dry", Told(boil, "what if I fire for 6 h")[1], StringComparison.Ordinal);
        Assert.Matches(@"^\d\d:\d\d is before the last charge", Told(boil, "what if I fire for 5 min")[0]);
        Assert.Matches(@"draws? comes? until then; the shutdown would then want .* in the tank\.$", Told(boil, "what if I fire for 30 min")[1]);
    }

    [Fact]
    public void More_sap_than_the_tank_holds_is_told_with_the_room_there_is() =>
        Assert.Contains("there is room for about", Told(Conversation.AtSteadyBoil(tankGallons: 30), "what if I add 20 gal")[0], StringComparison.Ordinal);

    [Fact]
    public void Sap_that_no_rig_could_take_is_told_so() =>
        Assert.Contains("not possible", Assert.Single(Told(Conversation.AtSteadyBoil(), "what if I add 900000 gal")), StringComparison.Ordinal);

    [Fact]
    public void Before_the_fire_nothing_burns()
    {
        var boil = new Conversation();
        Assert.All(
            ["what if I stop now", "what if I add 5 gal", "what if I fire until eight"],
            text => Assert.StartsWith("Nothing heats the pan yet", Assert.Single(Told(boil, text)), StringComparison.Ordinal));
    }

    [Fact]
    public void In_an_emergency_no_wood_goes_in()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("emergency");
        Assert.Contains("no wood", Assert.Single(Told(boil, "what if I fire for 30 min")), StringComparison.Ordinal);
    }

    [Fact]
    public void Once_the_wood_is_held_no_other_last_charge_is_promised()
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 12);
        boil.Say("shutdown", "yes");
        Assert.Contains("would stay in the tank after the shutdown", Assert.Single(Told(boil, "what if I add 5 gal")), StringComparison.Ordinal);
        Assert.StartsWith("The last charge is in", Told(boil, "what if I fire for 30 min")[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Help_mentions_it()
    {
        var boil = new Conversation();
        Assert.Contains(Told(boil, "help"), line => line.StartsWith("Ask: ", StringComparison.Ordinal) && line.Contains("what if I stop now", StringComparison.Ordinal));
    }

    private static Supposition? Read(string rest) => Supposition.Read(rest, Evening, UnitSystem.Us);

    private static List<string> Told(Conversation boil, string text) => [.. boil.Say(text).OfType<ToldLine>().Select(line => line.Text)];

    private static TimeSpan Time(string told) =>
        TimeSpan.Parse(At().Match(told).Groups["time"].Value, CultureInfo.InvariantCulture);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"comes about (?<time>\d\d:\d\d)", RegexOptions.CultureInvariant)]
    private static partial Regex At();

    [GeneratedRegex(@"^At \d\d:\d\d (?:about (?<low>(?<high>[\d.]+))|(?<low>[\d.]+) gal to (?<high>[\d.]+)) gal would be left", RegexOptions.CultureInvariant)]
    private static partial Regex Left();
}
