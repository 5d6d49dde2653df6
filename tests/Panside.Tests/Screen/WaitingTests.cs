using Microsoft.Extensions.Time.Testing;
using Panside.Screen.Waiting;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Screen;

/// <summary>T2, T3: the loop sleeps until something comes. T6: the time away is told.</summary>
public sealed class WaitingTests
{
    [Fact]
    public void T3_the_loop_sleeps_long_where_nothing_comes_and_short_while_keys_come()
    {
        var clock = new FakeTimeProvider();
        using var wakeUp = new WakeUp(clock);
        clock.Advance(TimeSpan.FromSeconds(2));
        Assert.Equal(WakeUp.Longest, wakeUp.HowLong());
        wakeUp.Ring();
        Assert.Equal(WakeUp.WhileTyping, wakeUp.HowLong());
        clock.Advance(TimeSpan.FromSeconds(2));
        Assert.Equal(WakeUp.Longest, wakeUp.HowLong());
    }

    [Fact]
    public void T2_a_ring_before_the_sleep_is_not_slept_through()
    {
        using var wakeUp = new WakeUp(TimeProvider.System);
        wakeUp.Sleep();
        wakeUp.Ring();
        Thread.Sleep(WakeUp.Longest);
        var begun = TimeProvider.System.GetTimestamp();
        wakeUp.Sleep();
        Assert.True(TimeProvider.System.GetElapsedTime(begun) < WakeUp.Longest / 2);
    }

    [Fact]
    public void T6_time_away_is_counted_and_shown_and_what_came_due_is_told()
    {
        var played = Played.Scene("steady-boil");
        var said = played.Talk.Said.Count;
        played.Talk.Pause(() => played.Clock.Advance(TimeSpan.FromMinutes(12)));
        var since = played.Talk.Said.Skip(said).SelectMany(entry => entry.Texts).ToList();
        Assert.Equal("- Stopped at 17:41, away for 12 min; the fire went on.", since[0]);
        Assert.Contains(since, text => text.Contains("Read the pan's depth", StringComparison.Ordinal));
    }

    [Fact]
    public void T6_where_nothing_can_be_stopped_nothing_is_said()
    {
        var played = new Played();
        var said = played.Talk.Said.Count;
        played.Talk.Pause(null);
        Assert.Equal(said, played.Talk.Said.Count);
    }
}
