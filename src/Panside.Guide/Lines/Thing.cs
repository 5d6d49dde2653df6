namespace Panside.Guide.Lines;

/// <summary>
/// A thing that can be told: one row, with all that the guide knows of it. Two rows are the same only where they are one object.
/// </summary>
public abstract class Thing(string code)
{
    /// <summary>As in the stream: <c>tank-volume</c>.</summary>
    public string Code { get; } = code;

    /// <summary>Other words that are typed for it, the usual one first.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>Everything that is typed for it: its code, its words, and its code without hyphens.</summary>
    public IEnumerable<string> Typed => [Code, .. Words, Code.Replace('-', ' ')];

    /// <summary>Its code.</summary>
    public override string ToString() => Code;
}
