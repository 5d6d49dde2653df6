using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Guide.Sessions;

/// <summary>What one line in brings about, while it is being decided: the state after all that has happened so far, and what was said.</summary>
internal sealed class Turn(Setting setting, Evolver evolver, SessionState state)
{
    private readonly List<LineOut> _lines = [];
    private Situation? _now;

    /// <summary>The steps that were passed by since the line came.</summary>
    public HashSet<string> PassedBy { get; } = new(StringComparer.Ordinal);

    /// <summary>The state after what has happened so far.</summary>
    public SessionState State { get; private set; } = state;

    /// <summary>The state when the line came, before anything was made of it.</summary>
    public SessionState AsItCame { get; private set; } = state;

    /// <summary>The first line that was taken as true; null where none was.</summary>
    public LineIn? Taken { get; private set; }

    /// <summary>The state and the lines out, once all is decided.</summary>
    public Decided Decided => new(State, _lines);

    /// <summary>The state seen through the reckoning.</summary>
    public Situation Now => _now ??= new(setting, State);

    /// <summary>Whether a fact holds now.</summary>
    public bool Holds(string fact) => Facts.Holds(Now, fact);

    /// <summary>A text of the flow with its figures put in.</summary>
    public string Fill(string template) => Template.Fill(template, figure => Figures.Of(Now, figure));

    /// <summary>Lets time come to the line's moment.</summary>
    public void Come(Moment at)
    {
        Happen(new TimeCame(at));
        AsItCame = State;
    }

    /// <summary>Lets something happen.</summary>
    public void Happen(Happening happening)
    {
        State = evolver.Evolve(State, happening);
        Taken ??= (happening as Took)?.Line;
        _now = happening is Said ? _now : null;
    }

    /// <summary>Says a line out.</summary>
    public void Say(Func<Moment?, int, LineOut> line)
    {
        var said = line(State.Now, State.Sequence + 1);
        _lines.Add(said);
        Happen(new Said(said));
    }

    /// <summary>Refuses: nothing is changed.</summary>
    public void Refuse(string why, string? field = null) => Say((at, number) => new RefusedLine(at, number, why, field));

    /// <summary>Tells.</summary>
    public void Tell(string text) => Say((at, number) => new ToldLine(at, number, text));
}
