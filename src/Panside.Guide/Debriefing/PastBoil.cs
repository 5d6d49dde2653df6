using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Sessions;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Debriefing;

/// <summary>A boil whose whole record is there: its lines, the moments that matter, and what came of what was told.</summary>
public sealed class PastBoil
{
    /// <summary>A state is kept of every so many exchanges, and the others are heard again from there: all of them would fill the memory.</summary>
    private const int StateEvery = 16;

    /// <summary>So far the forecast of the water to leave reaches.</summary>
    private static readonly TimeSpan ResidualTime = TimeSpan.FromHours(4);

    private readonly List<PastExchange> _exchanges = [];
    private readonly List<SessionState> _states = [];
    private readonly List<Volume> _evaporated = [];
    private readonly List<DateTimeOffset> _opened = [];
    private readonly HashSet<PastExchange> _draws = new(ReferenceEqualityComparer.Instance);
    private DateTimeOffset? _held;
    private DateTimeOffset? _still;
    private DateTimeOffset? _lastWood;
    private bool _isDrawing;

    /// <summary>The boil of exchanges in order of time.</summary>
    /// <param name="setting">What it ran on.</param>
    /// <param name="exchanges">Its exchanges, each with what was known after it; gone through once.</param>
    public PastBoil(Setting setting, IEnumerable<(PastExchange Exchange, SessionState State)> exchanges)
    {
        Setting = setting;
        foreach (var (exchange, state) in exchanges)
        {
            if (_exchanges.Count % StateEvery == 0)
            {
                _states.Add(state);
            }

            _exchanges.Add(exchange);
            _evaporated.Add(state.Rig.Evaporated);
            IsOver = state.IsOver;
            Draw(exchange, state);
            Hold(exchange.At, state);
        }
    }

    /// <summary>What it ran on.</summary>
    public Setting Setting { get; }

    /// <summary>Its exchanges, in order of time.</summary>
    public IReadOnlyList<PastExchange> Exchanges => _exchanges;

    /// <summary>Whether the record has the boil's end.</summary>
    public bool IsOver { get; }

    /// <summary>Whether an exchange brings an alarm: advice of danger, or to be followed now.</summary>
    public static bool IsAlarm(PastExchange exchange) =>
        exchange.Answers.Any(answer => answer is AdviceLine { Advice.Urgency: "danger" or "now" });

    /// <summary>Whether a draw begins with an exchange: it is asked for, or opened unasked.</summary>
    public bool IsDraw(PastExchange exchange) => _draws.Contains(exchange);

    /// <summary>What was known after an exchange.</summary>
    /// <param name="position">Its number, from 0.</param>
    public SessionState StateAt(int position)
    {
        var kept = position / StateEvery;
        var session = new Session(Setting, _states[kept]);
        foreach (var exchange in _exchanges.Take((kept * StateEvery + 1)..(position + 1)))
        {
            if (exchange.Line is { } line)
            {
                session.Hear(line);
                continue;
            }

            foreach (var answer in exchange.Answers)
            {
                session.Recall(answer);
            }
        }

        return session.State;
    }

    /// <summary>What was forecast at a moment of the boil beside what came of it, for every forecast that was one.</summary>
    /// <param name="state">What was known then.</param>
    public IEnumerable<ToldAndCame> Told(SessionState state)
    {
        if (state.Now is not { } now || state.IsOver)
        {
            yield break;
        }

        var then = new Situation(Setting, state);
        foreach (var told in Forecasts.All(then).Where(told => told.P50 is not null))
        {
            if (Came(told, then, now.Time) is { } came)
            {
                yield return new(told, came);
            }
        }
    }

    private void Draw(PastExchange exchange, SessionState state)
    {
        var opens = state.Last(DeedName.OpenDraw)?.At == exchange.At;
        var closes = state.Last(DeedName.CloseDraw)?.At == exchange.At;
        var phase = exchange.Answers.OfType<PhaseLine>().LastOrDefault()?.Phase;
        var isDraw = Setting.Flow.Phases.Any(one => one.Code == phase && one.IsDraw);
        var isAsked = isDraw && exchange.Line is not Resumed;
        if ((isAsked || opens || closes) && !_isDrawing)
        {
            _draws.Add(exchange);
        }

        if ((opens || (closes && !_isDrawing)) && (_opened.Count == 0 || _opened[^1] != exchange.At.Time))
        {
            _opened.Add(exchange.At.Time);
        }

        // Measuring the syrup goes on after it was drawn; another draw begins when the boil has gone on.
        _isDrawing = phase is null || isDraw ? _isDrawing || isAsked || opens : false;
        _isDrawing &= !(closes && state.Step.Length > 0 && !Setting.Flow.PhaseOf(state.Step).IsDraw);
    }

    private void Hold(Moment at, SessionState state)
    {
        var now = new Situation(Setting, state);
        if (now.IsHeld)
        {
            _held ??= at.Time;
            _still ??= state.Last(ObservationName.Boil) is { Value: "still" } still && still.At.Time >= _held ? still.At.Time : null;
        }
        else if (!state.IsOver)
        {
            // Fired on after all: the last charge is still to come.
            (_held, _still) = (null, null);
        }

        _lastWood = now.LastWood?.Time ?? _lastWood;
    }

    private string? Came(Forecast told, Situation then, DateTimeOffset now) => told.Name switch
    {
        Forecasts.ToDraw => After(_opened.Select(at => (DateTimeOffset?)at).FirstOrDefault(at => at >= now), now),
        Forecasts.ToLastCharge when !then.IsHeld => _held is not null && _lastWood < now ? "was in by then" : After(_held is null ? null : _lastWood, now),
        Forecasts.ToStill when then.IsHeld => MoreWood(now) ?? (_still < now ? "was still by then" : After(_still, now)),
        Forecasts.Residual => MoreWood(now) ?? Water(then.State, now),
        _ => null,
    };

    /// <summary>What is told for the case of no more wood has no answer where more went in.</summary>
    private string? MoreWood(DateTimeOffset now) => _lastWood > now ? "more wood went in" : _held is null ? Unknown : null;

    /// <summary>The water that left, as the reckoning has it at the end: nobody weighs it.</summary>
    private string Water(SessionState then, DateTimeOffset now)
    {
        var end = now + ResidualTime;
        if (!IsOver && _exchanges[^1].At.Time < end)
        {
            return Unknown;
        }

        var last = _exchanges.FindLastIndex(exchange => exchange.At.Time <= end);
        var gone = Setting.Units.From(_evaporated[last] - then.Rig.Evaporated);
        return $"{Amount.Shown(gone.With(double.Max(gone.Value, 0)))} reckoned";
    }

    private string After(DateTimeOffset? came, DateTimeOffset now) =>
        came is { } at ? $"after {double.Round((at - now).TotalMinutes):0} min" : Unknown;

    private string Unknown => IsOver ? "not in the record" : "not known yet";
}

/// <summary>A forecast as it stood, and what came.</summary>
/// <param name="Told">The forecast.</param>
/// <param name="Came">What the record shows later, in words: <c>after 14 min</c>; or that it does not show it.</param>
public sealed record ToldAndCame(Forecast Told, string Came);
