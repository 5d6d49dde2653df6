using Panside.Guide.Lines;

namespace Panside.Guide.Hearing;

/// <summary>What a typed line turned out to be.</summary>
public abstract record Understood;

/// <summary>A reading, an observation, a deed or an answer.</summary>
public sealed record MeansLine(LineIn Line) : Understood;

/// <summary>A word of the assistant's own, or of the flow, with what stands behind it.</summary>
public sealed record MeansWord(string Word, string Rest) : Understood;

/// <summary>Nothing that is known here.</summary>
/// <param name="Why">What was understood of it, and what was expected.</param>
public sealed record MeansNothing(string Why) : Understood;
