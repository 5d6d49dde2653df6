namespace Panside.Guide.Flows;

/// <summary>
/// All that may be known of a few facts: each holds or does not. A way of a flow that hangs on them is open or shut for each case,
/// so that what a flow does can be looked at for every case instead of for those that somebody thought of.
/// </summary>
internal sealed class KnownFacts
{
    /// <summary>More facts at one place than this are too many to look at every case of.</summary>
    public const int Most = 16;

    private readonly List<string> _facts;

    /// <summary>The facts that ways and triggers name.</summary>
    /// <param name="facts">The facts; a leading <c>not </c> is passed over, twins are taken once.</param>
    public KnownFacts(IEnumerable<string> facts)
    {
        List<string> all = [.. facts.Select(Bare).Distinct()];
        (_facts, IsCutOff) = ([.. all.Take(Most)], all.Count > Most);
    }

    /// <summary>Whether there are more facts than are looked at.</summary>
    public bool IsCutOff { get; }

    /// <summary>Every case, as a number whose bits are the facts.</summary>
    /// <param name="given">Facts that hold in all of them.</param>
    public IEnumerable<int> Cases(IReadOnlyList<string> given) =>
        Enumerable.Range(0, 1 << _facts.Count).Where(known => given.All(fact => Holds(known, fact)));

    /// <summary>Whether a fact holds in a case; a leading <c>not </c> turns it round. A fact that is not looked at holds nowhere.</summary>
    public bool Holds(int known, string fact) => fact.StartsWith("not ", StringComparison.Ordinal)
        ? !Holds(known, fact[4..])
        : _facts.IndexOf(fact) is >= 0 and var bit && (known & (1 << bit)) != 0;

    /// <summary>Whether it is one of the facts that are looked at.</summary>
    public bool Names(string fact) => _facts.Contains(fact);

    /// <summary>A case in words: the facts that hold.</summary>
    public string Told(int known) => string.Join(", ", _facts.Where(fact => Holds(known, fact)));

    private static string Bare(string fact) => fact.StartsWith("not ", StringComparison.Ordinal) ? fact[4..] : fact;
}
