using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Guide.Sessions;

/// <summary>
/// The one door for every face: lines in, lines out. The assistant is a pure function of the lines so far; this holds the
/// state after them, so that a face need not. A test of the record alone may put a simpler assistant behind it.
/// </summary>
public class Session
{
    private readonly Evolver _evolver;
    private readonly Decider _decider;

    /// <summary>A session before its first line.</summary>
    public Session(Setting setting)
        : this(setting, new Evolver(setting).Start)
    {
    }

    /// <summary>A session that stands at a state, to be looked at or gone on with from there.</summary>
    public Session(Setting setting, SessionState state)
    {
        (Setting, State) = (setting, state);
        _evolver = new(setting);
        _decider = new(setting);
    }

    /// <summary>What it runs on.</summary>
    public Setting Setting { get; }

    /// <summary>What is known after the lines so far.</summary>
    public SessionState State { get; private set; }

    /// <summary>Hears a line and answers it.</summary>
    public IReadOnlyList<LineOut> Hear(LineIn line)
    {
        var decided = Decide(line);
        State = decided.State;
        return decided.Lines;
    }

    /// <summary>
    /// Whether time coming to a moment would bring anything that a person needs to hear, or end an advice, which is given again when it comes
    /// back. Forecasts alone do not count: a face that lets time pass by itself keeps the record free of ticks that say nothing.
    /// </summary>
    public bool IsDue(Moment at) =>
        State.Step.Length > 0 && !State.IsOver && (State.Now is not { } now || at.Time >= now.Time)
        && _decider.Decide(State, new Tick(at), withForecasts: false) is var then && (then.Lines.Count > 0 || then.State.Advised.Count < State.Advised.Count);

    /// <summary>Takes over a line out from a record whose line in was not readable, so that the numbering goes on.</summary>
    public void Recall(LineOut line) => State = _evolver.Evolve(State, new Said(line));

    /// <summary>The state as it would stand at a moment, for clocks and figures on a screen; nothing is changed.</summary>
    public SessionState At(Moment moment) =>
        State.Now is { } now && moment.Time > now.Time ? _evolver.Evolve(State, new TimeCame(moment)) : State;

    /// <summary>What a line brings about.</summary>
    /// <param name="line">The line.</param>
    protected virtual Decided Decide(LineIn line) => _decider.Decide(State, line);
}
