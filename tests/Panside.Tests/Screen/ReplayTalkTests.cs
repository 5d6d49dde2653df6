using Microsoft.Extensions.Time.Testing;
using Panside.Screen.Replaying;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Screen;

/// <summary>A past boil on the screen: the long boil, whose lines stand in <c>demo-sessions/long-boil.said</c>.</summary>
[Collection(Demo.LongBoil)]
public class ReplayTalkTests
{
    private readonly FakeTimeProvider _clock = new();

    [Theory]
    [InlineData(0.25)]
    [InlineData(1)]
    [InlineData(64)]
    public void Time_passes_so_many_times_faster_than_it_was(double speed)
    {
        // Wood went in at 16:33, and the tank was read at 16:37: within the first minute nothing is left out.
        var talk = Talk("16:33", speed);
        Wait(talk, 32 / speed);
        Assert.Equal((16, 33, 32), Clock(talk));
    }

    [Fact]
    public void A_silence_is_shortened_to_a_minute()
    {
        var talk = Talk("17:13", 1);
        Assert.Contains("wood", Last(talk), StringComparison.Ordinal);
        Wait(talk, 59);
        Assert.Equal((17, 13, 59), Clock(talk));
        Wait(talk, 2);
        Assert.Equal((17, 16, 1), Clock(talk));
        Assert.Contains("17:16 You: depth 1 3/8", Said(talk));
    }

    [Fact]
    public void A_whole_boil_is_played_to_its_end_and_stands_still_there()
    {
        var boil = Demo.SharedLongBoil;
        var talk = new ReplayTalk(boil, new(64, null, null, null), _clock);
        talk.Start();
        var waited = 0;
        while (!talk.Replay.IsAtEnd)
        {
            Wait(talk, 0.5);
            waited++;
        }

        // Three hours and a quarter, of which no silence counts for more than a minute.
        Assert.InRange(waited * 0.5, 30, 3.3 * 3600 / 64);
        Wait(talk, 1000);
        Assert.Matches(@"^REPLAY 64x paused, line (\d{3,}) of \1$", talk.Replay.Status);
        Assert.True(talk.State.IsOver);
        talk.Say("go");
        Assert.Equal("The record ends here. 'start' plays it again.", talk.Replay.Reply);
        talk.Say("start");
        talk.Say("go");
        Assert.Equal((15, 40, 0), Clock(talk));
        Assert.False(talk.State.IsOver);
    }

    [Fact]
    public void Pause_stands_still_and_go_or_pause_again_goes_on()
    {
        var talk = Talk("16:33", 16);
        talk.Say("pause");
        var before = (Clock(talk), talk.Said.Count);
        Wait(talk, 600);
        Assert.Equal(before, (Clock(talk), talk.Said.Count));
        Assert.StartsWith("REPLAY 16x paused, line ", talk.Replay.Status, StringComparison.Ordinal);
        talk.Say("pause");
        Wait(talk, 60);
        Assert.NotEqual(before.Item1, Clock(talk));
        talk.Say("pause");
        before = (Clock(talk), talk.Said.Count);
        talk.Say("go");
        Wait(talk, 60);
        Assert.NotEqual(before.Item1, Clock(talk));
    }

    [Fact]
    public void A_step_is_one_line_on_or_back_and_stands_still()
    {
        var talk = Talk("17:13", 16);
        talk.Say("step");
        Assert.Contains("17:16 You: depth 1 3/8", Said(talk).TakeLast(3));
        var before = Said(talk);
        talk.Say("step");
        Assert.NotEqual(before, Said(talk));
        talk.Say("step back");
        Assert.Equal(before, Said(talk));
        Wait(talk, 60);
        Assert.Equal((17, 16, 0), Clock(talk));
        talk.Say("start");
        talk.Say("step back");
        Assert.Equal("No line stands before this.", talk.Replay.Reply);
        talk.Say("end");
        talk.Say("step");
        Assert.Equal("No line comes after this.", talk.Replay.Reply);
    }

    [Theory]
    [InlineData("to 17:55", 17, 55)]
    [InlineData("to 2031-03-08T17:55:00-05:00", 17, 55)]
    [InlineData("on 10", 16, 43)]
    [InlineData("on 90", 18, 3)]
    [InlineData("back 10", 16, 23)]
    [InlineData("back 0.5", 16, 32)]
    [InlineData("start", 15, 40)]
    [InlineData("draw", 16, 57)]
    [InlineData("alarm", 16, 57)]
    public void A_word_goes_to_a_time_and_shows_what_was_said_until_then(string word, int hour, int minute)
    {
        var talk = Talk("16:33", 1);
        talk.Say("pause");
        talk.Say(word);
        Assert.Equal("", talk.Replay.Reply);
        Assert.Equal((hour, minute), (Clock(talk).Hour, Clock(talk).Minute));
        var said = Demo.Past("long-boil").Told().TakeWhile(told => told.At.Time <= talk.State.Now!.Value.Time).Count(told => told.Lines[0].Length > "[16:33]".Length);
        Assert.Equal(said, Said(talk).Count(line => line.Contains(" You: ", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("back 999999999", "The record begins here.", 15, 40)]
    [InlineData("on 999999999", "The record ends here. 'back 10', 'start', or Ctrl-C to leave.", 19, 6)]
    public void Beyond_either_end_there_is_nothing_and_it_is_said(string word, string reply, int hour, int minute)
    {
        var talk = Talk("16:33", 1);
        talk.Say(word);
        Assert.Equal(reply, talk.Replay.Reply);
        Assert.Equal((hour, minute), (Clock(talk).Hour, Clock(talk).Minute));
    }

    [Fact]
    public void One_draw_comes_after_the_other_and_then_none()
    {
        var talk = Talk("15:40", 1);
        talk.Say("draw");
        talk.Say("draw");
        Assert.Equal((17, 55), (Clock(talk).Hour, Clock(talk).Minute));
        talk.Say("draw");
        Assert.Equal("No draw comes after this.", talk.Replay.Reply);
        talk.Say("alarm");
        Assert.Equal((18, 25), (Clock(talk).Hour, Clock(talk).Minute));
        for (var others = 0; others < 4 && talk.Replay.Reply.Length == 0; others++)
        {
            talk.Say("alarm");
        }

        Assert.Equal("No alarm comes after this.", talk.Replay.Reply);
    }

    [Theory]
    [InlineData("yes")]
    [InlineData("tank 3")]
    [InlineData("emergency")]
    [InlineData("undo")]
    public void What_would_be_said_to_a_boil_is_not_said_to_this_one(string words)
    {
        var talk = Talk("16:33", 1);
        var before = (Said(talk), talk.State.Sequence);
        talk.Say(words);
        Assert.Equal(before.Item1, Said(talk));
        Assert.Equal(before.Sequence, talk.State.Sequence);
        Assert.StartsWith("This is a replay: nothing is said to the boil.", talk.Replay.Reply, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("speed 65", "A speed is 0.25 to 64, like 'speed 4'.")]
    [InlineData("speed NaN", "A speed is 0.25 to 64, like 'speed 4'.")]
    [InlineData("speed", "A speed is 0.25 to 64, like 'speed 4'.")]
    [InlineData("to supper", "Expected like this: 'to 18:30'.")]
    [InlineData("back -3", "Expected like this: 'back 10'.")]
    [InlineData("on", "Expected like this: 'on 10'.")]
    [InlineData("on NaN", "Expected like this: 'on 10'.")]
    public void A_word_that_lacks_its_number_is_told_how(string words, string reply)
    {
        var talk = Talk("16:33", 1);
        talk.Say(words);
        Assert.Equal(reply, talk.Replay.Reply);
        Assert.Equal((16, 33, 0), Clock(talk));
    }

    [Fact]
    public void Slower_and_faster_stay_within_a_quarter_and_sixty_four()
    {
        var talk = Talk("16:33", 1);
        Assert.Equal(["0.5x", "0.25x", "0.25x"], Speeds("slower", 3));
        Assert.Equal(["0.5x", "1x", "2x", "4x", "8x", "16x", "32x", "64x", "64x"], Speeds("faster", 9));

        IEnumerable<string> Speeds(string word, int times) => Enumerable.Range(0, times).Select(_ =>
        {
            talk.Say(word);
            return talk.Replay.Status.Split(' ')[1].TrimEnd(',');
        }).ToList();
    }

    [Fact]
    public void It_opens_at_the_time_to_stop_at_and_from_a_beginning_it_plays_until_then()
    {
        var boil = Demo.SharedLongBoil;
        var at = new DateTimeOffset(2031, 3, 8, 17, 50, 59, TimeSpan.FromHours(-5));
        var there = new ReplayTalk(boil, new(16, null, at, null), _clock);
        there.Start();
        Wait(there, 100);
        Assert.Equal((17, 50, 59), Clock(there));
        var from = new ReplayTalk(boil, new(16, at.AddMinutes(-10), at, null), _clock);
        from.Start();
        Assert.Equal((17, 40, 59), Clock(from));
        Wait(from, 1000);
        Assert.Equal((17, 50, 59), Clock(from));
        Assert.Contains(" paused,", from.Replay.Status, StringComparison.Ordinal);
        from.Say("go");
        Wait(from, 5);
        Assert.True(Clock(from).Minute > 50);
    }

    [Fact]
    public void A_forecast_stands_beside_what_the_record_shows_later()
    {
        // The draw was opened at 17:55, the last wood went in at 18:25, and the boil was never told still before the end.
        var talk = Talk("17:50", 1);
        Assert.Equal(
            ["residual-evaporation: more wood went in", "minutes-to-draw: after 5 min", "minutes-to-last-charge: after 35 min"],
            Came(talk));
        talk.Say("to 18:30");
        var boil = Demo.SharedLongBoil;
        var gone = boil.StateAt(boil.Exchanges.Count - 1).Rig.Evaporated - talk.State.Rig.Evaporated;
        Assert.InRange(gone.UsGallons, 1, 3);
        Assert.Equal([$"residual-evaporation: {gone.UsGallons:0.#} gal reckoned", "minutes-to-draw: not in the record"], Came(talk)[..2]);
    }

    [Fact]
    public void What_a_record_without_an_end_does_not_show_is_not_known_yet()
    {
        var whole = Demo.SharedLongBoil;
        var cut = whole.Exchanges.Index().First(one => one.Item.At.Time.TimeOfDay >= new TimeSpan(17, 41, 0)).Index;
        var talk = new ReplayTalk(Demo.Boil("long-boil", cut), new(1, null, whole.Exchanges[cut - 1].At.Time, null), _clock);
        talk.Start();
        Assert.Equal(
            ["residual-evaporation: not known yet", "minutes-to-draw: not known yet", "minutes-to-last-charge: not known yet"], Came(talk));
    }

    [Fact]
    public void A_state_heard_again_from_a_kept_one_is_the_state_that_was()
    {
        var boil = Demo.Boil("float-stuck");
        var session = new Guide.Sessions.Session(boil.Setting);
        foreach (var (position, exchange) in boil.Exchanges.Index())
        {
            session.Hear(exchange.Line!);
            if (position % 7 == 0)
            {
                var again = boil.StateAt(position);
                Assert.Equal(
                    (session.State.Sequence, session.State.Step, session.State.Now, session.State.Rig),
                    (again.Sequence, again.Step, again.Now, again.Rig));
            }
        }
    }

    private ReplayTalk Talk(string at, double speed)
    {
        var time = DateTimeOffset.Parse($"2031-03-08T{at}:00-05:00", System.Globalization.CultureInfo.InvariantCulture);
        var talk = new ReplayTalk(Demo.SharedLongBoil, new(speed, time, null, null), _clock);
        talk.Start();
        return talk;
    }

    private void Wait(ReplayTalk talk, double seconds)
    {
        _clock.Advance(TimeSpan.FromSeconds(seconds));
        talk.Check();
    }

    private static (int Hour, int Minute, int Second) Clock(ReplayTalk talk) =>
        talk.State.Now!.Value.Time is var now ? (now.Hour, now.Minute, now.Second) : default;

    private static List<string> Said(ReplayTalk talk) =>
        [.. talk.Said.SelectMany(entry => entry.Texts.Select((text, index) => index == 0 && entry.Time.Length > 0 ? $"{entry.Time} {text}" : text))];

    private static string Last(ReplayTalk talk) => string.Join('\n', Said(talk).TakeLast(2));

    private static string[] Came(ReplayTalk talk) => [.. talk.Replay.Came.Select(one => $"{one.Told.Name}: {one.Came}")];
}
