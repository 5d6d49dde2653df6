using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Screen.Painting;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Screen;

/// <summary>The countdown on the screen is the guide's own clock.</summary>
public class DuesTests
{
    private DateTimeOffset _time = new(2031, 3, 8, 17, 0, 0, TimeSpan.FromHours(-5));

    /// <summary>Both are asked for the draw-off; a practised hand after 15 minutes instead of 10.</summary>
    [Theory]
    [InlineData(Guidance.Beginner, 10)]
    [InlineData(Guidance.Practised, 15)]
    public void What_is_said_to_come_next_is_asked_when_it_was_said_to_come(Guidance guidance, int minutes)
    {
        var door = new SessionDoor(SessionDoor.BuiltIn(guidance));
        Say(door, "yes", "depth 1 1/2", "tank 30", "sap 2.1", "lit");
        _time = _time.AddMinutes(12);
        Say(door, "rolling", "water 211.5", "wood", "draw 212");
        var read = _time;
        _time = _time.AddMinutes(6);
        Say(door, "wood", "depth 1 1/2", "low", "clear", "rolling", "tank 28");
        var due = Dues.Next(new Situation(door.Setting, door.State))!.Value;
        Assert.Equal(("read draw-off", read.AddMinutes(minutes)), (due.What, due.At));
        while (door.State.Open?.Step != "draw-temp" && _time < due.At.AddMinutes(20))
        {
            _time = _time.AddSeconds(30);
            door.Hear(new Tick(Moment.Of(_time)));
            Say(door, door.State.Open?.Step switch { "wood" => ["wood"], "depth-wanted" => ["depth 1 1/2"], _ => [] });
        }

        Assert.InRange(_time - due.At, TimeSpan.Zero, TimeSpan.FromMinutes(1));
    }

    private void Say(SessionDoor door, params string[] texts)
    {
        foreach (var text in texts)
        {
            _time = _time.AddSeconds(2);
            door.Hear(new Text(Moment.Of(_time), text));
        }
    }
}
