using System.Globalization;
using Panside.Guide.Debriefing;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Screen.Painting;
using Panside.Screen.Talking;
using Panside.Screen.Typing;

namespace Panside.Screen.Replaying;

/// <summary>A past boil on the screen: the same lines come again, and what is typed moves in time only. It has no record to write to.</summary>
internal sealed class ReplayTalk : ITalk
{
    private const string Unknown = "This is a replay: nothing is said to the boil. 'help' has the words.";

    /// <summary>No boil lasts longer than this; more would only overrun the calendar.</summary>
    private const double MinutesAtMost = 100_000;

    private readonly PastBoil _boil;
    private readonly ReplayStart _start;
    private readonly TimeProvider _clock;
    private readonly ReplayTape _tape;
    private readonly KeptFrame _frame = new();
    private DateTimeOffset? _until;
    private double _speed;
    private bool _isPaused;
    private string _reply = "";
    private long _stamp;
    private IReadOnlyList<Entry> _said = [];
    private SessionState? _state;
    private IReadOnlyList<ToldAndCame> _came = [];
    private (int Position, DateTimeOffset Now) _shown = (-1, default);

    /// <summary>A boil to be played.</summary>
    public ReplayTalk(PastBoil boil, ReplayStart start, TimeProvider clock)
    {
        (_boil, _start, _clock, _speed) = (boil, start, clock, start.Speed);
        _tape = new(boil);
        _stamp = clock.GetTimestamp();
    }

    /// <summary>The state as it stood then.</summary>
    public SessionState State => Shown()._state!;

    /// <summary>What the session ran on.</summary>
    public Setting Setting => _boil.Setting;

    /// <summary>What was said until then, the newest last.</summary>
    public IReadOnlyList<Entry> Said => Shown()._said;

    /// <summary>The answer to the last call for help.</summary>
    public IReadOnlyList<ToldLine> Told { get; private set; } = [];

    /// <summary>Never: the end of the record can be gone back from.</summary>
    public bool IsOver => false;

    /// <summary>Nothing is lost by leaving.</summary>
    public bool LeavesAtOnce => true;

    /// <inheritdoc/>
    public bool IsLeft { get; private set; }

    /// <inheritdoc/>
    public IReadOnlyList<WordKey> Keys => ReplayKeys.All;

    /// <inheritdoc/>
    public IReadOnlyList<string> Words { get; } = [.. ReplayKeys.All.Select(key => key.Word), "go", "start", "end", "speed", "to", "leave"];

    /// <inheritdoc/>
    public TimeSpan LookEvery => TimeSpan.FromSeconds(0.5);

    /// <summary>What is shown of the replay itself.</summary>
    public ReplaySight Replay => new(Status, _reply, _tape.IsAtEnd, Shown()._came);

    /// <inheritdoc/>
    public Frame Paint(DeskPicture desk, int width, int height) => _frame.Paint(
        new(State, Setting, Said, Told, desk.Typed, desk.Caret, desk.Scroll, desk.Mode) { Keys = Keys, Replay = Replay }, width, height);

    /// <inheritdoc/>
    public void Pause(Action? stop) => stop?.Invoke();

    private string Status =>
        $"{ReplaySight.Mark} {ReplaySpeed.Shown(_speed)}{(_isPaused ? " paused" : "")}, line {_boil.Exchanges[_tape.Position].LineNumber} of {_boil.Exchanges[^1].LineNumber}";

    /// <summary>Opens it where it is to begin.</summary>
    public void Start()
    {
        _until = _start.From is null ? null : _start.To;
        _isPaused = _start is { From: null, To: not null };
        if ((_start.From ?? _start.To) is { } from)
        {
            _tape.Seek(from);
        }

        _stamp = _clock.GetTimestamp();
    }

    /// <inheritdoc/>
    public void Say(string words)
    {
        if (words.Trim().Length > 0)
        {
            Check();
            _reply = Do(words.Trim().ToLowerInvariant()) ?? "";
        }
    }

    /// <inheritdoc/>
    public void AskForHelp(string word) =>
        Told = [.. ReplayKeys.OtherWords.Select(words => new ToldLine(null, 0, words))];

    /// <inheritdoc/>
    public void Check()
    {
        var stamp = _clock.GetTimestamp();
        var passed = _clock.GetElapsedTime(_stamp, stamp);
        _stamp = stamp;
        if (!_isPaused && _tape.Pass(passed * _speed, _until))
        {
            (_isPaused, _until) = (true, null);
        }
    }

    /// <summary>Follows a word.</summary>
    /// <returns>What is to be said to it; null for nothing.</returns>
    private string? Do(string words)
    {
        var (word, rest) = words.Split(' ', 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) is [var one, var more]
            ? (one, more) : (words, "");
        double? number = double.TryParse(rest, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : null;
        return (word, rest) switch
        {
            ("pause", "") => Run(!_isPaused),
            ("go", "") => Run(false),
            ("slower", "") => Pace(ReplaySpeed.Times(_speed, 0.5)),
            ("faster", "") => Pace(ReplaySpeed.Times(_speed, 2)),
            ("speed", _) => Pace(number),
            ("step", "") => StandAt(_tape.Step(1), "No line comes after this."),
            ("step", "back") => StandAt(_tape.Step(-1), "No line stands before this."),
            ("back", _) => Seek(number > 0 ? _tape.Now.AddMinutes(-double.Min(number.Value, MinutesAtMost)) : null, "back 10"),
            ("on", _) => Seek(number > 0 ? _tape.Now.AddMinutes(double.Min(number.Value, MinutesAtMost)) : null, "on 10"),
            ("to", _) => Seek(TimeInBoil.Read(rest.ToUpperInvariant(), _boil.Exchanges[0].At), "to 18:30"),
            ("alarm", "") => StandAt(_tape.Next(PastBoil.IsAlarm), "No alarm comes after this."),
            ("draw", "") => StandAt(_tape.Next(_boil.IsDraw), "No draw comes after this."),
            ("start", "") => Seek(_boil.Exchanges[0].At.Time, ""),
            ("end", "") => Seek(_boil.Exchanges[^1].At.Time, ""),
            ("leave" or "quit" or "exit", "") => Leave(),
            _ => Unknown,
        };
    }

    private string? Run(bool isPaused)
    {
        _isPaused = isPaused || _tape.IsAtEnd;
        return !isPaused && _tape.IsAtEnd ? "The record ends here. 'start' plays it again." : null;
    }

    private string? Pace(double? speed)
    {
        if (speed is not { } times || !ReplaySpeed.IsOne(times))
        {
            return "A speed is 0.25 to 64, like 'speed 4'.";
        }

        _speed = times;
        return null;
    }

    private string? StandAt(bool isThere, string otherwise)
    {
        _isPaused |= isThere;
        return isThere ? null : otherwise;
    }

    private string? Seek(DateTimeOffset? time, string example)
    {
        if (time is not { } to)
        {
            return $"Expected like this: '{example}'.";
        }

        _until = null;
        _tape.Seek(to);
        return to < _boil.Exchanges[0].At.Time ? "The record begins here."
            : to > _boil.Exchanges[^1].At.Time.AddMinutes(1) ? "The record ends here. 'back 10', 'start', or Ctrl-C to leave."
            : null;
    }

    private string? Leave()
    {
        IsLeft = true;
        return null;
    }

    /// <summary>What is shown is reckoned once for a place in the record and a time.</summary>
    private ReplayTalk Shown()
    {
        if (_shown == (_tape.Position, _tape.Now))
        {
            return this;
        }

        if (_shown.Position != _tape.Position)
        {
            var notice = _start.Notice is { } words ? [new Entry("", [$"- {words}"], Tone.Strong)] : Array.Empty<Entry>();
            _said = [.. notice, .. _tape.Said];
        }

        _shown = (_tape.Position, _tape.Now);
        _state = _tape.State;
        _came = [.. _boil.Told(_state)];
        return this;
    }
}
