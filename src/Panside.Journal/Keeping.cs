using Panside.Guide.Lines;

namespace Panside.Journal;

/// <summary>
/// Keeps a session's lines: in its record, and, while that cannot be written, whole under another name. What neither takes waits
/// in memory for the next line. A disk that stays full is not asked at every line.
/// </summary>
/// <param name="journal">The record; null where it is opened with the first line.</param>
/// <param name="open">Opens it; null where it is open already. It may come back with another name than was wanted.</param>
/// <param name="wanted">The name that is wanted; null for whatever it is opened with.</param>
/// <param name="spare">Opens an empty record under another name, near the one given; null where there is no such place.</param>
internal sealed class Keeping(JournalFile? journal, Func<Moment, JournalFile?>? open, string? wanted, Func<string?, JournalFile?>? spare) : IDisposable
{
    /// <summary>So many lines are written at once: a disk with a little room takes a part of what waits, and keeps it.</summary>
    private const int Batch = 256;

    private readonly List<string> _waiting = [];
    private readonly Patience _patience = new();
    private readonly Patience _sparePatience = new();
    private JournalFile? _journal = journal;
    private Func<Moment, JournalFile?>? _open = open;
    private JournalFile? _spare;
    private int _inSpare;
    private string? _why;
    private string? _elsewhere;

    /// <summary>Where the whole session stands; null where it stands nowhere but in memory.</summary>
    public string? Path => _why is null ? _journal?.Path : IsSpared ? _spare!.Path : null;

    /// <summary>The record, while all of the session stands in it; null otherwise.</summary>
    public JournalFile? Whole => _why is null ? _journal : null;

    /// <summary>What is wrong with the record, for a person; null where all is well.</summary>
    public string? Trouble => _why is null ? _elsewhere
        : IsSpared ? $"The record cannot be written ({_why}). All of it is kept in {_spare!.Path} until it can."
        : $"The record cannot be written ({_why}). The guidance goes on in memory: free space, and note readings on paper.";

    private bool IsSpared => _spare is not null && _inSpare == _waiting.Count;

    /// <summary>Keeps lines; what is thrown by no fault of the disk comes through.</summary>
    /// <param name="lines">The lines of an exchange.</param>
    /// <param name="now">The time of the session; null before its first good line, until which nothing is opened.</param>
    public void Keep(IEnumerable<string> lines, Moment? now)
    {
        _waiting.AddRange(lines);
        if (now is null && _open is not null)
        {
            return;
        }

        if (_patience.IsDue())
        {
            Write(now);
        }

        if (_waiting.Count > 0 && _sparePatience.IsDue())
        {
            KeepInSpare();
        }
    }

    /// <summary>Tries once more to bring what waits to a disk, before the program ends.</summary>
    /// <param name="now">The time of the session.</param>
    public void Settle(Moment? now)
    {
        if (_why is not null && !IsSpared)
        {
            Write(now);
            if (_waiting.Count > 0)
            {
                KeepInSpare();
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _journal?.Dispose();
        _spare?.Dispose();
    }

    private void Write(Moment? now)
    {
        try
        {
            if (_open is not null && now is { } at)
            {
                _journal = _open(at);
                _open = null;
                _elsewhere = _journal is not null && wanted is not null && _journal.Path != wanted
                    ? $"{wanted} is another session's record. This one is kept in {_journal.Path}."
                    : null;
            }

            while (_waiting.Count > 0 && _journal is not null)
            {
                var count = int.Min(_waiting.Count, Batch);
                _journal.Append(_waiting.Take(count));
                _waiting.RemoveRange(0, count);
                _inSpare = int.Max(_inSpare - count, 0);
            }

            _waiting.Clear();
            _why = null;
            _patience.Succeed();
            LetSpareGo();
        }
        catch (ReplacedException fault)
        {
            _why = fault.Message;
            KeepInSpare();
            MoveToSpare();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            _why = fault.Message.TrimEnd('.');
            _patience.Fail();
        }
    }

    /// <summary>The whole session under another name, as far as the record itself can still be read.</summary>
    private void KeepInSpare()
    {
        try
        {
            _spare ??= NewSpare();
            if (_spare is not null && _inSpare < _waiting.Count)
            {
                _spare.Append(_waiting.Skip(_inSpare));
                _inSpare = _waiting.Count;
            }

            _sparePatience.Succeed();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            _sparePatience.Fail();
        }
    }

    private JournalFile? NewSpare()
    {
        _inSpare = 0;
        var made = spare?.Invoke(_journal?.Path ?? wanted);
        try
        {
            if (made is not null && _journal is not null)
            {
                made.Append(_journal);
            }

            return made;
        }
        catch
        {
            made?.Discard();
            throw;
        }
    }

    /// <summary>Where the record was stands somebody else's file: the other name is the record's from now on.</summary>
    private void MoveToSpare()
    {
        if (!IsSpared)
        {
            _patience.Fail();
            return;
        }

        _elsewhere = $"Another file has taken the place of {_journal!.Path}. The record is kept in {_spare!.Path}, from its first line on.";
        _journal.Dispose();
        (_journal, _spare, _inSpare, _why) = (_spare, null, 0, null);
        _waiting.Clear();
        _patience.Succeed();
    }

    private void LetSpareGo()
    {
        try
        {
            _spare?.Discard();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // What stands there is a copy, and no more.
        }

        (_spare, _inSpare) = (null, 0);
    }
}
