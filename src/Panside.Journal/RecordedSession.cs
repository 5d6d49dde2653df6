using Panside.Guide.Debriefing;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;

namespace Panside.Journal;

/// <summary>A session whose every line is on disk before anyone sees the answer.</summary>
public sealed class RecordedSession : IDisposable
{
    /// <summary>After so many lines in a snapshot is written: so many at most are heard again when a long session is gone on with.</summary>
    private const int SnapshotEvery = 40;

    private readonly Session _session;
    private readonly Course _course;
    private readonly Keeping _keeping;
    private readonly List<int> _damaged = [];
    private bool _goesOn;
    private string? _found;
    private int _lines;
    private int? _differsAt;
    private int _sinceSnapshot;
    private bool _hasSnapshots;

    private RecordedSession(Session session, Keeping keeping, Course? course = null) =>
        (_session, _keeping, _course) = (session, keeping, course ?? new(session.Setting));

    /// <summary>What is known after the lines so far.</summary>
    public SessionState State => _session.State;

    /// <summary>What it runs on.</summary>
    public Setting Setting => _session.Setting;

    /// <summary>The session so far, told on one screen: none before a fire is lit.</summary>
    public IReadOnlyList<string> Debriefed => Debrief.Of(_course, State, Setting);

    /// <summary>The session behind the record, to look at.</summary>
    public Session Session => _session;

    /// <summary>Where the record is; null where it is kept in memory only.</summary>
    public string? Path => _keeping.Path;

    /// <summary>What is wrong with the record, for a person; null where all is well.</summary>
    public string? Trouble => _keeping.Trouble ?? _found;

    /// <summary>Whether the session goes on from an earlier part, and has not said so yet.</summary>
    public bool GoesOn => _goesOn;

    /// <summary>A new session, whose record is opened with the time of its first line.</summary>
    /// <param name="setting">What it runs on.</param>
    /// <param name="open">Opens the record; null, or a fault of the disk, keeps the session in memory only.</param>
    /// <param name="wanted">The name that is wanted for it, to be told where it gets another; null for whatever it is opened with.</param>
    /// <param name="spare">Opens an empty record under another name, near the one given, for when the record cannot be written.</param>
    /// <param name="snapshots">Whether a snapshot is kept beside the record, so that it is gone on with at once.</param>
    public static RecordedSession New(
        Setting setting, Func<Moment, JournalFile?> open, string? wanted = null, Func<string?, JournalFile?>? spare = null, bool snapshots = true) =>
        New(new Session(setting), open, wanted, spare, snapshots);

    /// <summary>The same with a session of a test's own.</summary>
    internal static RecordedSession New(
        Session session, Func<Moment, JournalFile?> open, string? wanted, Func<string?, JournalFile?>? spare, bool snapshots) =>
        new(session, new(null, open, wanted, spare)) { _hasSnapshots = snapshots };

    /// <summary>A session on a record, from its beginning or from where the record ends.</summary>
    /// <param name="setting">What it runs on; the same as the record says.</param>
    /// <param name="journal">The record.</param>
    /// <param name="spare">Opens an empty record under another name, near the one given, for when the record cannot be written.</param>
    /// <param name="progress">Told how many bytes of the record, of how many, were heard again; null for nobody.</param>
    /// <param name="snapshots">Whether a snapshot beside the record is used and kept.</param>
    /// <exception cref="LongRecordException">So much of it would be heard again that nobody would wait for it.</exception>
    public static RecordedSession On(
        Setting setting, JournalFile journal, Func<string?, JournalFile?>? spare = null, Action<long, long>? progress = null, bool snapshots = true)
    {
        var snapshot = snapshots ? Snapshot.Read(journal, setting) : null;
        LongRecordException.Demand(journal.Length - (snapshot?.Covered ?? 0));
        var session = snapshot is null ? new Session(setting) : new Session(setting, snapshot.State);
        var recorded = new RecordedSession(session, new(journal, null, null, spare), snapshot?.Course) { _hasSnapshots = snapshots };
        recorded.Recall(journal, snapshot, progress);
        return recorded;
    }

    /// <summary>The same without a snapshot, with a session of a test's own.</summary>
    internal static RecordedSession On(Session session, JournalFile journal, Func<string?, JournalFile?>? spare)
    {
        var recorded = new RecordedSession(session, new(journal, null, null, spare));
        recorded.Recall(journal, null, null);
        return recorded;
    }

    /// <summary>Hears a line as it was written, and answers it.</summary>
    /// <param name="line">The line.</param>
    /// <param name="raw">Its text; null to write it ourselves.</param>
    public IReadOnlyList<LineOut> Hear(LineIn line, string? raw = null)
    {
        var answers = new List<LineOut>();
        if (_goesOn && line is not Unreadable { Stated: null } && line.At.Time >= State.Now?.Time)
        {
            _goesOn = false;
            answers.AddRange(HearOne(new Resumed(line.At), null));
        }

        answers.AddRange(HearOne(line, raw));
        return answers;
    }

    /// <summary>Tells something that was found wrong with the record before it was gone on with, ahead of what was found since.</summary>
    /// <param name="what">What; null for nothing.</param>
    public void Warn(string? what) => _found = what is null || _found is null ? what ?? _found : $"{what} {_found}";

    /// <summary>Tries once more to bring to a disk what could not be written, before the program ends and tells where the record is.</summary>
    public void Settle() => _keeping.Settle(State.Now);

    /// <inheritdoc/>
    public void Dispose()
    {
        Settle();
        KeepSnapshot();
        _keeping.Dispose();
    }

    private IReadOnlyList<LineOut> HearOne(LineIn line, string? raw)
    {
        var (heard, kept) = KeptLine.Of(line, raw);
        var answers = _session.Hear(heard);
        _course.Hear(State, answers);
        Keep([.. kept is null ? [] : new[] { kept }, .. answers.Select(LineWriter.Write), LineWriter.Ready(State.Now)]);
        return answers;
    }

    private void Keep(IReadOnlyList<string> lines)
    {
        _keeping.Keep(lines, State.Now);
        _lines += lines.Count;
        if (++_sinceSnapshot >= SnapshotEvery || (State.IsOver && _sinceSnapshot > 0))
        {
            KeepSnapshot();
        }
    }

    private void KeepSnapshot()
    {
        if (_sinceSnapshot == 0 || !_hasSnapshots || _keeping.Whole is not { } journal)
        {
            return;
        }

        _sinceSnapshot = 0;
        if (State.IsOver)
        {
            Snapshot.Discard(journal.Path);
        }
        else if (State.Now is not null)
        {
            new Snapshot(journal.Length, _lines, _damaged, _differsAt, State, _course).Write(journal, Setting);
        }
    }

    private void Recall(JournalFile journal, Snapshot? snapshot, Action<long, long>? progress)
    {
        var exchanges = new Exchanges(snapshot?.Lines ?? 0, State.Sequence, snapshot?.Damaged);
        (Exchange Exchange, IReadOnlyList<LineOut> Answers)? last = null;
        _differsAt = snapshot?.DiffersAt;
        foreach (var (exchange, answers, difference) in Rehearing.Of(_session, exchanges.Of(journal.ReadLines(snapshot?.Covered ?? 0, progress))))
        {
            _course.Hear(State, answers);
            _sinceSnapshot++;
            last = (exchange, answers);
            _differsAt ??= difference is { Stood: not null } ? difference.LineNumber : null;
        }

        (_lines, _goesOn) = (exchanges.Number, State.Now is not null && !State.IsOver);
        _damaged.AddRange(exchanges.Damaged.Take(10));
        if (last is { Exchange.IsComplete: false } cut)
        {
            // The power went between the line in and the last of its answers.
            Keep([.. cut.Answers.Skip(cut.Exchange.Answers.Count).Select(LineWriter.Write), LineWriter.Ready(State.Now)]);
        }

        _found = _differsAt is { } number
            ? $"Line {number} of the record was answered otherwise by the program that wrote it. The guidance goes on from the readings."
            : _damaged.Count > 0 ? $"Damaged lines in the record, left out: {string.Join(", ", _damaged)}." : null;
    }
}
