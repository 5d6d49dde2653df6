using System.Text.RegularExpressions;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>O4: no alarm chatters. O13: nothing that a person must look at is ticked by the program.</summary>
public partial class SteadinessTests
{
    private const double Longest = 60;

    /// <summary>
    /// What a person cries out, a scorched smell or a dry pan, is no noise and is answered each time (S4).
    /// Alarms that ask for the same in the same words are one, whatever the reasons.
    /// </summary>
    [Theory]
    [InlineData("foam rising", "foam low")]
    [InlineData("draw 213", "draw 218.5")]
    [InlineData("depth 0.95", "depth 1.05")]
    [InlineData("tank 0.4", "tank 1.2")]
    public void O4_noise_round_a_limit_repeats_no_alarm_within_a_minute(string over, string under)
    {
        var boil = Conversation.AtSteadyBoil(tankGallons: 6, members: Conversation.Few);
        boil.Say("open");
        var alarms = new List<(DateTimeOffset At, string Text)>();
        for (var round = 0; round < 40; round++)
        {
            foreach (var said in new[] { over, under })
            {
                boil.Say(said);
                Note(boil.Answers);
                if (boil.State.Doubted is not null)
                {
                    boil.Say("yes");
                    Note(boil.Answers);
                }

                Note(boil.After(4 / 60.0));
            }
        }

        Assert.NotEmpty(alarms);
        foreach (var same in alarms.GroupBy(alarm => alarm.Text))
        {
            Assert.All(same.Zip(same.Skip(1)), pair => Assert.True(
                (pair.Second.At - pair.First.At).TotalSeconds >= Longest, $"{same.Key} at {pair.First.At:T} and {pair.Second.At:T}"));
        }

        void Note(IEnumerable<LineOut> lines) => alarms.AddRange(lines.OfType<AdviceLine>()
            .Where(line => line.Advice.Urgency is "danger" or "now").Select(line => (line.At!.Value.Time, Digits().Replace(line.Advice.Text, ""))));
    }

    /// <summary>What was made ready stands ready: a forecast that comes and goes does not ask for it anew.</summary>
    [Fact]
    public void O4_what_makes_ready_is_said_once_an_hour_however_its_forecast_swings()
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        foreach (var read in Enumerable.Repeat<string[]>(["draw 216.4", "draw 212"], 6).SelectMany(pair => pair))
        {
            boil.After(2);
            boil.Say(read);
            boil.Say(boil.State.Doubted is not null ? ["yes"] : []);
        }

        Assert.Single(boil.All.OfType<AdviceLine>(), line => line.Advice.Text == "Set pail and hydrometer ready for a draw.");
    }

    [Fact]
    public void O13_five_hours_in_which_nobody_says_anything_tick_nothing_and_confirm_nothing()
    {
        foreach (var begin in new Func<Conversation>[] { () => new(members: Conversation.Few), () => Conversation.AtSteadyBoil(members: Conversation.Few), () => Begun("drew 1 qt"), () => Begun("shutdown", "yes") })
        {
            var boil = begin();
            var before = boil.State;
            var told = boil.After(300);
            var after = boil.State;
            Assert.Equal(before.Done, after.Done);
            Assert.Equal(before.Marks.Order(), after.Marks.Order());
            Assert.Equal(before.Readings.Keys.Select(name => name.Code).Order(), after.Readings.Keys.Select(name => name.Code).Order());
            Assert.All(before.Readings, pair => Assert.Equal(pair.Value, after.Readings[pair.Key]));
            Assert.Equal(before.Observations, after.Observations);
            Assert.Equal(before.Deeds, after.Deeds);

            // However surely the rig is reckoned cold: nobody has seen it.
            Assert.DoesNotContain(told.OfType<AdviceLine>(), line => line.Advice.Action == "clear-to-leave");
        }
    }

    private static Conversation Begun(params string[] said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        boil.Say(said);
        return boil;
    }

    [GeneratedRegex(@"[\d.]+")]
    private static partial Regex Digits();
}
