using Panside.Guide.Debriefing;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;

namespace Panside.Journal;

/// <summary>A session whose every line is on disk before anyone sees the answer.</summary>
public sealed class RecordedSession : IDisposable
{
    private readonly Session _session;
    private readonly Course _course;
    private readonly List<string> _unwritten = [];
    private Func<Moment, JournalFile?>? _open;
    private JournalFile? _journal;
    private bool _goesOn;
    private bool _isUnwritable;

    private RecordedSession(Session session, JournalFile? journal, Func<Moment, JournalFile?>? open) =>
        (_session, _journal, _open, _course) = (session, journal, open, new(session.Setting));

    /// <summary>What is known after the lines so far.</summary>
    public SessionState State => _session.State;

    /// <summary>What it runs on.</summary>
    public Setting Setting => _session.Setting;

    /// <summary>The session so far, told on one screen: none before a fire is lit.</summary>
    public IReadOnlyList<string> Debriefed => Debrief.Of(_course, State, Setting);

    /// <summary>The session behind the record, to look at.</summary>
    public Session Session => _session;

    /// <summary>Where the record is; null where it is kept in memory only.</summary>
    public string? Path => _journal?.Path;

    /// <summary>What is wrong with the record, for a person; null where all is well.</summary>
    public string? Trouble { get; private set; }

    /// <summary>Whether the session goes on from an earlier part, and has not said so yet.</summary>
    public bool GoesOn => _goesOn;

    /// <summary>A new session, whose record is opened with the time of its first line.</summary>
    /// <param name="setting">What it runs on.</param>
    /// <param name="open">Opens the record; null, or a fault of the disk, keeps the session in memory only.</param>
    public static RecordedSession New(Setting setting, Func<Moment, JournalFile?> open) => new(new(setting), null, open);

    /// <summary>A session on a record, from its beginning or from where the record ends.</summary>
    /// <param name="setting">What it runs on; the same as the record says.</param>
    /// <param name="journal">The record.</param>
    public static RecordedSession On(Setting setting, JournalFile journal)
    {
        var recorded = new RecordedSession(new(setting), journal, null);
        recorded.Recall(Record.Of(journal.Lines));
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

    /// <inheritdoc/>
    public void Dispose() => _journal?.Dispose();

    private IReadOnlyList<LineOut> HearOne(LineIn line, string? raw)
    {
        var answers = _session.Hear(line);
        _course.Hear(State, answers);
        var kept = line is Unreadable { Stated: null } ? [] : new[] { raw ?? LineWriter.Write(line) };
        Keep([.. kept, .. answers.Select(LineWriter.Write), LineWriter.Ready(State.Now)]);
        return answers;
    }

    private void Keep(IReadOnlyList<string> lines)
    {
        _unwritten.AddRange(lines);
        try
        {
            if (_open is not null)
            {
                if (State.Now is not { } first)
                {
                    return;
                }

                _journal = _open(first);
                _open = null;
            }

            _journal?.Append(_unwritten);
            _unwritten.Clear();
            Trouble = _isUnwritable ? null : Trouble;
            _isUnwritable = false;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // What is not written waits for the next line: the disk may have room by then.
            _isUnwritable = true;
            Trouble = $"The record cannot be written ({fault.Message.TrimEnd('.')}). The guidance goes on in memory: free space, and note readings on paper.";
        }
    }

    private void Recall(Record record)
    {
        foreach (var (exchange, answers, difference) in Rehearing.Of(_session, record))
        {
            _course.Hear(State, answers);
            if (difference is { Stood: not null })
            {
                Trouble ??= $"Line {difference.LineNumber} of the record was answered otherwise by the program that wrote it. The guidance goes on from the readings.";
            }

            if (!exchange.IsComplete && ReferenceEquals(exchange, record.Exchanges[^1]))
            {
                // The power went between the line in and the last of its answers.
                Keep([.. answers.Skip(exchange.Answers.Count).Select(LineWriter.Write), LineWriter.Ready(State.Now)]);
            }
        }

        _goesOn = State.Now is not null && !State.IsOver;
        if (record.Damaged.Count > 0)
        {
            Trouble ??= $"Damaged lines in the record, left out: {string.Join(", ", record.Damaged.Take(10))}.";
        }
    }
}
