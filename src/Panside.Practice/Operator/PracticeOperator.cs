using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice.Chance;
using Panside.Practice.Simulation;

namespace Panside.Practice.Operator;

/// <summary>
/// A simulated person who does what the assistant says and knows nothing of the procedure: one thing at a time, the urgent
/// before the rest, with a person's delays. What is not urgent and not asked is only heard.
/// </summary>
public sealed class PracticeOperator : IPracticeOperator
{
    private const int TriesAtMost = 3;

    private const int LeavesEverySeconds = 900;

    private static readonly TimeSpan ToldAgain = TimeSpan.FromMinutes(5);

    private readonly PracticeRig _rig;
    private readonly Hands _hands;
    private readonly Eyes _eyes;
    private readonly RandomStream _chance;
    private readonly Stack<IEnumerator<Act>> _doing = new();
    private readonly Queue<Advice> _urgent = new();
    private Prompt? _asked;
    private string? _askedAction;
    private bool _isAskedReady;
    private bool _isAskedRoutine;
    private string? _answering;
    private Act? _act;
    private LineIn? _said;
    private DateTimeOffset _noticed;
    private double _due;
    private int _tries;
    private bool _isToldNoWood;
    private long _wantedToLeave;

    /// <summary>An operator at a rig.</summary>
    public PracticeOperator(PracticeRig rig, UnitSystem units, long seed)
    {
        _rig = rig;
        var instruments = new Instruments(rig, units, seed);
        _chance = RandomStream.For(seed, "operator");
        _hands = new(rig, instruments, units, _chance);
        _eyes = new(rig, instruments, _chance);
    }

    /// <summary>Whether the operator was told that no more wood goes in.</summary>
    public bool IsHeld => _hands.IsHeld;

    /// <summary>Whether something is done, or half done, that was not told yet.</summary>
    public bool IsUntold => _hands.IsUntold;

    /// <summary>How often wood was asked for after that; it was not given.</summary>
    public int WoodAskedAfterHold => _hands.WoodAskedAfterHold;

    /// <summary>The second at which the operator does something next; null while there is nothing to do.</summary>
    public long? NextSecond => _rig.Temper.IsAway ? null : _act is not null ? (long)double.Ceiling(_due) : _hands.IsPailFull ? 0 : null;

    /// <summary>Something that is noticed without being asked, told again while it lasts; null where nothing is.</summary>
    public LineIn? Notices(Moment at)
    {
        if (_rig.Temper.IsAway)
        {
            return null;
        }

        if (_rig.Temper.WantsToLeave && IsHeld && _rig.Second - _wantedToLeave >= LeavesEverySeconds)
        {
            _wantedToLeave = _rig.Second;
            return _said = new Did(at, DeedName.Leave, null);
        }

        if (_eyes.Alarm(at) is not { } seen || at.Time - _noticed < ToldAgain)
        {
            return null;
        }

        _noticed = at.Time;
        return seen;
    }

    /// <summary>
    /// Wood that goes in without a word, by habit: between charges, or while the laptop is off. Told to add none, the operator adds
    /// none until it is asked for again.
    /// </summary>
    public void FireByHabit()
    {
        var interval = _rig.Makeup.Rig.Interval.TotalSeconds;
        if (!_rig.Makeup.Rig.IsBurner && !IsHeld && !_isToldNoWood && _rig.IsFired && (_rig.Temper.IsUnheard ? _rig.SecondsSinceWood >= interval
            : _rig.Temper is { ForgetsToTell: true, IsAway: false } && _rig.SecondsSinceWood is var since && since >= interval / 2 && since < interval / 2 + 30))
        {
            _rig.AddWood(_rig.Makeup.Rig.Charge * _rig.Temper.Charges);
        }
    }

    /// <summary>The operator's moment has come: what is done now is done, and perhaps a line is said.</summary>
    public LineIn? Go(long second, Moment at)
    {
        var line = _act?.Say?.Invoke(at);
        _act = null;
        if (line is null)
        {
            Next(second);
        }

        _said = line ?? _said;
        return line;
    }

    /// <summary>Hears what the assistant says.</summary>
    public void Hear(IReadOnlyList<LineOut> lines, long second)
    {
        for (var index = 0; index < lines.Count; index++)
        {
            switch (lines[index])
            {
                case AdviceLine(_, _, var advice):
                    Hear(advice, lines.Skip(index + 1).OfType<PromptLine>().FirstOrDefault()?.Prompt);
                    break;
                case PromptLine(_, _, var prompt) when prompt.Step == _answering:
                    // Reminded of what is being done: that goes on. Begun anew at each reminder, a flood would never end.
                    _askedAction = null;
                    break;
                case PromptLine(_, _, var prompt):
                    (_asked, _tries) = (prompt, _asked?.Step == prompt.Step ? _tries : 0);
                    break;
                case HeardLine(_, _, var meant):
                    _said = meant;
                    break;
                case QuestionLine:
                    _doing.Push(Doubted(_said).Concat(_act is { } waits ? [waits] : []).GetEnumerator());
                    _act = null;
                    break;
                case RefusedLine when _asked is null && _tries++ < TriesAtMost:
                    // What was said was of no use; the question still stands, and is put off.
                    _doing.Push(Later().GetEnumerator());
                    break;
            }
        }

        if (_act is null)
        {
            Next(second);
        }
    }

    private void Hear(Advice advice, Prompt? prompt)
    {
        _isToldNoWood = advice.Action != "add-wood" && (_isToldNoWood || $"{advice.Text} {advice.Because}".Contains("no wood", StringComparison.OrdinalIgnoreCase));
        if (prompt?.Text == advice.Text)
        {
            (_askedAction, _isAskedReady, _isAskedRoutine) = (advice.Action, advice.Prepare, advice.Urgency == "info");
        }
        else if (advice.Prepare)
        {
            // What it makes ready for is asked when it is time.
        }
        else if (advice.Urgency is "danger" or "now" || advice.Action == "clear-to-leave")
        {
            _urgent.Enqueue(advice);
        }
    }

    /// <summary>Goes on with what is being done; else takes up what is urgent, else what is asked.</summary>
    private void Next(long second)
    {
        _act = null;
        if (_hands.IsPailFull)
        {
            _doing.Push(_hands.ShutFullPail().GetEnumerator());
        }
        else if (_urgent.TryDequeue(out var urgent))
        {
            _doing.Push(_hands.Do(urgent.Action, urgent.Text).GetEnumerator());
        }

        while (_act is null)
        {
            if (_doing.TryPeek(out var doing))
            {
                if (doing.MoveNext())
                {
                    _act = doing.Current;
                    _due = double.Max(_due, second) + _act.Seconds;
                }
                else
                {
                    _doing.Pop();
                }
            }
            else if (_asked is { } prompt)
            {
                var action = _askedAction;
                (_asked, _askedAction) = (null, null);
                _doing.Push(Reply(prompt, action).GetEnumerator());
            }
            else
            {
                return;
            }
        }
    }

    /// <summary>
    /// Does what is asked; where another thing is asked before it is done, it is let go. What is done is told: a charge that went
    /// in and was not told would be asked for once more.
    /// </summary>
    private IEnumerable<Act> Reply(Prompt prompt, string? action)
    {
        using var acts = Acts(prompt, action).GetEnumerator();
        _answering = prompt.Step;
        for (var begun = false; !(begun && _asked is not null) && acts.MoveNext(); begun = true)
        {
            var act = acts.Current;
            yield return act.Say is { } say ? act with { Say = at => Answered(say(at)) } : act;
        }

        _answering = null;
    }

    private LineIn? Answered(LineIn? line)
    {
        _answering = null;
        return Fresh(line);
    }

    /// <summary>What would answer a prompt that is no longer open is not said: a yes, a number without its name.</summary>
    private LineIn? Fresh(LineIn? line) => _asked is not null && (line is Answer || (line is Text typed && Typed.IsBare(typed.Words))) ? null : line;

    private IEnumerable<Act> Acts(Prompt prompt, string? action)
    {
        if (action is null)
        {
            return _eyes.Answer(prompt);
        }

        var done = _hands.Do(action, prompt.Text, _isAskedReady, _isAskedRoutine);
        return prompt.Ask != Prompt.Confirm || !Hands.HasDeed(action, _isAskedRoutine)
            ? done.Concat(_eyes.Answer(prompt))
            : done;
    }

    private IEnumerable<Act> Doubted(LineIn? said) => said switch
    {
        Reading reading => _eyes.ReadAgain(reading),
        Did { Name.Code: "leave" } => [new(10, at => new Answer(at, AnswerWords.No))],
        _ => [new(_eyes.Delay(15), at => new Answer(at, AnswerWords.Yes))],
    };

    private IEnumerable<Act> Later()
    {
        yield return new(_eyes.Delay(20), at => new Answer(at, AnswerWords.Later));
    }
}
