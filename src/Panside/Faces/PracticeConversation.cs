using System.Globalization;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Guide.Words;
using Panside.Journal;
using Panside.Practice;
using Panside.Screen;

namespace Panside.Faces;

/// <summary>
/// The recorded conversation with a simulated rig beside it, for every face. Two words are answered here and reach neither the
/// assistant nor the record: look, and pour; and the words for time. Everything else is the same conversation as at a real rig.
/// </summary>
internal sealed class PracticeConversation : IConversation, IDisposable
{
    /// <summary>What a person is told first.</summary>
    public const string Welcome =
        "Simulated rig. 'look' shows what one sees and what the instruments show; 'pour' pours a pail of sap into the pan. 'pause', 'go', 'speed 20', 'back 10' are for time.";

    private const int MinutesBackAtMost = 60;

    private readonly DateTimeOffset _start;
    private readonly PracticeClock? _clock;
    private readonly Func<(RecordedSession, PracticeRig)>? _again;
    private readonly List<LineIn> _heard = [];
    private RecordedSession _session = null!;
    private Attended _practice = null!;
    private Instruments _instruments = null!;
    private double _speedBefore = 1;
    private bool _isWelcome;

    /// <summary>The conversation of a session with a rig that starts at a time.</summary>
    /// <param name="session">The session.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="start">The time at the rig's second 0.</param>
    /// <param name="clock">The clock, where its speed can be changed.</param>
    /// <param name="again">Begins the same practice anew, for stepping back; null where that cannot be done.</param>
    public PracticeConversation(
        RecordedSession session, PracticeRig rig, DateTimeOffset start, PracticeClock? clock = null, Func<(RecordedSession, PracticeRig)>? again = null)
    {
        (_start, _clock, _again) = (start, clock, again);
        Begin(session, rig);
    }

    /// <inheritdoc/>
    public SessionState State => _session.State;

    /// <inheritdoc/>
    public Setting Setting => _session.Setting;

    /// <inheritdoc/>
    public string? Trouble => _session.Trouble;

    /// <inheritdoc/>
    public string? RecordPath => _session.Path;

    /// <summary>The session told on one screen.</summary>
    public IReadOnlyList<string> Debriefed => _session.Debriefed;

    /// <inheritdoc/>
    public IReadOnlyList<LineOut> Hear(LineIn line)
    {
        if (!_isWelcome)
        {
            // A practice that begins in the middle of a boil has its note already.
            _isWelcome = true;
            var note = State.Now is null ? _practice.Hear(_practice.Rig.NoteAt(line.At)) : [];
            return [Told(line.At, Welcome), .. note, .. Hear(line)];
        }

        if (line is Text text && Own(text) is { } answer)
        {
            return [.. answer.Select(words => Told(State.Now ?? line.At, words))];
        }

        _heard.Add(line);
        var heard = _practice.Hear(line);
        return IsAlarm(heard) && _clock is { Speed: > 1 } fast ? [.. heard, Told(line.At, InRealTime(fast))] : heard;
    }

    /// <inheritdoc/>
    public void Dispose() => _session.Dispose();

    /// <inheritdoc/>
    public bool IsDue(Moment at) => _session.Session.IsDue(at);

    /// <inheritdoc/>
    public SessionState At(Moment moment) => _session.Session.At(moment);

    /// <summary>The end, with what truly was.</summary>
    public PracticeOutcome Close() => _practice.Close();

    /// <summary>The answer to a word that is practice's own; null where it is none.</summary>
    private IEnumerable<string>? Own(Text text)
    {
        switch (text.Words.Trim().ToLowerInvariant())
        {
            case "look":
                _practice.ComeTo(text.At.Time);
                return Look.At(_practice.Rig, _instruments);
            case "pour":
                _heard.Add(text);
                _practice.ComeTo(text.At.Time);
                return [$"Poured {Amount.Shown(Setting.Units.From(_practice.Pour()))} into the pan."];
            case "pause" when _clock is { Speed: > 0 } clock:
                _speedBefore = clock.Speed;
                clock.Run(0);
                return ["Time stands still. 'go' goes on."];
            case "go" when _clock is { Speed: 0 } clock:
                clock.Run(_speedBefore);
                return [$"On at {clock.Speed:0.#} times real time."];
            case var words when _clock is { } clock && Number(words, "speed") is { } speed:
                if (speed is not (>= 1 and <= PracticeClock.Fastest))
                {
                    return [$"Speed is 1 to {PracticeClock.Fastest:0} times real time."];
                }

                clock.Run(speed);
                return [$"On at {speed:0.#} times real time."];
            case var words when Number(words, "back") is { } minutes:
                return [Back(text.At, minutes)];
            default:
                return null;
        }
    }

    private static double? Number(string words, string word) => words.StartsWith(word + " ", StringComparison.Ordinal)
        && double.TryParse(words[word.Length..], NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static bool IsAlarm(IReadOnlyList<LineOut> answers) => answers.Any(answer => answer is AdviceLine { Advice.Urgency: "danger" or "now" });

    private static string InRealTime(PracticeClock clock)
    {
        clock.Run(1);
        return "Real time now. 'speed 20' goes on faster.";
    }

    /// <summary>The same practice anew, up to so many minutes ago; a record of its own begins there.</summary>
    private string Back(Moment now, double minutes)
    {
        if (minutes is not (>= 1 and <= MinutesBackAtMost))
        {
            return $"Back is 1 to {MinutesBackAtMost} minutes.";
        }

        if (_again is null || State.IsOver)
        {
            return "There is no stepping back here.";
        }

        var kept = _heard.TakeWhile(line => line.At.Time <= now.Time.AddMinutes(-minutes)).ToList();
        _session.Dispose();
        _heard.Clear();
        var (session, rig) = _again();
        Begin(session, rig);
        if (State.Now is null && kept.Count > 0)
        {
            _practice.Hear(rig.NoteAt(kept[0].At));
        }

        foreach (var line in kept)
        {
            Hear(line);
        }

        _clock?.Set((State.Now ?? now).Time);
        return $"Back at {(State.Now ?? now).Time:HH:mm}. A new record begins.";
    }

    private void Begin(RecordedSession session, PracticeRig rig)
    {
        _session = session;
        _practice = new(new PracticeDoor(session), rig, _start);
        _instruments = new(rig, session.Setting.Units, rig.Seed);
    }

    private ToldLine Told(Moment at, string words) => new(at, State.Sequence, $"{PracticeReport.Mark} {words}");
}
