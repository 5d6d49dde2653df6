using Panside.Guide.Rigs;

namespace Panside.Guide.Flows;

/// <summary>What is said instead on some rigs. What it leaves open stays as it is.</summary>
/// <param name="Given">What the rig must have.</param>
/// <param name="Text">The instruction; null where it stays.</param>
/// <param name="Because">The reason; null where it stays.</param>
/// <param name="Cautions">The hazards; null where they stay.</param>
/// <param name="IfNo">What is said to a no; null where it stays.</param>
public sealed record Reworded(IReadOnlyList<string> Given, string? Text, string? Because, IReadOnlyList<string>? Cautions, string? IfNo)
{
    /// <summary>The first of them that is for a rig; null where none is.</summary>
    public static Reworded? For(IReadOnlyList<Reworded> all, Rig rig) => all.FirstOrDefault(one => one.Given.All(fact => RigFacts.Holds(rig, fact)));
}
