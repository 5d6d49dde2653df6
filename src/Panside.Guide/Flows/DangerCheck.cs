using Panside.Guide.Lines;
using Panside.Guide.Yaml;

namespace Panside.Guide.Flows;

/// <summary>
/// S2, S10, S11: the danger wins, whatever is known. Each step is walked with each danger, for every case of the facts that its ways
/// hang on: what comes first must be what is done about the danger. The ways are resolved here by themselves, not by the machine that
/// guides, so that one checks the other.
/// </summary>
internal sealed class DangerCheck
{
    /// <summary>What must be a danger in every flow, by the line that tells of it and the fact that makes it one.</summary>
    private static readonly (string When, string? Given)[] Demanded =
    [
        ("reading pan-depth", "pan-below-least"), ("observed foam over", null), ("observed smell scorched", null),
    ];

    /// <summary>Facts that count from when a step is reached, so that none of them holds just then.</summary>
    private static readonly string[] OfTime = ["unanswered", "fired-long", "asked-thrice"];

    private readonly string _file;
    private readonly Flow _flow;
    private readonly List<Fault> _faults = [];
    private readonly HashSet<string> _told = new(StringComparer.Ordinal);

    private DangerCheck(string file, Flow flow) => (_file, _flow) = (file, flow);

    /// <summary>The faults of a flow whose names all lead somewhere.</summary>
    public static IReadOnlyList<Fault> Faults(string file, Flow flow)
    {
        var check = new DangerCheck(file, flow);
        check.Dangers();
        if (check._faults.Count == 0)
        {
            check.Walk();
            check.WaysOut();
        }

        return check._faults;
    }

    /// <summary>Each danger leads to a step that tells and asks at once; those that every rig has are there.</summary>
    private void Dangers()
    {
        foreach (var danger in _flow.Dangers)
        {
            var step = _flow.Steps[danger.Go];
            if (!step.Phase.IsEmergency)
            {
                Add(danger.Place, $"the danger '{danger.Code}' leads to '{step.Id}', which is in no emergency", $"a step of the phase '{Phase.EmergencyCode}' (S2)");
            }
            else if (Late(step) is { } late)
            {
                Add(step.Place, $"'{step.Id}' is the first step of the danger '{danger.Code}' and {late}", "'ask', 'advise' and 'urgency: danger', at once and for everyone (S2)");
            }

            if (_flow.Dangers.First(other => other.Go == danger.Go) != danger)
            {
                Add(danger.Place, $"the danger '{danger.Code}' has the first step of another", "a step of its own");
            }
        }

        foreach (var (when, given) in Demanded.Where(row => !_flow.DangerWays.Any(way =>
                     way.When == row.When && way.Given.All(fact => fact == row.Given))))
        {
            Add((1, 1), $"no danger is told of by '{when}'", $"one under 'dangers' with '{{ when: {when}{(given is null ? "" : $", given: [{given}]")} }}' (S2)");
        }

        var lists = _flow.Dangers.Where(danger => danger.IsList).ToList();
        if (lists.Count != 1)
        {
            Add(lists.Skip(1).FirstOrDefault()?.Place ?? (1, 1), "not one danger is the list of the others", "'list: true' at the one that 'emergency' leads to (S2)");
            return;
        }

        foreach (var word in new[] { "emergency", "!" }.Where(word => _flow.Words.GetValueOrDefault(word) != lists[0].Code))
        {
            Add(lists[0].Place, $"'{word}' does not open the list of emergencies", $"'{word}' among the words of '{lists[0].Code}' (S2)");
        }
    }

    private void Walk()
    {
        foreach (var step in _flow.Steps.Values)
        {
            Dead(step);
            foreach (var danger in _flow.Dangers)
            {
                foreach (var way in danger.Ways.Where(way => way.When != danger.Back || !step.Phase.IsEmergency))
                {
                    Walk(step, danger, way);
                }
            }
        }
    }

    /// <summary>A way of a step's or a phase's own over which a danger always comes: whoever wrote it thought that it would be taken.</summary>
    private void Dead(Step step)
    {
        foreach (var own in step.Phase.IsEmergency ? [] : step.Passages.Concat(step.Phase.On))
        {
            if (_flow.DangerWays.FirstOrDefault(way => way.When == own.When && way.Given.All(own.Given.Contains)) is { } over)
            {
                Add(own.Place, $"'{step.Id}' takes '{Told(own)}' for itself, which leads to '{over.Go}' from anywhere", "that for the danger alone (S2)");
            }
        }

        foreach (var danger in _flow.Dangers.Where(danger => step.Phase.IsEmergency
                     && step.Passages.Concat(step.Phase.On).Any(own => own.When == "word " + danger.Code && own.Go != danger.Go)))
        {
            Add(step.Place, $"'{step.Id}' takes the word '{danger.Code}' for itself", "that word for the danger alone (S2)");
        }
    }

    /// <summary>What comes of a danger at a step, in every case.</summary>
    private void Walk(Step step, Danger danger, Passage way)
    {
        var ways = FlowCheck.WaysFrom(_flow, step).Where(other => other.When == way.When).ToList();
        var targets = ways.Append(way).Select(other => other.Go).Distinct().Where(_flow.Steps.ContainsKey).Select(id => _flow.Steps[id]);
        var known = new KnownFacts(
            way.Given.Concat(ways.SelectMany(other => other.Given)).Concat(targets.SelectMany(FactWays).SelectMany(Facts)).Except(OfTime));
        foreach (var one in known.Cases(way.Given))
        {
            if (Wrong(step, danger, way.When, fact => known.Holds(one, fact)) is var (path, wrong))
            {
                // The same way past a danger from another step is the same fault.
                if (_told.Add($"{danger.Code} {string.Join(' ', path.Skip(1))}"))
                {
                    Add(
                        step.Place,
                        $"at '{step.Id}' the danger '{danger.Code}' ('{Told(way)}') {wrong}: {string.Join(" -> ", path)}{(known.Told(one) is { Length: > 0 } told ? $", where {told}" : "")}",
                        $"'{danger.Go}' before anything else is asked (S2)");
                }

                return;
            }
        }
    }

    private (IReadOnlyList<string> Path, string Wrong)? Wrong(Step from, Danger danger, string trigger, Func<string, bool> holds)
    {
        var path = new List<string> { from.Id };
        if (First(from, trigger, holds) is not { } go)
        {
            return (path, "leads nowhere");
        }

        for (var moves = 0; moves < 9; moves++)
        {
            path.Add(go);
            if (!_flow.Steps.TryGetValue(go, out var step) || !step.Phase.IsEmergency)
            {
                return (path, "is passed over");
            }

            var next = FactWays(step)
                .FirstOrDefault(way => holds(way.When["fact ".Length..]) && way.Given.All(holds) && way.Go != step.Id);
            if (next is null)
            {
                var isWord = trigger == "word " + danger.Code;
                return Late(step) is { } late ? (path, late) : isWord && go != danger.Go ? (path, "comes to another") : null;
            }

            go = next.Go;
        }

        return (path, "goes round");
    }

    /// <summary>The step that a trigger leads to first. A step's own ways come first only in an emergency.</summary>
    private string? First(Step step, string trigger, Func<string, bool> holds)
    {
        var own = step.Passages.Concat(step.Phase.On);
        var ways = step.Phase.IsEmergency ? own.Concat(_flow.DangerWays) : _flow.DangerWays.Concat(own);
        return ways.Concat(_flow.Anywhere).FirstOrDefault(way => way.When == trigger && way.Given.All(holds))?.Go;
    }

    private static IEnumerable<Passage> FactWays(Step step) => step.Passages.Concat(step.Phase.On)
        .Where(way => way.When.StartsWith("fact ", StringComparison.Ordinal) && !OfTime.Contains(way.When["fact ".Length..]));

    private static IEnumerable<string> Facts(Passage way) => way.Given.Append(way.When["fact ".Length..]);

    /// <summary>What keeps a step of an emergency from telling and asking at once; null where nothing does.</summary>
    private static string? Late(Step step) =>
        step.Ask is null ? "asks nothing"
        : step.After > TimeSpan.Zero ? "waits before it asks"
        : step.BeginnerOnly ? "is passed by a practised hand"
        : step.Given.Count > 0 ? "is passed by where its 'given' does not hold"
        : step.Advise is null ? "advises nothing"
        : step.Urgency != "danger" ? "is not told as a danger"
        : null;

    /// <summary>S10: whoever answers no comes to something else, and never round; what is read or seen again and again leads on at last.</summary>
    private void WaysOut()
    {
        foreach (var step in _flow.Steps.Values.Where(step => step.Phase.IsEmergency && step.Ask is not null))
        {
            var (yes, no) = (Targets(step, "answer yes"), Targets(step, "answer no"));
            if (step.Ask == Prompt.Confirm && (no.Count == 0 || no.All(yes.Contains)))
            {
                Add(step.Place, $"a no at '{step.Id}' leads nowhere else than a yes", "'no: …', the step for whoever cannot do it (S10)", FaultKind.WayOut);
            }

            if (Round(step.Id, []) is { } round && !round.Any(_told.Contains))
            {
                _told.UnionWith(round);
                Add(step.Place, $"whoever answers no at '{step.Id}' comes round to it again", "a way out that an honest no takes (S10)", FaultKind.WayOut);
            }

            if (step.Ask != Prompt.Confirm && step.Passages.Any(way =>
                    way.Go == step.Id && IsAnswer(way, step.Ask!) && !way.Given.Contains("not asked-thrice")))
            {
                Add(step.Place, $"'{step.Id}' is asked again and again in the same words", "'not asked-thrice' on the way that comes back to it, and a way out after it (S10)", FaultKind.WayOut);
            }
        }
    }

    private static bool IsAnswer(Passage way, string ask) =>
        way.When == "reading " + ask || way.When == "observed " + ask || way.When.StartsWith($"observed {ask} ", StringComparison.Ordinal);

    private static List<string> Targets(Step step, string trigger) =>
        [.. step.Passages.Where(way => way.When == trigger).Select(way => way.Go).Distinct()];

    /// <summary>The steps that a no leads round; null where it leads out.</summary>
    private IReadOnlyList<string>? Round(string id, IReadOnlyList<string> before) =>
        before.Contains(id) ? before
        : _flow.Steps.TryGetValue(id, out var step) && step.Phase.IsEmergency
            ? Targets(step, "answer no").Select(next => Round(next, [.. before, id])).FirstOrDefault(round => round is not null)
            : null;

    private static string Told(Passage way) => way.Given.Count == 0 ? way.When : $"{way.When}, given {string.Join(" and ", way.Given)}";

    private void Add((int Line, int Column) place, string wrong, string expected, FaultKind? kind = null) =>
        _faults.Add(new(_file, place.Line, place.Column, wrong, expected) { Kind = kind ?? FaultKind.Danger });
}
