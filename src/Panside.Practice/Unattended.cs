using Panside.Guide.Lines;
using Panside.Practice.Operator;
using Panside.Practice.Simulation;

namespace Panside.Practice;

/// <summary>
/// A whole boil without a person: a simulated rig, a simulated operator, and time that is only counted. Nothing here looks at
/// a clock; the same rig, scenario and seed give the same lines.
/// </summary>
public sealed class Unattended(IDoor door, PracticeRig rig, IPracticeOperator person, DateTimeOffset start)
{
    private const int LookEverySeconds = 30;

    private static readonly TimeSpan AtMost = TimeSpan.FromHours(24);

    private readonly Account _account = new();
    private bool _unheard;

    /// <summary>Told of every line in, and of the lines out that answer it.</summary>
    public Action<LineIn, IReadOnlyList<LineOut>>? Overheard { get; set; }

    /// <summary>Asked at every look: where it holds, the time is told though nothing is due.</summary>
    public Func<bool>? TellsTime { get; set; }

    /// <summary>Runs to the end, or for a day at most.</summary>
    public PracticeOutcome Run()
    {
        RunUntil(() => false);
        return _account.Close(rig) with { WoodAskedAfterHold = person.WoodAskedAfterHold };
    }

    /// <summary>Runs until something holds, or to the end.</summary>
    public void RunUntil(Func<bool> holds)
    {
        Say(rig.NoteAt(At()));
        while (_account.Over is null && rig.Second < AtMost.TotalSeconds && !holds())
        {
            var look = ((rig.Second / LookEverySeconds) + 1) * LookEverySeconds;
            var next = long.Max(long.Min(person.NextSecond ?? look, look), rig.Second);
            rig.Step(next - rig.Second);
            person.FireByHabit();
            if (rig.Temper.IsUnheard)
            {
                _unheard = true;
                rig.Step(next == rig.Second ? 1 : 0);
                _account.Look(rig, person.IsHeld, door);
                continue;
            }

            if (_unheard)
            {
                _unheard = false;
                Say(new Resumed(At()));
            }

            if (person.NextSecond <= rig.Second)
            {
                Say(person.Go(rig.Second, At()));
            }
            else if (person.Notices(At()) is { } noticed)
            {
                Say(noticed);
            }
            else if (door.IsDue(At()))
            {
                Say(new Tick(At()));
            }

            if (_account.Over is null && TellsTime?.Invoke() == true)
            {
                Say(new Tick(At()));
            }

            _account.Look(rig, person.IsHeld, door);
        }
    }

    private Moment At() => Moment.Of(start.AddSeconds(rig.Second));

    private void Say(LineIn? line)
    {
        if (line is null)
        {
            return;
        }

        var answers = door.Hear(line);
        _account.Hear(line, answers, person.IsHeld, rig);
        Overheard?.Invoke(line, answers);
        person.Hear(answers, rig.Second);
    }
}
