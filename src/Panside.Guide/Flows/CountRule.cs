namespace Panside.Guide.Flows;

/// <summary>When something counts most.</summary>
/// <param name="Count">One of the counts that the program knows.</param>
/// <param name="When">Facts that must all hold; none for always.</param>
/// <param name="Phases">The phases that it belongs to; empty for all.</param>
/// <param name="Text">What it counts, to stand over the figure: <c>until wood</c>.</param>
public sealed record CountRule(string Count, IReadOnlyList<string> When, IReadOnlyList<string> Phases, string Text)
{
    /// <summary>Line and column in the file.</summary>
    public (int Line, int Column) Place { get; init; } = (1, 1);
}
