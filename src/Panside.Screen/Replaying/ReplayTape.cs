using Panside.Guide.Debriefing;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Screen.Painting;

namespace Panside.Screen.Replaying;

/// <summary>A past boil and where it stands: the last exchange that was shown, and the boil's time.</summary>
internal sealed class ReplayTape
{
    /// <summary>A silence is played so long, and what is left of it is jumped over.</summary>
    private static readonly TimeSpan LongestSilence = TimeSpan.FromMinutes(1);

    private readonly PastBoil _boil;
    private readonly IReadOnlyList<IReadOnlyList<Entry>> _entries;
    private DateTimeOffset _lastSaid;
    private (int Position, SessionState State)? _known;

    /// <summary>A boil at its first line.</summary>
    public ReplayTape(PastBoil boil)
    {
        _boil = boil;
        _entries = [.. boil.Exchanges.Select(EntriesOf)];
        Stand(0, Exchanges[0].At.Time);
    }

    /// <summary>The number of the last exchange that was shown, from 0.</summary>
    public int Position { get; private set; }

    /// <summary>The boil's time.</summary>
    public DateTimeOffset Now { get; private set; }

    /// <summary>Whether there is no line after this.</summary>
    public bool IsAtEnd => Position == Exchanges.Count - 1;

    /// <summary>What was known at the boil's time.</summary>
    public SessionState State
    {
        get
        {
            if (_known?.Position != Position)
            {
                _known = (Position, _boil.StateAt(Position));
            }

            return new Session(_boil.Setting, _known.Value.State).At(Moment.Of(Now));
        }
    }

    /// <summary>The conversation so far.</summary>
    public IEnumerable<Entry> Said => _entries.Take(Position + 1).SelectMany(entries => entries);

    private IReadOnlyList<PastExchange> Exchanges => _boil.Exchanges;

    /// <summary>Lets time of the boil pass; long silences are shortened.</summary>
    /// <param name="time">How much.</param>
    /// <param name="until">No further than this; null for the end of the record.</param>
    /// <returns>Whether it got that far, or to the end: then it stands still.</returns>
    public bool Pass(TimeSpan time, DateTimeOffset? until)
    {
        while (!IsAtEnd)
        {
            var next = Exchanges[Position + 1].At.Time;
            if (next > until)
            {
                Now = until.Value > Now ? until.Value : Now;
                return true;
            }

            var silence = LongestSilence - (Now - _lastSaid);
            var wait = Least(next - Now, silence > TimeSpan.Zero ? silence : TimeSpan.Zero);
            if (time < wait)
            {
                Now += time;
                return false;
            }

            time -= wait;
            Stand(Position + 1, next);
        }

        return true;
    }

    /// <summary>To a time: everything until then was shown.</summary>
    public void Seek(DateTimeOffset time)
    {
        var (first, last) = (Exchanges[0].At.Time, Exchanges[^1].At.Time);
        var to = time < first ? first : time > last ? last : time;
        var position = 0;
        while (position < Exchanges.Count - 1 && Exchanges[position + 1].At.Time <= to)
        {
            position++;
        }

        Stand(position, to);
    }

    /// <summary>One line on or back, past those that say nothing; false where there is none.</summary>
    public bool Step(int by) => Jump(by, position => _entries[position].Count > 0);

    /// <summary>To the next exchange of a kind; false where none comes.</summary>
    public bool Next(Func<PastExchange, bool> isIt) => Jump(1, position => isIt(Exchanges[position]));

    private bool Jump(int by, Func<int, bool> isIt)
    {
        for (var position = Position + by; position >= 0 && position < Exchanges.Count; position += by)
        {
            if (isIt(position))
            {
                Stand(position, Exchanges[position].At.Time);
                return true;
            }
        }

        return false;
    }

    private void Stand(int position, DateTimeOffset now)
    {
        (Position, Now) = (position, now);
        var said = position;
        while (said > 0 && _entries[said].Count == 0)
        {
            said--;
        }

        _lastSaid = Exchanges[said].At.Time;
    }

    private static IReadOnlyList<Entry> EntriesOf(PastExchange exchange)
    {
        var typed = exchange.Said is { } words ? [Entries.Typed(exchange.At, words)] : Array.Empty<Entry>();
        var differs = exchange.DiffersAt is { } number
            ? [new Entry("", [$"- Line {number} of the record says otherwise; shown is what is said now."], Tone.Doubt)]
            : Array.Empty<Entry>();
        return [.. typed, .. Entries.Of(exchange.Answers, exchange.At, exchange.Said), .. differs];
    }

    private static TimeSpan Least(TimeSpan one, TimeSpan other) => one < other ? one : other;
}
