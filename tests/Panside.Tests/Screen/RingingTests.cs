using Panside.Guide.Lines;
using Panside.Screen.Talking;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Screen;

/// <summary>The bell is rung by urgency, and danger until somebody answers.</summary>
public sealed class RingingTests
{
    [Theory]
    [InlineData("info", 0)]
    [InlineData("soon", 1)]
    [InlineData("now", 3)]
    public void It_is_rung_once_for_soon_and_thrice_for_now(string urgency, int strokes)
    {
        var ringing = new Ringing();
        Assert.False(ringing.Take());
        ringing.Hear([Advice(urgency)], wasTyped: false);
        Assert.Equal(strokes, Strokes(ringing, 60));
        Assert.Equal(0, Strokes(ringing, 60));
    }

    [Fact]
    public void Danger_is_rung_on_and_on_until_somebody_types()
    {
        var ringing = new Ringing();
        ringing.Hear([Advice("danger")], wasTyped: false);
        Assert.Equal(300, Strokes(ringing, 600));
        ringing.Hear([], wasTyped: false);
        Assert.Equal(30, Strokes(ringing, 60));
        ringing.Hear([], wasTyped: true);
        Assert.Equal(0, Strokes(ringing, 60));
    }

    [Fact]
    public void Who_has_just_typed_is_there_and_hears_danger_thrice()
    {
        var ringing = new Ringing();
        ringing.Hear([Advice("soon"), Advice("danger")], wasTyped: true);
        Assert.Equal(3, Strokes(ringing, 60));
    }

    [Fact]
    public void A_boil_rings_for_what_time_brings_and_an_answer_ends_it()
    {
        var played = Played.Scene("steady-boil");
        while (played.Talk.TakeRing())
        {
            // What was said before is over.
        }

        var strokes = 0;
        for (var minute = 0; minute < 30 && strokes == 0; minute++)
        {
            played.Clock.Advance(TimeSpan.FromMinutes(1));
            played.Talk.Check();
            strokes += played.Talk.TakeRing() ? 1 : 0;
        }

        Assert.Equal(1, strokes);
        played.Talk.Say("note nothing");
        Assert.False(played.Talk.TakeRing());
    }

    private static int Strokes(Ringing ringing, int looks) => Enumerable.Range(0, looks).Count(_ => ringing.Take());

    private static AdviceLine Advice(string urgency) => new(null, 0, new("check-level", urgency, "Read the pan's depth now.", "Nobody has read it.", null));
}
