using System.Collections.Immutable;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Guide.Sessions;

/// <summary>Makes the next state from a state and one thing that happened. Pure.</summary>
public sealed class Evolver(Setting setting)
{
    /// <summary>Undo goes back this far.</summary>
    private const int PastKept = 20;

    /// <summary>A pan is cold after a day: longer gaps need no more steps.</summary>
    private const int MinutesAtMost = 24 * 60;

    private readonly TakenIn _takenIn = new(setting);

    private readonly Setting _setting = setting;

    /// <summary>The state before the first line.</summary>
    public SessionState Start => new()
    {
        Step = "",
        Rigs = _setting.Cold,
    };

    /// <summary>The state after the happening.</summary>
    public SessionState Evolve(SessionState state, Happening happening) => happening switch
    {
        TimeCame(var to) => CameTo(state, to),
        Remembered(var what) => state with
        {
            Past = (state.Past.Count < PastKept ? state.Past : state.Past.RemoveAt(0)).Add(state with { Past = [] }),
            LastSaid = what,
        },
        SaidTogether(var before, var what) => state with
        {
            Past = (before.Past.Count < PastKept ? before.Past : before.Past.RemoveAt(0)).Add(before with { Past = [] }),
            LastSaid = what,
        },
        Took(var line, var insisted) => _takenIn.Take(state with { SaidNow = state.SaidNow.Add(line) }, line, insisted),
        Moved(var step, var back) => state with
        {
            Step = step,
            Back = back,
            StepSince = state.Now ?? default,
            Open = null,
            Asked = _setting.Flow.PhaseOf(step).IsEmergency ? state.Asked : state.Asked.Clear(),
            Suspected = _setting.Flow.PhaseOf(step).IsEmergency ? state.Suspected : [],
        },
        Suspected(var dangers) => state with { Suspected = dangers },
        WentUnheard(var text) => state with { Unheard = text },
        ClockStarted(var clock) => state with { Clocks = state.Clocks.Add(clock) },
        ClockRanDown(var clock) => state with { Clocks = state.Clocks.Remove(clock) },
        Completed(var id, var skipped) => state with
        {
            Done = skipped ? state.Done : state.Done.Add(id),
            Skipped = skipped ? state.Skipped.Remove(id).Add(id) : state.Skipped.Remove(id),
            Watched = state.Now is { } now ? state.Watched.SetItem(id, now) : state.Watched,
            PutOff = state.PutOff.Remove(id),
            Open = state.Open?.Step == id ? null : state.Open,
        },
        PutAside(var id, var until) => state with { PutOff = state.PutOff.SetItem(id, until), Open = null },
        Marked(var mark) => state with { Marks = state.Marks.Add(mark) },
        Unmarked(var mark) => state with { Marks = state.Marks.Remove(mark) },
        Doubted(var line) => state with { Doubted = line },
        AmountTold => state with
        {
            Doubted = null,
            Pours = state.Pours is [.., { IsUnmeasured: true }] pours ? pours.RemoveAt(pours.Count - 1) : state.Pours,
        },
        TookBack => Back(state),
        Settled(var advice) => state with { Advised = state.Advised.Remove(advice) },
        Advised(var advice) => state with { Advised = state.Advised.SetItem(advice, state.Now ?? default) },
        Said(var line) => Say(state with { Sequence = line.Sequence }, line),
        _ => state,
    };

    private SessionState Say(SessionState state, LineOut line) => line switch
    {
        PromptLine prompt => state with
        {
            Open = prompt.Prompt,
            OpenSince = state.Now ?? default,
            Asked = state.Step.Length > 0 && (_setting.Flow.PhaseOf(state.Step).IsEmergency || _setting.Flow.Steps[state.Step].Urgency == "now")
                ? state.Asked.SetItem(prompt.Prompt.Step, state.Asked.GetValueOrDefault(prompt.Prompt.Step) + 1)
                : state.Asked,
        },
        ForecastLine forecast => state with { Forecasts = state.Forecasts.SetItem(forecast.Forecast.Name, forecast.Forecast) },
        AdviceLine { Advice: var advice } when PanOrTank.AsksToPour(advice) => state with { ToldToPour = state.Now },
        CautionLine caution => state with { Cautioned = state.Cautioned.Add(caution.Text) },
        OverLine over => state with { IsOver = true, IsSafe = over.Outcome.Safe, Open = null },
        _ => state,
    };

    /// <summary>The state before the last thing said, brought to now: what was told since stays told.</summary>
    private SessionState Back(SessionState state)
    {
        var before = state.Past[^1] with
        {
            Sequence = state.Sequence,
            Past = state.Past.RemoveAt(state.Past.Count - 1),
            Forecasts = state.Forecasts,
            Cautioned = state.Cautioned,
            Doubted = null,
            Open = null,
        };
        return CameTo(before, state.Now!.Value) with { SaidNow = state.SaidNow };
    }

    private SessionState CameTo(SessionState state, Moment to)
    {
        var started = state.Started ?? to;
        var minute = (int)double.Min((to.Time - started.Time).TotalMinutes, int.MaxValue - 1.0);
        return state with
        {
            Started = started,
            Now = to,
            Rigs = state.Rigs.After(minute, MinutesAtMost),
            SaidNow = state.Now?.Time == to.Time ? state.SaidNow : [],
        };
    }
}
