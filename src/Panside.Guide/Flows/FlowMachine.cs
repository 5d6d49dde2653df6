using Stateless;

namespace Panside.Guide.Flows;

/// <summary>
/// The state machine that a flow becomes, and the one way through it: one state a step, a superstate a phase, and one above all of them
/// for what leads away from anywhere. Each way is a transition, each of its facts a guard that says itself as its reason. Leaving and
/// reaching a step are the exit and the entry of its state. The state itself stands with the session (<see cref="IStanding"/>).
/// </summary>
public sealed class FlowMachine
{
    /// <summary>The guard that shuts a way while one before it, with the same trigger, is open.</summary>
    public const string Otherwise = "otherwise";

    private const string Everywhere = "anywhere";
    private const string FactPrefix = "fact ";

    private readonly Lock _alone = new();
    private readonly Flow _flow;
    private readonly StateMachine<string, string> _machine;
    private readonly Dictionary<string, IReadOnlyList<string>> _factTriggers = new(StringComparer.Ordinal);
    private IStanding _standing = Look.Nowhere;
    private bool _hasLed;
    private bool _isShut;

    /// <summary>Makes the machine.</summary>
    public FlowMachine(Flow flow)
    {
        _flow = flow;

        // What reaches a step writes down where the session stands; the machine reads it there. Immediate: a step that is passed by fires on
        // while it is being reached.
        _machine = new(() => _standing.Step, _ => { }, FiringMode.Immediate);
        _machine.OnUnhandledTrigger((_, _) => _isShut = true);
        Configure(Everywhere, [.. flow.DangerWays, .. flow.Anywhere]);
        foreach (var phase in flow.Phases)
        {
            Configure(SuperState(phase), phase.On).SubstateOf(Everywhere);
        }

        foreach (var step in flow.Steps.Values)
        {
            // Outside of an emergency a danger comes before anything of the step's own; inside, its steps know what has gone wrong already.
            Configure(step.Id, step.Phase.IsEmergency ? step.Passages : [.. flow.DangerWays, .. step.Passages])
                .SubstateOf(SuperState(step.Phase))
                .OnExit(way => _standing.Leave(new(way.Source, way.Destination, way.Trigger)))
                .OnEntry(Reached);
            _factTriggers[step.Id] =
            [
                .. flow.OrdinaryWays(step)
                    .Select(passage => passage.When)
                    .Where(IsFact)
                    .Distinct(),
            ];
        }

        foreach (var end in new[] { Flow.End, Flow.LeftAlone })
        {
            _machine.Configure(end).OnEntry(Reached);
        }
    }

    /// <summary>The machine's own account of itself, for diagrams and for checks against the flow.</summary>
    public Stateless.Reflection.StateMachineInfo Info => _machine.GetInfo();

    /// <summary>Takes the way that a trigger opens; false where it opens none.</summary>
    /// <param name="standing">Where somebody stands, and moves.</param>
    /// <param name="trigger">The trigger, as in the flow file.</param>
    public bool Fire(IStanding standing, string trigger) => At(standing, () =>
    {
        (_hasLed, _isShut) = (false, false);
        var from = standing.Step;
        _machine.Fire(trigger);
        if (!_hasLed && !_isShut && !IsFact(trigger))
        {
            // The library takes a way of a superstate that leads to where one stands for none. Who cries out again is asked again.
            standing.Leave(new(from, from, trigger));
            standing.Reach(new(from, from, trigger));
        }

        return !_isShut;
    });

    /// <summary>Takes the first way that a fact opens; false where none leads away.</summary>
    /// <param name="standing">Where somebody stands, and moves.</param>
    public bool FireByFact(IStanding standing) => _factTriggers[standing.Step]
        .Any(trigger => standing.Holds(trigger[FactPrefix.Length..]) && Fire(standing, trigger) && _hasLed);

    /// <summary>Where a trigger leads from a step; null where it leads nowhere. Nobody moves.</summary>
    /// <param name="step">The step.</param>
    /// <param name="trigger">The trigger, as in the flow file.</param>
    /// <param name="returnTo">Where a side trip leads back to.</param>
    /// <param name="holds">Whether a fact holds.</param>
    public string? Next(string step, string trigger, string returnTo, Func<string, bool> holds)
    {
        var look = new Look(step, returnTo, holds);
        return Fire(look, trigger) ? look.Reached : null;
    }

    /// <summary>What a trigger wants at a step and does not find: the facts of its first way that do not hold; empty where it leads on, or never does.</summary>
    /// <param name="step">The step.</param>
    /// <param name="trigger">The trigger, as in the flow file.</param>
    /// <param name="holds">Whether a fact holds.</param>
    public IReadOnlyList<string> Unmet(string step, string trigger, Func<string, bool> holds) => At(new Look(step, step, holds), () =>
        _machine.CanFire(trigger, out var unmet) || unmet is null ? [] : (IReadOnlyList<string>)[.. unmet.Where(reason => reason != Otherwise)]);

    /// <summary>What leads on from a step as things are, in the order of the flow: the step's own, its phase's, the dangers', and those from anywhere.</summary>
    /// <param name="step">The step.</param>
    /// <param name="holds">Whether a fact holds.</param>
    public IReadOnlyList<string> Permitted(string step, Func<string, bool> holds) => At(new Look(step, step, holds), () => (IReadOnlyList<string>)
    [
        .. FlowCheck.WaysFrom(_flow, _flow.Steps[step]).Select(way => way.When).Distinct()
            .Where(trigger => _machine.CanFire(trigger) && (!IsFact(trigger) || holds(trigger[FactPrefix.Length..]))),
    ]);

    /// <summary>Whether a trigger is a fact: it opens a way by itself, with nothing said.</summary>
    public static bool IsFact(string trigger) => trigger.StartsWith(FactPrefix, StringComparison.Ordinal);

    private T At<T>(IStanding standing, Func<T> does)
    {
        // Sessions on two threads may walk through one flow; one that reaches a step may fire on from there.
        lock (_alone)
        {
            var before = _standing;
            _standing = standing;
            try
            {
                return does();
            }
            finally
            {
                _standing = before;
            }
        }
    }

    private void Reached(StateMachine<string, string>.Transition way)
    {
        _standing.Reach(new(way.Source, way.Destination, way.Trigger));

        // Said last: what was reached may have fired on, or looked on, from there.
        (_hasLed, _isShut) = (true, false);
    }

    private StateMachine<string, string>.StateConfiguration Configure(string state, IReadOnlyList<Passage> passages)
    {
        var configuration = _machine.Configure(state);
        foreach (var same in passages.GroupBy(passage => passage.When))
        {
            var earlier = new List<Passage>();
            foreach (var passage in same)
            {
                var guards = Guards(passage, [.. earlier]);
                if (passage.Go == Flow.Return)
                {
                    configuration.PermitDynamicIf(passage.When, () => _standing.ReturnTo, null, guards);
                }
                else if (passage.Go != state)
                {
                    configuration.PermitIf(passage.When, passage.Go, guards);
                }
                else if (IsFact(passage.When))
                {
                    // A fact that leads to where one stands would lead there for ever.
                    configuration.IgnoreIf(passage.When, guards);
                }
                else
                {
                    configuration.PermitReentryIf(passage.When, guards);
                }

                earlier.Add(passage);
            }
        }

        return configuration;
    }

    /// <summary>A guard for each fact; and, as the first passage whose facts hold wins, one that none before it does.</summary>
    private Tuple<Func<bool>, string>[] Guards(Passage passage, Passage[] before)
    {
        var guards = passage.Given.Select(fact => new Tuple<Func<bool>, string>(() => Holds(fact), fact));
        return before.Length == 0 ? [.. guards] : [.. guards, new(() => !before.Any(other => other.Given.All(Holds)), Otherwise)];
    }

    private bool Holds(string fact) =>
        fact.StartsWith("not ", StringComparison.Ordinal) ? !_standing.Holds(fact[4..]) : _standing.Holds(fact);

    /// <summary>A phase's code may stand twice, for two parts of it; its place in the flow tells them apart.</summary>
    private string SuperState(Phase phase) => $"phase {PlaceOf(phase)} {phase.Code}";

    private int PlaceOf(Phase phase)
    {
        var place = 0;
        while (!ReferenceEquals(_flow.Phases[place], phase))
        {
            place++;
        }

        return place;
    }

    /// <summary>Looks where a way leads, and stays.</summary>
    private sealed class Look(string step, string returnTo, Func<string, bool> holds) : IStanding
    {
        /// <summary>Nobody walks just now.</summary>
        public static Look Nowhere { get; } = new(Everywhere, Everywhere, _ => false);

        public string Step => step;

        public string ReturnTo => returnTo;

        public string? Reached { get; private set; }

        public bool Holds(string fact) => holds(fact);

        public void Leave(Move move)
        {
        }

        public void Reach(Move move) => Reached = move.To;
    }
}
