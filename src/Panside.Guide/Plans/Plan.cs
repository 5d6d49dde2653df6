using Panside.Guide.Knowledge;
using Panside.Guide.Measures;

namespace Panside.Guide.Plans;

/// <summary>A boil as it is meant to go: what is said when, and what must be asked and told then. docs/plans.md says how its file is written.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Guidance">How much is explained in it.</param>
/// <param name="Lines">What is said, in order.</param>
/// <param name="Ends">How it must end: <c>safe</c>, <c>unsafe</c> or <c>open</c>; null where that does not matter.</param>
public sealed record Plan(string Name, Guidance Guidance, IReadOnlyList<PlanLine> Lines, string? Ends)
{
    /// <summary>What must not be said at any line: what this rig has not.</summary>
    public IReadOnlyList<PlacedText> NotTold { get; init; } = [];

    /// <summary>Line and column of how it must end.</summary>
    public (int Line, int Column) EndsPlace { get; init; } = (1, 1);
}

/// <summary>One line of a plan.</summary>
/// <param name="At">When it is said; null for right after the line before.</param>
/// <param name="Say">What is typed; null where only time passes.</param>
/// <param name="Asks">The step or the watch that must be asked just then, or <see cref="Nothing"/>; null where that does not matter.</param>
/// <param name="Phase">The phase that it must be just then; null where that does not matter.</param>
/// <param name="Told">What must be said since the line before, the answer to this one included.</param>
/// <param name="NotTold">What must not.</param>
/// <param name="Taken">What must come of what is typed: one of <see cref="Takings"/>.</param>
public sealed record PlanLine(
    ClockTime? At, string? Say, string? Asks, string? Phase, IReadOnlyList<PlacedText> Told, IReadOnlyList<PlacedText> NotTold, string Taken)
{
    /// <summary>What stands under <c>asks</c> where nothing is asked.</summary>
    public const string Nothing = "nothing";

    /// <summary>What can come of a line.</summary>
    public static IReadOnlyList<string> Takings { get; } = ["yes", "doubted", "refused"];

    /// <summary>Lines and columns of what is said, asked, the phase, and of all of it.</summary>
    public ((int Line, int Column) Say, (int Line, int Column) Asks, (int Line, int Column) Phase, (int Line, int Column) Whole) Places { get; init; }
}

/// <summary>A text with its place in the file.</summary>
/// <param name="Text">The text.</param>
/// <param name="Place">Line and column.</param>
public readonly record struct PlacedText(string Text, (int Line, int Column) Place);
