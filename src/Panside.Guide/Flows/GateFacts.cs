using Panside.Guide.Rigs;

namespace Panside.Guide.Flows;

/// <summary>
/// What holds at a pan that has come to rest, and waits for one look that leaving wants: the case of that look first, what the rig has, and then
/// that all else is well. What is neither may hold or not.
/// </summary>
/// <param name="case">What holds in the case of the look; <c>not</c> before what does not.</param>
/// <param name="rig">The rig; null for every rig that has what the look needs.</param>
/// <param name="needs">What the rig must have for the look; null for nothing.</param>
internal sealed class GateFacts(IReadOnlyList<string> @case, Rig? rig, string? needs)
{
    private const string Not = "not ";

    /// <summary>Well, and so at last, whatever else is waited for.</summary>
    private static readonly string[] AtRest =
    [
        "boil-still", "still-counts", "coals-down", "unanswered", "not clear-to-leave", "not boil-up", "not boil-rolling", "not coals-deep", "not foam-up", "not foam-rising",
        "not smell-scorched", "not draw-open", "not draw-due", "not draw-at-hand", "not draw-imminent", "not draw-again", "not draw-near", "not pan-low", "not back-low",
        "not pan-below-least", "not back-below-least", "not pan-falling", "not pan-fallen", "not back-fallen", "not pan-fallen-lately", "not pan-unsteady", "not depth-wanted",
        "not back-depth-wanted", "not depth-overdue", "not depth-unseen", "not depth-stale", "not back-overdue", "not back-unseen", "not pan-unpoured", "not depth-fresh", "not depth-owed", "not tank-fresh", "not emergency-on",
    ];

    /// <summary>Whoever waits to be clear has let the fire go; who fires on yet comes to that by another way.</summary>
    private static readonly string[] Waiting = ["fire-lit", "wood-held", "not burner-on", "not wood-near"];

    private static readonly string[][] OneOf =
    [
        ["has-float", "fed-by-hand", "fed-by-valve"],
        ["drawn-by-valve", "drawn-by-ladle", "drawn-by-pouring"],
        ["burns-wood", "has-burner"],
        ["burns-wood", "burns-gas", "burns-oil", "heats-electric"],
    ];

    /// <summary>Whether a way may be open at last: nothing that it wants is known not to hold.</summary>
    /// <param name="facts">What it wants.</param>
    public bool May(IEnumerable<string> facts) => facts.All(fact => Known(fact, waits: false) != false);

    /// <summary>Whether one of some questions is asked whatever else holds.</summary>
    /// <param name="questions">What each is given.</param>
    public bool Always(IEnumerable<IReadOnlyList<string>> questions)
    {
        // What is left of each, once what is known is taken away.
        var open = questions.Where(given => given.All(fact => Known(fact, waits: true) != false))
            .Select(given => given.Where(fact => Known(fact, waits: true) is null).ToList()).ToList();
        var facts = new KnownFacts(open.SelectMany(given => given));
        return open.Exists(given => given.Count == 0)
            || (open.Count > 0 && !facts.IsCutOff && facts.Cases([]).Where(one => IsARig(facts, one)).All(one => open.Exists(given => given.TrueForAll(fact => facts.Holds(one, fact)))));
    }

    private bool? Known(string fact, bool waits)
    {
        if (fact.StartsWith(Not, StringComparison.Ordinal))
        {
            return !Known(fact[Not.Length..], waits);
        }

        return rig is not null && RigFacts.IsOne(fact) ? RigFacts.Holds(rig, fact)
            : needs is not null && Of([needs], fact) is { } needed ? needed
            : needs is not null && OneOf.Any(group => group.Contains(needs) && group.Contains(fact)) ? false
            : Of(@case, fact) ?? Of(AtRest, fact) ?? (waits ? Of(Waiting, fact) : null);
    }

    private static bool? Of(IReadOnlyList<string> facts, string fact) => facts.Contains(fact) ? true : facts.Contains(Not + fact) ? false : null;

    /// <summary>Whether some rig is as a case says.</summary>
    private static bool IsARig(KnownFacts facts, int one) => OneOf.All(group => group.Count(fact => facts.Holds(one, fact)) switch
    {
        0 => !group.All(facts.Names),
        1 => true,
        _ => false,
    });
}
