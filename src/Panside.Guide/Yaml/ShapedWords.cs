namespace Panside.Guide.Yaml;

/// <summary>Words that a text may be: these, and what a pattern takes beside them.</summary>
/// <param name="Name">What they are, where they stand at many places: <c>fact</c>; null where at one.</param>
/// <param name="Words">The words.</param>
/// <param name="Pattern">A regular expression of others; null where there are no others.</param>
public sealed record ShapedWords(string? Name, IReadOnlyList<string> Words, string? Pattern = null);
