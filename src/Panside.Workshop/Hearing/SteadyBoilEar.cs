using Panside.Guide.Flows;
using Panside.Guide.Hearing;
using Panside.Guide.Hearing.Cries;
using Panside.Guide.Hearing.Terms;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Workshop.Trials;

namespace Panside.Workshop.Hearing;

/// <summary>What a session makes of a line that is said in a steady boil, while nothing is asked.</summary>
internal sealed class SteadyBoilEar
{
    private readonly Listener _listener;
    private readonly Flow _flow;
    private readonly Moment _at = Moment.Of(Evening.Start);

    /// <summary>Makes the ear of a boil on the forced rig.</summary>
    public SteadyBoilEar()
    {
        var setting = Evening.On(Evening.Forced);
        (_listener, _flow) = (new(setting), setting.Flow);
    }

    /// <summary>What it is heard as.</summary>
    public Understood Understand(string text) => _listener.Understand(_at, text, null);

    /// <summary>
    /// The danger that it opens, whichever way: weighed as a cry, one of the flow's own words for a danger (<c>chimney fire</c>), or seen, as the
    /// first of what is said or alone (<c>foam over</c>). Null where the boil goes on as before.
    /// </summary>
    public Cry? Opened(string text) => Opens(Understand(text));

    private Cry? Opens(Understood understood) => understood switch
    {
        MeansCry(var dangers, var isSure) => new(dangers, isSure),
        MeansSeveral(var facts) => facts.Select(Opens).FirstOrDefault(cry => cry is not null),
        MeansWord(var word, _) when _flow.Dangers.FirstOrDefault(danger => danger.Code == word) is { } danger => new(danger.IsList ? [] : [word], !danger.IsList),
        MeansLine(Observed { Name.Code: var seen, Is: var state }) when DangerSeen(seen, state) is { } danger => new([danger], true),
        _ => null,
    };

    /// <summary>The danger that an observation leads to by itself.</summary>
    private string? DangerSeen(string seen, string state) =>
        _flow.Dangers.FirstOrDefault(danger => danger.Ways.Any(way => way.When == $"observed {seen} {state}"))?.Code;

    /// <summary>What it means, in the order said.</summary>
    public IReadOnlyList<HeardMeaning> Hear(string text) => [.. Of(Understand(text))];

    private static IEnumerable<HeardMeaning> Of(Understood understood) => understood switch
    {
        MeansSeveral(var facts) => facts.SelectMany(Of),
        MeansUnsure(var line) => [Line(line) with { IsAsked = true }],
        MeansPoured => [new("how-much", null, null, false)],
        MeansLine(var line) => [Line(line)],
        MeansTalk(var meaning) => [new(meaning.Kind, meaning.Amount?.Value, meaning.Amount?.Unit, false)],
        MeansCry => [new("cry", null, null, false)],
        MeansWord(Supposition.Word, _) => [new("ask:what-if-stop", null, null, false)],
        MeansWord("undo", _) => [new("word:undo", null, null, false)],
        MeansWord("shutdown", _) => [new("hold", null, null, false)],
        MeansWord(var word, _) => [new("ask:" + word, null, null, false)],
        MeansNothing(Pouring.HowMuch or "How much? Say 'refill 10 gal'; or read the tank: 'tank 22'.") => [new("how-much", null, null, false)],
        _ => [],
    };

    private static HeardMeaning Line(LineIn line) => line switch
    {
        Reading reading => new("reading:" + reading.Name.Code, reading.Measure.Value, reading.Measure.Unit, false),
        Observed observed => new($"observed:{observed.Name.Code}:{observed.Is}", null, null, false),
        Did { Name.Code: "fill-pan" } did => new($"did:fill-pan:{did.Is}", did.Measure?.Value, did.Measure?.Unit, false),
        Did did => new("did:" + did.Name.Code, did.Measure?.Value, did.Measure?.Unit, false),
        Added added => new("added", added.Measure.Value, added.Measure.Unit, false),
        Answer answer => new("answer:" + answer.Word, null, null, false),
        _ => new("none", null, null, false),
    };
}

/// <summary>A meaning as it was heard.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Value">Its amount.</param>
/// <param name="Unit">The amount's unit, also where nobody said it.</param>
/// <param name="IsAsked">Whether it is asked before it is taken.</param>
internal sealed record HeardMeaning(string Kind, double? Value, Unit? Unit, bool IsAsked)
{
    /// <summary>Whether it changes what is known.</summary>
    public bool IsFact => Kind.StartsWith("reading", StringComparison.Ordinal) || Kind.StartsWith("did", StringComparison.Ordinal)
        || Kind.StartsWith("observed", StringComparison.Ordinal) || Kind == "added";
}
