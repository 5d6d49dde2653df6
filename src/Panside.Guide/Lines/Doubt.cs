namespace Panside.Guide.Lines;

/// <summary>A line that is doubted.</summary>
/// <param name="Text">The question.</param>
/// <param name="WouldTake">What it would take to be true.</param>
public sealed record Doubt(string Text, string WouldTake);
