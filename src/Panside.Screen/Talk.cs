using Panside.Guide.Hearing;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Screen.Painting;
using Panside.Screen.Talking;
using Panside.Screen.Typing;

namespace Panside.Screen;

/// <summary>Sends lines through the door and keeps what was said. The same lines go through it as from the face of plain lines.</summary>
internal sealed class Talk(IConversation door, TimeProvider clock) : ITalk
{
    private static readonly TimeSpan LookEvery = TimeSpan.FromSeconds(5);

    private readonly List<Entry> _entries = [];
    private readonly Ringing _ringing = new();
    private readonly ForwardClock _clock = new(clock);
    private readonly KeptFrame _frame = new();
    private SessionState? _state;
    private DateTimeOffset _looked;
    private string? _trouble;

    /// <summary>What was said, the newest last.</summary>
    public IReadOnlyList<Entry> Said => _entries;

    /// <summary>What the session runs on.</summary>
    public Setting Setting => door.Setting;

    /// <summary>Whether the session is over.</summary>
    public bool IsOver => door.State.IsOver;

    /// <inheritdoc/>
    public bool LeavesAtOnce => IsOver;

    /// <inheritdoc/>
    public bool IsLeft => false;

    /// <inheritdoc/>
    public IReadOnlyList<WordKey> Keys { get; } = WordKeys.Of(door.Setting.Rig.IsBurner);

    /// <inheritdoc/>
    public IReadOnlyList<string> Words => KnownWords.Of(Setting.Flow);

    /// <inheritdoc/>
    TimeSpan ITalk.LookEvery => TimeSpan.FromSeconds(1);

    /// <summary>The outcome; null before the end.</summary>
    public OverLine? Outcome { get; private set; }

    /// <summary>The plain answers to the last line heard.</summary>
    public IReadOnlyList<ToldLine> Told { get; private set; } = [];

    /// <summary>The state as it stood at the last look, or when something was last said: a key that is pressed between them brings no time on.</summary>
    public SessionState State => _state ??= door.At(Now());

    /// <inheritdoc/>
    public Frame Paint(DeskPicture desk, int width, int height) =>
        _frame.Paint(new(State, Setting, Said, Told, desk.Typed, desk.Caret, desk.Scroll, desk.Mode), width, height);

    /// <summary>Opens the conversation.</summary>
    public void Start()
    {
        if (door.Notice is { } notice)
        {
            _entries.Add(new("", [$"- {notice}"], Tone.Strong));
        }

        if (door.State.Started is { } started)
        {
            // A simulated rig is never gone on with: what was before was played for whoever takes it over.
            _entries.Add(new("", [Setting.Header.Practice
                ? $"- This boil began at {Entries.Clock(started)}; it is yours from here."
                : $"- Going on with the boil begun at {Entries.Clock(started)}."]));
        }

        Hear(new Tick(Now()), null);
        if (door.First is { } first)
        {
            Say(first);
        }
    }

    /// <summary>Says what was typed.</summary>
    public void Say(string words)
    {
        if (words.Trim().Length > 0 && !IsOver)
        {
            var at = Now();
            _entries.Add(Entries.Typed(at, words));
            Hear(new Text(at, words), words);
        }
    }

    /// <summary>Asks for help; the answer is for the page of help and not for the conversation.</summary>
    public void AskForHelp(string word)
    {
        if (!IsOver)
        {
            Hear(new Text(Now(), word), word, line => line is not (HeardLine or ToldLine));
        }
    }

    /// <summary>Lets time pass where that brings anything. Looks every few seconds of its own clock, which may run faster than the world's.</summary>
    public void Check()
    {
        _state = null;
        var now = clock.GetUtcNow();
        if (IsOver || (now - _looked).Duration() < LookEvery)
        {
            return;
        }

        _looked = now;
        if (door.IsDue(Now()))
        {
            Hear(new Tick(Now()), null);
        }
    }

    /// <summary>Time stands still for nobody: where the program was stopped and gone on with, what came due meanwhile is told at once.</summary>
    /// <param name="stop">Stops the program, and comes back when it is gone on with; null where that cannot be.</param>
    public void Pause(Action? stop)
    {
        if (stop is null)
        {
            return;
        }

        var from = Now();
        stop();
        var to = Now();
        _entries.Add(new(
            "", [$"- Stopped at {Entries.Clock(from)}, away for {Times.Span((to.Time - from.Time).TotalMinutes)}; the fire went on."], Tone.Strong));
        _looked = default;
        Check();
    }

    /// <inheritdoc/>
    public bool TakeRing() => _ringing.Take();

    private Moment Now() => _clock.Now(door.State.Now);

    private void Hear(LineIn line, string? typed, Func<LineOut, bool>? shown = null)
    {
        var answer = door.Hear(line);
        _state = null;
        _ringing.Hear(answer, wasTyped: typed is not null);
        _entries.AddRange(Entries.Of(shown is null ? answer : [.. answer.Where(shown)], line.At, typed));
        Outcome = answer.OfType<OverLine>().LastOrDefault() ?? Outcome;
        Told = [.. answer.OfType<ToldLine>()];
        if (door.Trouble is { } trouble && trouble != _trouble)
        {
            _trouble = trouble;
            _entries.Add(new("", [$"!! RECORD: {trouble}"], Tone.Now));
        }
    }
}
