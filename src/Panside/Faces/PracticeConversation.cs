using System.Globalization;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Journal;
using Panside.Practice;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;
using Panside.Screen;

namespace Panside.Faces;

/// <summary>
/// The recorded conversation with a simulated rig beside it, for every face. Two words are answered here and reach neither the
/// assistant nor the record: look, and pour; and the words for time. What a scenario asks a person to try is told beside it. Everything else is the same conversation as at a real rig.
/// </summary>
internal sealed class PracticeConversation : IConversation, IDisposable
{
    /// <summary>What a person is told first.</summary>
    public const string Welcome = "Simulated rig. " + OwnWords;

    private const string OwnWords =
        "'look' shows what one sees and what the instruments show; 'pour' pours a pail of sap into the pan. For time: 'pause', 'go', 'speed 20', 'ahead 5', 'back 10'.";

    /// <summary>The same for the page of help, which has no row to spare.</summary>
    private const string ShortWords = "'look' shows rig and instruments, 'pour' pours a pail. Time: 'pause', 'go', 'speed 20', 'ahead 5', 'back 10'.";

    private const string Resting = "Nothing is asked just now. 'look' at the rig, or let time pass: 'ahead 5', or just wait.";

    private const int MinutesAtMost = 60;

    private static readonly string[] BackPanWords = ["pan", "depth", "level"];

    /// <summary>As often as the faces look at the clock.</summary>
    private static readonly TimeSpan LookEvery = TimeSpan.FromSeconds(5);

    private readonly DateTimeOffset _start;
    private readonly PracticeClock? _clock;
    private readonly Func<(RecordedSession, PracticeRig)>? _again;
    private readonly List<LineIn> _heard = [];
    private RecordedSession _session = null!;
    private Attended _practice = null!;
    private Instruments _instruments = null!;
    private Checks _checks = null!;
    private bool _isWelcome;
    private bool _hasRested;

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
            // A practice that begins in the middle of a boil has its note already; its open step was asked for before anybody listened.
            _isWelcome = true;
            var asked = Asked(line.At);
            var note = State.Now is null ? _practice.Hear(_practice.Rig.NoteAt(line.At)) : [];
            var stands = _clock is { Speed: 0 } ? [Told(line.At, "Time stands still. 'go' lets it run.")] : Array.Empty<LineOut>();
            var first = Hear(line);
            return [Told(line.At, Welcome), .. stands, .. note, .. first.Any(answer => answer is PromptLine) ? [] : asked, .. first, .. Cue(line.At)];
        }

        var said = line is Text text && Own(text) is { } answer ? answer : Heard(line);
        if (line is Text && _clock is { Speed: 0 } stopped && stopped.GetUtcNow() < line.At.Time.AddSeconds(1))
        {
            // No two sayings are of one time, also where it stands still.
            stopped.Set(line.At.Time.AddSeconds(1));
        }

        return said;
    }

    /// <inheritdoc/>
    public void Dispose() => _session.Dispose();

    /// <inheritdoc/>
    public bool IsDue(Moment at) => _session.Session.IsDue(at);

    /// <inheritdoc/>
    public SessionState At(Moment moment) => _session.Session.At(moment);

    /// <summary>How many checks were tried; null where there are none.</summary>
    public string? Tried => _checks.Told;

    /// <summary>The end, with what truly was.</summary>
    public PracticeOutcome Close() => _practice.Close();

    /// <summary>What the assistant makes of a line, and what the person is asked to try next.</summary>
    private IReadOnlyList<LineOut> Heard(LineIn line)
    {
        _heard.Add(line);
        var before = State;
        var heard = _practice.Hear(line);
        var tried = _checks.Hear(before, State, heard) && !State.IsOver ? Cue(line.At) : [];
        if (!_hasRested && line is Text && State is { Open: null, IsOver: false } && tried.Count == 0 && !heard.Any(answer => answer is AdviceLine or PromptLine or RefusedLine or QuestionLine))
        {
            _hasRested = true;
            tried = [Told(line.At, Resting)];
        }

        if (_clock is not { Speed: > 1 } fast || !heard.Any(IsAlarm))
        {
            return [.. heard, .. tried];
        }

        fast.Slow();
        return [.. heard, .. tried, Told(line.At, $"Real time now, for the alarm. 'go' goes on at {fast.Usual:0.#} times.")];
    }

    /// <summary>The answer to a word that is practice's own; null where it is none.</summary>
    private IReadOnlyList<LineOut>? Own(Text text)
    {
        IReadOnlyList<LineOut> Say(params IEnumerable<string> words) => [.. words.Select(one => Told(State.Now ?? text.At, one))];
        switch (text.Words.Trim().ToLowerInvariant())
        {
            case "help" or "?" or "h":
                // Half an hour after the welcome nobody remembers how the instruments are read.
                return [.. Say(ShortWords), .. Heard(text)];
            case "look":
                _practice.ComeTo(text.At.Time);
                return Say(Look.At(_practice.Rig, _instruments));
            case "pour":
                _heard.Add(text);
                _practice.ComeTo(text.At.Time);
                return Say($"Poured {Amount.Shown(Setting.Units.From(_practice.Pour()))} into the pan.");
            case "pause" when _clock is { } clock:
                clock.Stop();
                return Say("Time stands still. 'go' goes on.");
            case "go" when _clock is { } clock:
                clock.Go();
                return Say($"On at {clock.Speed:0.#} times real time.");
            case var words when _clock is { } clock && Number(words, "speed") is { } speed:
                if (speed is not (>= 1 and <= PracticeClock.Fastest))
                {
                    return Say($"Speed is 1 to {PracticeClock.Fastest:0} times real time, like 'speed 20'.");
                }

                clock.Run(speed);
                return Say($"On at {speed:0.#} times real time.");
            case var words when Number(words, "ahead") is { } minutes:
                return minutes is >= 1 and <= MinutesAtMost ? Ahead(text.At, minutes) : Say($"Ahead is 1 to {MinutesAtMost} minutes, like 'ahead 5'.");
            case var words when !TellsBackPan(words) && Number(words, "back") is { } minutes:
                return Say(Back(text.At, minutes));
            default:
                return null;
        }
    }

    /// <summary>
    /// Whether words that begin with <c>back</c> tell of the pan behind, and not of time: by its name, a unit of length or a fraction; a bare number
    /// only where just that depth is asked for, and the pan can stand so deep.
    /// </summary>
    private bool TellsBackPan(string words)
    {
        if (Setting.Rig.Back is not { } back || !words.StartsWith("back ", StringComparison.Ordinal))
        {
            return false;
        }

        var rest = words["back ".Length..].Trim();
        if (!MeasureText.TryNumber(rest, out var value, out var unit))
        {
            return BackPanWords.Any(word => rest == word || rest.StartsWith(word + " ", StringComparison.Ordinal));
        }

        return unit.Length > 0 ? UnitNames.FromWord(unit)?.Kind() == Dimension.Length
            : double.IsNaN(Number(words, "back") ?? 0)
                || (State.Open is { Ask: "back-pan-depth", Unit: { } asked } && value > 0 && Measure.Of(value, asked) is { } deep && UnitSystem.Length(deep) <= back.WallDepth);
    }

    /// <summary>The number after a word; none where the word stands alone or something else follows, null where it is another word.</summary>
    private static double? Number(string words, string word) =>
        words != word && !words.StartsWith(word + " ", StringComparison.Ordinal) ? null
        : double.TryParse(words[word.Length..], NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : double.NaN;

    private static bool IsAlarm(LineOut answer) => answer is AdviceLine { Advice.Urgency: "danger" or "now" };

    /// <summary>What is open when a person comes to it.</summary>
    private IReadOnlyList<LineOut> Asked(Moment at) => State.Open is { } open
        ? [new PhaseLine(at, State.Sequence, Setting.Flow.PhaseOf(State.Step).Code), new PromptLine(at, State.Sequence, open)]
        : [];

    private IReadOnlyList<LineOut> Cue(Moment at) => _checks.Cue is { } cue ? [Told(at, cue)] : [];

    /// <summary>Minutes go by at once, up to the first that is asked or advised.</summary>
    private IReadOnlyList<LineOut> Ahead(Moment from, double minutes)
    {
        var (at, until, told) = (from.Time, from.Time.AddMinutes(minutes), new List<LineOut>());
        while (at < until && !told.Any(answer => answer is PromptLine or AdviceLine or OverLine))
        {
            at = at + LookEvery < until ? at + LookEvery : until;
            if (IsDue(Moment.Of(at)))
            {
                told.AddRange(Heard(new Tick(Moment.Of(at))));
            }
        }

        _clock?.Set(at);
        var stopped = at < until ? " Stopped for this:" : "";
        return [Told(Moment.Of(at), $"{at:HH:mm} now, {Amount.Minutes((at - from.Time).TotalMinutes)} later.{stopped}"), .. told];
    }

    /// <summary>The same practice anew, up to so many minutes ago; a record of its own begins there.</summary>
    private string Back(Moment now, double minutes)
    {
        if (minutes is not (>= 1 and <= MinutesAtMost))
        {
            return $"Back is 1 to {MinutesAtMost} minutes, like 'back 10'.";
        }

        if (_again is null || State.IsOver)
        {
            return "There is no stepping back here: the record has a name of its own.";
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
        _checks = new(rig.Scenario.Checks);
    }

    private ToldLine Told(Moment at, string words) => new(at, State.Sequence, $"{PracticeReport.Mark} {words}");
}
