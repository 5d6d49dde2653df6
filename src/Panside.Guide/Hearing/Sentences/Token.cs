namespace Panside.Guide.Hearing.Sentences;

/// <summary>How a writer paused before a word.</summary>
internal enum Pause
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>A comma, a dash, a colon, a bracket.</summary>
    Short,

    /// <summary>The end of a sentence.</summary>
    Long,
}

/// <summary>One word of a sentence.</summary>
/// <param name="Text">As understood: in small letters, without accents, slips put right.</param>
/// <param name="Before">The pause before it.</param>
/// <param name="AskedAfter">Whether a question mark stands behind it.</param>
internal sealed record Token(string Text, Pause Before, bool AskedAfter = false)
{
    /// <summary>What it may as well have been, where it was a slip.</summary>
    public IReadOnlyList<string> Others { get; init; } = [];

    /// <summary>The numbers of the book's entries that this word is: itself, its stem, its beginnings.</summary>
    public int[] Keys { get; init; } = [];

    /// <summary>Whether a phrase may pass over it.</summary>
    public bool IsLight { get; init; }

    /// <summary>Whether it is one of the book's entries under a number.</summary>
    public bool Is(int key) => Array.IndexOf(Keys, key) >= 0;
}

/// <summary>Words from one to another, both included.</summary>
/// <param name="Start">The first word's place.</param>
/// <param name="End">The last word's place.</param>
internal readonly record struct Span(int Start, int End)
{
    /// <summary>Whether another lies within.</summary>
    public bool Holds(Span other) => Start <= other.Start && other.End <= End;

    /// <summary>Whether a place lies within.</summary>
    public bool Holds(int place) => Start <= place && place <= End;
}
