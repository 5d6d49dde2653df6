using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Lines;

namespace Panside.Guide.Sessions;

/// <summary>What one line in brings about, while it is being decided: the happenings so far, and the state after them.</summary>
internal sealed class Turn(Setting setting, Evolver evolver, SessionState state)
{
    private readonly List<Happening> _happenings = [];
    private Situation? _now;

    /// <summary>The state after the happenings so far.</summary>
    public SessionState State { get; private set; } = state;

    /// <summary>The happenings so far.</summary>
    public IReadOnlyList<Happening> Happenings => _happenings;

    /// <summary>The state seen through the reckoning.</summary>
    public Situation Now => _now ??= new(setting, State);

    /// <summary>Whether a fact holds now.</summary>
    public bool Holds(string fact) => Facts.Holds(Now, fact);

    /// <summary>A text of the flow with its figures put in.</summary>
    public string Fill(string template) => Template.Fill(template, figure => Figures.Of(Now, figure));

    /// <summary>Lets something happen.</summary>
    public void Happen(Happening happening)
    {
        _happenings.Add(happening);
        State = evolver.Evolve(State, happening);
        _now = happening is Said ? _now : null;
    }

    /// <summary>Says a line out.</summary>
    public void Say(Func<Moment?, int, LineOut> line) => Happen(new Said(line(State.Now, State.Sequence + 1)));

    /// <summary>Refuses: nothing is changed.</summary>
    public void Refuse(string why, string? field = null) => Say((at, number) => new RefusedLine(at, number, why, field));

    /// <summary>Tells.</summary>
    public void Tell(string text) => Say((at, number) => new ToldLine(at, number, text));
}
