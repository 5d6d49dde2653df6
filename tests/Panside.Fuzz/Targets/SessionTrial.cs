using System.Text;
using System.Text.Json;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Journal;

namespace Panside.Fuzz.Targets;

/// <summary>
/// Lines said at a moment of a boil. Sessions begin at states that were reached once, and forecasts are told in one line of sixteen:
/// telling them takes most of the time, and no step hangs on it.
/// </summary>
internal sealed class SessionTrial : ITrial
{
    private readonly Decider _decider;
    private readonly Func<Moment, byte[], LineIn> _read;
    private readonly Random _chance;
    private SessionState _state;
    private DateTimeOffset _time;
    private long _line;

    /// <summary>A session at some moment of a boil.</summary>
    public SessionTrial(Func<Moment, byte[], LineIn> read, int seed, long number)
    {
        _read = read;
        _chance = new(unchecked((int)number ^ (seed << 16)));
        var places = Places.Any(_chance, number);
        _decider = places.Decider;
        _state = places.States[_chance.Next(places.States.Count)];
        _time = _state.Now?.Time ?? new(2031, 3, 8, 17, 0, 0, TimeSpan.FromHours(-5));
        _line = number;
    }

    /// <summary>The input as a line of the stream.</summary>
    public static LineIn Line(Moment now, byte[] input) =>
        LineReader.Read(Encoding.UTF8.GetString(input).Replace("NOW", now.Written, StringComparison.Ordinal));

    /// <summary>The input as typed words.</summary>
    public static LineIn Typed(Moment now, byte[] input) => new Text(now, Encoding.UTF8.GetString(input));

    /// <inheritdoc/>
    public void Try(byte[] input)
    {
        _time = _time.AddSeconds(_chance.Next(20) == 0 ? _chance.Next(3600) : _chance.Next(20));
        Hear(_read(Moment.Of(_time), input));
        if (_chance.Next(3) == 0)
        {
            Hear(new Answer(Moment.Of(_time), AnswerWords.All[_chance.Next(AnswerWords.All.Count)]));
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
    }

    /// <summary>Hears a line as a session does, and looks at each answer up to the mark after the last.</summary>
    public void Hear(LineIn line)
    {
        (_state, var answers) = _decider.Decide(_state, line, withForecasts: _line++ % 16 == 0);
        foreach (var answer in answers.Select(LineWriter.Write).Append(LineWriter.Ready(_state.Now)))
        {
            using var json = JsonDocument.Parse(answer);
            if (answer.Any(char.IsControl))
            {
                throw new InvalidOperationException($"A control stands in an answer: {answer}");
            }
        }

        if (line is not Tick && answers.Count == 0 && line is Unreadable)
        {
            throw new InvalidOperationException("A line that cannot be read was not refused.");
        }

        if (_state.Now is { } now && now.Time > _time)
        {
            _time = now.Time;
        }
    }
}
