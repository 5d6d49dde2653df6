namespace Panside.Guide.Flows;

/// <summary>A deed that brings leaving nearer where waiting alone does not.</summary>
/// <param name="When">Facts that must all hold; none for always.</param>
/// <param name="Text">The deed, to stand within a sentence: <c>shut the draw-off; say 'drew' with the volume</c>.</param>
public sealed record ClearingRule(IReadOnlyList<string> When, string Text)
{
    /// <summary>The action that an advice has which tells it: one of <see cref="Lines.Actions"/>. Null where there is none for it, and the advice keeps its own.</summary>
    public string? Action { get; init; }

    /// <summary>Line and column in the file.</summary>
    public (int Line, int Column) Place { get; init; } = (1, 1);
}
