using Microsoft.Extensions.Time.Testing;
using Panside.Guide.Lines;
using Panside.Screen;

namespace Panside.Tests.Screen;

public class ForwardClockTests
{
    private static readonly DateTimeOffset Start = new(2031, 3, 8, 22, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Time_goes_on_where_the_machines_clock_is_set_back()
    {
        var machine = new FakeTimeProvider(Start) { AutoAdvanceAmount = TimeSpan.Zero };
        var clock = new ForwardClock(machine);
        Assert.Equal(Start, clock.Now(null).Time);
        machine.AdjustTime(Start.AddHours(-1));
        Assert.Equal(Start, clock.Now(Moment.Of(Start)).Time);
        machine.Advance(TimeSpan.FromMinutes(10));
        Assert.Equal(Start.AddMinutes(10), clock.Now(Moment.Of(Start)).Time);
        machine.Advance(TimeSpan.FromMinutes(5));
        Assert.Equal(Start.AddMinutes(15), clock.Now(Moment.Of(Start)).Time);
        machine.Advance(TimeSpan.FromMinutes(60));
        Assert.Equal(Start.AddMinutes(15), machine.GetUtcNow());
        Assert.Equal(Start.AddMinutes(15), clock.Now(Moment.Of(Start)).Time);
    }

    [Fact]
    public void A_record_from_the_future_is_gone_on_with_from_its_last_line()
    {
        var machine = new FakeTimeProvider(Start);
        var clock = new ForwardClock(machine);
        Assert.Equal(Start.AddHours(2), clock.Now(Moment.Of(Start.AddHours(2))).Time);
        machine.Advance(TimeSpan.FromMinutes(7));
        Assert.Equal(Start.AddHours(2).AddMinutes(7), clock.Now(Moment.Of(Start.AddHours(2))).Time);
    }
}
