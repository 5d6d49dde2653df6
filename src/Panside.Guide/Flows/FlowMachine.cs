using Stateless;

namespace Panside.Guide.Flows;

/// <summary>
/// The state machine that a flow becomes: one state a step, a superstate a phase, and one above all of them for what leads
/// away from anywhere. It holds no state between two calls, so the walk through it is a pure function.
/// </summary>
public sealed class FlowMachine
{
    private const string Everywhere = "anywhere";

    private readonly Lock _alone = new();
    private readonly Flow _flow;
    private readonly StateMachine<string, string> _machine;
    private readonly Dictionary<string, IReadOnlyList<string>> _factTriggers = new(StringComparer.Ordinal);
    private string _step = "";
    private string _returnTo = "";
    private Func<string, bool> _holds = _ => false;

    /// <summary>Makes the machine.</summary>
    public FlowMachine(Flow flow)
    {
        _flow = flow;
        _machine = new(() => _step, step => _step = step, FiringMode.Queued);
        _machine.OnUnhandledTrigger((_, _) => { });
        Configure(Everywhere, [.. flow.DangerWays, .. flow.Anywhere]);
        foreach (var phase in flow.Phases)
        {
            Configure(SuperState(phase), phase.On).SubstateOf(Everywhere);
        }

        foreach (var step in flow.Steps.Values)
        {
            // Outside of an emergency a danger comes before anything of the step's own; inside, its steps know what has gone wrong already.
            Configure(step.Id, step.Phase.IsEmergency ? step.Passages : [.. flow.DangerWays, .. step.Passages]).SubstateOf(SuperState(step.Phase));
            _factTriggers[step.Id] =
            [
                .. step.Passages.Concat(step.Phase.On).Concat(flow.Anywhere)
                    .Select(passage => passage.When)
                    .Where(when => when.StartsWith("fact ", StringComparison.Ordinal))
                    .Distinct(),
            ];
        }
    }

    /// <summary>The machine's own account of itself, for diagrams and for checks against the flow.</summary>
    public Stateless.Reflection.StateMachineInfo Info => _machine.GetInfo();

    /// <summary>Where a trigger leads from a step; null where it leads nowhere.</summary>
    /// <param name="step">The step.</param>
    /// <param name="trigger">The trigger, as in the flow file.</param>
    /// <param name="returnTo">Where a side trip leads back to.</param>
    /// <param name="holds">Whether a fact holds.</param>
    public string? Next(string step, string trigger, string returnTo, Func<string, bool> holds)
    {
        // Sessions on two threads may walk through one flow.
        lock (_alone)
        {
            (_step, _returnTo, _holds) = (step, returnTo, holds);
            if (!_machine.CanFire(trigger))
            {
                return null;
            }

            _machine.Fire(trigger);
            return _step;
        }
    }

    /// <summary>Where the facts lead from a step; null where none does.</summary>
    public string? NextByFact(string step, string returnTo, Func<string, bool> holds)
    {
        foreach (var trigger in _factTriggers[step])
        {
            if (holds(trigger[5..]) && Next(step, trigger, returnTo, holds) is { } next && next != step)
            {
                return next;
            }
        }

        return null;
    }

    private StateMachine<string, string>.StateConfiguration Configure(string state, IReadOnlyList<Passage> passages)
    {
        var configuration = _machine.Configure(state);
        foreach (var same in passages.GroupBy(passage => passage.When))
        {
            var earlier = new List<Passage>();
            foreach (var passage in same)
            {
                // The first passage whose facts hold wins, so each stands only where none before it does.
                var before = earlier.ToArray();
                bool Open() => Holds(passage) && !before.Any(Holds);
                var label = string.Join(" and ", passage.Given);
                if (passage.Go == Flow.Return)
                {
                    configuration.PermitDynamicIf(passage.When, () => _returnTo, Open, label);
                }
                else if (passage.Go == state)
                {
                    configuration.PermitReentryIf(passage.When, Open, label);
                }
                else
                {
                    configuration.PermitIf(passage.When, passage.Go, Open, label);
                }

                earlier.Add(passage);
            }
        }

        return configuration;
    }

    private bool Holds(Passage passage) => passage.Given.All(fact =>
        fact.StartsWith("not ", StringComparison.Ordinal) ? !_holds(fact[4..]) : _holds(fact));

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
}
