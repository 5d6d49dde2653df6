using Panside.Guide.Advice;
using Panside.Guide.Debriefing;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Sessions;
using Panside.Journal;
using Panside.Reckoning.Quantities;

namespace Panside.Reporting;

/// <summary>Hears a record again and keeps what a report tells of it. What was taken back with <c>undo</c> is not kept.</summary>
internal sealed class StoryTeller
{
    /// <summary>Less is not seen in a picture, in gallons or liters.</summary>
    private const double LeastSeen = 0.02;

    private readonly Setting _setting;
    private readonly Session _session;
    private readonly Course _course;
    private readonly List<LineIn> _facts = [];
    private readonly List<(Moment, string)> _phases = [];
    private readonly List<(Moment, Advice)> _alarms = [];
    private readonly List<(Moment, Forecast)> _rates = [];
    private readonly List<(Moment, Forecast)> _residuals = [];
    private readonly List<(Moment At, double Value)> _gone = [];
    private readonly List<(Moment At, double Value)> _tank = [];
    private readonly List<(Moment At, double Value)> _drawPoints = [];
    private readonly List<(Moment, string)> _notes = [];
    private readonly RunningTotal _wood = new();
    private readonly RunningTotal _drawn = new();
    private Moment? _clear;
    private Moment? _begin;
    private Moment? _end;
    private Outcome? _outcome;
    private int? _differsAt;

    private StoryTeller(Setting setting) => (_setting, _session, _course) = (setting, new(setting), new(setting));

    /// <summary>The story; null where the record holds no line with a time.</summary>
    /// <param name="setting">What it ran on.</param>
    /// <param name="lines">The record's lines, gone through once.</param>
    public static BoilStory? Of(Setting setting, IEnumerable<string> lines)
    {
        var (teller, exchanges) = (new StoryTeller(setting), new Exchanges());
        foreach (var heard in Rehearing.Of(teller._session, exchanges.Of(lines)))
        {
            teller.Hear(heard);
        }

        return teller._begin is { } begin ? teller.Story(begin, exchanges.Damaged) : null;
    }

    private void Hear(Reheard heard)
    {
        _differsAt ??= heard.Difference?.LineNumber;
        var state = _session.State;
        _course.Hear(state, heard.Answers);
        if (state.Now is not { } now)
        {
            return;
        }

        (_begin, _end) = (_begin ?? now, now);
        foreach (var answer in heard.Answers)
        {
            Listen(answer, now);
        }

        foreach (var (name, noted) in state.Observations)
        {
            Keep(fact => fact is Observed observed && observed.Name == name, new Observed(noted.At, name, noted.Value));
        }

        // Every pour is kept in the state, as readings are: they are taken from there at the end.
        foreach (var (name, noted) in state.Deeds.Where(deed => deed.Key != DeedName.FillPan))
        {
            Keep(fact => fact is Did did && did.Name == name, new Did(noted.At, name, noted.Value));
        }

        _facts.RemoveAll(fact => fact switch
        {
            Observed observed => !state.Observations.ContainsKey(observed.Name),
            Did did => !state.Deeds.ContainsKey(did.Name),
            _ => false,
        });
        _wood.Now(now, state.Totals.WoodKilograms);
        _drawn.Now(now, state.Totals.DrawnLiters);
        Follow(_gone, now, _setting.Units.From(state.Rig.Evaporated).Value);
        if (state.Rig.Tank is { } tank)
        {
            Follow(_tank, now, _setting.Units.From(tank).Value);
        }

        var point = _setting.Units.From(new Situation(_setting, state).DrawPointToday).Value;
        if (_drawPoints.Count == 0 || double.Abs(_drawPoints[^1].Value - point) > 1e-9)
        {
            _drawPoints.Add((now, point));
        }
    }

    /// <summary>A reckoned value where it has moved by enough to be seen.</summary>
    private static void Follow(List<(Moment At, double Value)> values, Moment now, double value)
    {
        if (values.Count == 0 || double.Abs(values[^1].Value - value) > LeastSeen)
        {
            values.Add((now, value));
        }
    }

    private void Listen(LineOut answer, Moment now)
    {
        switch (answer)
        {
            case PhaseLine phase when _phases.Count == 0 || _phases[^1].Item2 != phase.Phase:
                _phases.Add((now, phase.Phase));
                break;
            case AdviceLine { Advice: { Urgency: "danger" or "now" } advice }:
                _alarms.Add((now, advice));
                break;
            case ForecastLine { Forecast: { P5: not null, P50: not null, P95: not null } forecast } when forecast.Name == Forecasts.Rate:
                _rates.Add((now, forecast));
                break;
            case ForecastLine { Forecast: { P5: not null, P50: not null, P95: not null } forecast } when forecast.Name == Forecasts.Residual:
                _residuals.Add((now, forecast));
                break;
            case AdviceLine { Advice.Action: "clear-to-leave" }:
                _clear ??= now;
                break;
            case HeardLine { As: Text { Words: var words } } when words.StartsWith("note ", StringComparison.Ordinal):
                _notes.Add((now, words[5..]));
                break;
            case OverLine over:
                _outcome = over.Outcome;
                break;
        }
    }

    /// <summary>The newest of a kind is added; where it was kept before, those after it were taken back.</summary>
    private void Keep(Predicate<LineIn> isOfKind, LineIn newest)
    {
        var known = _facts.LastIndexOf(newest);
        if (known < 0)
        {
            _facts.Add(newest);
            return;
        }

        for (var later = _facts.Count - 1; later > known; later--)
        {
            if (isOfKind(_facts[later]))
            {
                _facts.RemoveAt(later);
            }
        }
    }

    private BoilStory Story(Moment begin, IReadOnlyList<int> damaged)
    {
        var readings = _session.State.Readings
            .SelectMany(pair => pair.Value.Select(noted => new Reading(noted.At, pair.Key, noted.Value)));
        var units = _setting.Units;
        return new()
        {
            Setting = _setting,
            Begin = begin,
            End = _end!.Value,
            Facts = [.. _facts.Concat(readings).Concat(_session.State.Pours.Select(pour => pour.Did)).OrderBy(fact => fact.At.Time).ThenBy(Code, StringComparer.Ordinal)],
            Phases = _phases,
            Alarms = _alarms,
            Rates = _rates,
            Residuals = _residuals,
            Gone = _gone,
            TankByNow = _tank,
            Clear = _clear,
            DrawPoints = _drawPoints,
            Poured = Pour.Told(_session.State.Pours, units),
            Wood = [.. _wood.Steps.Select(step => (step.At, units.From(Mass.FromKilograms(step.Amount)).Value))],
            Draws = [.. _drawn.Steps.Select(step => (step.At, units.From(Volume.FromLiters(step.Amount), units.SmallVolume).Value))],
            Notes = _notes,
            Outcome = _outcome,
            Debrief = _session.State.IsOver ? Debrief.Rows(_course, _session.State, _setting) : [],
            Damaged = damaged,
            DiffersAt = _differsAt,
        };
    }

    private static string Code(LineIn fact) => fact switch
    {
        Reading reading => reading.Name.Code,
        Observed observed => observed.Name.Code,
        Did did => did.Name.Code,
        _ => "",
    };
}
