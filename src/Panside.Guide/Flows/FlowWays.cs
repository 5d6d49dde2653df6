namespace Panside.Guide.Flows;

/// <summary>
/// Where the ways of a flow lead, whatever holds. A side trip is followed together with the step that it returns to, so that a
/// step and a side trip which lead only to each other are seen as the trap that they are.
/// </summary>
internal sealed class FlowWays
{
    private readonly Flow _flow;
    private readonly Dictionary<Node, HashSet<Node>> _before = [];

    /// <summary>Follows every way from the start.</summary>
    public FlowWays(Flow flow)
    {
        _flow = flow;
        var start = new Node(flow.Start, "");
        _before[start] = [];
        for (var open = new Queue<Node>([start]); open.TryDequeue(out var node);)
        {
            foreach (var next in Next(node))
            {
                if (_before.TryAdd(next, []))
                {
                    open.Enqueue(next);
                }

                _before[next].Add(node);
            }
        }

        Reached = [.. _before.Keys.Select(node => node.Step)];
        var leading = LeadingToTheEnd();
        Stuck = [.. _before.Keys.GroupBy(node => node.Step).Where(same => !same.Any(leading.Contains)).Select(same => same.Key)];
    }

    /// <summary>
    /// The steps that can be reached from the start. A side trip over a side trip is followed back to where the outer one began; the
    /// step between, which the operator comes back to first, is looked at by itself.
    /// </summary>
    public HashSet<string> Reached { get; }

    /// <summary>
    /// The steps that can be reached and lead nowhere near the end. A side trip that is stuck only for where it returns to is not
    /// among them: the step that it returns to is.
    /// </summary>
    public HashSet<string> Stuck { get; }

    private HashSet<Node> LeadingToTheEnd()
    {
        var leading = _before.Keys.Where(node => node.Step == Flow.End).ToHashSet();
        for (var open = new Queue<Node>(leading); open.TryDequeue(out var node);)
        {
            foreach (var before in _before[node].Where(leading.Add))
            {
                open.Enqueue(before);
            }
        }

        return leading;
    }

    private IEnumerable<Node> Next(Node node)
    {
        if (!_flow.Steps.TryGetValue(node.Step, out var from))
        {
            return [];
        }

        return FlowCheck.WaysFrom(_flow, from)
            .Where(passage => passage.Go != Flow.LeftAlone)
            .Select(passage => passage.Go == Flow.Return ? node.ReturnTo : passage.Go)
            .Select(go => _flow.Steps.TryGetValue(go, out var to) && to.Phase.IsSideTrip
                ? new Node(go, from.Phase.IsSideTrip ? node.ReturnTo : from.Id)
                : new Node(go, ""));
    }

    private readonly record struct Node(string Step, string ReturnTo);
}
